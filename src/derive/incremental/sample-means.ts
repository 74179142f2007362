/** Plain mean of the kept samples of a stretch: every sample counts once, a missing one not at all. */
import { type FormulaInfo, OutOfRange } from "../../kernel/formula.js";

export function sampleMean(...values: number[]): number {
  const known = values.filter((x) => !Number.isNaN(x));
  if (known.length === 0) throw new OutOfRange(info.id, "samples", 0, "stretches with at least one value");
  return known.reduce((sum, x) => sum + x, 0) / known.length;
}

export const info: FormulaInfo<number[], number> = {
  id: "sample-means",
  revision: 2,
  title: "Means of kept samples",
  equation: "mean = Σ x / n over kept samples with a value",
  inputs: { samples: { unit: "as the measure", range: "one or more" } },
  output: { unit: "as the measure", decimals: 2 },
  source: {
    authors: "Robergs RA, Dwyer D, Astorino T",
    year: 2010,
    title: "Recommendations for improved data processing from expired gas analysis indirect calorimetry",
    journal: "Sports Med 40(2):95–111",
    where: "time averages as used by most laboratories",
    verified: "seen",
  },
  compute: sampleMean,
  checks: [
    { given: [2, 4, Number.NaN, 6], expect: 4, tolerance: 1e-12, from: "by hand: 12 / 3" },
    { given: [Number.NaN], expect: "refused", from: "nothing was recorded" },
  ],
};
