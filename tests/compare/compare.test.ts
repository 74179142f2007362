/** One change from gate to sentence: numbers by hand, verdicts, and what is said where something is missing. */
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { compare } from "../../src/compare/compare.js";
import { type Known, knownOf } from "../../src/compare/known.js";
import { VERDICTS } from "../../src/compare/verdict.js";
import type { Client } from "../../src/kernel/generated/client.js";
import type { Quantity } from "../../src/kernel/measure.js";
import { withEntries } from "../../src/results/record.js";
import { changeOf, nothingKnown, publishedErrors, quantity, tablesKnown, visit } from "./visits.js";

const BASE = "2026-03-02";
const RETEST = "2026-05-11";
const run = (id: string, before: number, now: number, known: Known = tablesKnown, more: Partial<Quantity> = {}) =>
  compare(
    visit(RETEST, [quantity(id, now)], { purpose: "retest" }),
    [visit(BASE, [quantity(id, before, more)])],
    known,
  );
const one = (id: string, before: number, now: number, known: Known = tablesKnown) =>
  changeOf(run(id, before, now, known), `change_${id}`);

describe("a change with a published error", () => {
  it("follows the worked example of 44.0 to 47.1 at CV 4.9 %: more than one error, inside the detectable change", () => {
    const known = {
      ...nothingKnown,
      publishedErrors: publishedErrors.filter((t) => t.id === "cycle-exercise-test-2018"),
    };
    const change = one("vo2_peak_per_mass", 44.0, 47.1, known);
    expect(change.change).toBe(3.1);
    expect(change.typicalError).toBeCloseTo(44 * 0.049, 6);
    // By hand: t(0.975; 44) = 2.0154; exp(2.0154 √2 ln 1.049) − 1 = 14.61 % of 44.0 = 6.43.
    expect(change.detectable).toBeCloseTo(6.43, 2);
    expect(change.verdict).toBe("cannot tell");
    expect(change.low).toBeLessThan(0);
    expect(change.errorFrom).toContain("n 45");
    expect(change.errorFrom).toContain("within 30 days");
  });

  it("claims what lies beyond error in either direction, and says which is wanted", () => {
    const up = one("vo2_peak_per_mass", 40, 50);
    expect(up.verdict).toBe("higher, beyond error");
    expect(up.because).toContain("the direction wanted");
    const down = one("systolic_pressure", 148, 126);
    expect(down.verdict).toBe("lower, beyond error");
    // By hand: t(0.975; 224) = 1.9706; 1.9706 · √2 · 5.6 = 15.61 mmHg.
    expect(down.detectable).toBeCloseTo(15.61, 2);
    expect(down.low).toBeCloseTo(-22 - 15.61, 1);
  });

  it("draws the line at the detectable change of 15.61 mmHg, and claims nothing of an interval printed from 0", () => {
    expect(one("systolic_pressure", 120, 135).verdict).toBe("no clear change");
    expect(one("systolic_pressure", 120, 136).verdict).toBe("no clear change"); // from 0.39, which prints as 0
    expect(one("systolic_pressure", 120, 137).verdict).toBe("higher, beyond error");
    expect(one("systolic_pressure", 136, 121).verdict).toBe("no clear change");
    expect(one("systolic_pressure", 137, 120).verdict).toBe("lower, beyond error");
  });

  it("prints chances as whole percent that add to 100, and never the words of a test of hypotheses", () => {
    for (const now of [30, 38, 41, 44, 47, 55]) {
      const change = one("vo2_peak_per_mass", 42, now);
      const { higher, trivial, lower } = change.chances ?? { higher: 0, trivial: 0, lower: 0 };
      expect(higher + trivial + lower).toBe(100);
      expect(VERDICTS).toContain(change.verdict);
      expect(change.because).not.toMatch(/significan|abnormal|poor|excellent|p-value|NaN|undefined/i);
    }
  });

  it("measures a worthwhile change by the client's own word first, then by a fifth of the spread, and names it", () => {
    const client: Pick<Client, "goals" | "primary_outcomes"> = {
      goals: [{ goal: "an invented race", targets: [{ measure: "vo2_peak_per_mass", at_least: 50, worthwhile: 2 }] }],
      primary_outcomes: ["vo2_peak_per_mass"],
    };
    const own = one("vo2_peak_per_mass", 42, 45, knownOf(client, [], publishedErrors));
    expect(own.worthwhile).toBe(2);
    expect(own.worthwhileFrom).toContain("the client's own");
    expect(own.primary).toBe(true);
    const fifth = one("vo2_peak_per_mass", 42, 45);
    // By hand: error exp(0.661 + 0.006 · 43.5) = 2.514; 0.2 √(7.9² − 2.514²) = 1.498.
    expect(fifth.worthwhile).toBeCloseTo(1.498, 3);
    expect(fifth.worthwhileFrom).toContain("0.2 of the spread");
  });

  it("sets the gain of training programmes beside the detectable change", () => {
    const notes = one("vo2_peak_per_mass", 42, 45).notes ?? [];
    expect(notes.some((note) => note.includes("4.9 ± 1.4"))).toBe(true);
  });

  it("warns of regression to the mean where the baseline was extreme, with the drift where it can be known", () => {
    // Twelve invented pairs with mean 42 and wide spread.
    const pairs = Array.from({ length: 12 }, (_, i): [number, number] => [36.5 + i, 36.5 + i + (i % 2 ? 2 : -2)]);
    const known = { ...nothingKnown, laboratoryRetests: [{ measure: "vo2_peak_per_mass", pairs, from: "invented" }] };
    const low = one("vo2_peak_per_mass", 32, 36, known).notes ?? [];
    expect(low.join()).toMatch(/first value was low.*would on average read 1\.\d mL\/kg\/min higher/);
    expect((one("vo2_peak_per_mass", 42, 44, known).notes ?? []).join()).not.toContain("first value");
    const placed = (percentile: number) =>
      changeOf(
        run("vo2_peak_per_mass", 32, 36, tablesKnown, { norms: [{ table: "invented", percentile }] }),
        "change_vo2_peak_per_mass",
      ).notes?.join();
    expect(placed(4)).toContain("was low for the reference group (percentile 4): part of an extreme result is chance");
    expect(placed(96)).toContain("was high");
    expect(placed(30)).not.toContain("first value");
  });
});

