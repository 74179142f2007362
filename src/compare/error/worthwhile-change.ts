/**
 * Smallest worthwhile change by the spread between people, where neither the client nor the literature sets one.
 *
 *     w = 0.2 · √(SD² − TE²)
 *
 * A fifth of the between-person standard deviation is a small effect. The observed spread contains measurement error,
 * which is taken out first where it is known.
 */
import { type FormulaInfo, OutOfRange } from "../../kernel/formula.js";

/** Observed between-person SD and typical error (0 where unknown) in one unit, in that unit out. */
export function worthwhileChange(betweenSd: number, typicalError: number): number {
  if (!(betweenSd > 0)) throw new OutOfRange(info.id, "between-person SD", betweenSd, "a number above 0");
  if (!(typicalError >= 0 && typicalError < betweenSd))
    throw new OutOfRange(info.id, "typical error", typicalError, "0 or more, and less than the between-person SD");
  return 0.2 * Math.sqrt(betweenSd ** 2 - typicalError ** 2); // 0.2: a small standardised effect (Hopkins 2004)
}

export const info: FormulaInfo<[number, number], number> = {
  id: "worthwhile-change",
  revision: 1,
  title: "Smallest worthwhile change from the spread between people",
  equation: "0.2 · √(SD² − TE²)",
  inputs: {
    betweenSd: { unit: "as the measure", range: "above 0" },
    typicalError: { unit: "as the measure", range: "0 to less than SD" },
  },
  output: { unit: "as the measure", decimals: 2 },
  caveat: "A default for want of a better: a client's own target or a threshold tied to an outcome comes first.",
  source: {
    authors: "Hopkins WG",
    year: 2004,
    title: "How to interpret changes in an athletic performance test",
    journal: "Sportscience 8:1–7",
    where: "abstract",
    verified: "seen",
  },
  compute: worthwhileChange,
  checks: [
    { given: [5.30555, 0], expect: 1.06111, tolerance: 0.00001, from: "by hand: 0.2 · 5.30555" },
    { given: [5.30555, 0.73], expect: 1.051, tolerance: 0.0001, from: "by hand: 0.2 · √(5.30555² − 0.73²)" },
    { given: [1, 1.2], expect: "refused", from: "an error larger than the spread leaves no true spread" },
  ],
};
