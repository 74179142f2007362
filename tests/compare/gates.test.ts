/**
 * An uncomparable pair never yields a claim: one case a gate. Each pair differs by far more than error, so that only the gate
 * can stop the claim; the same pair with nothing differing is claimed.
 */
import { describe, expect, it } from "vitest";
import { compare } from "../../src/compare/compare.js";
import { GATES, withinThreeHours } from "../../src/compare/gates.js";
import { type Entry, isClaim } from "../../src/kernel/measure.js";
import type { Results } from "../../src/kernel/results.js";
import { CHOICES, CONDITIONS, changeOf, nothingKnown, quantity, visit } from "./visits.js";

/** A laboratory error for every measure used here, so that a missing error cannot be what stops a claim. */
const pairs = Array.from({ length: 12 }, (_, i): [number, number] => [100 + i, 100 + i + (i % 2 ? 0.1 : -0.1)]);
const errors = (measure: string) => ({
  ...nothingKnown,
  laboratoryRetests: [{ measure, pairs, from: "invented" }],
  primaryOutcomes: [measure],
});

interface Case {
  readonly gate: string;
  readonly measure: string;
  readonly now?: Partial<Results>;
  readonly add?: readonly Entry[];
}
const condition = (gate: string, measure: string, word: string): Case => ({
  gate,
  measure,
  now: { conditions: { ...CONDITIONS, [gate]: word } },
});
const choice = (gate: string, measure: string, word: string | number): Case => ({
  gate,
  measure,
  now: { choices: { ...CHOICES, [gate]: word } as Results["choices"] },
});
const CASES: readonly Case[] = [
  condition("mode", "vo2_peak", "treadmill"),
  condition("ergometer", "vo2_peak", "cycle_two"),
  condition("protocol", "vo2_peak", "ramp 15"),
  condition("stage_length_s", "vo2_peak", "180"),
  condition("gas_analyser", "vo2_peak", "cart_two"),
  condition("handrail", "vo2_peak", "held"),
  choice("peak_window_s", "vo2_peak", 15),
  choice("room_air", "resting_vo2", "0.2095/0.0004"),
  condition("inspired_oxygen", "vo2_peak", "O2 fraction 0.15"),
  condition("pressure_mmhg", "vo2_peak", "600"),
  choice("energy_equation", "resting_energy_expenditure", "weir-short"),
  choice("rest_window_min", "resting_vo2", 10),
  choice("rest_window_rule", "resting_vo2", "all-after-settling"),
  condition("rest_collection", "resting_vo2", "mouthpiece"),
  condition("rest_analyser", "resting_vo2", "cart_two"),
  condition("rest_posture", "resting_vo2", "seated"),
  condition("pressure_posture", "systolic_pressure", "supine"),
  condition("pressure_method", "systolic_pressure", "auscultatory"),
  condition("pressure_device", "systolic_pressure", "monitor_two"),
  condition("dxa_scanner", "fat_mass", "scanner_two"),
  condition("dxa_software", "fat_mass", "2.0"),
  condition("dxa_positioning", "fat_mass", "half-mirrored"),
  condition("dxa_fasted", "fat_mass", "not fasted"),
  condition("scales", "body_mass", "scales_two"),
  condition("body_mass_basis", "vo2_peak_per_mass", "as stated by the client"),
  condition("start_time", "resting_vo2", "15:00"),
  condition("food", "resting_vo2", "within 3 h"),
  condition("caffeine", "resting_vo2", "within 6 h"),
  condition("alcohol", "resting_vo2", "within 24 h"),
  condition("exercise", "resting_vo2", "within 24 h"),
  condition("illness", "vo2_peak", "present"),
  condition("medication", "heart_rate_peak", "beta blocker"),
  condition("critical_mode", "critical_power", "rowing"),
  condition("critical_bouts", "critical_power", "4 at constant power"),
  choice("critical_power_model", "critical_power", "work-time"),
  condition("lactate_mode", "lactate_threshold_power", "treadmill running"),
  condition("lactate_step_s", "lactate_threshold_power", "180"),
  condition("lactate_site", "lactate_threshold_power", "fingertip"),
  condition("lactate_analyser", "lactate_threshold_power", "strip_two"),
  choice("lactate_definition", "lactate_threshold_power", "fixed-4"),
  condition("dynamometer", "grip_strength", "grip_two"),
  condition("grip_posture", "grip_strength", "standing-arm-straight"),
  condition("spirometer", "fev1", "spirometer_two"),
  condition("lungs_posture", "fev1", "standing"),
  condition("bronchodilator", "fev1", "after"),
  condition("push_up_form", "push_ups", "modified"),
  condition("bench_press_machine", "bench_press_1rm", "seated-machine"),
  condition("leg_press_machine", "leg_press_1rm", "sled-45-degrees"),
  condition("pull_up_hold", "pull_ups", "underhand"),
  condition("jump_method", "jump_height", "flight-time"),
  condition("jump_type", "jump_height", "squat"),
  condition("jump_arms", "jump_height", "free"),
  condition("pull_force", "mid_thigh_pull_force", "gross"),
  condition("knee_degrees", "mid_thigh_pull_force", "140"),
  condition("step_height_cm", "step_up_vertical_rate", "30"),
  condition("reach_zero_cm", "sit_and_reach", "23"),
  condition("stance_eyes", "single_leg_stance_best", "closed"),
  condition("caliper", "skinfold_sum", "caliper_two"),
  condition("measurer", "skinfold_sum", "second"),
  condition("impedance_device", "impedance_fat_percent", "impedance_two"),
  condition("corridor_m", "six_minute_walk_distance", "20"),
  condition("hrv_posture", "hrv_rmssd", "seated"),
  condition("hrv_breathing", "hrv_rmssd", "paced"),
  choice("hrv_window_s", "hrv_rmssd", 120),
  condition("recovery_posture", "heart_rate_recovery_1_min", "lying"),
  choice("ventilatory_slope_range", "ventilation_vco2_slope", "whole"),
  choice("vvo2max_definition", "speed_at_vo2max", "lacour"),
  choice("substrate_equation", "fat_oxidation_highest", "jeukendrup-wallis-2005"),
  choice("resting_prediction", "resting_energy_percent_predicted", "owen"),
  choice("hrmax_equation", "heart_rate_percent_predicted", "nes-2013"),
];
const OTHER: readonly Case[] = [
  {
    gate: "effort",
    measure: "vo2_peak",
    add: [{ kind: "judgement", id: "maximality", verdict: "VO2peak", because: "No plateau was seen." }],
  },
  condition("stop", "vo2_peak", "before the limit: planned"),
  condition("end_exertion", "vo2_peak", "15 of 6-20"),
  { gate: "peak heart rate", measure: "vo2_peak", add: [quantity("heart_rate_peak", 189)] },
  {
    gate: "validity remark",
    measure: "vo2_peak",
    add: [
      {
        kind: "remark",
        id: "remark_volume_calibration",
        severity: "weakens",
        found: "5.0 % off",
        limit: "3 %",
        because: "Volumes are wrong by as much.",
        affects: ["vo2_peak"],
        rule: "volume-calibration r1",
      },
    ],
  },
  {
    gate: "fatal remark on the whole visit",
    measure: "vo2_peak",
    add: [
      {
        kind: "remark",
        id: "remark_gas_calibration",
        severity: "fatal",
        found: "not done",
        limit: "before each test",
        because: "Nothing rests on it.",
        affects: [],
        rule: "gas-calibration r1",
      },
    ],
  },
];

