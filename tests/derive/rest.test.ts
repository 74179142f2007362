/** Resting gas exchange, from a series and typed by hand. */
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { deriveRest } from "../../src/derive/rest.js";
import { deriveSize } from "../../src/derive/size.js";
import type { Quantity, Table } from "../../src/kernel/measure.js";
import { openNotebook } from "../../src/kernel/notebook.js";
import { testSeries, testVisit, type VisitParts } from "./rest/visit.js";

const size = { mass_kg: 60, stature_cm: 165 } as never;
const derived = (parts: VisitParts) => {
  const visit = testVisit(parts);
  const book = openNotebook();
  deriveSize(book, visit);
  deriveRest(book, visit);
  return book;
};
/** 15 min in samples of 10 s: VO2 falls while settling, then stays about 0.22 L/min with a ratio of 0.82. */
const record = (vo2: (minute: number) => number, ratio = 0.82, minutes = 15) => {
  const time = Array.from({ length: minutes * 6 }, (_, i) => 10 * (i + 1));
  const uptake = time.map((t) => vo2(Math.floor((t - 5) / 60)));
  return testSeries(
    "rest.csv",
    {
      time_s: time,
      vo2_l_min: uptake,
      vco2_l_min: uptake.map((x) => x * ratio),
      ventilation_l_min: time.map(() => 6),
      breathing_frequency_per_min: time.map(() => 12),
      tidal_volume_l: time.map(() => 0.5),
      heart_rate_bpm: time.map(() => 58),
    },
    { ventilation_l_min: "BTPS", tidal_volume_l: "BTPS" },
  );
};
const fromRecord = (series: ReturnType<typeof record>, more: VisitParts = {}) =>
  derived({ session: { size, rest: { series: "rest.csv" } }, series: { "rest.csv": series }, ...more });

describe("rest from a series", () => {
  it("drops the settling time and takes the first steady window, not the lowest", () => {
    const book = fromRecord(record((m) => (m < 5 ? 0.34 : m < 10 ? 0.22 : 0.19)));
    expect(book.value("resting_vo2")).toBeCloseTo(220, 6);
    const window = book.entry("rest_window") as Table;
    expect(window.rows[0]?.slice(0, 4)).toEqual([5, 10, 300, 600]);
  });

  it("gives what an independent sum gives", () => {
    const book = fromRecord(record(() => 0.22));
    // by hand: 1440·(3.941·0.22 + 1.106·0.1804) = 1535.8 kcal/d
    expect(book.value("resting_energy_expenditure")).toBeCloseTo(1440 * (3.941 * 0.22 + 1.106 * 0.22 * 0.82), 6);
    // The error printed with it is the one that comparing visits uses: one source for both.
    const table = parse(readFileSync("src/compare/tables/resting-metabolism-2014.yaml", "utf8"));
    const energy = book.entry("resting_energy_expenditure") as Quantity;
    expect(energy.error?.typical).toBeCloseTo((energy.value * table.rows[0].value) / 100, 9);
    expect(energy.error?.from).toContain(`${table.n} adults`);
    expect(book.value("resting_rer")).toBeCloseTo(0.82, 9);
    expect(book.value("resting_ventilation")).toBeCloseTo(6, 9);
    // by hand, Mifflin: 600 + 1031.25 − 200 − 161 = 1270.25
    expect(book.value("resting_energy_predicted")).toBeCloseTo(1270.25, 6);
  });

  it("withholds all values when no window is steady, and says how calm the calmest was", () => {
    const book = fromRecord(record((m) => (m % 2 ? 0.3 : 0.2)));
    for (const id of ["resting_vo2", "resting_energy_expenditure", "rest_window"] as const)
      expect(book.entry(id)?.kind).toBe("not given");
    expect(JSON.stringify(book.entry("resting_vo2"))).toMatch(/calmest/);
    expect(book.entry("rest_trace")?.kind).toBe("table");
  });

  it("withholds a value whose channel died in the window and nothing else", () => {
    const whole = record(() => 0.22);
    const heart = Float64Array.from(whole.channels.heart_rate_bpm ?? [], (x, i) => (i > 40 ? Number.NaN : x));
    const book = fromRecord({ ...whole, channels: { ...whole.channels, heart_rate_bpm: heart } });
    expect(book.entry("resting_heart_rate")?.kind).toBe("not given");
    expect(book.value("resting_vo2")).toBeCloseTo(220, 6);
  });

  it("does not care where the clock of the file starts", () => {
    const whole = record((m) => (m < 5 ? 0.34 : 0.22 + (m % 3) * 0.004));
    const later = Float64Array.from(whole.channels.time_s ?? [], (t) => t + 1000);
    const moved = { ...whole, channels: { ...whole.channels, time_s: later } };
    const book = derived({
      session: { size, rest: { series: "rest.csv", from_s: 1000 } },
      series: { "rest.csv": moved },
    });
    expect(book.value("resting_vo2")).toBeCloseTo(fromRecord(whole).value("resting_vo2") ?? 0, 9);
  });

  it("gives no energy from a ratio that no resting person has", () => {
    for (const ratio of [0.6, 1.05, 1.4]) {
      const book = fromRecord(record(() => 0.22, ratio));
      expect(book.entry("resting_energy_expenditure")?.kind).toBe("not given");
      expect(book.value("resting_vo2")).toBeCloseTo(220, 6);
    }
  });

  it("leaves a cough out of the means, names its line, and never edits means of equal intervals", () => {
    const breaths = Array.from({ length: 200 }, (_, i) => 4.5 * i + (i % 7) * 0.3 + 4);
    const uptake = breaths.map((_, i) => 0.22 * (1 + 0.03 * Math.sin(i)));
    const give = (time: number[], values: number[]) =>
      fromRecord(testSeries("rest.csv", { time_s: time, vo2_l_min: values, vco2_l_min: values.map((x) => 0.82 * x) }));
    const cough = uptake.map((x, i) => (i === 100 ? 4 * x : x));
    const [clean, dirty] = [give(breaths, uptake), give(breaths, cough)];
    expect(Math.abs((dirty.value("resting_vo2") ?? 0) - (clean.value("resting_vo2") ?? 1))).toBeLessThan(1);
    expect((dirty.entry("rest_trace") as Table).note).toMatch(/^1 breath left out .*\(line 102\)$/);
    expect((clean.entry("rest_trace") as Table).note).toBeUndefined();
    const even = breaths.map((_, i) => 4.5 * (i + 1));
    expect((give(even, cough).entry("rest_trace") as Table).note).toBeUndefined();
  });

  it("never takes a volume of unstated condition for BTPS", () => {
    const book = fromRecord({ ...record(() => 0.22), conditions: {} });
    expect(book.entry("resting_ventilation")?.kind).toBe("not given");
  });
});

