/** More than two visits: occasions, trend, goals, and why a value changed. */

import { describe, expect, it } from "vitest";
import { compare } from "../../src/compare/compare.js";
import { productShares } from "../../src/compare/explained/product-shares.js";
import { occasionsOf } from "../../src/compare/occasions.js";
import { retestPairs } from "../../src/compare/retest-pairs.js";
import type { Table } from "../../src/kernel/measure.js";
import fc from "../tools/properties.js";
import { CONDITIONS, changeOf, nothingKnown, quantity, tablesKnown, visit } from "./visits.js";

const uptake = (date: string, value: number, more = {}) => visit(date, [quantity("vo2_peak_per_mass", value)], more);
const table = (entries: readonly { id: string }[], id: string): Table => {
  const entry = entries.find((e) => e.id === id) as Table | undefined;
  if (entry?.kind !== "table") throw new Error(`no table ${id} among ${entries.map((e) => e.id).join(", ")}`);
  return entry;
};
const column = (from: Table, key: string) => {
  const at = from.columns.findIndex((c) => c.key === key);
  return from.rows.map((row) => row[at]);
};

describe("occasions", () => {
  it("joins repeats within seven days and keeps a retest apart", () => {
    const visits = [
      uptake("2026-03-02", 40),
      uptake("2026-03-05", 42),
      uptake("2026-03-08", 41, { purpose: "reliability" }),
      uptake("2026-03-09", 43, { purpose: "retest" }),
      uptake("2026-05-11", 44, { purpose: "retest" }),
    ];
    expect(occasionsOf(visits).map((o) => o.map((v) => v.date))).toEqual([
      ["2026-03-02", "2026-03-05", "2026-03-08"],
      ["2026-03-09"],
      ["2026-05-11"],
    ]);
  });

  it("ends seven days after its first visit", () => {
    const apart = (date: string) => occasionsOf([uptake("2026-03-02", 40), uptake(date, 41)]).length;
    expect(apart("2026-03-09")).toBe(1);
    expect(apart("2026-03-10")).toBe(2);
  });

  it("averages tests, so that the detectable change shrinks by √2 with two on each side", () => {
    const now = uptake("2026-05-13", 46, { purpose: "retest" });
    const single = changeOf(compare(now, [uptake("2026-03-02", 42)], tablesKnown), "change_vo2_peak_per_mass");
    const double = changeOf(
      compare(
        now,
        [uptake("2026-03-02", 41), uptake("2026-03-04", 43), uptake("2026-05-11", 46, { purpose: "retest" })],
        tablesKnown,
      ),
      "change_vo2_peak_per_mass",
    );
    expect(double.tests).toEqual({ before: 2, now: 2 });
    expect([double.before, double.now]).toEqual([42, 46]);
    expect((single.detectable as number) / (double.detectable as number)).toBeCloseTo(Math.SQRT2, 9);
  });

  it("averages only what is comparable", () => {
    const other = uptake("2026-03-04", 48, { conditions: { ...CONDITIONS, mode: "treadmill" } });
    const change = changeOf(
      compare(uptake("2026-05-11", 46, { purpose: "retest" }), [other, uptake("2026-03-05", 42)], tablesKnown),
      "change_vo2_peak_per_mass",
    );
    expect([change.before, change.tests]).toEqual([42, undefined]);
  });
});

describe("trend", () => {
  const earlier = [
    uptake("2026-03-02", 40),
    uptake("2026-05-11", 44, { purpose: "retest" }),
    uptake("2026-07-20", 47, { purpose: "retest", conditions: { ...CONDITIONS, ergometer: "cycle_two" } }),
  ];
  const entries = compare(uptake("2026-10-05", 45.5, { purpose: "retest" }), earlier, tablesKnown);

  it("sets each visit against baseline and against the one before, with gaps and what differs", () => {
    const trend = table(entries, "trend_vo2_peak_per_mass");
    expect(column(trend, "value")).toEqual([40, 44, 47, 45.5]);
    expect(column(trend, "from_baseline")).toEqual([null, 4, 7, 5.5]);
    expect(column(trend, "from_previous")).toEqual([null, 4, 3, -1.5]);
    expect(column(trend, "days")).toEqual([null, 70, 70, 77]);
    expect(column(trend, "differs")).toEqual([
      "",
      "",
      "ergometer (cycle_one, now cycle_two)",
      "ergometer (cycle_two, now cycle_one)",
    ]);
    // The visit on another ergometer cannot be the best of those like the latest.
    expect(column(trend, "mark")).toEqual(["baseline", "", "", "best, latest"]);
    // By hand: one test at 40 varies by exp(0.661 + 0.24) = 2.462; 1.96 · 2.462 = 4.83.
    expect(column(trend, "low")[0]).toBeCloseTo(40 - 4.825, 2);
  });

  it("gives the change since the last visit beside that since baseline", () => {
    expect(changeOf(entries, "change_vo2_peak_per_mass").before).toBe(40);
    const since = changeOf(entries, "change_vo2_peak_per_mass_since_2026_07_20");
    expect([since.before, since.verdict]).toEqual([47, "not comparable"]);
  });

  it("is not drawn from two visits", () => {
    const two = compare(uptake("2026-05-11", 44), [uptake("2026-03-02", 40)], tablesKnown);
    expect(two.some((e) => e.id.startsWith("trend_"))).toBe(false);
  });
});

