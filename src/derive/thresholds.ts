/** Ventilatory thresholds of the incremental test, with intervals, or why there are none. */
import type { Notebook } from "../kernel/notebook.js";
import type { Visit } from "../kernel/visit.js";
import type { Prepared } from "./incremental/prepare.js";
import { findThresholds } from "./thresholds/find.js";
import { writeReadings } from "./thresholds/write-readings.js";
import { writeThreshold } from "./thresholds/write-threshold.js";

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
  for (const name of ["vt1", "vt2"] as const)
    writeThreshold(book, { name, breaths: test.breaths, found, fromS, toS, lagS });
  writeReadings(book, visit, found);
}

function whyNot(test: Prepared | undefined, hasPhase: boolean): string | undefined {
  if (test === undefined) return "the session has no series of gas exchange for the incremental test";
  if (!test.timed) return "stage means have no time, and thresholds are fitted on 15-s means";
  if (!hasPhase) return "the series holds no incremental phase";
  if (!test.breaths.vo2.some(Number.isFinite)) return test.refused.vo2 ?? "oxygen uptake was not recorded";
  return undefined;
}
