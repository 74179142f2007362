/** Length of a phase in minutes. Its times come from the session file, or from the workload and are then marked so. */
import { type FormulaInfo, OutOfRange } from "../../kernel/formula.js";

export function phaseMinutes(fromS: number, toS: number): number {
  if (!(toS > fromS)) throw new OutOfRange(info.id, "end", toS, `times after ${fromS} s`);
  return (toS - fromS) / 60;
}

export const info: FormulaInfo<[number, number], number> = {
  id: "phase-minutes",
  revision: 1,
  title: "Phases of a test and their length",
  equation: "minutes = (to − from) / 60",
  inputs: { from: { unit: "s", range: "any" }, to: { unit: "s", range: "after from" } },
  output: { unit: "min", decimals: 1 },
  source: { authors: "Waymark", year: null, title: "arithmetic", where: "definition", verified: "own" },
  compute: phaseMinutes,
  checks: [{ given: [180, 720], expect: 9, tolerance: 1e-9, from: "by hand: 540 / 60" }],
};
