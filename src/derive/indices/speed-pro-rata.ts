/**
 * Peak speed with the finished part of the last stage.
 *
 *     last completed speed + increment · (time in the next stage / stage length)        km/h
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** km/h, km/h, s and s in, km/h out. Throws OutOfRange when the time in the stage exceeds its length. */
export function speedProRata(completed: number, increment: number, secondsInLast: number, stageS: number): number {
  requireRange(info.id, "stage length", stageS, 5, 3600, "s");
  requireRange(info.id, "time in the last stage", secondsInLast, 0, stageS, "s");
  requireRange(info.id, "increment", increment, 0, 10, "km/h");
  return completed + (increment * secondsInLast) / stageS;
}

export const info: FormulaInfo<[number, number, number, number], number> = {
  id: "speed-pro-rata",
  revision: 1,
  title: "Peak speed, pro rata",
  equation: "completed + increment·(time in last / stage length)",
  inputs: {
    completed: { unit: "km/h", range: "any" },
    increment: { unit: "km/h", range: "0 to 10" },
    "time in last": { unit: "s", range: "0 to the stage length" },
    "stage length": { unit: "s", range: "5 to 3600" },
  },
  output: { unit: "km/h", decimals: 1 },
  source: {
    authors: "Kuipers H, Rietjens G, Verstappen F, Schoenmakers H, Hofman G",
    year: 2003,
    title: "Effects of stage duration in incremental running tests on physiological variables",
    journal: "Int J Sports Med 24:486–491",
    where: "definition of peak speed",
    verified: "memory",
  },
  compute: speedProRata,
  checks: [
    { given: [16, 1, 40, 60], expect: 16.667, tolerance: 0.001, from: "by hand: 16 + 40/60" },
    { given: [16, 1, 70, 60], expect: "refused", from: "more than the stage" },
  ],
};
