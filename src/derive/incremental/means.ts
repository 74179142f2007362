/** Means of every channel over stretches of a test: the rows of the stage table and of the fifteen-second table. */
import type { Cell, Column } from "../../kernel/measure.js";
import type { PhaseSpan } from "./phases.js";
import type { Prepared } from "./prepare.js";
import type { BreathChannel } from "./samples.js";
import type { Stages } from "./stages.js";

export interface Means {
  /** Kept samples. */
  readonly n: number;
  /** Index of the first sample after the stretch. */
  readonly end: number;
  readonly of: Readonly<Record<BreathChannel, number | null>>;
}

/** Plain means over (fromS, toS], which starts at sample `least` or later; null where a channel has no value there. */
function meansOver(test: Prepared, fromS: number, toS: number, least = 0): Means {
  const b = test.breaths;
  const { time, excluded } = b;
  const first = firstAfter(time, excluded, fromS, least);
  let n = 0;
  let end = first;
  for (; end < b.n; end++) {
    if (excluded[end] === 1) continue;
    if ((time[end] as number) > toS + 1e-9) break;
    if (excluded[end] === 0) n++;
  }
  const mean = (xs: Float64Array) => meanOf(xs, excluded, first, end);
  // Settings of the ergometer and answers of the client: the last one counts.
  const last = (xs: Float64Array) => lastOf(xs, excluded, first, end);
  return {
    n,
    end,
    of: {
      vo2: mean(b.vo2),
      vco2: mean(b.vco2),
      ve: mean(b.ve),
      breathingFrequency: mean(b.breathingFrequency),
      heartRate: mean(b.heartRate),
      petO2: mean(b.petO2),
      petCO2: mean(b.petCO2),
      spo2: mean(b.spo2),
      speed: last(b.speed),
      grade: last(b.grade),
      power: last(b.power),
      cadence: last(b.cadence),
      rpe: last(b.rpe),
    },
  };
}

/** Mean of the kept samples from `first` to before `end`. */
function meanOf(xs: Float64Array, excluded: Uint8Array, first: number, end: number): number | null {
  let sum = 0;
  let count = 0;
  for (let i = first; i < end; i++) {
    const x = xs[i] as number;
    if (excluded[i] !== 0 || Number.isNaN(x)) continue;
    sum += x;
    count++;
  }
  return count === 0 ? null : sum / count;
}

/** Last value of any sample that has a place in time. */
function lastOf(xs: Float64Array, excluded: Uint8Array, first: number, end: number): number | null {
  for (let i = end - 1; i >= first; i--)
    if (excluded[i] !== 1 && !Number.isNaN(xs[i] as number)) return xs[i] as number;
  return null;
}

function firstAfter(time: Float64Array, excluded: Uint8Array, t: number, least: number): number {
  for (let i = least; i < time.length; i++) if (excluded[i] !== 1 && (time[i] as number) > t + 1e-9) return i;
  return time.length;
}

const ratio = (a: number | null, b: number | null) => (a === null || b === null || b === 0 ? null : a / b);

const loads: readonly Column[] = [
  { key: "speed_km_h", title: "Speed", unit: "km/h", decimals: 1 },
  { key: "grade_pct", title: "Grade", unit: "%", decimals: 1 },
  { key: "power_w", title: "Power", unit: "W", decimals: 0 },
];
const gases: readonly Column[] = [
  { key: "vo2_l_min", title: "VO2", unit: "L/min", decimals: 2 },
  { key: "vco2_l_min", title: "VCO2", unit: "L/min", decimals: 2 },
  { key: "rer", title: "RER", unit: "ratio", decimals: 2 },
  { key: "ventilation_l_min", title: "Ventilation", unit: "L/min", decimals: 1 },
  { key: "heart_rate_bpm", title: "Heart rate", unit: "1/min", decimals: 0 },
];
const gasCells = (of: Means["of"]): Cell[] => [of.vo2, of.vco2, ratio(of.vco2, of.vo2), of.ve, of.heartRate];
const loadCells = (of: Means["of"]): Cell[] => [of.speed, of.grade, of.power];

