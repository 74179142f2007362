/**
 * The weeks of a plan, for any client: properties that must hold whatever is asked. The taper's 41 to 60 % is published
 * (Bosquet 2007, Med Sci Sports Exerc 39:1358–1365); the cap and the easier weeks are common practice.
 */

import { describe, expect, it } from "vitest";
import { addDays, daysBetween, mondayOf } from "../../src/kernel/days.js";
import { taper, taperDays } from "../../src/plan/weeks/taper.js";
import { taperMinutes } from "../../src/plan/weeks/taper-minutes.js";
import fc from "../tools/properties.js";
import { GOAL, number, PROCEED, planFor, resultsOf, rowsOf, THRESHOLDS, visitFor } from "./plan-for.js";

const DATE = "2026-03-02";
const client = fc.record({
  days: fc.integer({ min: 1, max: 7 }),
  hours: fc.double({ min: 1, max: 16, noNaN: true }),
  share: fc.double({ min: 0.2, max: 1, noNaN: true }),
  cap: fc.integer({ min: 3, max: 15 }),
  every: fc.integer({ min: 3, max: 5 }),
  reduction: fc.integer({ min: 41, max: 60 }),
  visit: fc.integer({ min: 0, max: 6 }),
  ahead: fc.integer({ min: 2, max: 300 }),
  level: fc.constantFrom("novice" as const, "intermediate" as const, "advanced" as const),
  profile: fc.constantFrom(undefined, "multi-day-hut-walk", "ten-kilometre-run"),
  retest: fc.integer({ min: 0, max: 200 }),
  vigorous: fc.boolean(),
});
type Asked = typeof client extends fc.Arbitrary<infer T> ? T : never;

function laid(asked: Asked, goalShift = 0) {
  const date = addDays(DATE, asked.visit);
  const goal = addDays(date, asked.ahead + goalShift);
  const retest = addDays(date, asked.retest);
  const entries = planFor(
    resultsOf([PROCEED, ...THRESHOLDS], { date }),
    visitFor({
      date,
      goals: [{ ...GOAL, date: goal }],
      session: { screening: { intended_intensity: asked.vigorous ? "maximal" : "moderate" } },
      plan: {
        days_per_week: asked.days,
        hours_per_week: asked.hours,
        hours_now: asked.hours * asked.share,
        progression_pct: asked.cap,
        easier_every: asked.every,
        taper_reduction_pct: asked.reduction,
        strength_level: asked.level,
        ...(asked.profile ? { profile: asked.profile } : {}),
        ...(asked.retest > 0 ? { retests: [retest] } : {}),
      },
    }),
  );
  return {
    date,
    goal,
    entries,
    weeks: rowsOf(entries, "programme_weeks"),
    sessions: rowsOf(entries, "programme_sessions"),
  };
}
const property = (name: string, holds: (asked: Asked) => void) =>
  it(name, () => fc.assert(fc.property(client, holds), { numRuns: 150, seed: 20260302 }));

