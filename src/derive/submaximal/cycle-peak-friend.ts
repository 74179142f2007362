/**
 * Peak oxygen uptake from the highest cycle power: made for peaks, unlike the steady-state equation.
 *
 *     1.74·(W·6.12 / mass) + 3.5
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Peak uptake from highest cycle power over mass: mL/kg/min. Throws OutOfRange outside the ranges in `info`. */
export function cyclePeakFriend(powerW: number, massKg: number): number {
  requireRange(info.id, "highest power", powerW, 30, 600, "W");
  requireRange(info.id, "body mass", massKg, 30, 200, "kg");
  return (1.74 * powerW * 6.12) / massKg + 3.5;
}

export const info: FormulaInfo<[number, number], number> = {
  id: "cycle-peak-friend",
  revision: 1,
  title: "Peak uptake from highest cycle power over mass",
  equation: "1.74·(W·6.12 / mass) + 3.5",
  inputs: { "highest power": { unit: "W", range: "30 to 600" }, "body mass": { unit: "kg", range: "30 to 200" } },
  output: { unit: "mL/kg/min", decimals: 1 },
  caveat: "It estimates; it does not measure.",
  source: {
    authors: "Kokkinos P, Kaminsky LA, Arena R, Zhang J, Myers J",
    year: 2018,
    title: "A new generalized cycle ergometry equation for predicting maximal oxygen uptake (FRIEND)",
    journal: "Eur J Prev Cardiol",
    doi: "10.1177/2047487318772667",
    where: "abstract; bias 0.5 %",
    verified: "seen",
  },
  compute: cyclePeakFriend,
  checks: [
    { given: [200, 80], expect: 30.12, tolerance: 0.005, from: "by hand: 1.74 · 15.3 + 3.5" },
    { given: [10, 80], expect: "refused", from: "below 30 W" },
  ],
};
