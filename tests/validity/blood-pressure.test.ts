import type { BloodPressure, BloodPressureReading } from "../../src/kernel/generated/session.js";
import { rule as arms } from "../../src/validity/blood-pressure/pressure-arms.js";
import { rule as cuff } from "../../src/validity/blood-pressure/pressure-cuff.js";
import { rule as irregular } from "../../src/validity/blood-pressure/pressure-irregular-pulse.js";
import { rule as plausible } from "../../src/validity/blood-pressure/pressure-plausible.js";
import { rule as posture } from "../../src/validity/blood-pressure/pressure-posture.js";
import { rule as readings } from "../../src/validity/blood-pressure/pressure-readings.js";
import { rule as rest } from "../../src/validity/blood-pressure/pressure-rest.js";
import { rule as spread } from "../../src/validity/blood-pressure/pressure-spread.js";
import { rule as symptoms } from "../../src/validity/blood-pressure/pressure-symptoms.js";
import { rule as pulse } from "../../src/validity/blood-pressure/pulse-agreement.js";
import { check } from "./findings-of.js";

const read = (systolic_mmhg: number, more: Partial<BloodPressureReading> = {}): BloodPressureReading => ({
  systolic_mmhg,
  diastolic_mmhg: 80,
  pulse_per_min: 60,
  ...more,
});
const block =
  (first: BloodPressureReading, ...others: BloodPressureReading[]) =>
  (more: Partial<BloodPressure>) => ({
    blood_pressure: { readings: [first, ...others] as [BloodPressureReading, ...BloodPressureReading[]], ...more },
  });
const three = block(read(124), read(122), read(120));
const american = { choices: { blood_pressure_scheme: "acc-aha-2017" } } as const;

check(readings, [
  ["absent block", {}, []],
  ["one", block(read(120))({}), ["weakens"]],
  ["two, European", block(read(120), read(120))({}), ["record"]],
  ["two, American", block(read(120), read(120))({}), [], american],
  ["three", three({}), []],
]);
check(spread, [
  ["10 apart", block(read(130), read(120))({}), []],
  ["11 apart", block(read(131), read(120))({}), ["weakens"]],
  ["11 apart in diastolic", block(read(130, { diastolic_mmhg: 91 }), read(130))({}), ["weakens"]],
  ["11 apart, four taken", block(read(131), read(120), read(120), read(120))({}), []],
]);
check(posture, [
  ["not recorded", three({}), ["record: not recorded"]],
  ["seated", three({ posture: "seated" }), []],
  ["supine", three({ posture: "supine" }), ["weakens"]],
]);
check(rest, [
  ["not recorded", three({}), ["record: not recorded"]],
  ["5 min", three({ rest_min: 5 }), []],
  ["4 min", three({ rest_min: 4 }), ["weakens"]],
]);
check(cuff, [
  ["not recorded", three({ cuff: "adult" }), ["record: not recorded"]],
  ["fits at 34.9 cm", three({ cuff: "adult", arm_circumference_cm: 34.9 }), []],
  ["too small at 35 cm", three({ cuff: "adult", arm_circumference_cm: 35 }), ["weakens"]],
  ["large fits at 35 cm", three({ cuff: "large-adult", arm_circumference_cm: 35 }), []],
  ["no cuff for 54 cm", three({ cuff: "thigh", arm_circumference_cm: 54 }), ["weakens"]],
]);
check(arms, [
  ["10 apart", block(read(130, { arm: "left" }), read(120, { arm: "right" }))({}), []],
  ["11 apart", block(read(131, { arm: "left" }), read(120, { arm: "right" }))({}), ["record"]],
]);
check(irregular, [
  ["regular", three({ irregular_pulse: false, method: "oscillometric" }), []],
  ["irregular, device", three({ irregular_pulse: true, method: "oscillometric" }), ["weakens"]],
  ["irregular, by ear", three({ irregular_pulse: true, method: "auscultatory" }), []],
]);
check(plausible, [
  ["pulse pressure 20", block(read(100))({}), []],
  ["pulse pressure 19", block(read(99))({}), ["weakens"]],
  ["pulse pressure 100", block(read(180))({}), []],
  ["pulse pressure 101", block(read(181))({}), ["weakens"]],
]);
check(pulse, [
  ["15 apart", three({}), [], {}, { resting_heart_rate: 75 }],
  ["16 apart", three({}), ["record"], {}, { resting_heart_rate: 76 }],
  ["no resting measurement", three({}), []],
]);
check(symptoms, [
  ["179, not asked", block(read(179))({}), []],
  ["180, not asked", block(read(180))({}), ["weakens: not recorded"]],
  ["180, none", block(read(180))({ symptoms: false }), []],
  ["diastolic 120, not asked", block(read(170, { diastolic_mmhg: 120 }))({}), ["weakens: not recorded"]],
  ["diastolic 119, not asked", block(read(170, { diastolic_mmhg: 119 }))({}), []],
]);
