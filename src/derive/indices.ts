/**
 * Indices read from the incremental test, economy and fuels from its steady stages, and critical power from repeated
 * bouts. Reads the tables of the incremental test and the thresholds, so it runs after them, after rest and lungs.
 */
import type { Notebook, Ref } from "../kernel/notebook.js";
import type { Visit } from "../kernel/visit.js";
import { foundOrWithheld } from "./found-or-withheld.js";
import { criticalPower } from "./indices/critical-power.js";
import { economy } from "./indices/economy.js";
import { heartIndices } from "./indices/heart-indices.js";
import { numbersOf, type Row, readTable } from "./indices/read-table.js";
import { exercisePressure, saturation } from "./indices/saturation-and-pressure.js";
import { ventilationIndices } from "./indices/ventilation-indices.js";
import * as work from "./indices/vo2-work-slope.js";

/** Dropped at the start of the incremental phase: uptake lags behind the first rise. */
const FIRST_S = 60;

export function deriveIndices(book: Notebook, visit: Visit): void {
  criticalPower(book, visit);
  if (visit.session.incremental !== undefined) {
    const bins = readTable(book, "incremental_bins");
    const rising = incrementalBins(bins);
    exercisePressure(book, visit);
    saturation(book, visit, bins);
    heartIndices(book, visit, rising);
    if (rising.length > 0) ventilationIndices(book, visit, rising);
    if (visit.session.incremental.mode === "cycle") workSlope(book, rising);
  }
  economy(book, visit);
}

/** Bins of the incremental phase after its first minute. */
function incrementalBins(bins: readonly Row[]): readonly Row[] {
  const rows = bins.filter((row) => row.text("phase") === "incremental");
  const start = rows[0]?.number("time_s");
  return start === undefined ? [] : rows.filter((row) => (row.number("time_s") ?? 0) - start >= FIRST_S - 7.5);
}

/** From one minute after the start to 80 % of peak power; from complete stages where they last two minutes or more. */
function workSlope(book: Notebook, rising: readonly Row[]): void {
  const stages = readTable(book, "incremental_stages").filter(
    (row) =>
      /^\d+$/.test(row.text("stage") ?? "") &&
      row.text("complete") === "yes" &&
      (row.number("to_s") ?? 0) - (row.number("from_s") ?? 0) >= 119,
  );
  const useStages = stages.length >= 4;
  const [power = [], vo2 = []] = numbersOf(useStages ? stages : rising, "power_w", "vo2_l_min");
  const top = 0.8 * Math.max(0, ...power);
  const below = power.map((w, i) => [w, 1000 * (vo2[i] as number)] as const).filter(([w]) => useStages || w <= top);
  const range = useStages ? "complete stages" : "from 1 min after the start to 80 % of peak power";
  const inputs: Ref[] = [{ name: useStages ? "stages" : "fifteen-second means", value: below.length, unit: "" }];
  foundOrWithheld(
    book,
    "vo2_work_slope",
    work.info,
    inputs,
    () =>
      work.vo2WorkSlope(
        below.map(([w]) => w),
        below.map(([, o2]) => o2),
      ),
    { note: `${range}; 10.29 ± 1.01 in 54 healthy men (Hansen 1987), 8 and below is low (Glaab and Taube 2022)` },
  );
}
