/**
 * Ratio of the android to the gynoid region, of fat mass or of fat share.
 *
 *     android / gynoid
 *
 * Two definitions are in use and give different numbers: grams over grams, or percent over percent. The measure's name
 * says which; neither has an agreed limit, so neither is classed.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Android to gynoid ratio: ratio. Throws OutOfRange outside the ranges in `info`. */
export function regionRatio(android: number, gynoid: number): number {
  requireRange(info.id, "android", android, 0.1, 60000, "g or %");
  requireRange(info.id, "gynoid", gynoid, 0.1, 60000, "g or %");
  return android / gynoid;
}

export const info: FormulaInfo<[number, number], number> = {
  id: "region-ratio",
  revision: 1,
  title: "Android to gynoid ratio",
  equation: "android / gynoid",
  inputs: { android: { unit: "g or %", range: "0.1 to 60000" }, gynoid: { unit: "g or %", range: "0.1 to 60000" } },
  output: { unit: "ratio", decimals: 2 },
  source: {
    authors: "Hangartner TN, Warner S, Braillon P, Jankowski L, Shepherd J; Petak S, et al.",
    year: 2013,
    title: "The Official Positions of the International Society for Clinical Densitometry: body composition analysis",
    journal: "J Clin Densitom 16(4):496–519",
    doi: "10.1016/j.jocd.2013.08.018",
    where: "reporting positions: total body with head",
    verified: "seen",
  },
  compute: regionRatio,
  checks: [
    { given: [1880, 5064], expect: 0.3712, tolerance: 0.0001, from: "by hand: 1880 / 5064" },
    { given: [1880, 0], expect: "refused", from: "no gynoid region" },
  ],
};