describe("rest from Douglas bags", () => {
  const bags = (room: object) =>
    derived({
      session: { size, room, rest: { series: "bags.csv", gas_temperature_c: 22 } },
      series: {
        "bags.csv": testSeries("bags.csv", {
          bag_volume_l: [15, 15],
          bag_duration_s: [120, 120],
          feo2: [0.165, 0.165],
          feco2: [0.044, 0.044],
        }),
      },
    });
  it("follows a bag from first principles, a tenth of a hand-computed bag of 150 L", () => {
    // by hand: (752 − 19.837)/760 · 273.15/295.15 = 0.891564; VE STPD 6.68673; VI 6.69181; VO2 0.297285, VCO2 0.292209 L/min
    const book = bags({ pressure_mmhg: 752, inspired_gas: "room air" });
    expect(Math.abs((book.value("resting_vo2") ?? 0) - 297.285)).toBeLessThan(0.05);
    expect(Math.abs((book.value("resting_vco2") ?? 0) - 292.209)).toBeLessThan(0.05);
    expect(Math.abs((book.value("resting_ventilation") ?? 0) - 8.1848)).toBeLessThan(0.001);
  });
  it("gives nothing without station pressure", () => {
    expect(JSON.stringify(bags({ inspired_gas: "room air" }).entry("resting_vo2"))).toMatch(/pressure/);
  });
});

describe("rest typed by hand", () => {
  it("gives what can be given and says what is missing", () => {
    const book = derived({ session: { size, rest: { typed: { vo2_ml_min: 250, vco2_ml_min: 212.5 } } } });
    // by hand: 1.44·(3.941·250 + 1.106·212.5) = 1757.2
    expect(book.value("resting_energy_expenditure")).toBeCloseTo(1757.2, 1);
    expect(book.entry("resting_heart_rate")?.kind).toBe("not given");
  });
  it("follows the house choice of equation", () => {
    const typed = { vo2_ml_min: 250, vco2_ml_min: 212.5 };
    const book = derived({ session: { size, rest: { typed } }, choices: { energy_equation: "weir-short" } });
    expect(book.value("resting_energy_expenditure")).toBeCloseTo(1740.6, 1);
  });
  it("gives a prediction its own standard error where the source prints one: Schofield, women of 30 to 60 years, 111 kcal/d", () => {
    const typed = { vo2_ml_min: 250, vco2_ml_min: 210 };
    const book = derived({ session: { size, rest: { typed } }, choices: { resting_prediction: "schofield" } });
    const entry = book.entry("resting_energy_predicted");
    expect(entry?.kind === "quantity" && entry.error?.typical).toBe(111);
    expect(book.value("resting_energy_predicted")).toBeCloseTo(1333.16, 2);
  });
  it("writes nothing when the block is absent", () => {
    expect(derived({ session: { size } }).entry("resting_vo2")).toBeUndefined();
  });
  it("says that fat-free mass is missing where an equation needs it", () => {
    const book = derived({
      session: { size, rest: { typed: { vo2_ml_min: 250, vco2_ml_min: 210 } } },
      choices: { resting_prediction: "cunningham-1991" },
    });
    expect(JSON.stringify(book.entry("resting_energy_predicted"))).toMatch(/fat-free mass was not measured/);
  });
});

describe("conditions before the test", () => {
  const conditions = (hours: number, edition: "evidence-review-2015" | "practitioner-instructions-2006") => {
    const book = derived({
      session: { rest: { typed: {} }, preparation: { hours_since_food: hours } },
      choices: { rest_conditions: edition },
    });
    return (book.entry("resting_conditions") as Table).rows.find((r) => r[0] === "Fast")?.[3];
  };
  it("holds 6 h of fast against the chosen edition: too short in 2015, enough in 2006", () => {
    // Fullmer and others 2015: 7 h; practitioner instructions 2006: 5 h
    expect(conditions(6, "evidence-review-2015")).toBe("not met");
    expect(conditions(7, "evidence-review-2015")).toBe("met");
    expect(conditions(6, "practitioner-instructions-2006")).toBe("met");
  });
});
