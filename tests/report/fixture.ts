/**
 * An invented client with a baseline and a retest, as results, raw series and figures' input: everything a report can
 * be asked to print, made by hand and by a seeded generator. No number here comes from a person.
 */
import type {
  Cell,
  Change,
  Column,
  Entry,
  MeasurementError,
  NormPosition,
  Quantity,
  Table,
} from "../../src/kernel/measure.js";
import { measureInfo } from "../../src/kernel/measures.js";
import type { Results } from "../../src/kernel/results.js";
import type { Series } from "../../src/kernel/series.js";

const UNITS: Record<string, [string, number]> = {
  vo2_peak: ["L/min", 2],
  vo2_peak_per_mass: ["mL/kg/min", 1],
};

type Extra = { error?: MeasurementError; norms?: NormPosition[]; note?: string; unit?: string; decimals?: number };
const q = (id: string, value: number, unit: string, decimals: number, more: Extra = {}): Quantity => ({
  kind: "quantity",
  id,
  value,
  unit: measureInfo(id)?.unit ?? UNITS[id]?.[0] ?? unit,
  decimals: measureInfo(id)?.decimals ?? UNITS[id]?.[1] ?? decimals,
  origin: { kind: "key", key: `session.yaml ${id}` },
  ...more,
});
const t = (id: string, columns: readonly Column[], rows: readonly (readonly Cell[])[], note?: string): Table => ({
  kind: "table",
  id,
  columns,
  rows,
  origin: { kind: "formula", formula: "time-bins r1", inputs: [{ name: "file", text: "treadmill.csv" }] },
  ...(note === undefined ? {} : { note }),
});

