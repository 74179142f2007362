/** The practitioner's own reading of the thresholds beside the computed one; both are kept, neither corrects the other. */
import type { ReadThreshold } from "../../kernel/generated/session.js";
import type { Cell, Column } from "../../kernel/measure.js";
import type { Notebook } from "../../kernel/notebook.js";
import type { Visit } from "../../kernel/visit.js";
import { info as combined } from "./combined-threshold.js";
import type { Thresholds } from "./find.js";
import { momentOf, readAt, smoothCourse } from "./value-at-threshold.js";

const COLUMNS: readonly Column[] = [
  { key: "threshold", title: "Threshold" },
  { key: "from", title: "From" },
  { key: "vo2_l_min", title: "VO2", unit: "L/min", decimals: 2 },
  { key: "low_l_min", title: "95 % low", unit: "L/min", decimals: 2 },
  { key: "high_l_min", title: "95 % high", unit: "L/min", decimals: 2 },
  { key: "time_s", title: "Time, clock of the series", unit: "s", decimals: 0 },
  { key: "heart_rate_bpm", title: "Heart rate", unit: "1/min", decimals: 0 },
  { key: "remark", title: "Remark" },
];

export function writeReadings(book: Notebook, visit: Visit, found: Thresholds | undefined): void {
  const reading = visit.session.incremental?.reading;
  if (reading === undefined) return;
  const rows: Cell[][] = [];
  for (const name of ["vt1", "vt2"] as const) {
    const read = reading[name];
    if (read === undefined) continue;
    const title = name.toUpperCase();
    if (found !== undefined) rows.push(computedRow(book, title, name, found));
    rows.push([
      title,
      reading.by === undefined ? "read by eye" : `read by eye, ${reading.by}`,
      ...readCells(read, found, name),
    ]);
  }
  if (rows.length === 0) return;
  const note = "Both are kept. A reading outside the computed interval is a reason to look at the plots together.";
  const remark = reading.remark === undefined ? note : `${note} Remark: ${reading.remark}`;
  book.table(
    "threshold_readings",
    COLUMNS,
    rows,
    combined,
    [{ name: "reading", value: `${visit.file} incremental.reading`, unit: "" }],
    remark,
  );
}

function computedRow(book: Notebook, title: string, name: "vt1" | "vt2", found: Thresholds): Cell[] {
  const verdict = found[name];
  if ("because" in verdict) return [title, "computed", null, null, null, null, null, verdict.because];
  const moment = momentOf(found.points.bins.time, found.points.x, verdict.vo2);
  const place = [moment ?? null, book.value(`${name}_heart_rate`) ?? null];
  return [title, "computed", verdict.vo2, verdict.low, verdict.high, ...place, ""];
}

/** VO2, interval (none), time, heart rate and remark of a reading; what it leaves open is read off the smooth course. */
function readCells(read: ReadThreshold, found: Thresholds | undefined, name: "vt1" | "vt2"): Cell[] {
  if (read.not_seen === true) return [null, null, null, null, null, "looked for and not seen"];
  const points = found?.points;
  const time =
    read.time_s ??
    (points && read.vo2_l_min !== undefined ? momentOf(points.bins.time, points.x, read.vo2_l_min) : undefined);
  const vo2 =
    read.vo2_l_min ?? (points && time !== undefined ? readAt(points.bins.time, points.axis.value, time) : undefined);
  const heart =
    read.heart_rate_bpm ??
    (points && time !== undefined ? smoothCourse(points.bins.time, points.bins.heartRate)(time) : undefined);
  const verdict = found?.[name];
  const compared =
    verdict === undefined || "because" in verdict || vo2 === undefined
      ? ""
      : vo2 >= verdict.low && vo2 <= verdict.high
        ? "inside the computed interval"
        : "outside the computed interval";
  return [vo2 ?? null, null, null, time ?? null, heart ?? null, compared];
}
