import { describe, expect, it } from "vitest";
import { meanArterialPressure } from "../../src/derive/blood-pressure/mean-arterial-pressure.js";
import { LADDERS, pressureClass } from "../../src/derive/blood-pressure/pressure-class.js";
import { pulsePressure } from "../../src/derive/blood-pressure/pulse-pressure.js";
import { referralLimits } from "../../src/derive/blood-pressure/referral-limits.js";
import { restingAverage } from "../../src/derive/blood-pressure/resting-average.js";
import { deriveBloodPressure } from "../../src/derive/blood-pressure.js";
import { OutOfRange } from "../../src/kernel/formula.js";
import type { BloodPressure } from "../../src/kernel/generated/session.js";
import { openNotebook } from "../../src/kernel/notebook.js";
import fc from "../tools/properties.js";
import { because, judgement, quantity, table, visitOf } from "./visit-of.js";

const pressure = (block: BloodPressure, scheme: "acc-aha-2017" | "esh-2023" | "esc-2024" = "esh-2023") => {
  const book = openNotebook();
  deriveBloodPressure(book, visitOf({ blood_pressure: block }, { choices: { blood_pressure_scheme: scheme } }));
  return book.entries();
};
const readings: BloodPressure["readings"] = [
  { systolic_mmhg: 150, diastolic_mmhg: 95, pulse_per_min: 70 },
  { systolic_mmhg: 138, diastolic_mmhg: 88, pulse_per_min: 64 },
  { systolic_mmhg: 136, diastolic_mmhg: 86, pulse_per_min: 62 },
];
const block: BloodPressure = { arm: "left", posture: "seated", rest_min: 5, cuff: "adult", readings };

describe("blood pressure", () => {
  it("drops the first of three in the European schemes and keeps it in the American one", () => {
    expect(quantity(pressure(block), "systolic_pressure")?.value).toBe(137);
    expect(quantity(pressure(block), "resting_pulse")?.value).toBe(63);
    expect(quantity(pressure(block, "acc-aha-2017"), "systolic_pressure")?.value).toBeCloseTo(141.33, 2);
  });
  it("keeps every reading in the table and says which counted", () => {
    const kept = table(pressure(block), "blood_pressure_readings");
    expect(kept?.rows.map((row) => row.at(-1))).toEqual(["no", "yes", "yes"]);
    expect(kept?.rows[0]).toEqual([null, 150, 95, 70, "left", "adult", "seated", 5, "no"]);
  });
  it("classes the same readings by the scheme chosen, and never as a diagnosis", () => {
    expect(judgement(pressure(block), "blood_pressure_class")?.verdict).toBe("high normal");
    expect(judgement(pressure(block, "acc-aha-2017"), "blood_pressure_class")?.verdict).toBe("stage 2 hypertension");
    expect(judgement(pressure(block, "esc-2024"), "blood_pressure_class")?.verdict).toBe("elevated");
    expect(judgement(pressure(block), "blood_pressure_class")?.inputs?.map((i) => i.text)).toEqual([
      "137 mmHg",
      "87 mmHg",
    ]);
    expect(because(pressure(block), "blood_pressure_class")).toContain("One visit is not a diagnosis");
  });
  it("gives no class to readings that were not seated", () => {
    expect(because(pressure({ ...block, posture: "supine" }), "blood_pressure_class")).toContain("supine");
  });
  it("takes the higher arm where both were read as often, and gives their difference", () => {
    const both = pressure({
      readings: [
        { systolic_mmhg: 142, diastolic_mmhg: 86, arm: "left" },
        { systolic_mmhg: 130, diastolic_mmhg: 84, arm: "right" },
      ],
    });
    expect(quantity(both, "systolic_pressure")?.value).toBe(142);
    expect(quantity(both, "arm_pressure_difference")?.value).toBe(12);
  });
  it("says what is missing, and refuses a diastolic of 0", () => {
    expect(because(pressure({ arm: "left" }), "systolic_pressure")).toBe("blood_pressure.readings holds no reading");
    const zero = pressure({ readings: [{ systolic_mmhg: 130, diastolic_mmhg: 0 }] });
    expect(because(zero, "systolic_pressure")).toContain("130/0 mmHg");
  });
  it("stops at the urgent limit and not just below", () => {
    const at = (s: number, d: number, symptoms = false) =>
      judgement(pressure({ symptoms, readings: [{ systolic_mmhg: s, diastolic_mmhg: d }] }), "blood_pressure_referral")
        ?.verdict;
    expect(at(180, 80)).toBe("urgent referral");
    expect(at(179, 109)).toBe("routine referral");
    expect(at(139, 89)).toBe("within limits");
    expect(at(185, 100, true)).toBe("emergency");
  });
});

