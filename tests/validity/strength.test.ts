import type { Grip, MidThighPull } from "../../src/kernel/generated/session.js";
import { rule as gripConditions } from "../../src/validity/strength/grip-conditions.js";
import { rule as gripPain } from "../../src/validity/strength/grip-pain.js";
import { rule as gripSpread } from "../../src/validity/strength/grip-spread.js";
import { rule as gripTrials } from "../../src/validity/strength/grip-trials.js";
import { rule as twoHands } from "../../src/validity/strength/grip-two-hands.js";
import { rule as jump } from "../../src/validity/strength/jump-method.js";
import { rule as machine } from "../../src/validity/strength/lift-machine.js";
import { rule as pulls } from "../../src/validity/strength/pull-agreement.js";
import { rule as setup } from "../../src/validity/strength/pull-setup.js";
import { rule as pushUps } from "../../src/validity/strength/push-up-conditions.js";
import { rule as limbs } from "../../src/validity/strength/reach-limb-sides.js";
import { rule as repetitions } from "../../src/validity/strength/repetitions-far-from-maximum.js";
import { rule as stance } from "../../src/validity/strength/stance-trials.js";
import { check } from "./findings-of.js";

const grip = (more: Grip) => ({ strength: { grip: more } });
check(gripTrials, [
  ["absent block", {}, []],
  ["three a hand", grip({ left_kg: [30, 31, 30], right_kg: [30, 31, 30] }), []],
  ["two with one hand", grip({ left_kg: [30, 31], right_kg: [30, 31, 30] }), ["weakens"]],
  ["one with each", grip({ left_kg: 30, right_kg: 31 }), ["weakens", "weakens"]],
]);
check(gripConditions, [
  ["nothing", grip({ left_kg: 30 }), ["weakens: not recorded"]],
  ["no handle", grip({ posture: "seated-elbow-bent", device_type: "hydraulic" }), ["record: not recorded"]],
  ["all", grip({ posture: "seated-elbow-bent", device_type: "hydraulic", handle_position: 2 }), []],
]);
check(twoHands, [
  ["1.6 times", grip({ left_kg: 25, right_kg: 40 }), []],
  ["more", grip({ left_kg: 25, right_kg: 40.1 }), ["weakens"]],
  ["one hand", grip({ right_kg: 80 }), []],
]);
check(gripSpread, [
  ["10 %", grip({ left_kg: [40, 36, 20] }), []],
  ["10 %, best trial last", grip({ left_kg: [20, 36, 40] }), []],
  ["beyond 10 %", grip({ left_kg: [40, 35.9, 20] }), ["weakens"]],
]);
check(gripPain, [
  ["no", grip({ pain_or_surgery: false, left_kg: 30 }), []],
  ["yes", grip({ pain_or_surgery: true, left_kg: 30 }), ["weakens"]],
]);
check(pushUps, [
  ["form missing", { strength: { push_ups: { repetitions: 20 } } }, ["weakens: not recorded"]],
  ["a woman from the knees", { strength: { push_ups: { repetitions: 20, form: "modified" } } }, []],
  ["a woman from the toes", { strength: { push_ups: { repetitions: 20, form: "standard" } } }, ["record"]],
  ["a man from the toes", { strength: { push_ups: { repetitions: 20, form: "standard" } } }, [], { sex: "male" }],
  ["one minute", { strength: { push_ups: { repetitions: 20, form: "modified", time_limit_s: 60 } } }, ["weakens"]],
]);
check(repetitions, [
  ["6", { strength: { bench_press: { load_kg: 50, repetitions: 6 } } }, []],
  ["7", { strength: { bench_press: { load_kg: 50, repetitions: 7 } } }, ["weakens"]],
]);
check(machine, [
  ["missing", { strength: { leg_press: { load_kg: 50, repetitions: 1 } } }, ["record: not recorded"]],
  ["given", { strength: { leg_press: { load_kg: 50, repetitions: 1, machine: "seated-machine" } } }, []],
]);
check(jump, [
  ["nothing", { strength: { jump: { height_cm: 30 } } }, ["weakens: not recorded"]],
  ["arms missing", { strength: { jump: { method: "flight-time", type: "squat" } } }, ["record: not recorded"]],
  ["all", { strength: { jump: { method: "flight-time", type: "squat", arms: "on-hips" } } }, []],
]);
const pull = (more: Partial<MidThighPull>) => ({ strength: { mid_thigh_pull: { peak_force_n: 2000, ...more } } });
check(pulls, [
  ["one", pull({}), ["weakens"]],
  ["250 N apart", pull({ peak_force_n: [2000, 2250] }), []],
  ["251 N apart", pull({ peak_force_n: [2000, 2251] }), ["weakens"]],
  ["a third within", pull({ peak_force_n: [1500, 2251, 2100] }), []],
]);
const set: Partial<MidThighPull> = { knee_degrees: 125, hip_degrees: 150, sampling_hz: 500, force: "net" };
check(setup, [
  ["edges", pull(set), []],
  ["nothing", pull({}), ["record: not recorded"]],
  ["knee", pull({ ...set, knee_degrees: 124 }), ["weakens"]],
  ["hip and sampling", pull({ ...set, hip_degrees: 151, sampling_hz: 499 }), ["weakens", "weakens"]],
]);
const stand = (left_s: [number, ...number[]], ceiling_s?: number) => ({
  mobility: { single_leg_stance: { left_s, ...(ceiling_s === undefined ? {} : { ceiling_s }) } },
});
check(stance, [
  ["three to 45 s", stand([40, 45, 45], 45), []],
  ["two", stand([40, 45], 45), ["weakens"]],
  ["no ceiling", stand([40, 45, 45]), ["record: not recorded"]],
  ["30 s", stand([30, 30, 30], 30), ["record"]],
]);
const leg = (limb_length_cm: number) => ({ anterior_cm: 60, limb_length_cm });
check(limbs, [
  ["2.9 cm", { mobility: { reach: { left: leg(90), right: leg(92.9) } } }, []],
  ["3 cm", { mobility: { reach: { left: leg(90), right: leg(93) } } }, ["weakens"]],
]);
