/**
 * Oxygen pulse.
 *
 *     O2 pulse = 1000 · VO2 / HR
 *
 * Oxygen taken up with each heartbeat: stroke volume times the arteriovenous difference (Fick). Uptake and heart rate
 * come from one and the same window.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** L/min and beats/min in, mL/beat out. */
export function oxygenPulse(vo2LPerMin: number, heartRate: number): number {
  requireRange(info.id, "oxygen uptake", vo2LPerMin, 0.02, 10, "L/min");
  requireRange(info.id, "heart rate", heartRate, 25, 250, "1/min");
  return (1000 * vo2LPerMin) / heartRate;
}

export const info: FormulaInfo<[number, number], number> = {
  id: "oxygen-pulse",
  revision: 1,
  title: "Oxygen pulse",
  equation: "O2 pulse = 1000 · VO2 / HR",
  inputs: {
    "oxygen uptake": { unit: "L/min", range: "0.02 to 10" },
    "heart rate": { unit: "1/min", range: "25 to 250" },
  },
  output: { unit: "mL/beat", decimals: 1 },
  caveat: "Not the stroke volume: it holds the arteriovenous difference too, and is high on a beta blocker.",
  source: {
    authors: "Arena R, Myers J, Harber M, et al.",
    year: 2020,
    title:
      "Peak oxygen pulse responses during maximal cardiopulmonary exercise testing: reference standards from FRIEND",
    journal: "Int J Cardiol",
    doi: "10.1016/j.ijcard.2019.11.106",
    where: "definition of the measure",
    verified: "seen",
  },
  compute: oxygenPulse,
  checks: [
    { given: [3.2, 182], expect: 17.58, tolerance: 0.005, from: "by hand: 3200 / 182" },
    { given: [3.2, 0], expect: "refused", from: "a dead strap is no heart rate" },
  ],
};