describe("explained change", () => {
  it("adds up exactly, whatever the factors, and does not depend on their order", () => {
    const value = fc.double({ min: 0.5, max: 100, noNaN: true });
    const factor = fc.record({ before: value, after: value, power: fc.constantFrom(1 as const, -1 as const) });
    fc.assert(
      fc.property(fc.array(factor, { minLength: 1, maxLength: 4 }), (factors) => {
        const product = (side: "before" | "after") => factors.reduce((y, f) => y * f[side] ** f.power, 1);
        const shares = productShares(factors);
        const sum = shares.reduce((a, b) => a + b, 0);
        const scale = Math.max(product("before"), product("after"));
        expect(Math.abs(sum - (product("after") - product("before"))) / scale).toBeLessThan(1e-8);
        const turned = [...productShares([...factors].reverse())].reverse();
        for (const [i, share] of shares.entries())
          expect(Math.abs(share - (turned[i] as number)) / scale).toBeLessThan(1e-8);
      }),
    );
  });

  it("splits VO2peak per kilogram into uptake and mass, with what rounding leaves", () => {
    const at = (vo2: number, mass: number, perMass: number) => [
      quantity("body_mass", mass),
      quantity("vo2_peak", vo2),
      quantity("vo2_peak_per_mass", perMass),
    ];
    const entries = compare(
      visit("2026-05-11", at(3.15, 72, 43.8)),
      [visit("2026-03-02", at(3.0, 75, 40))],
      tablesKnown,
    );
    const shares = column(table(entries, "explained_vo2_peak_per_mass"), "share") as number[];
    // By hand: L = 3.75/ln(43.75/40) = 41.847; uptake L ln 1.05 = 2.04; mass L ln(75/72) = 1.71; 3.8 − 3.75 = 0.05 is rounding.
    expect(shares).toEqual([2.04, 1.71, 0.05, 3.8]);
  });

  it("splits threshold speed into uptake, fraction and cost", () => {
    const at = (peak: number, threshold: number, speed: number) => [
      quantity("vo2_peak_per_mass", peak),
      quantity("vt2_vo2_per_mass", threshold),
      quantity("vt2_speed", speed),
    ];
    const treadmill = { conditions: { ...CONDITIONS, mode: "treadmill" } };
    const entries = compare(
      visit("2026-05-11", at(50, 42, 12.6), treadmill),
      [visit("2026-03-02", at(48, 40, 12), treadmill)],
      tablesKnown,
    );
    const shares = column(table(entries, "explained_vt2_speed"), "share") as number[];
    // By hand: cost is 200 mL/kg/km at both, so uptake and fraction explain all of 0.6 km/h.
    expect(shares[2]).toBe(0);
    expect((shares[0] as number) + (shares[1] as number) + (shares[3] as number)).toBeCloseTo(0.6, 9);
  });

  it("does not split a threshold speed that a rising grade, not speed, decided", () => {
    const at = (grade: number, speed: number) => [
      quantity("vo2_peak_per_mass", 48),
      quantity("vt2_vo2_per_mass", 40),
      quantity("vt2_speed", speed),
      quantity("vt2_grade", grade),
    ];
    const ids = (grade: number, speed: number) =>
      compare(visit("2026-05-11", at(grade, speed)), [visit("2026-03-02", at(6, 5))], tablesKnown).map((e) => e.id);
    expect(ids(8, 5)).not.toContain("explained_vt2_speed");
    expect(ids(8, 5.5)).not.toContain("explained_vt2_speed");
    expect(ids(6, 5.5)).toContain("explained_vt2_speed");
  });

  it("sets the hands side by side", () => {
    const at = (left: number, right: number) => [
      quantity("grip_strength_left", left),
      quantity("grip_strength_right", right),
    ];
    const entries = compare(visit("2026-05-11", at(33, 38)), [visit("2026-03-02", at(30, 37))], tablesKnown);
    expect(column(table(entries, "explained_grip_strength"), "change")).toEqual([3, 1, -2]);
  });
});

