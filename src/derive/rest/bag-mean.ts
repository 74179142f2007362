/**
 * Mean over Douglas bags, weighted by how long each was filled.
 *
 *     mean = Σ(value · duration) / Σ duration
 *
 * A bag is a mean already: nothing inside it can be judged steady or not, so all bags count.
 */
import { type FormulaInfo, OutOfRange } from "../../kernel/formula.js";

/** Values in one unit and seconds in, the value's unit out. Throws OutOfRange for no bag or a duration that is not above 0. */
export function bagMean(values: readonly number[], seconds: readonly number[]): number {
  if (values.length === 0) throw new OutOfRange(info.id, "the number of bags", 0, "one or more");
  const total = seconds.reduce((sum, s) => sum + s, 0);
  if (values.length !== seconds.length || !seconds.every((s) => s > 0))
    throw new OutOfRange(info.id, "the durations", "incomplete", "a duration above 0 s for each bag");
  return values.reduce((sum, value, i) => sum + value * (seconds[i] as number), 0) / total;
}

export const info: FormulaInfo<[readonly number[], readonly number[]], number> = {
  id: "bag-mean",
  revision: 1,
  title: "Mean over Douglas bags",
  equation: "Σ(value·duration) / Σ duration",
  inputs: { values: { unit: "any", range: "one or more" }, durations: { unit: "s", range: "above 0" } },
  output: { unit: "as the values", decimals: 0 },
  source: {
    authors: "this project",
    year: null,
    title: "Definition",
    where: "common practice",
    verified: "common practice",
  },
  compute: bagMean,
  checks: [
    {
      given: [
        [250, 262],
        [600, 300],
      ],
      expect: 254,
      tolerance: 1e-9,
      from: "by hand: (250·600 + 262·300) / 900",
    },
    { given: [[250], [0]], expect: "refused", from: "a bag that was filled for no time" },
  ],
};
