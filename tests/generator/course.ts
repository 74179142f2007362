/**
 * The noise-free course of a test, second by second, and the truth about it.
 *
 * Oxygen uptake follows the load with one time constant. Carbon dioxide is a broken line in VO2 (delayed by the CO2
 * stores below VT1, extra CO2 washed out slowly in recovery); ventilation is a broken line in VCO2. The truth is
 * where the lines bend, not what some method would find there.
 */
import { costOf, type Load, type Recipe } from "./recipe.js";

export type PhaseName =
  | "rest"
  | "warm-up"
  | "incremental"
  | "recovery"
  | "verification"
  | "recovery after verification";
export interface TruePhase {
  readonly name: PhaseName;
  readonly fromS: number;
  readonly toS: number;
}
export interface TruePoint {
  readonly vo2: number;
  readonly timeS: number;
  readonly load: Load;
  readonly heartRate: number;
}
export interface Truth {
  /** null: the test ended before it, or it does not exist. */
  readonly vt1: TruePoint | null;
  readonly vt2: TruePoint | null;
  readonly peak: TruePoint;
  /** Best 30-s mean of the noise-free VO2, L/min. */
  readonly peak30s: number;
  readonly plateau: boolean;
  readonly phases: readonly TruePhase[];
}
export interface Course {
  readonly seconds: number;
  readonly vo2: Float64Array;
  readonly vco2: Float64Array;
  readonly ve: Float64Array;
  readonly heartRate: Float64Array;
  readonly petco2: Float64Array;
  readonly peto2: Float64Array;
  readonly loads: readonly Load[];
  readonly truth: Truth;
}

const IDLE: Load = { speed: 0, grade: 0, power: 0 };
const LONGEST_S = 5400;

/** A bend of the given width: 0 below, a line of slope 1 above, smooth when width > 0. */
const bend = (x: number, width: number): number =>
  width === 0 ? Math.max(0, x) : x / width > 30 ? x : width * Math.log1p(Math.exp(x / width));

function incrementalLoad(r: Recipe, t: number): Load {
  const p = r.protocol;
  const level = p.start + p.rise * (p.kind === "ramp" ? t / 60 : Math.floor(t / p.stageS));
  if (r.mode === "cycle") return { ...IDLE, power: level };
  if (p.raises === "grade") return { speed: r.warmUpLoad, grade: level, power: 0 };
  return { speed: level, grade: p.gradePct, power: 0 };
}

