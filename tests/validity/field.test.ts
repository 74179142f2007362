import type { CycleStage, SixMinuteWalk } from "../../src/kernel/generated/session.js";
import { rule as cadence } from "../../src/validity/field/cycle-cadence.js";
import { rule as medication } from "../../src/validity/field/estimate-medication.js";
import { rule as pressure } from "../../src/validity/field/exercise-pressure.js";
import { rule as course } from "../../src/validity/field/six-minute-walk-course.js";
import { check } from "./findings-of.js";

const walk = (more: Partial<SixMinuteWalk>) => ({ field_tests: { six_minute_walk: { distance_m: 600, ...more } } });
check(course, [
  ["absent block", {}, []],
  ["nothing recorded", walk({}), ["record: not recorded", "record: not recorded"]],
  ["30 m, second walk", walk({ corridor_m: 30, trial: 2 }), []],
  ["29 m, second walk", walk({ corridor_m: 29, trial: 2 }), ["weakens"]],
  ["first walk", walk({ corridor_m: 30, trial: 1 }), ["record"]],
]);
const single = (cadence_rpm?: number) => ({
  size: { mass_kg: 70 },
  submaximal: { cycle_single: { power_w: 100, heart_rate_bpm: 140, ...(cadence_rpm ? { cadence_rpm } : {}) } },
});
check(cadence, [
  ["not recorded", single(), ["record: not recorded"]],
  ["60 rpm", single(60), []],
  ["61 rpm", single(61), ["weakens"]],
]);
check(medication, [
  ["not asked", single(50), ["weakens: not recorded"]],
  ["none taken", single(50), [], { client: { medication: ["none"] } }],
  ["no estimate made", { submaximal: { cycle_single: { power_w: 100, heart_rate_bpm: 100 } } }, []],
]);
const stage = (systolic_mmhg: number, diastolic_mmhg = 80) => {
  const stages: [CycleStage] = [{ power_w: 100, heart_rate_bpm: 140, systolic_mmhg, diastolic_mmhg }];
  return {
    submaximal: { cycle_stages: { stages } },
    blood_pressure: {
      readings: [{ systolic_mmhg: 150, diastolic_mmhg: 80 }] as [{ systolic_mmhg: number; diastolic_mmhg: number }],
    },
  };
};
check(pressure, [
  // Trials 14:91, Table 6: 250 and 115, a fall of 10 below rest
  ["249/114", stage(249, 114), []],
  ["250", stage(250), ["record"]],
  ["diastolic 115", stage(200, 115), ["record"]],
  ["9 below rest", stage(141), []],
  ["10 below rest", stage(140), ["record"]],
]);