describe("where something is missing", () => {
  it("gives no verdict without an error, and shows the numbers", () => {
    const change = one("vo2_peak_per_mass", 42, 52, nothingKnown);
    expect(change.verdict).toBe("error not known");
    expect([change.low, change.detectable, change.chances]).toEqual([undefined, undefined, undefined]);
    expect(change.because).toContain("42.0 mL/kg/min");
  });

  it("does not use a table outside whom it covers", () => {
    expect(
      changeOf(
        compare(
          visit(RETEST, [quantity("vo2_peak_per_mass", 52)], { ageYears: 15 }),
          [visit(BASE, [quantity("vo2_peak_per_mass", 42)])],
          tablesKnown,
        ),
        "change_vo2_peak_per_mass",
      ).verdict,
    ).toBe("error not known");
  });

  it("says that a primary outcome was not measured", () => {
    const entries = run("body_mass", 70, 72, { ...tablesKnown, primaryOutcomes: ["vo2_peak"] });
    const entry = entries.find((e) => e.id === "change_vo2_peak");
    expect(entry).toMatchObject({ kind: "not given" });
    expect(entry?.kind === "not given" && entry.because).toContain("the baseline of 2 March 2026");
  });

  it("compares nothing at a first visit", () => {
    expect(compare(visit(BASE, [quantity("body_mass", 70)]), [], tablesKnown)).toEqual([]);
  });

  it("never looks at a later visit or another client", () => {
    const now = visit(BASE, [quantity("vo2_peak_per_mass", 42)]);
    const later = visit(RETEST, [quantity("vo2_peak_per_mass", 52)], { purpose: "retest" });
    const stranger = visit("2026-01-05", [quantity("vo2_peak_per_mass", 60)], { client: "c-002" });
    expect(compare(now, [later, stranger], tablesKnown)).toEqual([]);
  });
});

