/** Calibration rules: each with a record that just passes and one that just does not. */
import { describe, expect, it } from "vitest";
import type { CalibrationCheck } from "../../../src/kernel/generated/session.js";
import type { Rule } from "../../../src/kernel/rule.js";
import { rule as biologicalControl } from "../../../src/validity/calibration/biological-control.js";
import { rule as calibrationAge } from "../../../src/validity/calibration/calibration-age.js";
import { rule as calibrationRecorded } from "../../../src/validity/calibration/calibration-recorded.js";
import { rule as calibrationResult } from "../../../src/validity/calibration/calibration-result.js";
import { rule as gasCalibration } from "../../../src/validity/calibration/gas-calibration.js";
import { rule as gasDrift } from "../../../src/validity/calibration/gas-drift.js";
import { rule as referenceCheck } from "../../../src/validity/calibration/reference-check.js";
import { rule as volumeCalibration } from "../../../src/validity/calibration/volume-calibration.js";
import { testVisit } from "../../derive/rest/visit.js";
import { stated } from "../findings.js";

const values = { vo2_peak: 3.1, ventilation_peak: 110, resting_vo2: 250, heart_rate_peak: 180, power_peak: 300 };
const judged = (rule: Rule, checks: readonly CalibrationCheck[], limits: object = {}) => {
  const visit = testVisit({
    session: {
      calibration: checks as CalibrationCheck[],
      incremental: { mode: "cycle", instrument: "cart", ergometer: "bike" },
      rest: { instrument: "hood" },
    },
  });
  const laboratory = {
    ...visit.laboratory,
    instruments: {
      cart: { kind: "gas exchange system", ...limits },
      hood: { kind: "gas exchange system" },
      bike: { kind: "cycle ergometer", ...limits },
    },
  } as never;
  return rule.judge(stated({ ...visit, laboratory }, values));
};
const volume = (read: number, more: object = {}): CalibrationCheck =>
  ({
    instrument: "cart",
    when: "before",
    volume: { syringe_l: 3, read_l: [3, 3.01, read] },
    ...more,
  }) as CalibrationCheck;
const gas = (o2_read: number, when: "before" | "after" = "before"): CalibrationCheck =>
  ({ instrument: "cart", when, gas: [{ gas: "cylinder", o2_true: 0.16, o2_read }] }) as CalibrationCheck;

describe("volume-calibration", () => {
  it("accepts 3.08 of 3 L (+2.67 %) and 2.91, and refuses 2.89 (−3.67 %)", () => {
    expect(judged(volumeCalibration, [volume(3.08)])).toEqual([]);
    expect(judged(volumeCalibration, [volume(2.91)])).toEqual([]);
    expect(judged(volumeCalibration, [volume(2.89)])[0]?.severity).toBe("fatal");
  });
  it("touches what rests on the flow sensor of that instrument and nothing else", () => {
    expect(judged(volumeCalibration, [volume(2.89)])[0]?.affects).toEqual(["vo2_peak", "ventilation_peak"]);
  });
  it("holds a check before and one after the test apart: a good one after repeals no bad one before", () => {
    expect(judged(volumeCalibration, [volume(2.89), volume(3.02, { when: "after" })])[0]?.severity).toBe("fatal");
  });
  it("lets a repetition that passed stand, and follows the laboratory's own limit", () => {
    expect(judged(volumeCalibration, [volume(2.89), volume(3.02)])).toEqual([]);
    const strict = { calibration_limits: { volume_pct: 2 } };
    expect(judged(volumeCalibration, [volume(3.08)], strict)[0]?.severity).toBe("fatal");
  });
});

describe("gas-calibration and gas-drift", () => {
  it("accept 0.10 % absolute and refuse 0.11 before the test", () => {
    expect(judged(gasCalibration, [gas(0.161)])).toEqual([]);
    expect(judged(gasCalibration, [gas(0.1611)])[0]?.severity).toBe("fatal");
    expect(judged(gasCalibration, [gas(0.1611)])[0]?.affects).toEqual(["vo2_peak"]);
  });
  it("weaken for a drift of 0.18 % (Garcia-Tabar 2015: VO2max 5 to 6 % too high), withhold beyond 0.20", () => {
    expect(judged(gasDrift, [gas(0.159, "after")])).toEqual([]);
    expect(judged(gasDrift, [gas(0.1582, "after")])[0]?.severity).toBe("weakens");
    expect(judged(gasDrift, [gas(0.158, "after")])[0]?.severity).toBe("weakens"); // 0.20 exactly
    expect(judged(gasDrift, [gas(0.1579, "after")])[0]?.severity).toBe("fatal");
    expect(judged(gasCalibration, [gas(0.1579, "after")])).toEqual([]);
  });
});

