/** Generated tests with known truth, as visits. */
import type { Incremental } from "../../../src/kernel/generated/session.js";
import type { Channel, Series } from "../../../src/kernel/series.js";
import type { Visit } from "../../../src/kernel/visit.js";
import { type GeneratedTest, generateTest, type Row } from "../../generator/breaths.js";
import { type Recipe, recipe } from "../../generator/recipe.js";
import { seriesOf, visitOf } from "./visit.js";

const COLUMNS: readonly (readonly [Channel, keyof Row])[] = [
  ["time_s", "time"],
  ["vo2_l_min", "vo2"],
  ["vco2_l_min", "vco2"],
  ["ventilation_l_min", "ve"],
  ["breathing_frequency_per_min", "bf"],
  ["peto2_mmhg", "peto2"],
  ["petco2_mmhg", "petco2"],
  ["heart_rate_bpm", "hr"],
  ["speed_km_h", "speed"],
  ["grade_pct", "grade"],
  ["power_w", "power"],
];

export function seriesFrom(rows: readonly Row[]): Series {
  const channels = Object.fromEntries(COLUMNS.map(([channel, key]) => [channel, rows.map((row) => row[key])]));
  return seriesOf(channels, { ventilation_l_min: "BTPS", vo2_l_min: "STPD", vco2_l_min: "STPD" });
}

export interface Generated {
  readonly test: GeneratedTest;
  readonly visit: Visit;
}

/** With phase times from the truth, unless more says otherwise. */
export function generated(seed: number, changes: Partial<Recipe> = {}, more: Partial<Incremental> = {}): Generated {
  const test = generateTest(recipe(seed, changes));
  return { test, visit: visitFrom(test, test.rows, more) };
}

export function visitFrom(test: GeneratedTest, rows: readonly Row[], more: Partial<Incremental> = {}): Visit {
  const start = (name: string) => test.truth.phases.find((p) => p.name === name)?.fromS;
  const bout = test.truth.phases.find((p) => p.name === "verification");
  const phases: NonNullable<Incremental["phases"]> = {
    incremental_start_s: start("incremental") ?? 0,
    ...optional("rest_start_s", start("rest")),
    ...optional("warm_up_start_s", start("warm-up")),
    ...optional("recovery_start_s", start("recovery")),
    ...optional("verification_start_s", bout?.fromS),
    ...optional("verification_end_s", bout?.toS),
  };
  const incremental: Incremental = { mode: test.recipe.mode, series: "test.csv", phases, ...more };
  return visitOf({ massKg: test.recipe.massKg, series: seriesFrom(rows), incremental });
}

const optional = <K extends string>(key: K, value: number | undefined) =>
  (value === undefined ? {} : { [key]: value }) as { [P in K]?: number };
