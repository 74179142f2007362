/** Which forced manoeuvres count, and why the others do not. */
import type { Manoeuvre } from "../../kernel/generated/session.js";
import { compareAtDecimals, toDecimals } from "../../kernel/rounding.js";

/** accepted: marked so, and nothing speaks against it · unmarked: nobody said · out: with the reason. */
export type Standing = { readonly is: "accepted" | "unmarked" } | { readonly is: "out"; readonly because: string };

/** Back-extrapolated volume: 5 % of FVC or 0.100 L, whichever is greater (ATS/ERS 2019). */
export const largestStartL = (fvc: number): number => Math.max(0.05 * fvc, 0.1);

export function standingOf({ acceptable, back_extrapolated_volume_l: start, fvc_l: fvc, remark }: Manoeuvre): Standing {
  if (acceptable === false) return { is: "out", because: remark ?? "marked as not acceptable" };
  if (start !== undefined && compareAtDecimals(start, largestStartL(fvc), 3) > 0)
    return {
      is: "out",
      because: `back-extrapolated volume ${toDecimals(start, 3)} L is above ${toDecimals(largestStartL(fvc), 3)} L`,
    };
  return { is: acceptable === true ? "accepted" : "unmarked" };
}
