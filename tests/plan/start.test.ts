/** Where the weeks of a new plan start from. */
import { describe, expect, it } from "vitest";
import type { DoneWeek } from "../../src/plan/retest/done.js";
import { startOf } from "../../src/plan/retest/start.js";
import { resultsOf } from "./plan-for.js";

const logged = (...minutes: number[]) => minutes.map((one) => ({ minutes: one }) as DoneWeek);

describe("the start of a new plan", () => {
  it("is the mean of the four weeks logged last, in whole minutes", () => {
    const start = startOf(resultsOf([]), undefined, logged(600, 100, 200, 300, 401));
    expect(start).toEqual({ minutes: 250, because: "they start from the 4 weeks logged last, on average" });
  });
  it("is the one week, where there is one", () => {
    const start = startOf(resultsOf([]), undefined, logged(180));
    expect(start).toEqual({ minutes: 180, because: "they start from the one week that was logged" });
  });
  it("is not known without a log or a plan before", () => {
    expect(startOf(resultsOf([]), undefined, undefined)).toBeUndefined();
    expect(startOf(resultsOf([]), resultsOf([]), [])).toBeUndefined();
  });
});
