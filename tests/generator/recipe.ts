/**
 * What a generated exercise test is made of. Every number is an invention inside the range a laboratory meets;
 * `recipe(seed, changes)` draws a plausible person and protocol, and any part can be set by hand.
 */
import { type Chance, chance } from "./random.js";

/** Load against time from the start of the incremental phase. `rise` is per minute (ramp) or per stage (step). */
export interface Protocol {
  readonly kind: "ramp" | "step";
  readonly start: number;
  readonly rise: number;
  /** Length of a stage, s; ignored for a ramp. */
  readonly stageS: number;
  /** Treadmill grade, %. */
  readonly gradePct: number;
  /** Which of the treadmill's loads rises; the other stays. A cycle always raises power. */
  readonly raises: "speed" | "grade";
}

export interface Noise {
  /** Relative SD of one breath's VO2. */
  readonly vo2Sd: number;
  /** Correlation of the errors of VO2 and VCO2, and of VO2 and ventilation, breath by breath. */
  readonly vo2Vco2: number;
  readonly vo2Ve: number;
  /** Normal, or heavy: one breath in eight has three times the spread. */
  readonly tails: "normal" | "heavy";
  /** Correlation of one breath's error with the next one's. */
  readonly lag1: number;
  /** SD of end-tidal readings, mmHg. */
  readonly endTidalMmhg: number;
}

export interface Faults {
  /** Share of breaths that are coughs (large volume, little gas) or swallows (long, little gas). */
  readonly coughs: number;
  /** Share of breaths whose VO2 and VCO2 are written as 0. */
  readonly lost: number;
  /** Number of stretches of 8 to 20 s without any row. */
  readonly dropouts: number;
  /** Channels that read 0 from `fromS` on. */
  readonly dead: readonly {
    readonly channel: "vo2" | "vco2" | "ve" | "petco2" | "peto2" | "hr";
    readonly fromS: number;
  }[];
}

export interface Recipe {
  readonly seed: number;
  readonly mode: "treadmill" | "cycle";
  readonly posture: "standing" | "supine" | "seated";
  readonly massKg: number;
  readonly restS: number;
  readonly warmUpS: number;
  readonly warmUpLoad: number;
  readonly protocol: Protocol;
  readonly recoveryS: number;
  /** Seconds of a verification bout at 105 % of the last load, after the recovery; 0 for none. */
  readonly verificationS: number;
  /** True capacity and breakpoints, L/min VO2. vt2 null: ventilation stays on one line to the end. */
  readonly vo2Rest: number;
  readonly vo2Peak: number;
  readonly vt1: number;
  readonly vt2: number | null;
  /** Share of vo2Peak at which the test is stopped; 1 is to exhaustion. */
  readonly stopAt: number;
  /** Seconds spent with VO2 at its ceiling before the end; 0 for a test without plateau. */
  readonly plateauS: number;
  /** Time constants, s: VO2 after a change of load, body CO2 stores, heart rate. */
  readonly tauVo2: number;
  readonly tauStores: number;
  readonly tauHr: number;
  /** VCO2 = slope1·VO2 + offset below VT1, slope2 above, slope3 more above VT2. */
  readonly slope1: number;
  readonly offset: number;
  readonly slope2: number;
  readonly slope3: number;
  /** VE = veSlope·VCO2 + veOffset; above VT2 the slope is (1 + veRise) times as steep. */
  readonly veSlope: number;
  readonly veOffset: number;
  readonly veRise: number;
  /** Width of the bends, L/min VO2: 0 is a sharp break, 0.1 a mild curve. */
  readonly softness: number;
  readonly hrRest: number;
  readonly hrMax: number;
  readonly barometricMmhg: number;
  readonly fio2: number;
  readonly noise: Noise;
  readonly faults: Faults;
  /** A row a breath, or means over `everyS` seconds; a mixing chamber also delays and blends the gases (not the volume). */
  readonly sampling: { readonly kind: "breath" | "mean" | "mixing"; readonly everyS: number };
}

export const NOISE: Noise = {
  vo2Sd: 0.07,
  vo2Vco2: 0.95,
  vo2Ve: 0.8,
  tails: "normal",
  lag1: 0.04,
  endTidalMmhg: 1.2,
};
export const NO_NOISE: Noise = { ...NOISE, vo2Sd: 0, endTidalMmhg: 0 };
export const NO_FAULTS: Faults = { coughs: 0, lost: 0, dropouts: 0, dead: [] };
export const USUAL_FAULTS: Faults = { coughs: 0.01, lost: 0.001, dropouts: 0, dead: [] };

