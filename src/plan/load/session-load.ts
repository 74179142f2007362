/**
 * Training load of one session by perceived exertion.
 *
 *     load = rating (0 to 10, asked after the session) · minutes
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Rating 0 to 10 and duration in min, to arbitrary units. */
export function sessionLoad(rating: number, minutes: number): number {
  requireRange(info.id, "rating", rating, 0, 10, "");
  requireRange(info.id, "duration", minutes, 0, 1440, "min");
  return rating * minutes;
}

export const info: FormulaInfo<[number, number], number> = {
  id: "session-load",
  revision: 1,
  title: "Training load of a session",
  equation: "load = rating (0–10) · minutes",
  inputs: { rating: { unit: "0–10", range: "0 to 10" }, duration: { unit: "min", range: "0 to 1440" } },
  output: { unit: "units", decimals: 0 },
  source: {
    authors: "Foster C, Florhaug JA, Franklin J et al.",
    year: 2001,
    title: "A new approach to monitoring exercise training",
    journal: "J Strength Cond Res 15:109–115",
    where: "text: session rating times duration",
    verified: "seen",
  },
  compute: sessionLoad,
  checks: [{ given: [4, 60], expect: 240, tolerance: 0, from: "by hand: 4 · 60" }],
};