function chance(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

interface Person {
  readonly seed: number;
  readonly massKg: number;
  readonly peak: number;
  readonly vt1: number;
  readonly vt2: number;
  readonly seconds: number;
}

const round = (value: number, decimals: number) => Number(value.toFixed(decimals));

/** True state at a time: rest to 120 s, warm-up to 300 s, a stage a minute, recovery for three minutes after the end. */
function stateAt(person: Person, time: number) {
  const start = 300;
  const end = start + person.seconds;
  const ramp = Math.max(0, Math.min(1, (time - start) / person.seconds));
  const speed = time < 120 ? 0 : time < start ? 5 : time < end ? 7 + Math.floor((time - start) / 60) : 4;
  let vo2 = time < 120 ? 0.32 : time < start ? 1.05 : 1.05 + (person.peak - 1.05) * Math.min(1, ramp * 1.05);
  if (time >= end) vo2 = 0.5 + (person.peak - 0.5) * Math.exp(-(time - end) / 55);
  const above1 = Math.max(0, vo2 - person.vt1);
  const vco2 = 0.84 * vo2 + 0.36 * above1 + (time >= end ? 0.25 * Math.exp(-(time - end) / 120) : 0);
  const above2 = Math.max(0, vo2 - person.vt2);
  const ventilation = 3 + 25.5 * vco2 + 16 * above2;
  const heartRate = time < 120 ? 66 : 92 + (184 - 92) * ((vo2 - 1.05) / (person.peak - 1.05));
  const frequency = 14 + 30 * ((vo2 - 0.3) / (person.peak - 0.3)) ** 1.4;
  const petco2 = 37 + 5 * Math.min(1, vo2 / person.vt2) - 8 * above2;
  const peto2 = 100 - 6 * Math.min(1, vo2 / person.vt1) + 9 * above1 + 8 * above2;
  return { speed, vo2, vco2, ventilation, heartRate, frequency, petco2, peto2 };
}

function breathsOf(person: Person, file: string): Series {
  const random = chance(person.seed);
  const gauss = () => Math.sqrt(-2 * Math.log(random() + 1e-9)) * Math.cos(2 * Math.PI * random());
  const rows: number[][] = [];
  for (let time = 2; time < 300 + person.seconds + 180; ) {
    const s = stateAt(person, time);
    const shared = 1 + 0.07 * gauss();
    const cough = random() < 0.006 ? 1.7 : 1;
    const ventilation = s.ventilation * shared * cough;
    const frequency = s.frequency * (1 + 0.08 * gauss());
    rows.push([
      round(time, 1),
      round(s.vo2 * shared * cough * (1 + 0.02 * gauss()), 3),
      round(s.vco2 * shared * cough * (1 + 0.02 * gauss()), 3),
      round(ventilation, 1),
      Math.round(s.heartRate + gauss()),
      s.speed,
      round(ventilation / frequency, 2),
      round(frequency, 1),
      round(s.peto2 + 1.2 * gauss(), 1),
      round(s.petco2 + 0.9 * gauss(), 1),
    ]);
    time += 60 / Math.max(10, frequency);
  }
  const column = (i: number) => Float64Array.from(rows, (row) => row[i] as number);
  return {
    file,
    length: rows.length,
    channels: {
      time_s: column(0),
      vo2_l_min: column(1),
      vco2_l_min: column(2),
      ventilation_l_min: column(3),
      heart_rate_bpm: column(4),
      speed_km_h: column(5),
      tidal_volume_l: column(6),
      breathing_frequency_per_min: column(7),
      peto2_mmhg: column(8),
      petco2_mmhg: column(9),
    },
    conditions: { vo2_l_min: "STPD", vco2_l_min: "STPD", ventilation_l_min: "BTPS", tidal_volume_l: "BTPS" },
    lines: Int32Array.from(rows, (_, i) => i + 2),
    missing: {},
  };
}

function testTables(person: Person, series: Series): Entry[] {
  const excluded: Cell[][] = [];
  const time = series.channels.time_s as Float64Array;
  const vo2 = series.channels.vo2_l_min as Float64Array;
  for (let i = 0; i < series.length; i++) {
    const expected = stateAt(person, time[i] as number).vo2;
    if ((vo2[i] as number) > expected * 1.35)
      excluded.push([series.lines[i] as number, round(time[i] as number, 1), "local-spread", "vo2_l_min"]);
  }
  const bins: Cell[][] = [];
  const random = chance(person.seed + 7);
  for (let at = 7.5; at < 300 + person.seconds + 180; at += 15) {
    const s = stateAt(person, at);
    const noise = 1 + 0.018 * (random() + random() + random() - 1.5);
    const [o, c, v] = [s.vo2 * noise, s.vco2 * noise * (1 + 0.01 * (random() - 0.5)), s.ventilation * noise];
    bins.push([
      at,
      round(o, 3),
      round(c, 3),
      round(v, 1),
      Math.round(s.heartRate),
      round(c / o, 2),
      round(v / o, 1),
      round(v / c, 1),
      s.heartRate > 0 ? round((1000 * o) / s.heartRate, 1) : null,
      round(v / s.frequency, 2),
      round(s.frequency, 1),
      round(s.peto2, 1),
      round(s.petco2, 1),
      s.speed,
    ]);
  }
  const stages: Cell[][] = [];
  for (let i = 0; i * 60 < person.seconds; i++) {
    const s = stateAt(person, Math.min(300 + i * 60 + 45, 299 + person.seconds));
    stages.push([
      i + 1,
      300 + i * 60,
      Math.min(300 + (i + 1) * 60, 300 + person.seconds),
      s.speed,
      1,
      round(s.vo2, 2),
      Math.round(((1000 * s.vo2) / person.massKg) * 10) / 10,
      round(s.vco2 / s.vo2, 2),
      round(s.ventilation, 0),
      Math.round(s.heartRate),
      Math.min(20, 9 + i),
    ]);
  }
  return [
    t(
      "incremental_phases",
      [
        { key: "phase", title: "Phase" },
        { key: "from_s", title: "From", unit: "s", decimals: 0 },
        { key: "to_s", title: "To", unit: "s", decimals: 0 },
      ],
      [
        ["rest", 0, 120],
        ["warm-up", 120, 300],
        ["incremental", 300, 300 + person.seconds],
        ["recovery", 300 + person.seconds, 480 + person.seconds],
      ],
    ),
    t(
      "incremental_stages",
      [
        { key: "stage", title: "Stage", decimals: 0 },
        { key: "from_s", title: "From", unit: "s", decimals: 0 },
        { key: "to_s", title: "To", unit: "s", decimals: 0 },
        { key: "speed_km_h", title: "Speed", unit: "km/h", decimals: 1 },
        { key: "grade_pct", title: "Grade", unit: "%", decimals: 1 },
        { key: "vo2_l_min", title: "V̇O₂", unit: "L/min", decimals: 2 },
        { key: "vo2_ml_kg_min", title: "V̇O₂ per mass", unit: "mL/kg/min", decimals: 1 },
        { key: "rer", title: "RER", unit: "ratio", decimals: 2 },
        { key: "ventilation_l_min", title: "V̇E", unit: "L/min", decimals: 0 },
        { key: "heart_rate_bpm", title: "Heart rate", unit: "1/min", decimals: 0 },
        { key: "rpe", title: "RPE", unit: "6–20", decimals: 0 },
      ],
      stages,
      "Means of the last 30 s of each stage.",
    ),
    t(
      "incremental_bins",
      [
        { key: "time_s", title: "Time", unit: "s", decimals: 1 },
        { key: "vo2_l_min", title: "V̇O₂", unit: "L/min", decimals: 3 },
        { key: "vco2_l_min", title: "V̇CO₂", unit: "L/min", decimals: 3 },
        { key: "ventilation_l_min", title: "V̇E", unit: "L/min", decimals: 1 },
        { key: "heart_rate_bpm", title: "Heart rate", unit: "1/min", decimals: 0 },
        { key: "rer", title: "RER", unit: "ratio", decimals: 2 },
        { key: "ve_vo2", title: "V̇E/V̇O₂", unit: "ratio", decimals: 1 },
        { key: "ve_vco2", title: "V̇E/V̇CO₂", unit: "ratio", decimals: 1 },
        { key: "oxygen_pulse_ml", title: "O₂ pulse", unit: "mL", decimals: 1 },
        { key: "tidal_volume_l", title: "Tidal volume", unit: "L", decimals: 2 },
        { key: "breathing_frequency_per_min", title: "Breathing frequency", unit: "1/min", decimals: 1 },
        { key: "peto2_mmhg", title: "PETO₂", unit: "mmHg", decimals: 1 },
        { key: "petco2_mmhg", title: "PETCO₂", unit: "mmHg", decimals: 1 },
        { key: "speed_km_h", title: "Speed", unit: "km/h", decimals: 1 },
      ],
      bins,
    ),
    t(
      "incremental_excluded",
      [
        { key: "line", title: "Line", decimals: 0 },
        { key: "time_s", title: "Time", unit: "s", decimals: 1 },
        { key: "rule", title: "Rule" },
        { key: "channel", title: "Channel" },
      ],
      excluded,
    ),
  ];
}

const PERCENTILES = [1, 5, 10, 20, 25, 30, 40, 50, 60, 70, 75, 80, 90, 95, 99];
const GROUP = "women 40 to 49 years, treadmill";
const TABLE = "invented-treadmill-reference";
const judged = (id: string, verdict: string, because: string): Entry => ({ kind: "judgement", id, verdict, because });

function thresholds(vt1: [number, number, number, number], vt2: [number, number, number, number] | undefined): Entry[] {
  const of = (
    id: "vt1" | "vt2",
    [vo2, speed, heartRate, half]: [number, number, number, number],
    rpe: number,
  ): Entry[] => [
    q(`${id}_vo2`, vo2, "L/min", 2, {
      error: { low: round(vo2 - half, 2), high: round(vo2 + half, 2), from: "profile of the fit on 15-s bins" },
    }),
    q(`${id}_vo2_per_mass`, round((vo2 / 61.9) * 1000, 1), "mL/kg/min", 1),
    q(`${id}_percent_of_peak`, round((vo2 / 2.72) * 100, 0), "%", 0),
    q(`${id}_heart_rate`, heartRate, "1/min", 0),
    q(`${id}_speed`, speed, "km/h", 1),
    q(`${id}_rpe`, rpe, "6–20", 0),
  ];
  return [
    ...of("vt1", vt1, 12),
    t(
      "vt1_methods",
      [
        { key: "method", title: "Method" },
        { key: "vo2_l_min", title: "V̇O₂", unit: "L/min", decimals: 2 },
        { key: "note", title: "Remark" },
      ],
      [
        ["V-slope, two lines", vt1[0], "slopes 0.86 and 1.18; p of the F-test < 0.001"],
        ["V̇E/V̇O₂ rise", round(vt1[0] + 0.04, 2), "nadir, then steady rise"],
        ["PETO₂ rise", round(vt1[0] - 0.03, 2), ""],
      ],
    ),
    ...(vt2
      ? of("vt2", vt2, 16)
      : [
          {
            kind: "not given",
            id: "vt2_vo2",
            because: "ventilation kept rising in proportion until the end of the test",
          } as const,
        ]),
  ];
}

function visitEntries(now: boolean, person: Person, series: Series): Entry[] {
  const norm = (percentile: number, median: number): NormPosition[] => [
    { table: TABLE, group: GROUP, percentile, median },
  ];
  return [
    q("age", now ? 43.5 : 43.3, "years", 1),
    judged(
      "screening_decision",
      "proceed",
      "Every screening question was answered, and none calls for a physician before a test of this intensity.",
    ),
    q("stature", 168.2, "cm", 1),
    q("body_mass", person.massKg, "kg", 1, { error: { typical: 0.4, from: "laboratory retests, 12 pairs" } }),
    q("body_mass_index", round(person.massKg / 1.682 ** 2, 1), "kg/m²", 1),
    q("waist", now ? 76.5 : 78.0, "cm", 1),
    q("waist_to_height", now ? 0.45 : 0.46, "ratio", 2),
    q("systolic_pressure", now ? 122 : 126, "mmHg", 0),
    q("diastolic_pressure", now ? 78 : 80, "mmHg", 0),
    q("pulse_pressure", now ? 44 : 46, "mmHg", 0),
    q("mean_arterial_pressure", now ? 93 : 95, "mmHg", 0),
    judged(
      "blood_pressure_class",
      "elevated (ACC/AHA 2017)",
      "Both means of today's readings are below 130/80 mmHg and the upper one is at least 120 mmHg; one day alone never makes a diagnosis.",
    ),
    t(
      "blood_pressure_readings",
      [
        { key: "reading", title: "Reading", decimals: 0 },
        { key: "arm", title: "Arm" },
        { key: "systolic", title: "Systolic", unit: "mmHg", decimals: 0 },
        { key: "diastolic", title: "Diastolic", unit: "mmHg", decimals: 0 },
        { key: "pulse", title: "Pulse", unit: "1/min", decimals: 0 },
        { key: "counts", title: "Counts" },
      ],
      [
        [1, "left", 129, 82, 68, "no"],
        [2, "left", 123, 78, 66, "yes"],
        [3, "left", 121, 78, 65, "yes"],
      ],
      "The first reading is not used.",
    ),
    q("resting_vo2", 221, "mL/min", 0),
    q("resting_vco2", 181, "mL/min", 0),
    q("resting_rer", 0.82, "ratio", 2),
    q("resting_ventilation", 6.1, "L/min", 1),
    q("resting_tidal_volume", 0.48, "L", 2),
    q("resting_breathing_frequency", 12.7, "1/min", 1),
    q("resting_heart_rate", now ? 57 : 60, "1/min", 0),
    q("resting_energy_expenditure", 1545, "kcal/day", 0, { error: { typical: 50, from: "published: one-day repeat" } }),
    q("resting_energy_predicted", 1362, "kcal/day", 0, {
      note: "Prediction, not a measurement; standard error of estimate about 10 %.",
    }),
    t(
      "rest_window",
      [
        { key: "from_min", title: "From", unit: "min", decimals: 0 },
        { key: "to_min", title: "To", unit: "min", decimals: 0 },
        { key: "vo2_cv_pct", title: "Spread of V̇O₂", unit: "%", decimals: 1 },
      ],
      [[8, 13, 3.1]],
    ),
    t(
      "rest_trace",
      [
        { key: "minute", title: "Minute", unit: "min", decimals: 0 },
        { key: "vo2_ml_min", title: "VO2", unit: "mL/min", decimals: 0 },
        { key: "vco2_ml_min", title: "VCO2", unit: "mL/min", decimals: 0 },
        { key: "rer", title: "RER", unit: "ratio", decimals: 2 },
      ],
      [0.291, 0.268, 0.252, 0.247, 0.236, 0.241, 0.229, 0.224, 0.219, 0.222, 0.218, 0.221, 0.225, 0.231, 0.228].map(
        (v, i) => [
          i + 1,
          round(1000 * v, 0),
          round(1000 * v * (0.8 + 0.002 * (i % 4)), 0),
          round(0.8 + 0.01 * (i % 4), 2),
        ],
      ),
    ),
    q("body_fat_percent", now ? 27.1 : 28.4, "%", 1, {
      error: { typical: 0.7, from: "published: repeat scans with repositioning" },
    }),
    q("fat_mass", now ? 16.8 : 17.8, "kg", 1),
    q("fat_mass_index", now ? 5.9 : 6.3, "kg/m²", 1, {
      norms: [
        {
          table: "invented-dxa-reference",
          group: "women 40 to 49 years, same scanner maker",
          percentile: 31,
          median: 7.4,
        },
      ],
    }),
    q("fat_free_mass_index", now ? 16.0 : 15.9, "kg/m²", 1),
    t(
      "dxa_regions",
      [
        { key: "region", title: "Region" },
        { key: "fat", title: "Fat", unit: "g", decimals: 0 },
        { key: "lean", title: "Lean without bone", unit: "g", decimals: 0 },
        { key: "bmc", title: "Bone mineral", unit: "g", decimals: 0 },
        { key: "share", title: "Fat", unit: "%", decimals: 1 },
      ],
      [
        ["left arm", 920, 2210, 150, 28.0],
        ["right arm", 940, 2340, 160, 27.3],
        ["trunk", 7610, 20900, 710, 26.0],
        ["left leg", 3210, 7020, 420, 30.1],
        ["right leg", 3240, 7110, 430, 30.1],
      ],
    ),
    t(
      "reference_percentiles",
      [
        { key: "measure", title: "Measure" },
        { key: "table", title: "Reference table" },
        { key: "group", title: "Group" },
        ...PERCENTILES.map((p) => ({ key: `p${p}`, title: `${p}th percentile` })),
      ],
      [
        [
          "vo2_peak_per_mass",
          TABLE,
          GROUP,
          null,
          24.1,
          26.3,
          29.7,
          31,
          32.1,
          34.2,
          36.1,
          38,
          40.1,
          41.3,
          42.6,
          46.2,
          49.3,
          null,
        ],
        [
          "grip_strength",
          "grip-strength-invented",
          "women 40 to 44 years",
          null,
          22,
          24,
          26.5,
          27.4,
          28.2,
          29.7,
          31,
          32.4,
          33.8,
          34.6,
          35.5,
          38,
          40.2,
          null,
        ],
      ],
      "Values of the reference group at each percentile; empty where the source does not go.",
    ),
    q("fev1", 3.12, "L", 2, {
      norms: [
        {
          table: "gli-global-2022",
          group: "women, 43 years, 168 cm",
          z: 0.4,
          predicted: 2.98,
          percentPredicted: 105,
          lowerLimit: 2.36,
        },
      ],
    }),
    q("fvc", 3.91, "L", 2, {
      norms: [
        {
          table: "gli-global-2022",
          group: "women, 43 years, 168 cm",
          z: 0.5,
          predicted: 3.7,
          percentPredicted: 106,
          lowerLimit: 2.93,
        },
      ],
    }),
    q("fev1_fvc", 0.8, "ratio", 2),
    q("grip_strength", 33, "kg", 0, {
      norms: [{ table: "grip-strength-invented", group: "women 40 to 44 years", percentile: 68, median: 31 }],
      error: { typical: 1.5, from: "laboratory retests, 12 pairs" },
    }),
    q("grip_strength_left", 31, "kg", 0),
    q("grip_strength_right", 33, "kg", 0),
    q("vo2_peak", person.peak, "L/min", 2),
    q("vo2_peak_per_mass", round((person.peak / person.massKg) * 1000, 1), "mL/kg/min", 1, {
      error: { typical: 1.3, from: "published: test-retest, 1 to 7 days" },
      norms: [
        ...norm(now ? 90 : 79, 36.1),
        { table: "older-table", notGiven: "the table holds for cycle ergometers only" },
      ],
    }),
    t(
      "vo2_peak_window_effect",
      [
        { key: "window_s", title: "Window", unit: "s", decimals: 0 },
        { key: "vo2_l_min", title: "V̇O₂peak", unit: "L/min", decimals: 2 },
      ],
      [
        [10, person.peak + 0.13],
        [15, person.peak + 0.08],
        [20, person.peak + 0.05],
        [30, person.peak],
        [60, person.peak - 0.06],
      ].map(([w, v]) => [w as number, round(v as number, 2)]),
    ),
    q("rer_peak", 1.13, "ratio", 2),
    q("ventilation_peak", now ? 98 : 92, "L/min", 0),
    q("heart_rate_peak", 184, "1/min", 0),
    q("oxygen_pulse_peak", round((person.peak / 184) * 1000, 1), "mL", 1),
    q("breathing_frequency_peak", 44, "1/min", 0),
    q("speed_peak", now ? 15 : 14, "km/h", 1),
    q("test_duration", round(person.seconds / 60, 1), "min", 1),
    ...testTables(person, series),
    judged("plateau", "not met", "Uptake still rose by more than half of what the last stage should have cost."),
    judged("verification", "not done", "No verification bout was recorded."),
    judged(
      "maximality",
      "VO2peak",
      "Without a plateau and without a verification bout the highest uptake is a peak, not a maximum.",
    ),
    t(
      "maximality_criteria",
      [
        { key: "criterion", title: "Criterion" },
        { key: "found", title: "Found" },
        { key: "limit", title: "Limit" },
        { key: "met", title: "Met" },
        { key: "source", title: "Source" },
      ],
      [
        ["RER at the end", "1.13", "≥ 1.10", "met", "common practice"],
        ["heart rate at the end", "184 1/min", "within 10 of 176 predicted", "met", "Tanaka 2001"],
        ["lactate after the end", "not measured", "≥ 8 mmol/L", "not measurable", "common practice"],
        ["RPE at the end", "19", "≥ 17", "met", "common practice"],
      ],
    ),
    ...(now ? thresholds([1.72, 11, 148, 0.09], [2.31, 13, 169, 0.2]) : thresholds([1.58, 10.1, 146, 0.1], undefined)),
    ...(now
      ? [
          judged("programme_state", "ready", "The plan was signed for this visit."),
          t(
            "programme_weeks",
            [
              { key: "week", title: "Week", decimals: 0 },
              { key: "monday", title: "From Monday" },
              { key: "phase", title: "Phase" },
              { key: "minutes", title: "Minutes", unit: "min", decimals: 0 },
              { key: "easy", title: "Easy", unit: "min", decimals: 0 },
              { key: "steady", title: "Steady", unit: "min", decimals: 0 },
              { key: "hard", title: "Hard", unit: "min", decimals: 0 },
              { key: "strength", title: "Strength", unit: "min", decimals: 0 },
              { key: "mark", title: "Mark" },
              { key: "source", title: "Source" },
            ],
            [
              [1, "2026-05-18", "foundation", 255, 160, 20, 10, 65, "", "convention"],
              [2, "2026-05-25", "foundation", 280, 180, 25, 10, 65, "", "convention"],
              [3, "2026-06-01", "build", 165, 110, 10, 5, 40, "", "convention"],
              [4, "2026-06-08", "build", 300, 190, 30, 15, 65, "retest", "convention"],
            ],
          ),
        ]
      : []),
    {
      kind: "remark",
      id: "remark_volume_calibration",
      severity: "weakens",
      found: "3.4 % difference",
      limit: "3 %",
      rule: "volume-calibration r1",
      because:
        "The flow sensor read 3.4 % more than the syringe holds, so ventilation and both gas volumes may be high by about as much.",
      affects: ["ventilation_peak", "vo2_peak", "vo2_peak_per_mass"],
    },
    {
      kind: "remark",
      id: "remark_caffeine",
      severity: "record",
      found: "not recorded",
      limit: "none for 12 h",
      rule: "caffeine r1",
      because: "Caffeine raises resting heart rate and blood pressure; whether any was taken was not recorded.",
      affects: ["resting_heart_rate", "systolic_pressure"],
    },
  ];
}

const change = (
  measure: string,
  unit: string,
  decimals: number,
  before: number,
  now: number,
  te: number,
  verdict: string,
  because: string,
  primary: boolean,
  worthwhile?: number,
): Change => ({
  kind: "change",
  id: `change_${measure}`,
  measure,
  unit,
  decimals,
  since: "2026-03-02",
  before,
  now,
  change: round(now - before, decimals + 1),
  low: round(now - before - 2.77 * te, decimals + 1),
  high: round(now - before + 2.77 * te, decimals + 1),
  typicalError: te,
  errorFrom: "published: test-retest, 1 to 7 days",
  detectable: round(2.77 * te, 1),
  ...(worthwhile === undefined
    ? {}
    : {
        worthwhile,
        worthwhileFrom: "0.2 of the spread between people",
        chances: { higher: 84, trivial: 13, lower: 3 },
      }),
  differs: [],
  verdict,
  because,
  primary,
});

const choices = {
  peak_window_s: 30,
  room_air: "0.2093/0.0003",
  energy_equation: "weir-1949",
  resting_prediction: "mifflin-st-jeor",
  blood_pressure_scheme: "acc-aha-2017",
  hrmax_equation: "tanaka-2001",
  vo2_reference: TABLE,
  lactate_definition: "baseline-plus-1.0",
  lung_reference: "gli-global-2022",
} as unknown as Results["choices"];
const conditions = { mode: "treadmill", protocol: "1 km/h a minute", instrument: "cart", "hour of day": "09" };

const before: Person = { seed: 11, massKg: 62.6, peak: 2.52, vt1: 1.58, vt2: 2.2, seconds: 430 };
const after: Person = { seed: 23, massKg: 61.9, peak: 2.72, vt1: 1.72, vt2: 2.31, seconds: 490 };
export const series = { "treadmill.csv": breathsOf(after, "treadmill.csv") };
const baselineSeries = breathsOf(before, "treadmill.csv");

export const baseline: Results = {
  client: "c-017",
  sex: "female",
  date: "2026-03-02",
  label: "baseline",
  purpose: "baseline",
  ageYears: 43.3,
  sources: [
    { file: "session.yaml", sha256: "5f1d7a84e0c3b2916f5e4d3c2b1a09f8e7d6c5b4a39281706f5e4d3c2b1a0918" },
    { file: "treadmill.csv", sha256: "0".repeat(64) },
  ],
  choices,
  conditions,
  entries: visitEntries(false, before, baselineSeries),
};
export const retest: Results = {
  ...baseline,
  date: "2026-05-18",
  label: "retest",
  purpose: "retest",
  ageYears: 43.5,
  sources: [
    { file: "session.yaml", sha256: "8be1c2d3e4f5061728394a5b6c7d8e9f0a1b2c3d4e5f60718293a4b5c6d7e8f9" },
    { file: "treadmill.csv", sha256: "1".repeat(64) },
  ],
  entries: [
    ...visitEntries(true, after, series["treadmill.csv"]),
    change(
      "vo2_peak_per_mass",
      "mL/kg/min",
      1,
      40.3,
      43.9,
      1.3,
      "cannot tell",
      "The rise of 3.6 mL/kg/min is a little less than two single tests can prove apart; it is more likely real than not, and a second test would settle it.",
      true,
      1.0,
    ),
    change(
      "vt1_speed",
      "km/h",
      1,
      10.1,
      11.0,
      0.25,
      "higher, beyond error",
      "The rise of 0.9 km/h is larger than the error of two tests together.",
      true,
      0.2,
    ),
    change(
      "body_mass",
      "kg",
      1,
      62.6,
      61.9,
      0.4,
      "no clear change",
      "A loss of 0.7 kg lies within what body mass varies from day to day.",
      false,
    ),
    change(
      "body_fat_percent",
      "%",
      1,
      28.4,
      27.1,
      0.7,
      "no clear change",
      "A fall of 1.3 points lies within the error of two scans.",
      true,
      0.5,
    ),
    change(
      "grip_strength",
      "kg",
      0,
      32,
      33,
      1.5,
      "no clear change",
      "A difference of 1 kg is less than grip varies from day to day.",
      false,
      1.5,
    ),
    {
      ...change(
        "resting_heart_rate",
        "1/min",
        0,
        60,
        57,
        3,
        "not comparable",
        "The visits began at different hours of the day, so no change is claimed.",
        false,
      ),
      differs: ["hour of day"],
    },
  ],
};
export const bare: Results = {
  ...baseline,
  entries: [q("age", 43.3, "years", 1), q("body_mass", 62.6, "kg", 1)],
  label: "short",
};
export const laboratory = {
  waymark: "laboratory 1",
  name: "Harbour Street Human Performance Laboratory",
  address: "12 Harbour Street\nSeaborough",
  letterhead: "Exercise physiology · invented for this example",
  paper: "A4",
  language: "en",
  altitude_m: 12,
} as const;
export const client = {
  waymark: "client 1",
  id: "c-017",
  birth_date: "1982-11-20",
  sex: "female",
  sport: "coastal rowing",
  goals: [{ goal: "a 40 km coastal rowing race", date: "2026-09-12" }],
} as const;
