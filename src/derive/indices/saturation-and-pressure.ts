/** Oxygen saturation and blood pressure in exercise. */
import type { Cell, Column } from "../../kernel/measure.js";
import type { Notebook, Ref } from "../../kernel/notebook.js";
import { mean } from "../../kernel/statistics.js";
import type { Visit } from "../../kernel/visit.js";
import { numbersOf, type Row } from "./read-table.js";
import * as fall from "./saturation-fall.js";

/** `bins`: all rows of incremental_bins. */
export function saturation(book: Notebook, visit: Visit, bins: readonly Row[]): void {
  const typed = visit.session.incremental?.saturations ?? [];
  const of = (phase: string) =>
    numbersOf(
      bins.filter((row) => row.text("phase") === phase),
      "spo2_pct",
    )[0] ?? [];
  const rests = typed.filter((s) => s.when === "rest").map((s) => s.spo2_pct);
  const efforts = typed.filter((s) => s.when === "exercise" || s.when === "peak").map((s) => s.spo2_pct);
  const atRest = rests.length > 0 ? rests : of("rest");
  const inExercise = [...efforts, ...of("incremental"), ...of("verification")];
  if (atRest.length === 0 && inExercise.length === 0) return;
  const origin = { id: "saturation-readings", revision: 1 };
  const from = (n: number): Ref[] => [{ name: "readings or fifteen-second means", value: n, unit: "" }];
  if (atRest.length === 0) book.withhold("saturation_rest", "no saturation was recorded at rest");
  else book.found("saturation_rest", mean(atRest), origin, from(atRest.length));
  if (inExercise.length === 0) book.withhold("saturation_lowest", "no saturation was recorded in exercise");
  else
    book.found("saturation_lowest", Math.min(...inExercise), origin, from(inExercise.length), {
      note: "a pulse oximeter errs by 2 to 3 points, and by more with movement",
    });
  book.compute("saturation_fall", fall.info, ["saturation_rest", "saturation_lowest"]);
}

const PRESSURES: readonly Column[] = [
  { key: "when", title: "When" },
  { key: "time_s", title: "Time", unit: "s", decimals: 0 },
  { key: "systolic_mmhg", title: "Systolic", unit: "mmHg", decimals: 0 },
  { key: "diastolic_mmhg", title: "Diastolic", unit: "mmHg", decimals: 0 },
];
/** Limits of the response: stop limits of a national heart association (seen); the upper ranges from memory. */
const STOP = { systolic: 250, diastolic: 115, fall: 10 };
const HIGH = { male: 210, female: 190 };
const SOURCE = "American Heart Association exercise standards";

export function exercisePressure(book: Notebook, visit: Visit): void {
  const readings = visit.session.incremental?.pressures ?? [];
  if (readings.length === 0) return;
  const key = `${visit.file} incremental.pressures`;
  const rows = readings.map((r): Cell[] => [r.when, r.time_s ?? null, r.systolic_mmhg, r.diastolic_mmhg ?? null]);
  const formula = { id: "exercise-pressure-response", revision: 1 };
  book.table("exercise_pressures", PRESSURES, rows, formula, [{ name: "from", value: key, unit: "" }]);
  const effort = readings.filter((r) => r.when === "exercise" || r.when === "peak");
  if (effort.length === 0) {
    book.withhold("systolic_pressure_peak", "no pressure was recorded in exercise");
    book.withhold("exercise_pressure_response", "no pressure was recorded in exercise");
    return;
  }
  const highest = Math.max(...effort.map((r) => r.systolic_mmhg));
  book.record("systolic_pressure_peak", highest, key);
  const diastolic = Math.max(0, ...effort.map((r) => r.diastolic_mmhg ?? 0));
  const rest = readings.find((r) => r.when === "rest")?.systolic_mmhg ?? book.value("systolic_pressure");
  const last = effort[effort.length - 1]?.systolic_mmhg ?? highest;
  const say = (verdict: string, because: string) =>
    book.judge("exercise_pressure_response", verdict, because, {
      rule: `${formula.id} r${formula.revision}`,
      inputs: [{ name: "systolic_pressure_peak", text: `${highest} mmHg`, measure: "systolic_pressure_peak" }],
    });
  if (highest > STOP.systolic || diastolic > STOP.diastolic)
    say(
      "above the limit for stopping",
      `Pressure passed ${STOP.systolic}/${STOP.diastolic} mmHg, at which a test is stopped (${SOURCE}).`,
    );
  else if (rest !== undefined && last < rest - STOP.fall)
    say(
      "fell below rest",
      `Systolic pressure fell more than ${STOP.fall} mmHg below its value at rest although work rose (${SOURCE}).`,
    );
  else if (highest >= HIGH[visit.client.sex])
    say(
      "in the upper range",
      `The highest systolic pressure reached ${HIGH[visit.client.sex]} mmHg or more, the limit usually named for an exaggerated rise (from memory, to be checked against the source).`,
    );
  else
    say(
      "within the limits",
      `Highest systolic pressure ${highest} mmHg, below the limits for stopping and for an exaggerated rise.`,
    );
}
