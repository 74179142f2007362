/**
 * A whole test recorded as ventilation and gas fractions must give what the same test gives recorded as uptake. The
 * fractions are made from the truth by the mass balance itself: VI − VE = VO2 − VCO2, for inert gas goes in and out.
 */
import { expect, it } from "vitest";
import { volumeFactor } from "../../../src/derive/gas/volume-factor.js";
import type { GasCondition } from "../../../src/kernel/series.js";
import { USUAL_FAULTS } from "../../generator/recipe.js";
import { derive } from "./derived.js";
import { generated } from "./generated.js";
import { seriesOf } from "./visit.js";

const peak = (visit: Parameters<typeof derive>[0], id: string) => {
  const found = derive(visit).find((e) => e.id === id);
  if (found?.kind !== "quantity") throw new Error(`${id}: ${found?.kind === "not given" ? found.because : "absent"}`);
  return found.value;
};

it.each([
  ["room air", 0.2093, 752, "BTPS"],
  ["hypoxia", 0.14, 752, "ATPS"],
  ["a hut at 3 600 m", 0.2093, 490, "ambient"],
] as const)("agrees in %s", (_name, fio2, pressure_mmhg, condition: GasCondition) => {
  const room = {
    pressure_mmhg,
    temperature_c: 21,
    humidity_pct: 40,
    inspired_gas: "stated" as const,
    fio2,
    fico2: 0.0004,
  };
  const { test, visit } = generated(31, { faults: USUAL_FAULTS, fio2 });
  const rows = test.rows.map((row) => {
    const expired = row.ve * volumeFactor("BTPS", "STPD", pressure_mmhg, 37, 1);
    const inspired = expired + row.vo2 - row.vco2;
    const lost = row.vo2 === 0;
    return {
      time_s: row.time,
      ventilation_l_min: row.ve * volumeFactor("BTPS", condition, pressure_mmhg, condition === "ATPS" ? 30 : 21, 0.4),
      feo2: lost ? 0 : (inspired * fio2 - row.vo2) / expired,
      feco2: lost ? 0 : (row.vco2 + inspired * 0.0004) / expired,
      gas_temperature_c: 30,
      heart_rate_bpm: row.hr,
      speed_km_h: row.speed,
      grade_pct: row.grade,
      power_w: row.power,
    };
  });
  const names = Object.keys(rows[0] ?? {}) as (keyof (typeof rows)[number])[];
  const channels = Object.fromEntries(names.map((name) => [name, rows.map((row) => row[name])]));
  const series = seriesOf(channels, { ventilation_l_min: condition });
  const other = { ...visit, session: { ...visit.session, room }, series: { "test.csv": series } } as typeof visit;
  for (const id of ["vo2_peak", "rer_peak", "ventilation_peak", "oxygen_pulse_peak"])
    expect(peak(other, id) / peak(visit, id), id).toBeCloseTo(1, 2);
  const table = derive(other).find((e) => e.id === "incremental_data");
  expect(table?.kind === "table" && table.rows[0]).toEqual(["level", "gas fractions"]);
});