function changed({ measure, now = {}, add = [] }: Case) {
  const effort: Entry = { kind: "judgement", id: "maximality", verdict: "VO2max", because: "A plateau was seen." };
  const own = add.some((entry) => entry.id === "maximality") ? add : [effort, ...add];
  const rate = add.some((entry) => entry.id === "heart_rate_peak") ? [quantity("heart_rate_peak", 156)] : [];
  const baseline = visit("2026-03-02", [quantity(measure, 100), effort, ...rate]);
  const retest = visit("2026-05-11", [quantity(measure, 150), ...own], { purpose: "retest", ...now });
  return changeOf(compare(retest, [baseline], errors(measure)), `change_${measure}`);
}

describe("comparability gate", () => {
  for (const one of [...CASES, ...OTHER])
    it(`claims nothing where ${one.gate} differs (${one.measure}), and claims otherwise`, () => {
      expect(isClaim(changed({ gate: "", measure: one.measure }))).toBe(true);
      const change = changed(one);
      expect(change.verdict).toBe("not comparable");
      expect(change.differs).toHaveLength(1);
      expect(change.change).toBe(50);
      expect([change.low, change.high, change.chances, change.detectable]).toEqual([
        undefined,
        undefined,
        undefined,
        undefined,
      ]);
      expect(change.because).toContain(change.differs[0]);
    });

  it("has a case for every gate", () => {
    const tried = new Set(CASES.map((c) => c.gate));
    expect(GATES.map((g) => g.condition).filter((name) => !tried.has(name))).toEqual([]);
    expect(CASES.length).toBeGreaterThanOrEqual(20);
  });

  it("holds critical power against its own bouts, not against the incremental test of the visit", () => {
    const other = { ...CONDITIONS, mode: "treadmill", protocol: "ramp 15", ergometer: "belt" };
    expect(isClaim(changed({ gate: "", measure: "critical_power", now: { conditions: other } }))).toBe(true);
    const { critical_mode, ...silent } = CONDITIONS;
    expect(critical_mode).toBe("cycle");
    expect(changed({ gate: "", measure: "critical_power", now: { conditions: silent } }).verdict).toBe(
      "not comparable",
    );
  });

  it("takes a condition recorded at one visit only as a difference", () => {
    const { medication, ...rest } = CONDITIONS;
    const change = changed({ gate: "medication", measure: "vo2_peak", now: { conditions: rest } });
    expect(medication).toBe("none");
    expect(change.verdict).toBe("not comparable");
    expect(change.differs).toEqual(["medication (not recorded on 11 May 2026)"]);
  });

  it("refuses another formula or revision, and a value that rests on a weakened one", () => {
    const made = (formula: string) => ({
      origin: {
        kind: "formula" as const,
        formula,
        inputs: [{ name: "body_mass", text: "70.0 kg", measure: "body_mass" }],
      },
    });
    const run = (formula: string, remark: readonly Entry[]) =>
      changeOf(
        compare(
          visit("2026-05-11", [quantity("body_mass_index", 150, made(formula)), quantity("body_mass", 70), ...remark], {
            purpose: "retest",
          }),
          [
            visit("2026-03-02", [
              quantity("body_mass_index", 100, made("body-mass-index r1")),
              quantity("body_mass", 70),
            ]),
          ],
          errors("body_mass_index"),
        ),
        "change_body_mass_index",
      );
    expect(isClaim(run("body-mass-index r1", []))).toBe(true);
    expect(run("body-mass-index r2", []).differs).toEqual(["formula (body-mass-index r1, now body-mass-index r2)"]);
    const weak: Entry = {
      ...(OTHER.find((c) => c.gate === "validity remark")?.add?.[0] as Extract<Entry, { kind: "remark" }>),
      affects: ["body_mass"],
    };
    expect(run("body-mass-index r1", [weak]).verdict).toBe("not comparable");
  });

  it("lets a shortfall that is the same at both visits pass as unchecked", () => {
    const weak = OTHER.find((c) => c.gate === "validity remark")?.add?.[0] as Extract<Entry, { kind: "remark" }>;
    const between = (first: string, second: string) =>
      changeOf(
        compare(
          visit(
            "2026-05-11",
            [quantity("grip_strength", 150), { ...weak, affects: ["grip_strength"], found: second }],
            {
              purpose: "retest",
            },
          ),
          [
            visit("2026-03-02", [
              quantity("grip_strength", 100),
              { ...weak, affects: ["grip_strength"], found: first },
            ]),
          ],
          errors("grip_strength"),
        ),
        "change_grip_strength",
      );
    expect(between("2 trials", "2 trials").unchecked).toEqual(["validity at both visits (2 trials; limit 3 %)"]);
    expect(isClaim(between("2 trials", "2 trials"))).toBe(true);
    expect(between("2 trials", "1 trial").verdict).toBe("not comparable");
  });

  it("takes equal heart rates as equal effort where a maximum was confirmed at one visit only", () => {
    const signs = (rate: number, verdict: string): Entry[] => [
      quantity("heart_rate_peak", rate),
      { kind: "judgement", id: "maximality", verdict, because: "Invented." },
    ];
    const pair = (rate: number) =>
      changeOf(
        compare(
          visit("2026-05-11", [quantity("vo2_peak", 150), ...signs(rate, "VO2peak")], { purpose: "retest" }),
          [visit("2026-03-02", [quantity("vo2_peak", 100), ...signs(180, "VO2max")])],
          errors("vo2_peak"),
        ),
        "change_vo2_peak",
      );
    expect(isClaim(pair(184))).toBe(true);
    expect(pair(184).unchecked?.join()).toContain("peak heart rates agree");
    expect(pair(169).verdict).toBe("not comparable");
  });

  it("compares clock times around midnight", () => {
    expect(withinThreeHours("23:30", "01:00")).toBe(true);
    expect(withinThreeHours("09:00", "12:00")).toBe(true);
    expect(withinThreeHours("09:00", "12:01")).toBe(false);
  });
});

it("a speed at another grade is not compared: 5 km/h at 27 % and at 34 %", () => {
  const at = (date: string, speed: number, grade: number) =>
    visit(date, [quantity("speed_peak", speed), quantity("grade_peak", grade), quantity("heart_rate_peak", 180)]);
  const verdict = (now: Results) =>
    changeOf(compare(now, [at("2026-01-05", 5, 27.4)], errors("speed_peak")), "change_speed_peak");
  const steeper = verdict(at("2026-03-02", 5, 34.4));
  expect(steeper?.verdict).toBe("not comparable");
  expect(steeper?.differs).toContain("grade at that speed (27.4 %, now 34.4 %)");
  expect(verdict(at("2026-03-02", 7, 27.4))?.differs.some((d) => /grade/.test(d))).toBe(false);
});