describe("weeks of a plan", () => {
  property("run without a gap from the day after the visit to the week of the goal", (asked) => {
    const { date, goal, weeks } = laid(asked);
    expect(weeks[0]?.monday).toBe(mondayOf(addDays(date, 1)));
    expect(weeks.at(-1)?.monday).toBe(mondayOf(goal));
    weeks.forEach((week, i) => {
      expect(week.week).toBe(i + 1);
      expect(week.monday).toBe(addDays(String(weeks[0]?.monday), 7 * i));
    });
    expect(weeks.filter((week) => String(week.mark).includes(goal))).toHaveLength(1);
  });

  property("never pass the stated cap over the hardest week before", (asked) => {
    const { weeks } = laid(asked);
    // A start below 60 min is raised to 60, as the plan says; never above what the client has.
    let hardest = Math.max(60, Math.min(Math.round(asked.hours * asked.share * 60), Math.round(asked.hours * 60)));
    for (const week of weeks) {
      expect(number(week, "minutes")).toBeLessThanOrEqual(hardest * (1 + asked.cap / 100) + 1e-6);
      expect(number(week, "minutes")).toBeLessThanOrEqual(Math.round(asked.hours * 60));
      hardest = Math.max(hardest, number(week, "minutes"));
    }
  });

  property("hold no more days than the client gave, and none after the goal or before the plan", (asked) => {
    const { date, goal, weeks, sessions } = laid(asked);
    for (const week of weeks) expect(number(week, "days")).toBeLessThanOrEqual(asked.days);
    for (const session of sessions) {
      expect(String(session.date) > date && String(session.date) < goal).toBe(true);
      expect(session.date).not.toBe(addDays(date, asked.retest));
    }
  });

  property("fall by 41 to 60 % over the days before the goal, where there are four weeks or more", (asked) => {
    const { goal, weeks, entries } = laid(asked);
    const tapered = weeks.filter((week) => week.phase === "taper");
    if (asked.ahead < 29) {
      expect(tapered).toEqual([]);
      return;
    }
    const days = daysBetween(String(tapered[0]?.monday), goal);
    expect(days).toBeGreaterThanOrEqual(8);
    expect(days).toBeLessThanOrEqual(14);
    // The level before is printed, and is that of a loading week before the taper (or of the start, where none was whole).
    const rule = rowsOf(entries, "programme_rules").find((row) => String(row.rule).includes("taper is reckoned from"));
    const before = number(rule, "value");
    const loading = weeks.filter((week) => week.phase !== "taper" && week.easier === "");
    const start = Math.max(60, Math.min(Math.round(asked.hours * asked.share * 60), Math.round(asked.hours * 60)));
    expect([...loading.map((week) => number(week, "minutes")), start]).toContain(before);
    const done = tapered.reduce((sum, week) => sum + number(week, "minutes"), 0);
    const fall = 1 - done / days / (before / 7);
    expect(fall).toBeGreaterThanOrEqual(0.41 - 1e-9);
    expect(fall).toBeLessThanOrEqual(0.6 + 1e-9);
  });

  property("add up: domains and strength make the minutes, sessions make the week", (asked) => {
    const { weeks, sessions } = laid(asked);
    for (const week of weeks) {
      const parts = ["easy", "steady", "hard", "strength"].reduce((sum, key) => sum + number(week, key), 0);
      expect(parts).toBe(number(week, "minutes"));
      if (number(week, "week") > 4) continue;
      const own = sessions.filter((one) => mondayOf(String(one.date)) === week.monday);
      expect(own.reduce((sum, one) => sum + number(one, "minutes"), 0)).toBe(number(week, "minutes"));
    }
    for (const session of sessions) expect(number(session, "minutes")).toBeGreaterThan(0);
  });

  property("hold nothing steady or hard while vigorous exercise is withheld", (asked) => {
    const { weeks } = laid({ ...asked, vigorous: false });
    for (const week of weeks) expect(number(week, "steady") + number(week, "hard")).toBe(0);
  });

  property("are laid out anew for another goal date, and the intensities stay", (asked) => {
    const near = laid(asked);
    const far = laid(asked, 35);
    expect(rowsOf(far.entries, "intensity_domains")).toEqual(rowsOf(near.entries, "intensity_domains"));
    expect(far.weeks).toHaveLength(near.weeks.length + 5);
  });
});

describe("taper", () => {
  it("gives no week of a taper more than the week before it, whatever days are left", () => {
    // 13 days of 200 min a week, 41 % less: 219 min (by hand); all of it on one Saturday would be more than ever before.
    expect(taperMinutes(200, 13, 0.41, [[5], []])).toEqual([200, 0]);
    expect(
      taperMinutes(200, 13, 0.5, [
        [1, 3, 5],
        [8, 10],
      ]),
    ).toEqual([140, 45]); // by hand: 185 in all, τ near 9 days: shares 1.95 and 0.66, so 138 and 47, in fives
    expect(taperMinutes(200, 13, 0.5, [[], []])).toEqual([0, 0]);
  });

  it("meets the reduction asked for by its mean, and falls every day", () => {
    for (const reduction of [0.41, 0.5, 0.6])
      for (const days of [8, 11, 14]) {
        const shares = taperDays(reduction, days);
        expect(shares.reduce((sum, share) => sum + share, 0) / days).toBeCloseTo(1 - reduction, 9);
        for (let i = 1; i < days; i++) expect(shares[i] as number).toBeLessThan(shares[i - 1] as number);
      }
    expect(1 - taper(8, 14)).toBeCloseTo(0.557, 3); // by hand, as in the formula's own check
    expect(() => taperDays(0.3, 14)).toThrow();
  });
});