/** O2 cost of a load, L/min above rest: 10.3 mL/min per W; 0.19 mL/kg a metre on the flat and 0.9 mL/kg a metre climbed. */
export function costOf(r: Pick<Recipe, "mode" | "massKg">, load: Load): number {
  if (r.mode === "cycle") return load.power === 0 ? 0 : 0.15 + 0.0103 * load.power;
  const metresPerMin = (load.speed * 1000) / 60;
  return (r.massKg / 1000) * metresPerMin * (0.19 + 0.9 * (load.grade / 100));
}
export interface Load {
  /** km/h */ readonly speed: number;
  /** % */ readonly grade: number;
  /** W */ readonly power: number;
}

/** Draws a person and a protocol. The load rises so that exhaustion comes after about 9 to 13 minutes (steps: 12 to 20). */
export function recipe(seed: number, changes: Partial<Recipe> = {}): Recipe {
  const c = chance(seed);
  const mode = changes.mode ?? c.pick(["treadmill", "cycle"] as const);
  const massKg = changes.massKg ?? Math.round(c.between(50, 95) * 10) / 10;
  const vo2Peak = changes.vo2Peak ?? (massKg * c.between(35, 70)) / 1000;
  const vt1 = changes.vt1 ?? vo2Peak * c.between(0.55, 0.7);
  const vt2 = changes.vt2 === undefined ? vo2Peak * c.between(0.78, 0.9) : changes.vt2;
  const vo2Rest = changes.vo2Rest ?? (massKg * c.between(3.6, 4.6)) / 1000;
  const kind = changes.protocol?.kind ?? c.pick(["ramp", "step"] as const);
  const protocol = changes.protocol ?? drawProtocol(c, kind, mode, massKg, vo2Rest, vo2Peak);
  const slope1 = c.between(0.86, 0.98);
  const drawn: Recipe = {
    seed,
    mode,
    posture: "standing",
    massKg,
    restS: 120,
    warmUpS: 180,
    warmUpLoad: protocol.raises === "grade" || mode === "treadmill" ? Math.max(4, protocol.start - 1) : protocol.start,
    protocol,
    recoveryS: 120,
    verificationS: 0,
    vo2Rest,
    vo2Peak,
    vt1,
    vt2,
    stopAt: 1,
    plateauS: c.happens(0.4) ? Math.round(c.between(30, 75)) : 0,
    tauVo2: c.between(28, 42),
    tauStores: c.between(4, 14),
    tauHr: c.between(20, 40),
    slope1,
    offset: c.between(-0.08, 0.02),
    slope2: slope1 + c.between(0.25, 0.45),
    slope3: c.between(0, 0.2),
    veSlope: c.between(22, 29),
    veOffset: c.between(2.5, 6),
    veRise: c.between(0.3, 0.6),
    softness: 0,
    hrRest: Math.round(c.between(48, 72)),
    hrMax: Math.round(c.between(172, 202)),
    barometricMmhg: 755,
    fio2: 0.2093,
    noise: NOISE,
    faults: USUAL_FAULTS,
    sampling: { kind: "breath", everyS: 0 },
  };
  return { ...drawn, ...changes };
}

function drawProtocol(
  c: Chance,
  kind: "ramp" | "step",
  mode: Recipe["mode"],
  massKg: number,
  vo2Rest: number,
  vo2Peak: number,
): Protocol {
  const minutes = kind === "ramp" ? c.between(9, 13) : c.between(11, 18);
  const stageS = kind === "ramp" ? 0 : c.pick([60, 60, 120, 180] as const);
  const stages = kind === "ramp" ? minutes : (minutes * 60) / stageS;
  if (mode === "cycle") {
    const last = (vo2Peak - vo2Rest - 0.15) / 0.0103;
    const start = Math.round((last * c.between(0.15, 0.25)) / 5) * 5;
    return { kind, start, rise: Math.round((last - start) / stages), stageS, gradePct: 0, raises: "speed" };
  }
  const cost = { mode, massKg };
  const last = (vo2Peak - vo2Rest) / costOf(cost, { speed: 1, grade: 1, power: 0 });
  const start = Math.round(last * c.between(0.35, 0.5) * 2) / 2;
  return { kind, start, rise: Math.round(((last - start) / stages) * 20) / 20, stageS, gradePct: 1, raises: "speed" };
}
