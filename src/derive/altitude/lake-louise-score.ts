/**
 * Lake Louise acute mountain sickness score, 2018 revision.
 *
 *     total = headache + gastrointestinal + fatigue or weakness + dizziness      each 0 to 3
 *
 * Sleep was an item until 2018 and no longer is. The score counts as acute mountain sickness when there is headache and the
 * total is 3 or more. It was made for research; the lack of a headache does not exclude illness.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Four items, whole numbers 0 to 3, to a total of 0 to 12. */
export function lakeLouiseScore(
  headache: number,
  gastrointestinal: number,
  fatigue: number,
  dizziness: number,
): number {
  const items = { headache, gastrointestinal, fatigue, dizziness };
  for (const [name, value] of Object.entries(items))
    requireRange(info.id, name, Number.isInteger(value) ? value : Number.NaN, 0, 3, "points, whole");
  return headache + gastrointestinal + fatigue + dizziness;
}

/** Meets the definition: headache of at least 1 and a total of at least 3. */
export const meetsMountainSickness = (headache: number, total: number): boolean => headache >= 1 && total >= 3;

const item = { unit: "points", range: "0 to 3" };
export const info: FormulaInfo<[number, number, number, number], number> = {
  id: "lake-louise-score",
  revision: 1,
  title: "Lake Louise acute mountain sickness score (2018)",
  equation: "headache + gastrointestinal + fatigue or weakness + dizziness",
  inputs: { headache: item, gastrointestinal: item, fatigue: item, dizziness: item },
  output: { unit: "points", decimals: 0 },
  caveat: "A research score after at least 6 h at altitude; it does not diagnose.",
  source: {
    authors: "Roach RC, Hackett PH, Oelz O et al.",
    year: 2018,
    title: "The 2018 Lake Louise Acute Mountain Sickness Score",
    journal: "High Alt Med Biol 19:4–6",
    doi: "10.1089/ham.2017.0164",
    where: "items and definition",
    verified: "seen",
  },
  compute: lakeLouiseScore,
  checks: [
    { given: [3, 0, 0, 0], expect: 3, tolerance: 0, from: "published definition: headache 3 alone meets it" },
    { given: [0, 1, 1, 1], expect: 3, tolerance: 0, from: "published definition: 3 without headache does not meet it" },
    { given: [4, 0, 0, 0], expect: "refused", from: "an item ends at 3" },
  ],
};
