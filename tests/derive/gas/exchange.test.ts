/** Uptake from every raw level. Worked example: a Douglas bag computed by hand step by step (see haldane's checks). */
import { expect, it } from "vitest";
import { exchange } from "../../../src/derive/gas/exchange.js";
import { volumeFactor } from "../../../src/derive/gas/volume-factor.js";
import type { Channel, GasCondition } from "../../../src/kernel/series.js";
import { seriesOf, visitOf } from "../incremental/visit.js";

const { choices } = visitOf({});
const room = { pressure_mmhg: 752, temperature_c: 22, humidity_pct: 50, inspired_gas: "room air" as const };
type Columns = Partial<Record<Channel, ArrayLike<number>>>;
const run = (
  columns: Columns,
  conditions: Partial<Record<Channel, GasCondition>> = {},
  where: Partial<typeof room> & { fio2?: number; fico2?: number } = room,
  gasTemperatureC?: number,
) => exchange({ series: seriesOf(columns, conditions), room: where as never, choices, gasTemperatureC });

const fractions = { time_s: [60], feo2: [0.165], feco2: [0.044] };
const byHand = { vo2: 2.97285, vco2: 2.92209, ve: 81.848 }; // by hand from 150 L in 2 min at 22 °C and 752 mmHg

it("computes a bag of 150 L in 2 min", () => {
  const out = run({ ...fractions, bag_volume_l: [150], bag_duration_s: [120], gas_temperature_c: [22] });
  expect(out.level).toBe("bags");
  expect(out.vo2[0]).toBeCloseTo(byHand.vo2, 3);
  expect(out.vco2[0]).toBeCloseTo(byHand.vco2, 3);
  expect(out.ve[0]).toBeCloseTo(byHand.ve, 2);
});

it("gives one answer whatever condition the same ventilation is written in", () => {
  for (const condition of ["ATPS", "BTPS", "STPD", "ATPD"] as const) {
    const ve = 75 * volumeFactor("ATPS", condition, 752, 22, 1);
    const out = run({ ...fractions, ventilation_l_min: [ve] }, { ventilation_l_min: condition }, room, 22);
    expect(out.refused).toEqual({});
    expect(out.vo2[0]).toBeCloseTo(byHand.vo2, 3);
    expect(out.ve[0]).toBeCloseTo(byHand.ve, 2);
  }
});

it("reads ambient inspired volume at the room's humidity", () => {
  const inspired = 66.9181 / volumeFactor("ambient", "STPD", 752, 22, 0.5); // VI STPD of the same bag, by hand
  const out = run({ ...fractions, inspired_ventilation_l_min: [inspired] }, { inspired_ventilation_l_min: "ambient" });
  expect(out.vo2[0]).toBeCloseTo(byHand.vo2, 3);
  expect(out.ve[0]).toBeCloseTo(byHand.ve, 2);
});

it("takes ventilation from tidal volume and frequency", () => {
  const columns = { ...fractions, tidal_volume_l: [2.5], breathing_frequency_per_min: [30] };
  expect(run(columns, { tidal_volume_l: "ATPS" }, room, 22).vo2[0]).toBeCloseTo(byHand.vo2, 3);
});

it("has no default pressure, temperature, humidity, gas condition or inspired gas", () => {
  const columns = { ...fractions, ventilation_l_min: [75] };
  const without = (key: keyof typeof room) => Object.fromEntries(Object.entries(room).filter(([k]) => k !== key));
  const why = (where: object, condition: GasCondition | undefined, t?: number) => {
    const out = run(columns, condition ? { ventilation_l_min: condition } : {}, where, t);
    expect(out.vo2[0]).toBeNaN();
    return out.refused.vo2;
  };
  expect(why(without("pressure_mmhg"), "ATPS", 22)).toMatch(/station pressure/);
  expect(why(room, "ATPS")).toMatch(/temperature of the gas/);
  expect(why(without("humidity_pct"), "ambient")).toMatch(/humidity/);
  expect(why(without("temperature_c"), "ambient")).toMatch(/room temperature/);
  expect(why(room, undefined)).toMatch(/gas condition/);
  expect(why(without("inspired_gas"), "STPD")).toMatch(/breathed in/);
});

it("refuses enriched gas and is right in hypoxia", () => {
  const columns = { time_s: [60], feo2: [0.105], feco2: [0.038], ventilation_l_min: [60] };
  const stated = (fio2: number) =>
    run(columns, { ventilation_l_min: "STPD" }, { pressure_mmhg: 752, fio2, fico2: 0.0003 });
  expect(stated(0.14).vo2[0]).toBeCloseTo(2.07362, 4); // by hand, see haldane's checks
  // The same gas with room air wrongly assumed: the factor of three that a hard-wired constant costs.
  const wrong = run(columns, { ventilation_l_min: "STPD" });
  expect((wrong.vo2[0] as number) / (stated(0.14).vo2[0] as number)).toBeGreaterThan(2.8);
  expect(stated(0.6).refused.vo2).toMatch(/enriched/);
  expect(stated(0.6).vo2[0]).toBeNaN();
});

it("prefers inspired fractions measured with each sample", () => {
  const columns = { ...fractions, ventilation_l_min: [66.8673], fio2: [0.2093], fico2: [0.0003] };
  expect(run(columns, { ventilation_l_min: "STPD" }, {}).vo2[0]).toBeCloseTo(byHand.vo2, 4);
});

it("moves uptake by 0.6 % between the two pairs of room-air fractions", () => {
  const series = seriesOf({ ...fractions, ventilation_l_min: [66.8673] }, { ventilation_l_min: "STPD" });
  const other = { ...choices, room_air: "0.2095/0.0004" as const };
  const out = exchange({ series, room, choices: other, gasTemperatureC: undefined });
  expect(out.vo2[0]).toBeCloseTo(2.992, 3); // by hand: VI 66.9350
  expect(out.notes.join()).toMatch(/0\.2095\/0\.0004/);
});

it("leaves a row without a reading missing, and only that row", () => {
  const out = run(
    { time_s: [1, 2, 3], feo2: [0.165, 0, 0.165], feco2: [0.044, 0.044, 0], ventilation_l_min: [70, 70, 70] },
    { ventilation_l_min: "STPD" },
  );
  expect([...out.vo2].map(Number.isNaN)).toEqual([false, true, true]);
  expect([...out.ve].some(Number.isNaN)).toBe(false);
});

it("reads the carbon dioxide of the room in parts per million", () => {
  // 900 ppm are a fraction of 0.0009.
  const columns = { ...fractions, ventilation_l_min: [60] };
  const out = (where: object) =>
    run(columns, { ventilation_l_min: "STPD" }, { pressure_mmhg: 752, fio2: 0.2085, ...where });
  expect(out({ co2_ppm: 900 } as never).vco2[0]).toBe(out({ fico2: 0.0009 }).vco2[0]);
  expect(out({}).refused.vo2).toMatch(/room.fico2/);
});
