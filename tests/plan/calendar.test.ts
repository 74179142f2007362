/** The calendar against RFC 5545, read back by ical.js, a general-purpose parser that knows nothing of this program. */
import ICAL from "ical.js";
import { describe, expect, it } from "vitest";
import type { Plan } from "../../src/kernel/generated/client.js";
import { speechOf } from "../../src/kernel/speech.js";
import { calendarOf } from "../../src/plan/calendar.js";
import { wordsOf } from "../report/assets.js";
import { GOAL, PROCEED, planFor, resultsOf, rowsOf, THRESHOLDS, visitFor } from "./plan-for.js";

const PLAN: Plan = {
  days_per_week: 4,
  hours_per_week: 5,
  hours_now: 3,
  retests: ["2026-05-11"],
  signed: [{ by_role: "physiologist", date: "2026-03-03", for_visit: "2026-03-02" }],
  sessions: [
    {
      date: "2026-03-10",
      kind: "easy",
      minutes: 45,
      what: "Läufchen über Hügel; Wasser, Brot \\ Käse",
      because: "ÄÖÜ — ein sehr langer Grund, der über mehr als eine Zeile von fünfundsiebzig Oktetten reicht 🏔🏔🏔🏔🏔🏔",
    },
  ],
};
const english = speechOf(wordsOf("en"));
const results = (plan: Plan) => {
  const bare = resultsOf([PROCEED, ...THRESHOLDS]);
  return {
    ...bare,
    entries: [...bare.entries, ...planFor(bare, visitFor({ plan, goals: [{ ...GOAL, date: "2026-06-20" }] }))],
  };
};
const recorded = results(PLAN);
const text = calendarOf(recorded, english) as string;
const calendar = new ICAL.Component(ICAL.parse(text) as unknown[] as never);
const events = calendar.getAllSubcomponents("vevent").map((one) => new ICAL.Event(one));

describe("the calendar", () => {
  it("is a calendar with every session on its day", () => {
    expect(calendar.getFirstPropertyValue("version")).toBe("2.0");
    const sessions = rowsOf(recorded.entries, "programme_sessions");
    expect(sessions.length).toBeGreaterThan(15);
    for (const session of sessions) {
      const own = events.filter((event) => event.startDate.toString() === session.date);
      expect(own.some((event) => event.summary.endsWith(`, ${session.minutes} min`))).toBe(true);
      expect(own.every((event) => event.startDate.isDate)).toBe(true);
    }
    const on = (day: string) =>
      events.filter((event) => event.startDate.toString() === day).map((event) => event.summary);
    expect(on("2026-05-11")).toContain("Test in the laboratory");
    expect(on("2026-06-20")).toContain("The goal");
  });

  it("covers the later weeks as weeks, without a gap up to the goal", () => {
    const last = String(rowsOf(recorded.entries, "programme_sessions").at(-1)?.date);
    const later = rowsOf(recorded.entries, "programme_weeks").filter(
      (week) => String(week.monday) > last && week.minutes !== 0,
    );
    expect(later.length).toBeGreaterThan(8);
    for (const week of later) {
      const event = events.find((one) => one.uid.endsWith(`${week.monday}-week@waymark.invalid`));
      expect(event?.duration.toSeconds()).toBe(7 * 86_400);
    }
  });

  it("gives text back as it was: commas, semicolons, backslashes, line ends, letters beyond ASCII", () => {
    const event = events.find((one) => one.startDate.toString() === "2026-03-10" && one.summary.startsWith("Easy"));
    expect(event?.description).toContain("Läufchen über Hügel; Wasser, Brot \\ Käse");
    // The parser forgives what section 3.3.11 does not: the bytes themselves.
    const unfolded = text.replaceAll("\r\n ", "");
    expect(unfolded).toContain("Läufchen über Hügel\\; Wasser\\, Brot \\\\ Käse");
    expect(event?.description).toContain("🏔🏔🏔🏔🏔🏔");
    expect(event?.description).toContain("\nHeart rate");
  });

  it("folds at 75 octets with CRLF, and cuts no character", () => {
    expect(text.endsWith("\r\n")).toBe(true);
    expect(text.replaceAll("\r\n", "")).not.toMatch(/[\r\n]/);
    const lines = text.split("\r\n");
    const octets = lines.map((line) => new TextEncoder().encode(line).length);
    expect(Math.max(...octets)).toBeLessThanOrEqual(75);
    expect(octets.filter((size) => size > 70).length).toBeGreaterThan(5); // some were long enough to fold
    for (const line of lines)
      expect(new TextDecoder("utf-8", { fatal: true }).decode(new TextEncoder().encode(line))).toBe(line);
    expect(lines.some((line) => /^ /.test(line))).toBe(true);
  });

  it("has names that stay and differ, and a stamp from the visit", () => {
    const uids = events.map((event) => event.uid);
    expect(new Set(uids).size).toBe(uids.length);
    expect(calendarOf(results(PLAN), english)).toBe(text);
    for (const one of calendar.getAllSubcomponents("vevent"))
      expect(String(one.getFirstPropertyValue("dtstamp"))).toBe("2026-03-02T00:00:00Z");
    // The same day and kind in the plan of a later visit is the same event, as a newer revision.
    const later = { ...recorded, date: "2026-03-09" };
    const again = new ICAL.Component(ICAL.parse(calendarOf(later, english) as string) as unknown[] as never);
    const [a, b] = [calendar, again].map((one) => new ICAL.Event(one.getAllSubcomponents("vevent")[0] as never));
    expect(b?.uid).toBe(a?.uid);
    expect(Number(b?.sequence)).toBe(Number(a?.sequence) + 7);
  });

  it("is not given for a plan that nobody signed", () => {
    const { signed: _, ...unsigned } = PLAN;
    expect(calendarOf(results(unsigned), english)).toBeUndefined();
    expect(calendarOf(resultsOf([PROCEED]), english)).toBeUndefined();
  });
  it("speaks German where the reports do, with the same names of its events", () => {
    const german = calendarOf(recorded, speechOf(wordsOf("de"))) as string;
    expect(german).toContain("SUMMARY:Test im Labor");
    expect(german).toMatch(/SUMMARY:Woche\\, .*: \d+ min/);
    expect(german).not.toMatch(/SUMMARY:(?:Week|Easier|Test in|Easy)|of it hard|a minute/);
    const names = (of: string) => of.match(/^UID:.*$/gm);
    expect(names(german)).toEqual(names(text));
  });
});
