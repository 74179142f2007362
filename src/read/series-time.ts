/** Time must be in every row and go forward. */
import { roundTo } from "../kernel/rounding.js";
import type { Rows } from "./csv.js";
import { cellPlace, type FaultList } from "./csv-faults.js";
import type { Columns } from "./series-mapping.js";
import { words } from "./words.js";

export function checkTime(
  time: Float64Array | undefined,
  split: Rows,
  kept: readonly number[],
  columns: Columns,
  headers: readonly string[],
  faults: FaultList,
): void {
  const mapped = columns.find(([channel]) => channel === "time_s")?.[1].column;
  if (time === undefined || mapped === undefined) return;
  const header = [mapped].flat().join(" + ");
  const index = typeof mapped === "string" ? headers.indexOf(mapped.trim()) : undefined;
  if (faults.isSpoilt(header)) return;
  let before = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < time.length; i++) {
    const now = time[i] as number;
    const at = {
      line: split.lines[kept[i] as number] ?? 0,
      header,
      ...(index === undefined ? {} : cellPlace(split, kept[i] as number, index)),
    };
    if (Number.isNaN(now)) {
      faults.add("error", "csv-time-missing", (more) => words.csvTimeMissing(more), at);
      continue;
    }
    const shown = (x: number) => `${roundTo(x, 3)} s`;
    const earlier = before;
    if (now < before) faults.add("error", "csv-time", (more) => words.csvTime(shown(now), shown(earlier), more), at);
    if (now === before) faults.add("warning", "csv-time-twice", (more) => words.csvTimeTwice(shown(now), more), at);
    before = now;
  }
}
