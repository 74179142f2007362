/** Oxygen saturation and blood pressure in exercise. */
import type { Cell, Column } from "../../kernel/measure.js";
import type { Notebook, Ref } from "../../kernel/notebook.js";
import type { Visit } from "../../kernel/visit.js";
import { attempt, foundOrWithheld } from "../found-or-withheld.js";
import * as response from "./exercise-pressure-response.js";
import { numbersOf, type Row } from "./read-table.js";
import * as fall from "./saturation-fall.js";
import * as part from "./saturation-of-part.js";

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
  const from = (readings: readonly number[]): Ref[] => [
    { name: "readings or fifteen-second means", value: readings.length, unit: "" },
  ];
  const note = "a pulse oximeter errs by 2 to 3 points, and by more with movement";
  if (atRest.length === 0) book.withhold("saturation_rest", "no saturation was recorded at rest");
  else foundOrWithheld(book, "saturation_rest", part.info, from(atRest), () => part.saturationOfPart("rest", atRest));
  if (inExercise.length === 0) book.withhold("saturation_lowest", "no saturation was recorded in exercise");
  else
    foundOrWithheld(
      book,
      "saturation_lowest",
      part.info,
      from(inExercise),
      () => part.saturationOfPart("exercise", inExercise),
      { note },
    );
  book.compute("saturation_fall", fall.info, ["saturation_rest", "saturation_lowest"]);
}

const PRESSURES: readonly Column[] = [
  { key: "when", title: "When" },
  { key: "time_s", title: "Time", unit: "s", decimals: 0 },
  { key: "systolic_mmhg", title: "Systolic", unit: "mmHg", decimals: 0 },
  { key: "diastolic_mmhg", title: "Diastolic", unit: "mmHg", decimals: 0 },
];
const SOURCE = "American Heart Association list of reasons to stop";
const WORDS: Readonly<Record<response.PressureResponse, (sex: "female" | "male", highest: number) => string>> = {
  "above the limit for stopping": () =>
    `Pressure passed ${response.STOP_SYSTOLIC}/${response.STOP_DIASTOLIC} mmHg, at which a test is stopped (${SOURCE}).`,
  "fell below rest": () =>
    `Systolic pressure fell more than ${response.FALL} mmHg below its value at rest although work rose (${SOURCE}).`,
  "in the upper range": (sex) =>
    `The highest systolic pressure reached ${response.EXAGGERATED[sex]} mmHg or more, the limit usually named for an exaggerated rise (from memory, to be checked against the source).`,
  "within the limits": (_, highest) =>
    `Highest systolic pressure ${highest} mmHg, below the limits for stopping and for an exaggerated rise.`,
};

export function exercisePressure(book: Notebook, visit: Visit): void {
  const readings = visit.session.incremental?.pressures ?? [];
  if (readings.length === 0) return;
  const key = `${visit.file} incremental.pressures`;
  const rows = readings.map((r): Cell[] => [r.when, r.time_s ?? null, r.systolic_mmhg, r.diastolic_mmhg ?? null]);
  const formula = response.info;
  book.table("exercise_pressures", PRESSURES, rows, formula, [{ name: "from", value: key, unit: "" }]);
  const effort = readings.filter((r) => r.when === "exercise" || r.when === "peak");
  if (effort.length === 0) {
    book.withhold("systolic_pressure_peak", "no pressure was recorded in exercise");
    book.withhold("exercise_pressure_response", "no pressure was recorded in exercise");
    return;
  }
  const highest = Math.max(...effort.map((r) => r.systolic_mmhg));
  book.record("systolic_pressure_peak", highest, key);
  const diastolics = effort.flatMap((r) => (r.diastolic_mmhg === undefined ? [] : [r.diastolic_mmhg]));
  const { sex } = visit.client;
  const outcome = attempt(() =>
    response.exercisePressureResponse({
      rest: readings.find((r) => r.when === "rest")?.systolic_mmhg ?? book.value("systolic_pressure"),
      highest,
      last: effort[effort.length - 1]?.systolic_mmhg ?? highest,
      diastolic: diastolics.length === 0 ? undefined : Math.max(...diastolics),
      sex,
    }),
  );
  if (outcome.because !== undefined) {
    book.withhold("exercise_pressure_response", outcome.because);
    return;
  }
  book.judge("exercise_pressure_response", outcome.value, WORDS[outcome.value](sex, highest), {
    rule: `${formula.id} r${formula.revision}`,
    inputs: [{ name: "systolic_pressure_peak", text: `${highest} mmHg`, measure: "systolic_pressure_peak" }],
  });
}
