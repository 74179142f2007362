/** Which forced manoeuvres count, and why the others do not. */
import type { Manoeuvre } from "../../kernel/generated/session.js";
import { compareAtDecimals, toDecimals } from "../../kernel/rounding.js";

/** accepted: marked so, and nothing speaks against it · unmarked: nobody said · usable, out: with the reason. */
export type Standing =
  | { readonly is: "accepted" | "unmarked" }
  | { readonly is: "usable" | "out"; readonly because: string };

/** Back-extrapolated volume: 5 % of FVC or 0.100 L, whichever is greater (ATS/ERS 2019). */
export const largestStartL = (fvc: number): number => Math.max(0.05 * fvc, 0.1);

export function standingOf(manoeuvre: Manoeuvre): Standing {
  const fault = faultOf(manoeuvre);
  if (fault !== undefined) return { is: manoeuvre.usable === true ? "usable" : "out", because: fault };
  return { is: manoeuvre.acceptable === true ? "accepted" : "unmarked" };
}

/** The manoeuvres values are taken from: accepted and unmarked ones; usable ones only where there is no other. */
export function counting(all: readonly Manoeuvre[]): readonly Manoeuvre[] {
  const good = all.filter((m) => ["accepted", "unmarked"].includes(standingOf(m).is));
  return good.length > 0 ? good : all.filter((m) => standingOf(m).is === "usable");
}

function faultOf({ acceptable, back_extrapolated_volume_l: start, fvc_l: fvc, remark }: Manoeuvre): string | undefined {
  if (acceptable === false) return remark ?? "marked as not acceptable";
  if (start === undefined || compareAtDecimals(start, largestStartL(fvc), 3) <= 0) return undefined;
  return `back-extrapolated volume ${toDecimals(start, 3)} L is above ${toDecimals(largestStartL(fvc), 3)} L`;
}
