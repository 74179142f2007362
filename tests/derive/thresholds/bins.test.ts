/** Fifteen-second bins: what is dropped, joined, and how ratios are taken. */
import { expect, it } from "vitest";
import { binBreaths, type GasColumns } from "../../../src/derive/thresholds/bins.js";

function breaths(
  everyS: number,
  untilS: number,
  vo2: (t: number) => number,
  changes: Partial<GasColumns> = {},
): GasColumns {
  const n = Math.floor(untilS / everyS);
  const time = Float64Array.from({ length: n }, (_, i) => (i + 1) * everyS);
  const none = time.map(() => Number.NaN);
  const o2 = time.map(vo2);
  const base = { n, time, vo2: o2, vco2: o2.map((v) => 0.9 * v), ve: o2.map((v) => 25 * v), heartRate: none };
  return { ...base, petO2: none, petCO2: none, excluded: new Uint8Array(n), ...changes };
}

it("drop the first minute, do not overlap, and join a short last bin", () => {
  const bins = binBreaths(
    breaths(3, 303, () => 2),
    0,
    303,
  );
  expect(bins.n).toBe(16); // 243 s after the first minute: sixteen bins, the last 3 s join the sixteenth
  expect([...bins.count]).toEqual([...Array(15).fill(5), 6]);
  expect(bins.time[0]).toBeCloseTo((63 + 75) / 2, 9);
  expect(
    binBreaths(
      breaths(3, 312, () => 2),
      0,
      312,
    ).n,
  ).toBe(17); // 12 s are more than half a bin
});

it("take ratios of sums over samples that hold both channels", () => {
  const b = breaths(5, 180, (t) => 1 + t / 100);
  const vco2 = b.vco2.slice();
  vco2[12] = Number.NaN; // the sample at 65 s
  const bins = binBreaths({ ...b, vco2 }, 0, 180);
  expect(bins.rer[0]).toBeCloseTo(0.9, 9);
  expect(bins.vo2[0]).toBeCloseTo(1 + 70 / 100, 9); // samples at 65, 70 and 75 s all count for VO2
  expect(bins.petCO2.every(Number.isNaN)).toBe(true);
});

it("pass over excluded and missing samples, and leave an empty bin out", () => {
  const b = breaths(5, 180, () => 2);
  const excluded = b.excluded.slice();
  for (let i = 0; i < b.n; i++) if ((b.time[i] as number) > 75 && (b.time[i] as number) <= 90) excluded[i] = 3;
  const vo2 = b.vo2.slice();
  vo2[13] = Number.NaN;
  const bins = binBreaths({ ...b, vo2, excluded }, 0, 180);
  expect(bins.n).toBe(7);
  expect(bins.count[0]).toBe(2);
});
