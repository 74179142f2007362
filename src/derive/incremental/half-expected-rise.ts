/**
 * Plateau of oxygen uptake by the half-expected-rise rule.
 *
 *     ratio = (VO2 of the last window − VO2 one minute or one stage earlier) / (slope · rise of work between them)
 *     plateau when ratio ≤ 0.5
 *
 * A fixed limit such as 150 mL/min means nothing when stages are small: there uptake cannot rise more. The rule asks
 * instead how much of the rise that this client's own submaximal line foretells did happen.
 */
import { type FormulaInfo, OutOfRange, requireRange } from "../../kernel/formula.js";

/** Slope in L/min per unit of work, work in W (or the unit of the slope), rise in L/min. */
export function halfExpectedRise(slope: number, workRise: number, observedRise: number): number {
  if (!(slope > 0)) throw new OutOfRange(info.id, "slope", slope, "uptake that rises with work");
  if (!(workRise > 0)) throw new OutOfRange(info.id, "rise of work", workRise, "work that still rises");
  requireRange(info.id, "rise of uptake", observedRise, -3, 3, "L/min");
  return observedRise / (slope * workRise);
}

/** Largest share of the expected rise that is a plateau. */
export const PLATEAU_SHARE = 0.5;

const byHand = "by hand, with 10.2 mL/min/W:";
export const info: FormulaInfo<[number, number, number], number> = {
  id: "half-expected-rise",
  revision: 2,
  title: "Share of the expected rise of uptake that happened at the end",
  equation: "ratio = observed rise / (submaximal slope · rise of work); plateau when ratio ≤ 0.5",
  inputs: {
    slope: { unit: "L/min per unit of work", range: "above 0" },
    "rise of work": { unit: "W, or mL/kg/min by the metabolic equations", range: "above 0" },
    "rise of uptake": { unit: "L/min", range: "-3 to 3" },
  },
  output: { unit: "ratio", decimals: 2 },
  caveat: "Breath noise can hide or feign a plateau; the ratio is given with its standard error.",
  source: {
    authors: "Niemeyer M, Knaier R, Beneke R",
    year: 2021,
    title: "The oxygen uptake plateau: a critical review of the frequently misunderstood phenomenon",
    journal: "Sports Med 51:1815–1834",
    doi: "10.1007/s40279-021-01471-4",
    where: "recommended definition: a final slope below about half of the submaximal one, over long windows",
    verified: "seen",
  },
  compute: halfExpectedRise,
  checks: [
    { given: [0.0102, 25, 0.11], expect: 0.43, tolerance: 0.005, from: `${byHand} 110 / 255 = 0.43, a plateau` },
    { given: [0.0102, 10, 0.095], expect: 0.93, tolerance: 0.005, from: `${byHand} 95 / 102 = 0.93, none` },
    { given: [0.0102, 0, 0.05], expect: "refused", from: "work did not rise, so nothing was to be expected" },
  ],
};
