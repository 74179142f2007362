/**
 * The smallest worthwhile change for a client: their own first, else a fifth of the spread between people, named.
 */
import { toDecimals } from "../kernel/rounding.js";
import { attempt } from "./attempt.js";
import { worthwhileChange } from "./error/worthwhile-change.js";
import type { ErrorModel } from "./error-model.js";
import type { Known, Spread } from "./known.js";

export interface Worthwhile {
  /** In the measure's unit. */
  readonly value: number;
  readonly from: string;
}

/** Spread of VO2max among healthy adults before training, used where nothing nearer the client is known. Its mean is left out:
 * a trained client was not drawn from these people, so their middle says nothing of where a second test would tend. */
const UPTAKE_SPREAD: Spread = {
  measure: "vo2_peak_per_mass",
  sd: 7.9, // Milanović, Sporiš & Weston 2015, abstract: baseline 40.8 ± 7.9 mL/kg/min
  from: "723 healthy adults of 28 training trials (Milanović 2015, Sports Med 45:1469–1481)",
};

export function worthwhileFor(
  measure: string,
  sex: "female" | "male",
  typical: number,
  model: ErrorModel,
  known: Pick<Known, "worthwhile" | "spreads">,
): Worthwhile | undefined {
  const own = known.worthwhile[measure];
  if (own && own.value > 0) return { value: own.value, from: own.from };
  const spread = spreadFor(measure, sex, model, known.spreads ?? []);
  if (spread === undefined) return undefined;
  const value = attempt(() => worthwhileChange(spread.sd, typical));
  const sd = toDecimals(spread.sd, spread.sd < 1 ? 2 : 1);
  return value === undefined
    ? undefined
    : { value, from: `0.2 of the spread between people (SD ${sd}) in ${spread.from}` };
}

/** The nearest known spread: given for the client's kind, the laboratory's retest sample, else a published one. */
export const spreadFor = (
  measure: string,
  sex: "female" | "male",
  model: ErrorModel | undefined,
  spreads: readonly Spread[],
): Spread | undefined =>
  spreads.find((s) => s.measure === measure && (s.sex === undefined || s.sex === sex)) ??
  model?.spread ??
  (measure === UPTAKE_SPREAD.measure ? UPTAKE_SPREAD : undefined);
