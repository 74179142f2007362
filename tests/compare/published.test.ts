/** Tables printed in papers give their printed answers; real groups that did not change are seldom said to have changed. */
import { existsSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { compare } from "../../src/compare/compare.js";
import { intraclassAgreement } from "../../src/compare/error/intraclass-agreement.js";
import { intraclassConsistency } from "../../src/compare/error/intraclass-consistency.js";
import { limitsOfAgreement } from "../../src/compare/error/limits-of-agreement.js";
import type { Pair } from "../../src/compare/error/pairs.js";
import { meanSquares } from "../../src/compare/error/two-way-variance.js";
import { retestReport, suspects } from "../../src/compare/retest-report.js";
import { isClaim } from "../../src/kernel/measure.js";
import { sampleSd } from "../../src/kernel/statistics.js";
import { CONDITIONS, changeOf, quantity, tablesKnown, visit } from "./visits.js";

const DATA = "../shared/data";
const here = (file: string) => existsSync(`${DATA}/${file}`);
const rows = (file: string): Record<string, string>[] => {
  const [head = "", ...lines] = readFileSync(`${DATA}/${file}`, "utf8").trim().split(/\r?\n/);
  const names = head.split(",").map((name) => name.replaceAll('"', ""));
  return lines.map((line) =>
    Object.fromEntries(line.split(",").map((cell, i) => [names[i], cell.replaceAll('"', "")])),
  );
};

const PEFR = "published-worked/pefr-1986.csv";
describe.skipIf(!here(PEFR))(`Bland & Altman 1986, Table 1 (skipped where ${DATA} is absent)`, () => {
  it("prints mean −2.1, SD 38.8, limits −79.7 to 75.5 with two SD (from the rounded mean and SD)", () => {
    const pairs = rows(PEFR).map((r): Pair => [Number(r.mini_1), Number(r.large_1)]);
    expect(pairs).toHaveLength(17);
    const report = retestReport(pairs);
    expect(Math.abs(report.shift.mean - -2.1)).toBeLessThanOrEqual(0.05);
    expect(Math.abs(sampleSd(pairs.map(([a, b]) => b - a)) - 38.8)).toBeLessThanOrEqual(0.05);
    const limits = limitsOfAgreement(pairs, 2);
    // Unrounded −79.65 and 75.41; the paper's −79.7 and 75.5 come from −2.1 ± 77.6.
    expect(Math.abs(limits.low - -79.65)).toBeLessThanOrEqual(0.005);
    expect(Math.abs(limits.high - 75.41)).toBeLessThanOrEqual(0.005);
    expect(Math.abs(-2.1 - 2 * 38.8 - -79.7)).toBeLessThan(1e-9);
  });
});

const ICC = "published-worked/icc-six-by-four-1979.csv";
describe.skipIf(!here(ICC))(
  `Shrout & Fleiss 1979, six targets by four judges (skipped where ${DATA} is absent)`,
  () => {
    it("prints .29 and .71, from mean squares 11.24, 32.49 and 1.02", () => {
      const scores = rows(ICC).map((r) => [r.j1, r.j2, r.j3, r.j4].map(Number));
      const squares = meanSquares("test", scores);
      expect(squares.betweenPeople).toBeCloseTo(11.2417, 4);
      expect(squares.betweenTrials).toBeCloseTo(32.4861, 4);
      expect(squares.residual).toBeCloseTo(1.0194, 4);
      expect(Math.round(100 * intraclassAgreement(scores).value)).toBe(29);
      expect(Math.round(100 * intraclassConsistency(scores).value)).toBe(71);
    });
  },
);

const SKIERS = "exscidata/skiers-heat-pre-post.csv";
/** Rønnestad and others 2022, doi:10.1111/sms.14156: twelve skiers of the control group, five weeks apart, elite training. */
describe.skipIf(!here(SKIERS))(
  `control group of trained skiers, five weeks apart (skipped where ${DATA} is absent)`,
  () => {
    const group = (column: string, which: string): Pair[] => {
      const of = (time: string) =>
        new Map(
          rows(SKIERS)
            .filter((r) => r.group === which && r.time === time)
            .map((r) => [r.participant, Number(r[column] || NaN)]),
        );
      const [pre, post] = [of("pre"), of("post")];
      return [...pre].flatMap(([who, a]): Pair[] => {
        const b = post.get(who) ?? Number.NaN;
        return Number.isFinite(a) && Number.isFinite(b) ? [[a, b]] : [];
      });
    };

    it("gives a believable error of VO2max: 1.5 to 5 % in trained people, as retest studies print", () => {
      const pairs = group("VO2max", "con");
      expect(pairs.length).toBeGreaterThanOrEqual(10);
      const report = retestReport(pairs);
      expect(report.percent).toBeGreaterThan(1.5);
      expect(report.percent).toBeLessThan(5);
      expect(report.consistency?.value).toBeGreaterThan(0.8);
      expect(report.remarks.some((remark) => remark.includes("28 pairs"))).toBe(true);
    });

    it("claims a change in at most two of the twelve, with a published error of treadmill tests", () => {
      const claims = group("VO2max_kg", "con").filter(([a, b]) => {
        const at = (date: string, value: number, purpose: "baseline" | "retest") =>
          visit(date, [quantity("vo2_peak_per_mass", value)], {
            sex: "male",
            ageYears: 23,
            purpose,
            conditions: { ...CONDITIONS, mode: "treadmill" },
          });
        const entries = compare(at("2026-06-15", b, "retest"), [at("2026-05-11", a, "baseline")], tablesKnown);
        return isClaim(changeOf(entries, "change_vo2_peak_per_mass"));
      });
      expect(claims.length).toBeLessThanOrEqual(2);
    });
  },
);

describe("a report of retests", () => {
  const good: Pair[] = [
    [42.1, 43.0],
    [47.5, 46.8],
    [50.3, 51.9],
    [38.9, 39.5],
    [55.2, 54.1],
    [44.0, 45.6],
    [48.6, 47.9],
    [52.7, 53.8],
    [40.5, 41.7],
    [46.2, 45.8],
  ];
  it("flags one pair of 89 and 11 as a slip, and nothing in a clean set", () => {
    expect(suspects(good)).toEqual([]);
    const slipped = [...good.slice(0, 4), [89, 11] as Pair, ...good.slice(5)];
    expect(suspects(slipped)).toEqual([4]);
    expect(retestReport(slipped).remarks[0]).toContain("Pair 5 (89 and 11)");
  });
  it("flags a slip among readings that otherwise agree to the digit", () => {
    expect(
      suspects([
        [80, 80],
        [85, 85],
        [90, 90],
        [70, 70],
        [89, 11],
        [75, 75],
      ]),
    ).toEqual([4]);
  });
  it("flags learning, and says nothing of it where the shift may be chance", () => {
    const learnt = good.map(([a, b]): Pair => [a, b + 3]);
    expect(retestReport(learnt).remarks.some((r) => r.includes("on average higher: learning"))).toBe(true);
    expect(retestReport(good).remarks.some((r) => r.includes("learning"))).toBe(false);
    expect(retestReport(learnt).typicalError).toBeCloseTo(retestReport(good).typicalError, 9);
    expect(retestReport(learnt).rootMeanSquareSd).toBeGreaterThan(2);
  });
  it("flags fewer than ten pairs", () => {
    expect(retestReport(good.slice(0, 9)).remarks.join()).toContain("fewer than ten");
    expect(retestReport(good).remarks.join()).not.toContain("fewer than ten");
  });
});