describe("goals", () => {
  const target = { measure: "vo2_peak_per_mass", goal: "an invented race", date: "2026-09-07", atLeast: 50 };
  const verdict = (now: number, more: object = {}, date = "2026-06-05") => {
    const entries = compare(uptake(date, now, { purpose: "retest" }), [uptake("2026-03-02", 40)], {
      ...tablesKnown,
      targets: [{ ...target, ...more }],
    });
    const goal = entries.find((e) => e.id === "goal_vo2_peak_per_mass_1");
    return goal?.kind === "judgement" ? goal : undefined;
  };
  it("says on course, behind or cannot tell yet, with error considered", () => {
    // Half way (95 of 189 days) the line stands at 45.0; one test varies by about 2.5, the line by half of that.
    expect(verdict(48)?.verdict).toBe("on course");
    expect(verdict(45.5)?.verdict).toBe("cannot tell yet");
    expect(verdict(41)?.verdict).toBe("behind");
    // By hand: margin 2.17, error 2.571 √(1 + 0.497²) = 2.871, chance 0.775; with the whole error of the baseline 0.725.
    expect(verdict(47.2)?.verdict).toBe("on course");
    expect(verdict(47.2)?.because).toContain("about 78 in 100");
    expect(verdict(48)?.because).toContain("it would now be 45.0 mL/kg/min");
  });
  it("weighs the error of the baseline by the way that is still to go", () => {
    // By hand, 47 of 189 days: line 42.487, margin 4.713, error 2.571 √(1 + 0.751²) = 3.216, z 1.466: 0.93 (0.96 were the
    // weight 0.249).
    expect(verdict(47.2, {}, "2026-04-18")?.because).toContain("about 93 in 100");
  });
  it("says when it is reached, not reached at its date, or has no date", () => {
    expect(verdict(53)?.verdict).toBe("reached");
    expect(verdict(44, {}, "2026-09-07")?.verdict).toBe("not reached");
    expect(verdict(44, { date: undefined })?.because).toContain("no date");
  });
  it("turns round for a target that is to be at most", () => {
    const at = (date: string, value: number) => visit(date, [quantity("systolic_pressure", value)]);
    const entries = compare(at("2026-06-05", 120), [at("2026-03-02", 150)], {
      ...tablesKnown,
      targets: [{ measure: "systolic_pressure", goal: "an invented aim", date: "2026-09-07", atMost: 135 }],
    });
    expect(entries.find((e) => e.id === "goal_systolic_pressure_1")).toMatchObject({ verdict: "reached" });
  });
  it("is not judged without an error or on another ergometer", () => {
    const now = uptake("2026-06-05", 45, { conditions: { ...CONDITIONS, ergometer: "cycle_two" } });
    const known = { ...tablesKnown, targets: [target] };
    expect(compare(now, [uptake("2026-03-02", 40)], known).at(-1)).toMatchObject({ verdict: "cannot tell yet" });
    expect(compare(now, [uptake("2026-03-02", 40)], { ...nothingKnown, targets: [target] }).at(-1)).toMatchObject({
      verdict: "cannot tell yet",
    });
  });
});

describe("pairs out of reliability visits", () => {
  it("pairs each with the nearest visit within fourteen days, by kind of exercise", () => {
    const of = (client: string, date: string, value: number, more = {}) => uptake(date, value, { client, ...more });
    const again = { purpose: "reliability" as const };
    const treadmill = { conditions: { ...CONDITIONS, mode: "treadmill" } };
    const sets = retestPairs([
      of("c-001", "2026-03-02", 40),
      of("c-001", "2026-03-06", 41, again),
      of("c-002", "2026-03-09", 52, again),
      of("c-002", "2026-03-04", 50),
      of("c-003", "2026-01-01", 60),
      of("c-003", "2026-03-01", 61, again),
      of("c-004", "2026-03-02", 45, treadmill),
      of("c-004", "2026-03-09", 44, { ...again, ...treadmill }),
      of("c-005", "2026-03-02", 45, treadmill),
      of("c-005", "2026-03-04", 49, again),
    ]);
    expect(sets.map((s) => [s.conditions?.mode, s.pairs, s.daysBetween])).toEqual([
      [
        "cycle",
        [
          [40, 41],
          [50, 52],
        ],
        "4 to 5",
      ],
      ["treadmill", [[45, 44]], "7"],
    ]);
  });
});