export const STAGE_COLUMNS: readonly Column[] = [
  { key: "stage", title: "Stage" },
  { key: "from_s", title: "From", unit: "s", decimals: 0 },
  { key: "to_s", title: "To", unit: "s", decimals: 0 },
  ...loads,
  ...gases,
  { key: "vo2_ml_kg_min", title: "VO2 per mass", unit: "mL/kg/min", decimals: 1 },
  { key: "spo2_pct", title: "SpO2", unit: "%", decimals: 0 },
  { key: "rpe", title: "Perceived exertion", unit: "6-20", decimals: 0 },
  { key: "complete", title: "Complete" },
];

/** One row a stage; means over its last `lastS` seconds, or over all of it where it is shorter. */
export function stageRows(test: Prepared, stages: Stages, spans: readonly PhaseSpan[], lastS: number, massKg?: number) {
  const row = (name: string, fromS: number, toS: number, complete: boolean): Cell[] => {
    const whole = stages.kind === "typed";
    const { of } = meansOver(test, whole ? fromS : Math.max(fromS, toS - lastS), toS);
    const perMass = of.vo2 === null || massKg === undefined ? null : (1000 * of.vo2) / massKg;
    const timed = test.timed;
    return [
      name,
      timed ? fromS : null,
      timed ? toS : null,
      ...loadCells(of),
      ...gasCells(of),
      perMass,
      of.spo2,
      of.rpe,
      complete ? "yes" : "no",
    ];
  };
  const before = spans.filter((s) => s.phase === "rest" || s.phase === "warm-up");
  return [
    ...before.map((s) => row(s.phase, s.fromS, s.toS, true)),
    ...stages.all.map((s, i) => row(String(i + 1), s.fromS, s.toS, s.complete)),
    ...spans.filter((s) => s.phase === "verification").map((s) => row(s.phase, s.fromS, s.toS, true)),
  ];
}

export const BIN_COLUMNS: readonly Column[] = [
  { key: "time_s", title: "Middle", unit: "s", decimals: 1 },
  { key: "phase", title: "Phase" },
  ...loads,
  ...gases,
  { key: "ve_vo2", title: "VE/VO2", unit: "ratio", decimals: 1 },
  { key: "ve_vco2", title: "VE/VCO2", unit: "ratio", decimals: 1 },
  { key: "oxygen_pulse_ml", title: "Oxygen pulse", unit: "mL/beat", decimals: 1 },
  { key: "tidal_volume_l", title: "Tidal volume", unit: "L", decimals: 2 },
  { key: "breathing_frequency_per_min", title: "Breathing frequency", unit: "1/min", decimals: 0 },
  { key: "peto2_mmhg", title: "PETO2", unit: "mmHg", decimals: 1 },
  { key: "petco2_mmhg", title: "PETCO2", unit: "mmHg", decimals: 1 },
  { key: "spo2_pct", title: "SpO2", unit: "%", decimals: 0 },
  { key: "samples", title: "Samples", decimals: 0 },
];

const ML_PER_L = 1000;

/**
 * Blocks of 15 s laid from the start of each phase; a last block shorter than half of that joins the one before it,
 * because two breaths must not weigh as much in a fit as ten. A block without kept samples has no row.
 */
export function binRows(test: Prepared, widthS = 15): Cell[][] {
  const rows: Cell[][] = [];
  for (const span of test.phases)
    for (let from = span.fromS, to: number, least = 0; from < span.toS - 1e-9; from = to) {
      to = span.toS - from < 1.5 * widthS - 1e-9 ? span.toS : from + widthS;
      const { n, of, end } = meansOver(test, from, to, least);
      least = end;
      if (n === 0) continue;
      rows.push([
        (from + to) / 2,
        span.phase,
        ...loadCells(of),
        ...gasCells(of),
        ratio(of.ve, of.vo2),
        ratio(of.ve, of.vco2),
        ratio(of.vo2 === null ? null : of.vo2 * ML_PER_L, of.heartRate),
        ratio(of.ve, of.breathingFrequency),
        of.breathingFrequency,
        of.petO2,
        of.petCO2,
        of.spo2,
        n,
      ]);
    }
  return rows;
}