export function course(r: Recipe): Course {
  const vo2: number[] = [];
  const vco2: number[] = [];
  const ve: number[] = [];
  const heartRate: number[] = [];
  const petco2: number[] = [];
  const peto2: number[] = [];
  const loads: Load[] = [];
  const phases: TruePhase[] = [];

  let uptake = r.vo2Rest;
  let stores = r.slope1 * r.vo2Rest + r.offset;
  let extra = 0;
  let heart = r.hrRest;
  /** VCO2 at the moment VO2 first reaches VT2: from there ventilation is steeper. */
  let vco2AtVt2 = Number.POSITIVE_INFINITY;

  const second = (load: Load, ceiling: number) => {
    const demand = Math.min(r.vo2Rest + costOf(r, load), ceiling);
    uptake += (demand - uptake) / (demand < uptake ? r.tauVo2 * 1.5 : r.tauVo2);
    stores += (r.slope1 * uptake + r.offset - stores) / Math.max(1, r.tauStores);
    const target = excess(r, uptake);
    extra = target >= extra ? target : extra + (target - extra) / 80;
    const share = (uptake - r.vo2Rest) / (r.vo2Peak - r.vo2Rest);
    heart += (Math.min(r.hrMax, r.hrRest + (r.hrMax - r.hrRest) * share) - heart) / r.tauHr;
    const out = stores + extra;
    const ahead = 4 * r.softness; // a soft bend begins before its middle
    if (r.vt2 !== null && vco2AtVt2 === Number.POSITIVE_INFINITY && uptake >= r.vt2 - ahead)
      vco2AtVt2 = out + (r.slope2 + r.slope3 / 2) * (r.vt2 - uptake);
    const width = r.softness * r.slope2;
    const breathed =
      r.veSlope * (out + r.veRise * (vco2AtVt2 === Number.POSITIVE_INFINITY ? 0 : bend(out - vco2AtVt2, width))) +
      r.veOffset;
    const deadSpace = 0.14 + 0.18 * Math.exp(-uptake / 0.8);
    const pco2 = (863 * out) / (breathed * (1 - deadSpace));
    const ratio = out / uptake;
    const inspired = r.fio2 * (r.barometricMmhg - 47);
    vo2.push(uptake);
    vco2.push(out);
    ve.push(breathed);
    heartRate.push(heart);
    petco2.push(pco2);
    peto2.push(inspired - pco2 * (r.fio2 + (1 - r.fio2) / ratio));
    loads.push(load);
  };
  const phase = (name: PhaseName, seconds: number, load: Load) => {
    if (seconds <= 0) return;
    const fromS = vo2.length;
    for (let i = 0; i < seconds; i++) second(load, r.vo2Peak);
    phases.push({ name, fromS, toS: vo2.length });
  };

  phase("rest", r.restS, IDLE);
  const warm: Load =
    r.mode === "cycle"
      ? { ...IDLE, power: r.warmUpLoad }
      : { speed: r.warmUpLoad, grade: r.protocol.gradePct, power: 0 };
  phase("warm-up", r.warmUpS, warm);

  const begin = vo2.length;
  const stopVo2 = r.stopAt * r.vo2Peak;
  let atCeiling = 0;
  for (let t = 0; t < LONGEST_S; t++) {
    second(incrementalLoad(r, t), r.plateauS > 0 && r.stopAt === 1 ? r.vo2Peak : Number.POSITIVE_INFINITY);
    if (r.plateauS > 0 && r.stopAt === 1) {
      if (uptake > 0.985 * r.vo2Peak) atCeiling++;
      if (atCeiling >= r.plateauS) break;
    } else if (uptake >= stopVo2) break;
  }
  const end = vo2.length;
  phases.push({ name: "incremental", fromS: begin, toS: end });
  const last = loads[end - 1] as Load;
  phase("recovery", r.recoveryS, IDLE);
  if (r.verificationS > 0) {
    phase("verification", r.verificationS, { speed: last.speed * 1.05, grade: last.grade, power: last.power * 1.05 });
    phase("recovery after verification", 60, IDLE);
  }

  const point = (threshold: number | null): TruePoint | null => {
    if (threshold === null) return null;
    for (let t = begin; t < end; t++) if ((vo2[t] as number) >= threshold) return at(t, threshold);
    return null;
  };
  const at = (t: number, value: number): TruePoint => ({
    vo2: value,
    timeS: t,
    load: loads[t] as Load,
    heartRate: heartRate[t] as number,
  });
  let sum = 0;
  let best = 0;
  for (let t = begin; t < end; t++) {
    sum += (vo2[t] as number) - (t - begin >= 30 ? (vo2[t - 30] as number) : 0);
    if (t - begin >= 29) best = Math.max(best, sum / 30);
  }
  return {
    seconds: vo2.length,
    vo2: Float64Array.from(vo2),
    vco2: Float64Array.from(vco2),
    ve: Float64Array.from(ve),
    heartRate: Float64Array.from(heartRate),
    petco2: Float64Array.from(petco2),
    peto2: Float64Array.from(peto2),
    loads,
    truth: {
      vt1: point(r.vt1),
      vt2: point(r.vt2),
      peak: at(end - 1, vo2[end - 1] as number),
      peak30s: best,
      plateau: r.plateauS > 0 && r.stopAt === 1,
      phases,
    },
  };
}

/** CO2 beyond the aerobic line, L/min. */
function excess(r: Recipe, vo2: number): number {
  const first = (r.slope2 - r.slope1) * bend(vo2 - r.vt1, r.softness);
  return r.vt2 === null ? first : first + r.slope3 * bend(vo2 - r.vt2, r.softness);
}