describe("other calibration rules", () => {
  it("a failed result is fatal, one that passed after repetition is not", () => {
    const check = (result: string) => ({ instrument: "cart", result }) as CalibrationCheck;
    expect(judged(calibrationResult, [check("failed")])[0]).toMatchObject({
      severity: "fatal",
      affects: ["vo2_peak", "ventilation_peak"],
    });
    expect(judged(calibrationResult, [check("failed"), check("passed after repetition")])).toEqual([]);
    const bike = { instrument: "bike", result: "failed" } as CalibrationCheck;
    expect(judged(calibrationResult, [bike])[0]?.affects).toEqual(["power_peak"]);
  });
  it("a failed check of gas leaves the heart rate that the same instrument wrote", () => {
    const failed = { ...gas(0.15), result: "failed" } as CalibrationCheck;
    const parts = { measures: ["gas analyser", "flow sensor", "heart-rate monitor"] };
    expect(judged(calibrationResult, [failed], parts)[0]?.affects).toEqual(["vo2_peak"]);
  });
  it("not recorded is a finding", () => {
    const found = judged(calibrationRecorded, []);
    expect(found.map((f) => f.severity)).toEqual(["record", "record"]);
    const whole = [volume(3), gas(0.16), gas(0.16, "after")];
    expect(judged(calibrationRecorded, whole).length).toBe(1); // the hood's is still missing
    expect(judged(calibrationRecorded, [...whole, ...whole.map((c) => ({ ...c, instrument: "hood" }))])).toEqual([]);
  });
  it("a check of the day before weakens, one of the day does not, and a stated validity extends it", () => {
    expect(judged(calibrationAge, [volume(3, { date: "2026-03-02" })])).toEqual([]);
    expect(judged(calibrationAge, [volume(3, { date: "2026-03-01" })])[0]?.severity).toBe("weakens");
    expect(judged(calibrationAge, [volume(3, { date: "2026-03-03" })])[0]?.severity).toBe("weakens");
    const week = { calibration_limits: { valid_for_hours: 168 } };
    expect(judged(calibrationAge, [volume(3, { date: "2026-03-01" })], week)).toEqual([]);
  });
  it("a reference check is held against its own limit or the laboratory's", () => {
    const check = (read_value: number, limit?: number) =>
      ({
        instrument: "bike",
        reference: {
          quantity: "power",
          unit: "W",
          true_value: 200,
          read_value,
          ...(limit === undefined ? {} : { limit }),
        },
      }) as CalibrationCheck;
    expect(judged(referenceCheck, [check(206, 6)])).toEqual([]);
    expect(judged(referenceCheck, [check(206.1, 6)])[0]).toMatchObject({ severity: "fatal", affects: ["power_peak"] });
    expect(judged(referenceCheck, [check(206)])[0]?.severity).toBe("record");
    expect(judged(referenceCheck, [check(206.1)], { calibration_limits: { power_pct: 3 } })[0]?.severity).toBe("fatal");
  });
  it("a biological control is held against its own history: 1.61 is outside 1.460 to 1.563", () => {
    // ATS manual, chapter 19: mean ± 1.96 SD. By hand: mean 1.512, SD 0.0264.
    const control = (value: number, day: number) =>
      ({
        instrument: "cart",
        biological_control: {
          date: `2026-02-${10 + day}`,
          measure: "vo2 at 100 W",
          value,
          expected: 1.51,
          tolerance_pct: 10,
        },
      }) as CalibrationCheck;
    const history = [1.52, 1.48, 1.55, 1.5, 1.53, 1.49].map((v, i) => control(v, i));
    const [found] = judged(biologicalControl, [...history, control(1.61, 9)]);
    expect(found).toMatchObject({ severity: "weakens" });
    expect(found?.limit).toMatch(/1\.460 to 1\.563/);
    expect(judged(biologicalControl, [...history, control(1.56, 9)])).toEqual([]);
    // without a history the stated tolerance: 10 % of 1.51 is 1.359 to 1.661
    expect(judged(biologicalControl, [control(1.61, 9)])).toEqual([]);
    expect(judged(biologicalControl, [control(1.67, 9)])[0]?.severity).toBe("weakens");
    const old = {
      ...control(1.51, 9),
      biological_control: { ...control(1.51, 9).biological_control, date: "2026-01-01" },
    } as CalibrationCheck;
    expect(judged(biologicalControl, [old])[0]?.severity).toBe("record");
  });
});
