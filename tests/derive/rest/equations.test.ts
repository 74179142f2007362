/** Published and cross-source sums that run over more than one formula. */
import { expect, it } from "vitest";
import { stpdShare } from "../../../src/derive/gas/volume-factor.js";
import * as peakLoad from "../../../src/derive/incremental/peak-load.js";
import { criticalRate } from "../../../src/derive/indices/critical-rate.js";
import { brockway1987 } from "../../../src/derive/rest/brockway-1987.js";
import { frayn1983 } from "../../../src/derive/rest/frayn-1983.js";
import { lusk1924 } from "../../../src/derive/rest/lusk-1924.js";
import { peronnetMassicotte1991 } from "../../../src/derive/rest/peronnet-massicotte-1991.js";
import { weir1949 } from "../../../src/derive/rest/weir-1949.js";
import { lPerMin } from "../../../src/kernel/unit.js";

it("Lusk's table gives the energy of a published page: 15.7 L/h at a quotient of 0.76 is 74.59 kcal/h", () => {
  expect(15.7 * lusk1924(0.76).kcalPerLitre).toBeCloseTo(74.59, 1);
});

it("a table row of Lusk is met all along the range (rows from memory)", () => {
  for (const [quotient, kcal, share] of [
    [0.71, 4.69, 1.1],
    [0.8, 4.801, 33.4],
    [0.9, 4.924, 67.5],
    [1, 5.047, 100],
  ] as const) {
    expect(Math.abs(lusk1924(quotient).kcalPerLitre - kcal)).toBeLessThanOrEqual(0.0006);
    expect(Math.abs(lusk1924(quotient).carbohydrateShare - share)).toBeLessThanOrEqual(0.06);
  }
});

it("three energy equations agree on one steady gas exchange within 0.5 %, as by hand: 9.762, 9.758 and 9.724 kcal/min", () => {
  const [o2, co2] = [lPerMin(2), lPerMin(1.7)];
  expect(weir1949(o2, co2) / 1440).toBeCloseTo(9.762, 3);
  expect(brockway1987(o2, co2) / 1440).toBeCloseTo(9.758, 3);
  expect(2 * lusk1924(0.85).kcalPerLitre).toBeCloseTo(9.724, 2);
});

it("two fuel equations agree with a teaching text's glucose form (Bedogni): carbohydrate 1.309, fat 0.507 g/min", () => {
  for (const fuels of [frayn1983(lPerMin(2), lPerMin(1.7)), peronnetMassicotte1991(lPerMin(2), lPerMin(1.7))]) {
    expect(Math.abs(fuels.carbohydrate - 1.309)).toBeLessThan(0.04);
    expect(Math.abs(fuels.fat - 0.507)).toBeLessThan(0.01);
  }
});

it("a wrong gas condition moves uptake as by hand at 752 mmHg and 22 °C: ATPS as STPD 12.2 %, BTPS as STPD 22.4 %", () => {
  const [atps, btps] = [stpdShare("ATPS", 752, 22, 1), stpdShare("BTPS", 752, 22, 1)];
  expect(100 * (1 / atps - 1)).toBeCloseTo(12.2, 1);
  expect(100 * (1 / btps - 1)).toBeCloseTo(22.4, 1);
});

it("critical speed predicts 5 km in 1235.1 s, as computed independently", () => {
  const bouts = [
    [255, 1200],
    [560, 2400],
    [875, 3600],
  ].map(([time = 0, distance = 0]) => ({ time, rate: distance / time }));
  const { rate, capacity } = criticalRate("work-time", bouts);
  expect((5000 - capacity) / rate).toBeCloseTo(1235.1, 0);
});

it("peak speed with credit for the last stage is 16.67 km/h (Kuipers: 16 completed, 40 of 60 s at 17)", () => {
  expect(peakLoad.info.compute(16, 17, 40, 60)).toBeCloseTo(16.667, 3);
});
