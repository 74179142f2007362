/** Whatever a file holds, the incremental test gives finite numbers or reasons, and never throws. */

import { expect, it } from "vitest";
import type { Incremental } from "../../../src/kernel/generated/session.js";
import type { Channel } from "../../../src/kernel/series.js";
import fc from "../../tools/properties.js";
import { derive } from "./derived.js";
import { seriesOf, visitOf } from "./visit.js";

const CHANNELS: readonly Channel[] = [
  "vo2_l_min",
  "vco2_l_min",
  "ventilation_l_min",
  "heart_rate_bpm",
  "feo2",
  "feco2",
  "speed_km_h",
  "power_w",
  "bag_volume_l",
];
const cell = fc.oneof(
  { weight: 6, arbitrary: fc.double({ min: 0, max: 5, noNaN: true }) },
  fc.constantFrom(0, Number.NaN, -1, 1e9, 250, 0.17),
);
const step = fc.oneof(
  { weight: 8, arbitrary: fc.double({ min: 0.5, max: 40, noNaN: true }) },
  fc.constantFrom(0, -5, Number.NaN),
);

it("never throws and never prints what is not a number", () => {
  const file = fc.integer({ min: 1, max: 60 }).chain((n) =>
    fc.record({
      steps: fc.array(step, { minLength: n, maxLength: n }),
      channels: fc.dictionary(fc.constantFrom(...CHANNELS), fc.array(cell, { minLength: n, maxLength: n })),
      start: fc.option(fc.double({ min: 0, max: 400, noNaN: true }), { nil: undefined }),
      stop: fc.option(fc.double({ min: 0, max: 900, noNaN: true }), { nil: undefined }),
      kind: fc.constantFrom("ramp" as const, "step" as const),
      length: fc.constantFrom(30, 60, 180),
      room: fc.constantFrom(
        undefined,
        { pressure_mmhg: 750, inspired_gas: "room air" as const },
        { pressure_mmhg: 750, fio2: 0.5, fico2: 0 },
      ),
    }),
  );
  fc.assert(
    fc.property(file, ({ steps, channels, start, stop, kind, length, room }) => {
      let t = 0;
      const time_s = steps.map((s) => {
        t += Number.isNaN(s) ? 0 : s;
        return Number.isNaN(s) ? Number.NaN : t;
      });
      const phases =
        start === undefined
          ? {}
          : { phases: { incremental_start_s: start, ...(stop === undefined ? {} : { recovery_start_s: stop }) } };
      const incremental: Incremental = {
        mode: "cycle",
        series: "test.csv",
        protocol: { kind, stage_length_s: length, start_power_w: 100, power_step_w: 25 },
        ...phases,
      };
      const series = seriesOf({ time_s, ...channels }, { ventilation_l_min: "BTPS" });
      for (const e of derive(visitOf({ series, incremental, ...(room ? { room } : {}) }))) {
        if (e.kind === "quantity") expect(Number.isFinite(e.value), e.id).toBe(true);
        if (e.kind === "not given") expect(e.because, e.id).not.toMatch(/NaN|undefined|Infinity/);
        if (e.kind !== "table") continue;
        for (const x of e.rows.flat()) if (typeof x === "number") expect(Number.isFinite(x), e.id).toBe(true);
      }
    }),
    { numRuns: 800, seed: 20260302 },
  );
});
