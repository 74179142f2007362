/**
 * How long the incremental phase had gone on when a threshold was reached. The clock of a series starts with the
 * recording, whatever rest and warm-up came first: two tests can be compared by this time and not by that.
 */
import { type FormulaInfo, OutOfRange } from "../../kernel/formula.js";

/** `momentS` and `startS` on the clock of the series, s. Throws OutOfRange for a moment before the phase. */
export function timeIntoPhase(momentS: number, startS: number): number {
  if (!(momentS >= startS))
    throw new OutOfRange("time-into-phase", "moment", momentS, "the start of the phase or later");
  return momentS - startS;
}

export const info: FormulaInfo<[number, number], number> = {
  id: "time-into-phase",
  revision: 1,
  title: "Time into the incremental phase",
  equation: "moment smooth VO2 reaches the threshold − start of the incremental phase",
  inputs: {
    moment: { unit: "s", range: "clock of the series" },
    start: { unit: "s", range: "clock of the series" },
  },
  output: { unit: "s", decimals: 0 },
  caveat: "Tests of different protocols reach a threshold at different times.",
  source: {
    authors: "Waymark",
    year: null,
    title: "reading off a course",
    where: "common practice",
    verified: "common practice",
  },
  compute: timeIntoPhase,
  checks: [
    { given: [463, 240], expect: 223, tolerance: 1e-9, from: "by hand" },
    { given: [200, 240], expect: "refused", from: "before the phase began" },
  ],
};
