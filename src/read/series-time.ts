/** Time must be in every row and go forward. */
import { roundTo } from "../kernel/rounding.js";
import type { Cells } from "./cells.js";
import { cellPlace, type FaultList, type FaultPlace } from "./csv-faults.js";
import type { Columns } from "./series-mapping.js";
import { words } from "./words.js";

export function checkTime(
  time: Float64Array | undefined,
  cells: Cells,
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
  const place = (i: number): FaultPlace => ({
    line: cells.lines[kept[i] as number] ?? 0,
    header,
    ...(index === undefined ? {} : cellPlace(cells, kept[i] as number, index)),
  });
  const shown = (x: number) => `${roundTo(x, 3)} s`;
  let before = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < time.length; i++) {
    const now = time[i] as number;
    if (now > before) {
      before = now;
      continue;
    }
    if (Number.isNaN(now)) {
      faults.add("error", "csv-time-missing", (more) => words.csvTimeMissing(more), place(i));
      continue;
    }
    const earlier = before;
    if (now < before)
      faults.add("error", "csv-time", (more) => words.csvTime(shown(now), shown(earlier), more), place(i));
    else faults.add("warning", "csv-time-twice", (more) => words.csvTimeTwice(shown(now), more), place(i));
    before = now;
  }
}
