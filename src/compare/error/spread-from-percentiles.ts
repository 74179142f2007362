/**
 * How much people differ, from two mirrored percentiles of a reference table.
 *
 *     SD = (P(100−p) − P(p)) / (2 · z(1 − p/100))
 *
 * Values are taken as normal between the two percentiles; the middle half of a normal distribution spans 1.349 standard
 * deviations. In a skewed measure it is the spread of the middle, not of the tails.
 */
import { type FormulaInfo, OutOfRange } from "../../kernel/formula.js";
import { normalQuantile } from "../../kernel/normal.js";

/** The lower percentile (5 to 40), its value and that of its mirror in one unit, in that unit out. */
export function spreadFromPercentiles(lower: number, low: number, high: number): number {
  if (!(lower >= 5 && lower <= 40)) throw new OutOfRange(info.id, "lower percentile", lower, "5 to 40");
  if (!(high > low)) throw new OutOfRange(info.id, "upper value", high, "above the lower value");
  return (high - low) / (2 * normalQuantile(1 - lower / 100));
}

export const info: FormulaInfo<[number, number, number]> = {
  id: "spread-from-percentiles",
  revision: 1,
  title: "Spread between people from two percentiles",
  equation: "(P(100−p) − P(p)) / (2 z(1 − p/100))",
  inputs: {
    lower: { unit: "percentile", range: "5 to 40" },
    low: { unit: "as the measure", range: "any" },
    high: { unit: "as the measure", range: "above the lower value" },
  },
  output: { unit: "as the measure", decimals: 2 },
  caveat: "Takes the measure as normal between the two percentiles.",
  source: {
    authors: "Wan X, Wang W, Liu J, Tong T",
    year: 2014,
    title:
      "Estimating the sample mean and standard deviation from the sample size, median, range and/or interquartile range",
    journal: "BMC Med Res Methodol 14:135",
    where: "interquartile range over 1.35 for large samples",
    verified: "memory",
  },
  compute: spreadFromPercentiles,
  checks: [
    { given: [25, 22.1, 32.4], expect: 7.63, tolerance: 0.01, from: "the source's rule: 10.3 / 1.35 = 7.63" },
    { given: [10, -1.2815516, 1.2815516], expect: 1, tolerance: 0.0000001, from: "normal table: z(0.90) = 1.2815516" },
    { given: [20, -0.8416212, 0.8416212], expect: 1, tolerance: 0.0000001, from: "normal table: z(0.80) = 0.8416212" },
    { given: [50, 1, 2], expect: "refused", from: "the median has no mirror" },
    { given: [25, 3, 3], expect: "refused", from: "two equal percentiles span nothing" },
  ],
};
