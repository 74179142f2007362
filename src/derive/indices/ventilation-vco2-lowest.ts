/**
 * Lowest VE/VCO2 of an incremental test.
 *
 *     lowest of (mean VE / mean VCO2) over any four neighbouring fifteen-second means
 *
 * A minute, so that one odd mean is not taken for the lowest; means are divided, not ratios averaged.
 */
import { type FormulaInfo, OutOfRange } from "../../kernel/formula.js";

const MEANS = 4;

/** VE and VCO2 in L/min (BTPS, STPD), one a fifteen-second mean, in; ratio out. Throws OutOfRange for fewer than four. */
export function ventilationVco2Lowest(ventilation: readonly number[], vco2: readonly number[]): number {
  if (ventilation.length < MEANS)
    throw new OutOfRange(info.id, "the number of fifteen-second means", ventilation.length, `${MEANS} or more`);
  const total = (xs: readonly number[], from: number) => xs.slice(from, from + MEANS).reduce((sum, x) => sum + x, 0);
  const ratios = ventilation.slice(MEANS - 1).map((_, i) => total(ventilation, i) / total(vco2, i));
  return Math.min(...ratios);
}

export const info: FormulaInfo<[readonly number[], readonly number[]], number> = {
  id: "ventilation-vco2-lowest",
  revision: 1,
  title: "Lowest VE/VCO2",
  equation: "lowest mean VE / mean VCO2 over one minute",
  inputs: { VE: { unit: "L/min BTPS", range: "four means or more" }, VCO2: { unit: "L/min STPD", range: "as many" } },
  output: { unit: "ratio", decimals: 1 },
  source: {
    authors: "Sun XG, Hansen JE, Garatachea N, Storer TW, Wasserman K",
    year: 2002,
    title: "Ventilatory efficiency during exercise in healthy subjects",
    journal: "Am J Respir Crit Care Med 166:1443–1448",
    doi: "10.1164/rccm.2202033",
    where: "the lowest ratio as the least variable index; a minute as window is this project's rule",
    verified: "seen",
  },
  compute: ventilationVco2Lowest,
  checks: [
    {
      given: [
        [30, 50, 54, 56, 60, 90],
        [1, 2, 2, 2, 2, 3],
      ],
      expect: 27.142857,
      tolerance: 1e-6,
      from: "by hand: minutes give 190/7, 220/8 and 260/9; the lowest is 27.14",
    },
    {
      given: [
        [30, 50],
        [1, 2],
      ],
      expect: "refused",
      from: "half a minute",
    },
  ],
};
