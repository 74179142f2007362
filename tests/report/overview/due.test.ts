/** When a client is due, from the last visit alone. */
import { describe, expect, it } from "vitest";
import { dueAfter, missingSince } from "../../../src/report/overview/due.js";
import type { VisitSummary } from "../../../src/report/overview/visit-summary.js";

const visit = (date: string, more: Partial<VisitSummary> = {}): VisitSummary => ({
  date,
  purpose: "retest",
  sections: [],
  flags: [],
  outcomes: [],
  goals: [],
  aims: [],
  tests: [],
  ...more,
});

describe("dueAfter", () => {
  it("follows the plan's first test, named as proposed where it is", () => {
    const tests = [
      { date: "2026-07-20", proposed: false },
      { date: "2026-05-11", proposed: true },
    ];
    expect(dueAfter(visit("2026-03-02", { tests }))).toEqual({ from: "2026-05-11", why: "proposed" });
  });
  it("is 8 to 12 weeks later without a plan, over the end of a year and a leap day", () => {
    expect(dueAfter(visit("2026-03-02"))).toEqual({ from: "2026-04-27", to: "2026-05-25", why: "practice" });
    // By hand: 20 December 2027 plus 56 days is 14 February 2028, plus 84 is 13 March, over 29 February.
    expect(dueAfter(visit("2027-12-20"))).toEqual({ from: "2028-02-14", to: "2028-03-13", why: "practice" });
  });
  it("ends before the client leaves for the goal, and waits for its end when that comes first", () => {
    const aim = (date: string, arrival?: string) => ({
      aims: [{ goal: "a race", date, ...(arrival === undefined ? {} : { arrival }) }],
    });
    expect(dueAfter(visit("2026-03-02", aim("2026-05-10")))).toEqual({
      from: "2026-04-27",
      to: "2026-05-10",
      why: "practice",
    });
    expect(dueAfter(visit("2026-03-02", aim("2026-05-10", "2026-04-20")))).toEqual({ from: "2026-05-10", why: "goal" });
    expect(dueAfter(visit("2026-03-02", aim("2026-01-10"))).why).toBe("practice");
    expect(dueAfter(visit("2026-03-02", aim("2027-01-10"))).to).toBe("2026-05-25");
  });
});

describe("missingSince", () => {
  it("names what the visit before had, leaving repeats for reliability out", () => {
    const visits = [
      visit("2026-03-02", { sections: ["size", "lungs", "strength"] }),
      visit("2026-05-11", { sections: ["size", "strength"] }),
      visit("2026-05-14", { sections: ["size"], purpose: "reliability" }),
    ];
    expect(missingSince(visits)).toEqual(["lungs"]);
    expect(missingSince(visits.slice(0, 1))).toEqual([]);
  });
});
