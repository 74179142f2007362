/** How much people differ, from the reference values of a visit: the ground of the default worthwhile change. */
import { describe, expect, it } from "vitest";
import { compare } from "../../src/compare/compare.js";
import { knownOf } from "../../src/compare/known.js";
import { referenceSpreads } from "../../src/compare/reference-spreads.js";
import type { Cell, Table } from "../../src/kernel/measure.js";
import { changeOf, publishedErrors, quantity, visit } from "./visits.js";

const STRIP = [10, 20, 25, 50, 75, 80, 90];
const percentiles = (...rows: readonly (readonly Cell[])[]): Table => ({
  kind: "table",
  id: "reference_percentiles",
  columns: ["measure", "table", "group", ...STRIP.map((p) => `p${p}`)].map((key) => ({ key, title: key })),
  rows,
  origin: { kind: "key", key: "tables" },
});
// Values of women 40 to 49 on a treadmill as Kaminsky 2015 prints them: P25 22.1, P50 26.7, P75 32.4.
const KAMINSKY = ["vo2_peak_per_mass", "vo2peak-treadmill-kaminsky-2015", "women 40 to 49 years, treadmill"] as const;
const row: readonly Cell[] = [...KAMINSKY, 18.8, null, 22.1, 26.7, 32.4, null, 38.4];
const tables = [{ id: "vo2peak-treadmill-kaminsky-2015", source: { authors: "Kaminsky LA et al.", year: 2015 } }];

describe("referenceSpreads", () => {
  it("takes the middle half as 1.349 standard deviations", () => {
    const [spread] = referenceSpreads(visit("2026-03-02", [percentiles(row)]), tables);
    // By hand: (32.4 − 22.1) / 1.34898 = 7.635. The registry prints no SD beside these percentiles; the spread of
    // Milanović 2015 in adults of 18 to 45 years is 7.9.
    expect(spread?.sd).toBeCloseTo(7.635, 3);
    expect(spread?.from).toBe(
      "the reference group (women 40 to 49 years, treadmill), from its percentiles 25 and 75 taken as normal: Kaminsky LA et al. 2015",
    );
  });
  it("goes outwards only where the table prints nothing nearer, and gives nothing where a side is missing", () => {
    const outer = referenceSpreads(
      visit("2026-03-02", [percentiles([...KAMINSKY, 18.8, null, null, 26.7, null, null, 38.4])]),
      tables,
    );
    expect(outer[0]?.sd).toBeCloseTo((38.4 - 18.8) / 2.5631, 3);
    const oneSided = percentiles([...KAMINSKY, 18.8, null, 22.1, 26.7, null, null, null]);
    expect(referenceSpreads(visit("2026-03-02", [oneSided]), tables)).toEqual([]);
    expect(referenceSpreads(visit("2026-03-02", []), tables)).toEqual([]);
  });
  it("is named beside the worthwhile change it gives", () => {
    const at = (date: string, value: number) =>
      visit(date, [quantity("vo2_peak_per_mass", value), percentiles(row)], {
        purpose: date < "2026-04" ? "baseline" : "retest",
      });
    const now = at("2026-05-11", 30.1);
    const known = knownOf({}, [], publishedErrors, referenceSpreads(now, tables));
    const change = changeOf(compare(now, [at("2026-03-02", 27.3)], known), "change_vo2_peak_per_mass");
    // Part of the spread is error of the test; what is left of it differs between people (Hopkins 2000).
    const between = Math.sqrt(7.635 ** 2 - (change.typicalError ?? 0) ** 2);
    expect(change.worthwhile).toBeCloseTo(0.2 * between, 3);
    expect(change.worthwhileFrom).toMatch(
      /^0\.2 of the spread between people \(SD 7\.6\) in the reference group \(women/,
    );
  });
});
