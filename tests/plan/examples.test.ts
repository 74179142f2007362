/** The plans of the example practice, as recorded: complete from the visit to the goal, and only where they may be. */
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { addDays, mondayOf } from "../../src/kernel/days.js";
import { readResults } from "../../src/results/read.js";
import { number, rowsOf } from "./plan-for.js";

const recorded = (visit: string) =>
  readResults(readFileSync(`examples/skarn-point/clients/${visit}/results.yaml`, "utf8"));
const state = (visit: string) => {
  const entry = recorded(visit).entries.find((one) => one.id === "programme_state");
  return entry?.kind === "judgement" ? entry.verdict : undefined;
};

describe("plans of the examples", () => {
  it.each([
    ["c-017/2026-03-02-baseline", "2026-09-12", "ready"],
    ["c-017/2026-05-11-retest", "2026-09-12", "ready"],
    ["c-017/2026-07-20-retest", "2026-09-12", "ready"],
    ["c-023/2026-02-16-baseline", "2026-08-29", "ready"],
    ["c-023/2026-04-27-retest", "2026-08-29", "ready"],
    ["c-031/2026-03-23-baseline", "2026-06-20", "not printed"],
    ["c-031/2026-06-01-retest", "2026-06-20", "not printed"],
  ])("%s runs to %s and is %s", (visit, goal, verdict) => {
    expect(state(visit)).toBe(verdict);
    const { date, entries } = recorded(visit);
    const weeks = rowsOf(entries, "programme_weeks");
    expect(weeks[0]?.monday).toBe(mondayOf(addDays(date, 1)));
    expect(weeks.at(-1)?.monday).toBe(mondayOf(goal));
    expect(weeks.map((week) => week.week)).toEqual(weeks.map((_, i) => i + 1));
    expect(weeks.every((week) => number(week, "minutes") > 0)).toBe(true);
  });

  it("is refused where the screening refers, and where nobody was asked", () => {
    for (const visit of ["c-044/2026-03-30-baseline", "c-044/2026-06-08-retest"]) {
      expect(state(visit)).toBe("not printed");
      expect(rowsOf(recorded(visit).entries, "programme_weeks")).toEqual([]);
    }
  });

  it("holds the log against the plan of the visit before", () => {
    const { entries } = recorded("c-017/2026-05-11-retest");
    const before = rowsOf(recorded("c-017/2026-03-02-baseline").entries, "programme_weeks");
    const done = rowsOf(entries, "done_against_planned");
    expect(done).toHaveLength(10);
    for (const week of done) expect(week.planned).toBe(before.find((one) => one.monday === week.monday)?.minutes);
    expect(done.some((week) => number(week, "impulse") > 0)).toBe(true);
  });
});
