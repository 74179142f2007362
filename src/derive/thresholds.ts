/** Ventilatory thresholds of the incremental test, with intervals, or why there are none. */
import type { Notebook } from "../kernel/notebook.js";
import type { Visit } from "../kernel/visit.js";
import type { Prepared } from "./incremental/prepare.js";
import { BIN_S } from "./thresholds/bins.js";
import { findThresholds } from "./thresholds/find.js";
import { writeVSlopeLines } from "./thresholds/v-slope-lines.js";
import { writeReadings } from "./thresholds/write-readings.js";
import { writeThreshold } from "./thresholds/write-threshold.js";

/** Longest means a threshold is fitted on; of a minute their intervals hold the truth too seldom. */
const LONGEST_MEAN_S = 31;
/** Stages shorter than this end before uptake is steady. */
const STEADY_S = 120;

/** `test` is what deriveIncremental returns; where there is none but the session has an incremental block, the reason is written. */
export function deriveThresholds(book: Notebook, visit: Visit, test: Prepared | undefined): void {
  if (visit.session.incremental === undefined) return;
  const span = test?.phases.find((phase) => phase.phase === "incremental");
  const because = whyNot(test, span !== undefined);
  if (test === undefined || span === undefined || because !== undefined) {
    book.withhold("vt1_vo2", because ?? "there is no incremental phase");
    book.withhold("vt2_vo2", because ?? "there is no incremental phase");
    writeReadings(book, visit, undefined);
    return;
  }
  const { fromS, toS } = span;
  const found = findThresholds(test.breaths, fromS, toS, book.value("vo2_peak"));
  const lagS = visit.choices.threshold_load_lag_s;
  const { protocol } = visit.session.incremental;
  const rising = protocol?.kind === "ramp" || (protocol?.stage_length_s ?? Number.POSITIVE_INFINITY) < STEADY_S;
  for (const name of ["vt1", "vt2"] as const)
    writeThreshold(book, {
      name,
      breaths: test.breaths,
      found,
      fromS,
      toS,
      lagS,
      rising,
      meanS: test.breathByBreath ? BIN_S : Math.max(BIN_S, test.intervalS),
    });
  writeVSlopeLines(book, found);
  writeReadings(book, visit, found);
}

function whyNot(test: Prepared | undefined, hasPhase: boolean): string | undefined {
  if (test === undefined) return "the session has no series of gas exchange for the incremental test";
  if (!test.timed) return "stage means have no time, and thresholds are fitted on 15-s means";
  if (!test.breathByBreath && test.intervalS > LONGEST_MEAN_S)
    return `the samples are ${Math.round(test.intervalS)} s apart, and thresholds are fitted on means of 15 s, of 30 s at most`;
  if (!hasPhase) return "the series holds no incremental phase";
  if (!test.breaths.vo2.some(Number.isFinite)) return test.refused.vo2 ?? "oxygen uptake was not recorded";
  return undefined;
}