describe("the laboratory's own error", () => {
  const pairs = (n: number) =>
    Array.from({ length: n }, (_, i): [number, number] => [40 + i, 40 + i + (i % 2 ? 1.5 : -1.5)]);
  const set = (n: number) => ({
    measure: "vo2_peak_per_mass",
    pairs: pairs(n),
    from: "invented",
    daysBetween: "within 7",
  });
  const from = (n: number, more: object = {}) =>
    one("vo2_peak_per_mass", 42, 45, { ...tablesKnown, laboratoryRetests: [{ ...set(n), ...more }] }).errorFrom;
  it("goes before a published one from ten pairs on", () => {
    expect(from(10)).toMatch(/^laboratory retests, 10 pairs, within 7 days apart, CV/);
    expect(from(9)).toContain("39 studies");
    expect(one("vo2_peak_per_mass", 42, 45, { ...nothingKnown, laboratoryRetests: [set(9)] }).errorFrom).toContain(
      "fewer than ten pairs",
    );
    expect(one("vo2_peak_per_mass", 42, 45, { ...nothingKnown, laboratoryRetests: [set(2)] }).verdict).toBe(
      "error not known",
    );
  });
  it("serves a value per kilogram from the uptake it is made of", () => {
    const uptake = { ...set(12), measure: "vo2_peak" };
    const change = one("vo2_peak_per_mass", 42, 45, { ...tablesKnown, laboratoryRetests: [uptake] });
    expect(change.errorFrom).toMatch(/^laboratory retests of peak oxygen uptake, 12 pairs/);
    // The spread between those people is in L/min and says nothing about mL/kg/min.
    expect(change.worthwhileFrom).toContain("SD 7.9");
  });
  it("may be a precision study recorded with the value, but never the error of an equation", () => {
    const error = (from: string) => ({ error: { typical: 0.3, from } });
    const now = (from: string) =>
      changeOf(
        compare(
          visit(RETEST, [quantity("fat_mass", 18, error(from))], { purpose: "retest" }),
          [visit(BASE, [quantity("fat_mass", 20)])],
          tablesKnown,
        ),
        "change_fat_mass",
      );
    const own = "the laboratory's own precision study: 30 adults scanned twice (invented)";
    expect(readFileSync("src/derive/composition/write-dxa.ts", "utf8")).toContain(
      "the laboratory's own precision study",
    );
    expect(now(own).errorFrom).toBe(own);
    // By hand: 1.96 · √2 · 0.3 = 0.83 kg.
    expect(now(own).detectable).toBeCloseTo(0.83154, 5);
    expect(now("standard error of the equation").errorFrom).toContain("A ceiling, not this laboratory's own precision");
  });
  it("is not carried to another kind of exercise", () => {
    expect(from(12, { conditions: { mode: "treadmill" } })).toContain("39 studies");
    expect(from(12, { conditions: { mode: "cycle" } })).toContain("laboratory retests");
  });
});

describe("many measures", () => {
  it("names the rate of false alarms among those not declared beforehand", () => {
    const ids = ["vo2_peak", "vo2_peak_per_mass", "ventilation_peak", "oxygen_pulse_peak"] as const;
    const values = [2.8, 40, 100, 15];
    const all = ids.map((id, i) => quantity(id, values[i] as number));
    const entries = compare(visit(RETEST, all), [visit(BASE, all)], { ...tablesKnown, primaryOutcomes: ["vo2_peak"] });
    const alarms = entries.find((e) => e.id === "change_false_alarms");
    // By hand: 1 − 0.95³ = 0.143; 0.05 · 3 = 0.15, printed 0.2.
    expect(alarms).toMatchObject({ verdict: "3 further comparisons" });
    expect(alarms?.kind === "judgement" && alarms.because).toContain("about 14 in 100");
  });

  it("keeps what nobody asked about in one table", () => {
    const entries = run("verification_vo2", 2.9, 3.1, nothingKnown);
    expect(entries.map((e) => e.id)).toEqual(["change_others"]);
  });

  it("gives entries that the results file can round", () => {
    const now = visit(RETEST, [quantity("vo2_peak_per_mass", 45)]);
    const recorded = withEntries(now, run("vo2_peak_per_mass", 42, 45));
    const change = changeOf(recorded.entries, "change_vo2_peak_per_mass");
    expect(change.low).toBe(Math.round((change.low as number) * 10) / 10);
  });
});
