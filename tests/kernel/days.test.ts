import { describe, expect, it } from "vitest";
import { addDays, dayOf, daysBetween, isoOf, mondayOf, WEEKDAYS, weekdayOf } from "../../src/kernel/days.js";
import fc from "../tools/properties.js";

describe("days", () => {
  it("are counted across a leap day and a change of clocks", () => {
    expect(daysBetween("2028-02-28", "2028-03-01")).toBe(2);
    expect(daysBetween("2026-03-28", "2026-03-30")).toBe(2);
    expect(daysBetween("2026-03-30", "2026-03-28")).toBe(-2);
  });

  it("know weekdays of the calendar, also before 1970", () => {
    expect(WEEKDAYS[weekdayOf(dayOf("2000-01-01"))]).toBe("saturday");
    expect(WEEKDAYS[weekdayOf(dayOf("2024-02-29"))]).toBe("thursday");
    expect(WEEKDAYS[weekdayOf(dayOf("1969-07-20"))]).toBe("sunday");
    expect(mondayOf("2024-03-03")).toBe("2024-02-26");
    expect(addDays("2024-02-28", 2)).toBe("2024-03-01"); // any printed calendar
  });

  it("go there and back", () => {
    const day = fc.integer({ min: -60_000, max: 60_000 });
    fc.assert(
      fc.property(day, day, (from, to) => {
        expect(dayOf(isoOf(from))).toBe(from);
        expect(addDays(isoOf(from), daysBetween(isoOf(from), isoOf(to)))).toBe(isoOf(to));
      }),
    );
  });

  it("have no number where a text names no day", () => expect(dayOf("2026-13-01")).toBeNaN());
});
