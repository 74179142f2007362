/** A lift: the maximum itself where one repetition was made, else an estimate that never takes its name. */
import type { BenchPress, LegPress } from "../../kernel/generated/session.js";
import type { Cell } from "../../kernel/measure.js";
import type { Notebook } from "../../kernel/notebook.js";
import { toDecimals } from "../../kernel/rounding.js";
import * as ratio from "./load-over-mass.js";
import * as span from "./one-rm-span.js";

/** Writes the lift and gives the rows of the table of estimates, one an equation. */
export function writeLift(
  book: Notebook,
  name: "bench_press" | "leg_press",
  lift: BenchPress | LegPress,
  file: string,
): Cell[][] {
  const key = `${file} strength.${name}`;
  if (lift.repetitions === 1) {
    book.record(`${name}_1rm`, lift.load_kg, `${key}.load_kg`);
    book.compute(`${name}_ratio`, ratio.info, [`${name}_1rm`, "body_mass"]);
    return [];
  }
  const reason = `it was estimated from ${lift.repetitions} repetitions, and an estimate is not a measurement`;
  const inRange = lift.repetitions <= 10;
  const estimates = inRange
    ? span.ONE_RM_EQUATIONS.map(({ title, compute }) => ({ title, kg: compute(lift.load_kg, lift.repetitions) }))
    : [];
  const all = estimates.map(({ kg }) => kg);
  const spread = inRange ? `${toDecimals(Math.min(...all), 1)} to ${toDecimals(Math.max(...all), 1)} kg` : "";
  book.compute(
    `${name}_1rm_estimated`,
    span.info,
    [
      { name: `${key}.load_kg`, value: lift.load_kg, unit: "kg" },
      { name: `${key}.repetitions`, value: lift.repetitions, unit: "" },
    ],
    { note: `An estimate, not a measurement: six published equations span ${spread}.` },
  );
  book.withhold(`${name}_ratio`, reason);
  return estimates.map(({ title, kg }) => [name === "bench_press" ? "Bench press" : "Leg press", title, kg]);
}
