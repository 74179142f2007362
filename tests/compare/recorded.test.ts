/** What comparing writes survives the results file: written, read and written again, no byte changes. */
import { describe, expect, it } from "vitest";
import { compare } from "../../src/compare/compare.js";
import { readResults } from "../../src/results/read.js";
import { withEntries } from "../../src/results/record.js";
import { writeResults } from "../../src/results/write.js";
import { CONDITIONS, changeOf, quantity, tablesKnown, visit } from "./visits.js";

describe("changes in results.yaml", () => {
  const { caffeine, ...conditions } = CONDITIONS;
  const at = (date: string, perMass: number, mass: number, purpose: "baseline" | "retest", own = conditions) =>
    visit(
      date,
      [
        quantity("body_mass", mass),
        quantity("vo2_peak", (perMass * mass) / 1000),
        quantity("vo2_peak_per_mass", perMass),
      ],
      { purpose, conditions: own },
    );
  const now = at("2026-10-05", 45.5, 71, "retest");
  const earlier = [
    at("2026-03-02", 29, 75, "baseline"),
    at("2026-03-04", 30, 75, "baseline"),
    at("2026-05-11", 33, 73, "retest", { ...conditions, mode: "treadmill" }),
  ];
  const known = {
    ...tablesKnown,
    primaryOutcomes: ["vo2_peak_per_mass", "fat_mass"],
    targets: [{ measure: "vo2_peak_per_mass", goal: "an invented race", date: "2027-01-01", atLeast: 50 }],
  };
  const recorded = withEntries(now, compare(now, earlier, known));
  const text = writeResults(recorded).toString();

  it("keep every byte", () => {
    expect(caffeine).toBe("none for 6 h");
    expect(writeResults(readResults(text)).toString()).toBe(text);
  });
  it("keep tests averaged, what was unchecked, and notes", () => {
    const before = changeOf(recorded.entries, "change_vo2_peak_per_mass");
    expect(changeOf(readResults(text).entries, "change_vo2_peak_per_mass")).toEqual(before);
    expect(before.tests).toEqual({ before: 2, now: 1 });
    expect(before.unchecked).toEqual([
      "caffeine before the visit",
      "whether a maximum was reached (confirmed at neither visit)",
    ]);
    expect(before.notes?.length).toBeGreaterThanOrEqual(1);
  });
  it("hold trend, explained change, goal and the missing primary outcome", () => {
    const ids = recorded.entries.map((e) => e.id);
    for (const id of [
      "trend_vo2_peak_per_mass",
      "explained_vo2_peak_per_mass",
      "goal_vo2_peak_per_mass_1",
      "change_fat_mass",
    ])
      expect(ids).toContain(id);
  });
});
