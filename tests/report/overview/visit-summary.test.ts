/** What a page keeps of one visit: what needs a person, what the plan asks for, what differs. */
import { describe, expect, it } from "vitest";
import type { Entry, Judgement, Table } from "../../../src/kernel/measure.js";
import { summaryOf } from "../../../src/report/overview/visit-summary.js";
import { baseline, retest } from "../fixture.js";

const judged = (id: string, verdict: string, because: string): Judgement => ({
  kind: "judgement",
  id,
  verdict,
  because,
});
const table = (id: string, keys: readonly string[], rows: Table["rows"]): Table => ({
  kind: "table",
  id,
  columns: keys.map((key) => ({ key, title: key })),
  rows,
  origin: { kind: "key", key: "test" },
});
const summary = (...entries: readonly Entry[]) => summaryOf({ ...baseline, entries }, {});
const WEEKS = table(
  "programme_weeks",
  ["week", "monday", "mark"],
  [
    [1, "2026-03-02", "test on 2026-03-02"],
    [10, "2026-05-04", "test proposed"],
    [20, "2026-07-13", "test on 2026-07-15; set by the practitioner"],
  ],
);

describe("summaryOf", () => {
  it("flags a screening that refers or stops, not one that proceeds", () => {
    expect(summary(judged("screening_decision", "refer", "A physician should be asked."))).toMatchObject({
      flags: [{ kind: "screening", text: "A physician should be asked." }],
    });
    expect(summary(judged("screening_decision", "stop", "Do not test.")).flags).toHaveLength(1);
    expect(summary(judged("screening_decision", "proceed", "Nothing.")).flags).toEqual([]);
  });
  it("flags a plan that is laid out and not signed; not one that is ready or was never laid out", () => {
    expect(summary(judged("programme_state", "not printed", "Nobody has signed it."), WEEKS).flags).toEqual([
      { kind: "plan", text: "Nobody has signed it." },
    ]);
    expect(summary(judged("programme_state", "ready", "Signed."), WEEKS).flags).toEqual([]);
    expect(summary(judged("programme_state", "not printed", "No goal.")).flags).toEqual([]);
  });
  it("counts each withheld value once, whatever number of remarks withhold it", () => {
    const remark = (rule: string, affects: readonly string[]): Entry => ({
      kind: "remark",
      id: `remark_${rule}`,
      severity: "fatal",
      found: "",
      limit: "",
      because: "",
      affects,
      rule: `${rule} r1`,
    });
    const { flags } = summary(remark("gas-drift", ["vo2_peak", "rer_peak"]), remark("gas-calibration", ["vo2_peak"]));
    expect(flags).toEqual([{ kind: "withheld", text: "gas drift, gas calibration", values: 2 }]);
  });
  it("takes the plan's tests after the visit: dates as they are, a proposed week by its Monday", () => {
    expect(summary(WEEKS).tests).toEqual([
      { date: "2026-05-04", proposed: true },
      { date: "2026-07-15", proposed: false },
    ]);
  });
  it("takes primary outcomes with change, error and what differs from the visit before", () => {
    const trend = table(
      "trend_vo2_peak_per_mass",
      ["date", "value", "differs"],
      [
        ["2026-03-02", 40.3, ""],
        ["2026-05-18", 43.9, "protocol (one, now two)"],
      ],
    );
    const { outcomes, sections } = summaryOf(
      { ...retest, entries: [...retest.entries, trend] },
      { primary_outcomes: ["vo2_peak_per_mass", "lactate_threshold_power"] },
    );
    expect(outcomes).toEqual([
      {
        measure: "vo2_peak_per_mass",
        value: 43.9,
        unit: "mL/kg/min",
        decimals: 1,
        typical: 1.3,
        errorFrom: "published: test-retest, 1 to 7 days",
        change: 3.6,
        verdict: "cannot tell",
        differs: "protocol (one, now two)",
      },
    ]);
    expect(sections).toContain("incremental");
    expect(sections).not.toContain("change");
  });
});
