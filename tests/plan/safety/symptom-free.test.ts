import { describe, expect, it } from "vitest";
import type { Entry } from "../../../src/kernel/measure.js";
import type { Results } from "../../../src/kernel/results.js";
import { whyNoIntervals } from "../../../src/plan/safety/symptom-free.js";

const judged = (id: string, verdict: string): Entry => ({ kind: "judgement", id, verdict, because: "for this test" });
const ratio = (value: number): Entry => ({
  kind: "quantity",
  id: "rer_peak",
  value,
  unit: "ratio",
  decimals: 2,
  origin: { kind: "key", key: "for this test" },
});
const visit = (...entries: Entry[]) => ({ date: "2026-02-16", entries }) as unknown as Results;
const why = (...entries: Entry[]) => whyNoIntervals([visit(...entries)]);
const none = judged("adverse_signs", "none seen");

describe("hard intervals", () => {
  it("may follow a test to the limit without signs", () => {
    expect(why(judged("stop_reason", "exhaustion"), none, ratio(1.12))).toBeUndefined();
    expect(why(judged("stop_reason", "legs"), none, ratio(1.0))).toBeUndefined();
    expect(why(judged("stop_reason", "exhaustion"), none), "no gas exchange").toBeUndefined();
  });

  it("wait after a test that stopped short, with signs, or without an answer", () => {
    expect(why(judged("stop_reason", "legs"), none, ratio(0.99))).toMatch(/exchange ratio at the peak 0\.99/);
    expect(why(judged("stop_reason", "planned"), none, ratio(1.12))).toMatch(/\(planned\)/);
    expect(why(judged("stop_reason", "exhaustion"), judged("adverse_signs", "dizziness"))).toMatch(/dizziness/);
    expect(why(judged("stop_reason", "exhaustion"))).toMatch(/is not recorded/);
    expect(whyNoIntervals([])).toMatch(/no exercise test/);
  });
});
