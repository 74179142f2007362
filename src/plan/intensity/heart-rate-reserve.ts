/**
 * Heart rate at a share of heart-rate reserve.
 *
 *     HR = HRrest + f · (HRmax − HRrest)
 *
 * The reserve runs close to the reserve of oxygen uptake, which a share of maximal heart rate does not. Use the highest
 * heart rate measured in the same kind of exercise. Not with drugs that blunt heart rate.
 */
import { type FormulaInfo, OutOfRange, requireRange } from "../../kernel/formula.js";

/** Resting and maximal heart rate in beats/min, share 0 to 1, to beats/min. */
export function heartRateReserve(restBpm: number, maxBpm: number, share: number): number {
  requireRange(info.id, "resting heart rate", restBpm, 25, 120, "beats/min");
  requireRange(info.id, "maximal heart rate", maxBpm, 90, 240, "beats/min");
  requireRange(info.id, "share", share, 0, 1, "");
  if (maxBpm - restBpm < 30) throw new OutOfRange(info.id, "reserve", maxBpm - restBpm, "at least 30 beats/min");
  return restBpm + share * (maxBpm - restBpm);
}

export const info: FormulaInfo<[number, number, number], number> = {
  id: "heart-rate-reserve",
  revision: 1,
  title: "Heart rate at a share of heart-rate reserve",
  equation: "HR = HRrest + f · (HRmax − HRrest)",
  inputs: {
    "resting heart rate": { unit: "beats/min", range: "25 to 120" },
    "maximal heart rate": { unit: "beats/min", range: "90 to 240" },
    share: { unit: "", range: "0 to 1" },
  },
  output: { unit: "beats/min", decimals: 0 },
  caveat: "With a predicted maximum it is uncertain by 10 to 12 beats; not valid with drugs that blunt heart rate.",
  source: {
    authors: "Karvonen MJ, Kentala E, Mustala O",
    year: 1957,
    title: "The effects of training on heart rate; a longitudinal study",
    journal: "Ann Med Exp Biol Fenn 35:307–315",
    where: "formula as printed on teaching pages with the worked example rest 60, maximum 190, 70 %",
    verified: "seen",
  },
  compute: heartRateReserve,
  checks: [
    { given: [60, 190, 0.7], expect: 151, tolerance: 1e-9, from: "published worked example: 60 + 0.70·130 = 151" },
    { given: [60, 190, 0.6], expect: 138, tolerance: 1e-9, from: "by hand: 60 + 78" },
    { given: [60, 80, 0.6], expect: "refused", from: "a reserve of 20 beats is no basis" },
  ],
};
