/** The calendar verb: a signed plan goes out, an unsigned one says why it does not. */
import ICAL from "ical.js";
import { afterEach, describe, expect, it } from "vitest";
import { type Copy, copyPractice } from "./practice-copy.js";

const copies: Copy[] = [];
const practice = (...clients: string[]): Copy => {
  const copy = copyPractice(clients);
  copies.push(copy);
  return copy;
};
afterEach(() => {
  for (const copy of copies.splice(0)) copy.remove();
});

describe("waymark calendar", () => {
  it("prints the signed plan of a visit, readable by a general-purpose parser", () => {
    const copy = practice("c-017");
    copy.run("build", "--no-report");
    const { code, out } = copy.run("calendar", "c-017/2026-05-11-retest");
    expect(code).toBe(0);
    const events = new ICAL.Component(ICAL.parse(out) as unknown[] as never).getAllSubcomponents("vevent");
    expect(events.length).toBeGreaterThan(20);
    expect(copy.run("calendar", "c-017").code).toBe(2);
  });

  it("gives none for a plan that nobody signed, or where no plan is made", () => {
    const copy = practice("c-031", "c-044");
    copy.run("build", "--no-report");
    const unsigned = copy.run("calendar", "c-031/2026-06-01-retest");
    expect(unsigned).toMatchObject({ code: 1, out: "" });
    expect(unsigned.err).toContain("nobody has signed it");
    expect(copy.run("calendar", "c-044/2026-03-30-baseline").err).toContain("the screening says refer");
  });
});
