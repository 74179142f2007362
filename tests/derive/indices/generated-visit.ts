/** A visit around a generated test: series, phases as the recipe states them, size and a resting heart rate. */
import type { Incremental } from "../../../src/kernel/generated/session.js";
import type { Channel } from "../../../src/kernel/series.js";
import type { Visit } from "../../../src/kernel/visit.js";
import { generateTest, type Row } from "../../generator/breaths.js";
import type { Recipe } from "../../generator/recipe.js";
import { testSeries, testVisit, type VisitParts } from "../rest/visit.js";

const CHANNELS: readonly (readonly [Channel, keyof Row])[] = [
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

/** `change` alters rows before they are read, as a fault would. */
export function generatedVisit(recipe: Recipe, more: VisitParts = {}, change: (row: Row) => Row = (row) => row): Visit {
  const test = generateTest(recipe);
  const rows = test.rows.map(change);
  const span = (name: string) => {
    const found = test.truth.phases.find((phase) => phase.name === name);
    if (found === undefined) throw new Error(`the generated test has no phase ${name}`);
    return found;
  };
  const zeros: readonly Channel[] = ["time_s", "speed_km_h", "grade_pct", "power_w"];
  const channels = Object.fromEntries(
    CHANNELS.filter(([channel]) => channel !== (recipe.mode === "cycle" ? "speed_km_h" : "power_w")).map(
      ([channel, key]) => [channel, rows.map((row) => (row[key] === 0 && !zeros.includes(channel) ? null : row[key]))],
    ),
  );
  const incremental: Incremental = {
    mode: recipe.mode,
    series: "test.csv",
    ...(recipe.protocol.kind === "step"
      ? { protocol: { kind: "step", stage_length_s: recipe.protocol.stageS } }
      : { protocol: { kind: "ramp" } }),
    phases: {
      rest_start_s: 0,
      warm_up_start_s: recipe.restS,
      incremental_start_s: span("incremental").fromS,
      recovery_start_s: span("incremental").toS,
    },
    ...more.session?.incremental,
  };
  return testVisit({
    ...more,
    session: { size: { mass_kg: recipe.massKg, stature_cm: 174 } as never, ...more.session, incremental },
    series: {
      "test.csv": testSeries("test.csv", channels, { ventilation_l_min: "BTPS" }),
      ...more.series,
    },
  });
}
