/**
 * Least significant change of densitometry: the smallest difference of two scans that exceeds precision error at 95 %.
 *
 *     LSC = 2.77 · RMS SD
 *
 * 2.77 is 1.96 √2 as the densitometry societies print it. The name is theirs; reports call it the detectable change.
 */
import { type FormulaInfo, OutOfRange } from "../../kernel/formula.js";

/** RMS SD above 0 in, change in the same unit out. */
export function leastSignificantChange(rmsSd: number): number {
  if (!(rmsSd > 0)) throw new OutOfRange(info.id, "RMS SD", rmsSd, "a number above 0");
  return 2.77 * rmsSd; // 2.77: ISCD glossary, 95 %
}

export const info: FormulaInfo<[number], number> = {
  id: "least-significant-change",
  revision: 1,
  title: "Least significant change",
  equation: "LSC = 2.77 · RMS SD",
  inputs: { rmsSd: { unit: "as the measure", range: "above 0" } },
  output: { unit: "as the measure", decimals: 2 },
  source: {
    authors: "International Society for Clinical Densitometry",
    year: null,
    title: "Precision calculator glossary",
    where: "entries PE, RMS SD and LSC",
    verified: "seen",
  },
  compute: leastSignificantChange,
  checks: [
    { given: [0.75133], expect: 2.08119, tolerance: 0.00002, from: "by hand: 2.77 · 0.75133" },
    {
      given: [321],
      expect: 889.2,
      tolerance: 0.05,
      from: "by hand: 2.77 · 321 g of lean mass (J Clin Densitom 2015;18:546–550)",
    },
    {
      given: [280],
      expect: 775.6,
      tolerance: 0.05,
      from: "by hand: 2.77 · 280 g of fat mass (J Clin Densitom 2015;18:546–550)",
    },
    { given: [0.25], expect: 0.6925, tolerance: 0.0001, from: "by hand: 2.77 · 0.25 kg of fat" },
    { given: [0.48], expect: 1.33, tolerance: 0.005, from: "by hand: 2.77 · 0.8 % of 60.0 kg of lean mass" },
    { given: [0], expect: "refused", from: "an error of zero cannot be" },
  ],
};
