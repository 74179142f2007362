/**
 * Highest fat oxidation among steady stages, and the stage that shows it.
 *
 *     fat = 1.695·VO2 − 1.701·VCO2 for each steady stage with RER < 1.00; the stage with the highest
 *
 * The answer is a stage, never a point between stages, and not given when the highest lies at the first or the last
 * steady stage: then the true maximum may be outside what was measured. Day-to-day variation within a person is about
 * 8 % for the rate and 7 % for the intensity (14 men).
 */
import { type FormulaInfo, OutOfRange } from "../../kernel/formula.js";

/** Fat oxidation of each steady stage in order of load, g/min, in; index of the highest out. Throws OutOfRange for fewer than three stages or a highest at either end. */
export function fatmax(fat: readonly number[]): number {
  if (fat.length < 3) throw new OutOfRange(info.id, "the number of steady stages", fat.length, "three or more");
  const best = fat.reduce((top, rate, i) => (rate > (fat[top] as number) ? i : top), 0);
  if (best === 0 || best === fat.length - 1)
    throw new OutOfRange(
      info.id,
      "the highest fat oxidation",
      `at the ${best === 0 ? "first" : "last"} steady stage`,
      "maxima with a lower stage on either side",
    );
  return best;
}

export const info: FormulaInfo<[readonly number[]], number> = {
  id: "fatmax",
  revision: 1,
  title: "Stage of the highest fat oxidation",
  equation: "highest of the steady stages, with a lower one on either side",
  inputs: { fat: { unit: "g/min", range: "three stages or more" } },
  output: { unit: "stage", decimals: 0 },
  source: {
    authors: "Achten J, Gleeson M, Jeukendrup AE",
    year: 2002,
    title: "Determination of the exercise intensity that elicits maximal fat oxidation",
    journal: "Med Sci Sports Exerc 34(1):92–97",
    where: "abstract: stages of 35 W and 5 min",
    verified: "seen",
  },
  compute: fatmax,
  checks: [
    {
      given: [[0.433, 0.498, 0.394]],
      expect: 1,
      tolerance: 0,
      from: "by hand: 1.60/1.34, 2.00/1.70 and 2.40/2.16 L/min give 0.433, 0.498 and 0.394 g/min: second stage",
    },
    { given: [[0.5, 0.45, 0.4]], expect: "refused", from: "highest at the first stage" },
    { given: [[0.5, 0.6]], expect: "refused", from: "two stages" },
  ],
};
