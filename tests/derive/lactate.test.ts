/** Lactate definitions: one worked example, refusals, and 56 real step tests. */
import { existsSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { Point } from "../../src/derive/lactate/curve.js";
import { everyDefinition } from "../../src/derive/lactate/definitions.js";
import { dmax } from "../../src/derive/lactate/dmax.js";
import { deriveLactate } from "../../src/derive/lactate.js";
import type { Lactate, LactateStep } from "../../src/kernel/generated/session.js";
import type { Table } from "../../src/kernel/measure.js";
import { openNotebook } from "../../src/kernel/notebook.js";
import fc from "../tools/properties.js";
import { testSeries, testVisit } from "./rest/visit.js";

const derived = (steps: LactateStep[], more: object = {}, definition = "modified-dmax") => {
  const book = openNotebook();
  deriveLactate(
    book,
    testVisit({
      session: { lactate: { steps, ...more } as Lactate },
      choices: { lactate_definition: definition as never },
    }),
  );
  return book;
};
const worked = (
  [
    [8, 1.1, 122],
    [9, 1.0, 132],
    [10, 1.2, 143],
    [11, 1.6, 154],
    [12, 2.4, 165],
    [13, 4.0, 175],
    [14, 7.2, 184],
  ] as const
).map(([speed_km_h, lactate_mmol_l, heart_rate_bpm]) => ({ speed_km_h, lactate_mmol_l, heart_rate_bpm }));

describe("lactate thresholds", () => {
  it("gives the worked example's answers, heart rate read between steps", () => {
    const book = derived(worked, {}, "baseline-plus-0.5");
    expect(book.value("lactate_threshold_speed")).toBeCloseTo(10.75, 9);
    // by hand: 143 + 0.75·(154 − 143) = 151.25
    expect(book.value("lactate_threshold_heart_rate")).toBeCloseTo(151.25, 9);
    const table = book.entry("lactate_definitions") as Table;
    const loads = Object.fromEntries(table.rows.map((r) => [r[0], r[2]]));
    for (const [id, expected] of [
      ["log-log", 10.56],
      ["dmax", 11.69],
      ["modified-dmax", 12.59],
      ["fixed-2", 11.5],
      ["fixed-4", 13],
    ] as const)
      expect(Math.abs((loads[id] as number) - expected)).toBeLessThanOrEqual(0.01);
  });

  it("reads the same from a CSV as typed", () => {
    const book = openNotebook();
    const column = (key: keyof (typeof worked)[number]) => worked.map((s) => s[key]);
    const series = testSeries("steps.csv", {
      speed_km_h: column("speed_km_h"),
      lactate_mmol_l: column("lactate_mmol_l"),
      heart_rate_bpm: column("heart_rate_bpm"),
    });
    deriveLactate(book, testVisit({ session: { lactate: { series: "steps.csv" } }, series: { "steps.csv": series } }));
    expect(book.value("lactate_threshold_speed")).toBe(derived(worked).value("lactate_threshold_speed"));
  });

  it("never extrapolates: each answer lies inside the data", () => {
    const curve = fc.array(fc.integer({ min: 0, max: 60 }), { minLength: 5, maxLength: 9 }).map((rises) => {
      let lactate = 0.8;
      return rises.map((rise, i): Point => {
        lactate += rise / 20;
        return [100 + 25 * i, lactate];
      });
    });
    fc.assert(
      fc.property(curve, (points) => {
        const [first, last] = [points[0]?.[0] as number, points.at(-1)?.[0] as number];
        for (const { outcome } of everyDefinition(points))
          if (outcome.because === undefined) {
            expect(outcome.value).toBeGreaterThanOrEqual(first);
            expect(outcome.value).toBeLessThanOrEqual(last);
          }
      }),
    );
  });

  it("answers in the unit of the load: doubling loads doubles the threshold", () => {
    const points = worked.map((s): Point => [s.speed_km_h, s.lactate_mmol_l]);
    const doubled = points.map(([x, y]): Point => [2 * x, y]);
    const [once, twice] = [everyDefinition(points), everyDefinition(doubled)];
    once.forEach(({ outcome }, i) => {
      const other = twice[i]?.outcome;
      if (outcome.because === undefined && other?.because === undefined)
        expect(other?.value).toBeCloseTo(2 * outcome.value, 6);
    });
    expect(dmax(doubled)).toBeCloseTo(2 * dmax(points), 6);
  });

  it("withholds with a reason: too few steps, falling values, a level not reached", () => {
    expect(JSON.stringify(derived(worked.slice(0, 3)).entry("lactate_threshold_speed"))).toMatch(/number of steps/);
    const falling = worked.map((s, i) => (i === 5 ? { ...s, lactate_mmol_l: 1.8 } : s));
    expect(JSON.stringify(derived(falling).entry("lactate_threshold_speed"))).toMatch(/falling by 0.60/);
    // The analyser's own error is 0.4 mmol/L: 2.4 to 2.0 may be chance, 2.4 to 1.99 is a fall.
    const to = (lactate_mmol_l: number) =>
      derived(worked.map((one, i) => (i === 5 ? { ...one, lactate_mmol_l } : one)));
    expect(to(2).entry("lactate_threshold_speed")?.kind).toBe("quantity");
    expect(JSON.stringify(to(1.99).entry("lactate_threshold_speed"))).toMatch(/falling by 0.41/);
    expect(JSON.stringify(derived(worked.slice(0, 5), {}, "fixed-4").entry("lactate_threshold_speed"))).toMatch(
      /last lactate/,
    );
    expect(derived(worked.slice(0, 5), {}, "fixed-4").entry("lactate_threshold_heart_rate")?.kind).toBe("not given");
  });

  it("takes an unfinished last step pro rata and says so", () => {
    const cut = worked.map((s, i) => (i === 6 ? { ...s, duration_s: 90 } : s));
    const table = derived(cut, { step_duration_s: 180 }).entry("lactate_steps") as Table;
    expect(table.rows[6]?.[1]).toBeCloseTo(13.5, 9);
    expect(table.note).toMatch(/pro rata/);
  });

  it("says that a baseline stands at the analyser's floor", () => {
    const low = worked.map((s, i) => (i < 3 ? { ...s, lactate_mmol_l: 0.5 } : s));
    expect((derived(low, { analyser_floor_mmol_l: 0.5 }).entry("lactate_steps") as Table).note).toMatch(/floor/);
  });
});

const DATA = "../shared/data/exscidata/cycling-step-tests.csv";
it.skipIf(!existsSync(DATA))(`gives values or a reason for all 56 real step tests (skipped without ${DATA})`, () => {
  const [head = "", ...lines] = readFileSync(DATA, "utf8").trim().split("\n");
  const names = head.split(",").map((name) => name.replaceAll('"', ""));
  expect(lines.length).toBe(56);
  let given = 0;
  for (const line of lines) {
    const cells = line.split(",");
    const cell = (name: string) => {
      const text = cells[names.indexOf(name)] ?? "";
      return text === "" || text === '""' ? undefined : Number(text);
    };
    const steps = [125, 175, 225, 250, 275, 300, 325, 350, 375].flatMap((power_w): LactateStep[] => {
      const [lactate, vo2, hr] = [cell(`lac.${power_w}`), cell(`VO2.${power_w}`), cell(`HF.${power_w}`)];
      if (lactate === undefined && vo2 === undefined) return [];
      return [
        {
          power_w,
          ...(lactate === undefined ? {} : { lactate_mmol_l: lactate }),
          ...(vo2 === undefined ? {} : { vo2_l_min: vo2 / 1000 }),
          ...(hr === undefined ? {} : { heart_rate_bpm: hr }),
        },
      ];
    });
    for (const definition of [
      "baseline-plus-0.5",
      "baseline-plus-1.0",
      "fixed-2",
      "fixed-4",
      "log-log",
      "dmax",
      "modified-dmax",
    ]) {
      const entry = derived(steps, { analyser_floor_mmol_l: 0.5 }, definition).entry("lactate_threshold_power");
      if (entry?.kind === "not given") expect(entry.because.length).toBeGreaterThan(20);
      else if (entry?.kind === "quantity") {
        given++;
        expect(entry.value).toBeGreaterThanOrEqual(125);
        expect(entry.value).toBeLessThanOrEqual(375);
      } else expect.fail("neither a value nor a reason");
    }
  }
  // 7 definitions on 56 tests; most hold 4 to 6 steps, so more than a third must be answered.
  expect(given).toBeGreaterThan((7 * 56) / 3);
});