describe("published edges", () => {
  // Whelton 2018, Table 6; Williams 2018, classification table, kept by ESH 2023; McEvoy 2024, classification
  it.each([
    ["acc-aha-2017", 119, 79, "normal"],
    ["acc-aha-2017", 120, 79, "elevated"],
    ["acc-aha-2017", 129, 79, "elevated"],
    ["acc-aha-2017", 130, 79, "stage 1 hypertension"],
    ["acc-aha-2017", 119, 80, "stage 1 hypertension"],
    ["acc-aha-2017", 119, 89, "stage 1 hypertension"],
    ["acc-aha-2017", 140, 79, "stage 2 hypertension"],
    ["acc-aha-2017", 119, 90, "stage 2 hypertension"],
    ["esh-2023", 119, 79, "optimal"],
    ["esh-2023", 120, 79, "normal"],
    ["esh-2023", 119, 80, "normal"],
    ["esh-2023", 130, 79, "high normal"],
    ["esh-2023", 119, 85, "high normal"],
    ["esh-2023", 140, 79, "grade 1 hypertension"],
    ["esh-2023", 119, 90, "grade 1 hypertension"],
    ["esh-2023", 160, 79, "grade 2 hypertension"],
    ["esh-2023", 119, 100, "grade 2 hypertension"],
    ["esh-2023", 180, 79, "grade 3 hypertension"],
    ["esh-2023", 139, 110, "grade 3 hypertension"],
    ["esc-2024", 119, 69, "non-elevated"],
    ["esc-2024", 120, 69, "elevated"],
    ["esc-2024", 119, 70, "elevated"],
    ["esc-2024", 139, 89, "elevated"],
    ["esc-2024", 140, 69, "hypertension"],
    ["esc-2024", 119, 90, "hypertension"],
  ] as const)("%s lists %i/%i as %s", (scheme, s, d, name) => expect(pressureClass(s, d, scheme).name).toBe(name));
  it.each([
    [140, 89, true],
    [139, 89, false],
    [140, 90, false],
  ] as const)("isolated systolic at %i/%i: %s", (s, d, isolated) => {
    expect(pressureClass(s, d, "esh-2023").isolatedSystolic).toBe(isolated);
    expect(pressureClass(s, d, "esc-2024").isolatedSystolic).toBe(false);
  });
  it.each([
    [180, 80, true, "emergency"],
    [150, 120, true, "emergency"],
    [179, 119, true, "urgent referral"],
    [150, 110, false, "urgent referral"],
    [150, 109, false, "routine referral"],
    [130, 90, false, "routine referral"],
  ] as const)("%i/%i, symptoms %s: %s", (s, d, symptoms, referral) => {
    expect(referralLimits(s, d, symptoms)).toBe(referral);
  });
  it("refuses a diastolic that reaches systolic, and answers the ends of the range", () => {
    expect(() => restingAverage([{ systolic: 100, diastolic: 100 }], "esh-2023")).toThrow(OutOfRange);
    expect(() => restingAverage([{ systolic: 301, diastolic: 100 }], "esh-2023")).toThrow(OutOfRange);
    expect(restingAverage([{ systolic: 300, diastolic: 20 }], "esh-2023").systolic).toBe(300);
    expect(() => pulsePressure(100, 100)).toThrow(OutOfRange);
    expect(() => meanArterialPressure(100, 100)).toThrow(OutOfRange);
  });
  it("names the readings that the mean is of", () => {
    const origin = quantity(pressure(block), "systolic_pressure")?.origin;
    expect(origin?.kind === "formula" ? origin.inputs[0]?.text : "").toBe("138/88, 136/86 mmHg");
  });
});

describe("laws", () => {
  const schemes = Object.keys(LADDERS) as (keyof typeof LADDERS)[];
  const systolic = fc.integer({ min: 90, max: 240 });
  const diastolic = fc.integer({ min: 45, max: 130 });
  it("a higher pressure never has a lower class or a milder referral", () => {
    fc.assert(
      fc.property(systolic, diastolic, fc.constantFrom(...schemes), fc.nat(20), (s, d, scheme, more) => {
        const here = pressureClass(s, d, scheme).step;
        expect(pressureClass(s + more, d, scheme).step).toBeGreaterThanOrEqual(here);
        expect(pressureClass(s, d + more, scheme).step).toBeGreaterThanOrEqual(here);
        if (referralLimits(s, d, false) !== "within limits")
          expect(referralLimits(s + more, d, false)).not.toBe("within limits");
      }),
    );
  });
  it("the average lies between the readings", () => {
    fc.assert(
      fc.property(fc.array(systolic, { minLength: 1, maxLength: 6 }), fc.constantFrom(...schemes), (xs, scheme) => {
        const { systolic: mean } = restingAverage(
          xs.map((s) => ({ systolic: s, diastolic: 45 })),
          scheme,
        );
        expect(mean).toBeGreaterThanOrEqual(Math.min(...xs) - 1e-9);
        expect(mean).toBeLessThanOrEqual(Math.max(...xs) + 1e-9);
      }),
    );
  });
});
