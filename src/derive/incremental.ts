/** The incremental test: what was recorded, peak values, stages, plateau, verification, and what may be claimed. */
import type { Notebook } from "../kernel/notebook.js";
import type { Visit } from "../kernel/visit.js";
import { judgeMaximality, writeCriteria } from "./incremental/maximality.js";
import { type Prepared, prepareTest } from "./incremental/prepare.js";
import { writeConduct, writeHeartRate, writeLoads } from "./incremental/write-conduct.js";
import { writePeak } from "./incremental/write-peak.js";
import { writePlateau, writeVerification } from "./incremental/write-plateau.js";
import { writeData, writePhases, writeStages } from "./incremental/write-tables.js";

/** The prepared test, for the thresholds that are derived from it next; undefined where there is none. */
export function deriveIncremental(book: Notebook, visit: Visit): Prepared | undefined {
  const prepared = prepareTest(visit);
  if (prepared === undefined) return undefined;
  if ("because" in prepared) {
    book.withhold("vo2_peak", prepared.because);
    writeConduct(book, visit);
    writeHeartRate(book, visit, undefined);
    return undefined;
  }
  const { test } = prepared;
  writePhases(book, visit, test);
  const peaks = writePeak(book, visit, test);
  writeHeartRate(book, visit, test);
  const stages = writeStages(book, visit, test);
  writeLoads(book, visit, test, stages);
  writePlateau(book, visit, test, stages);
  writeVerification(book, visit, test, peaks);
  writeCriteria(book, visit, peaks.rer);
  judgeMaximality(book, visit, peaks.rer);
  writeConduct(book, visit);
  writeData(book, visit, test);
  return test;
}
