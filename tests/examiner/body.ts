/**
 * A second, independent body for tests: gas exchange from mass balance, not from lines drawn to be found.
 *
 * Oxygen demand follows power with one time constant. Carbon dioxide leaves muscle at a fixed quotient, lactate above
 * VT1 frees more of it from bicarbonate, and body stores delay both. Ventilation is what holds arterial CO2 at its set
 * point through a dead space (863 · VCO2 / (PaCO2 · (1 − VD/VT))); above VT2 the set point falls. End-tidal oxygen is
 * the alveolar gas equation. Expired fractions are worked back from uptake, output and ventilation, dry, so that a raw
 * file holds what an analyser would see. Invented people; every number of this file is an assumption of the test.
 */
export interface Person {
  readonly vo2Peak: number;
  /** L/min */ readonly vt1: number;
  readonly vt2: number;
  readonly hrRest: number;
  readonly hrMax: number;
  readonly fio2: number;
  readonly pressureMmhg: number;
  /** Spread of a breath's depth, and of its own gas reading, as shares. */
  readonly depthNoise: number;
  readonly gasNoise: number;
  /** Correlation of the depths of neighbouring breaths. */
  readonly depthCarry: number;
  /** Share of the possible top at which the client stops. */
  readonly stopAt: number;
}
export const PERSON: Person = {
  vo2Peak: 3.6,
  vt1: 2.0,
  vt2: 2.9,
  hrRest: 60,
  hrMax: 188,
  fio2: 0.2093,
  pressureMmhg: 755,
  depthNoise: 0.1,
  gasNoise: 0.03,
  depthCarry: 0.2,
  stopAt: 1,
};
export interface Protocol {
  /** W at the start, W a minute (or a stage), stage length in s; 0 = ramp. */
  readonly start: number;
  readonly rise: number;
  readonly stageS: number;
}
export interface Breath {
  /** End of the breath, s. */ readonly t: number;
  readonly vo2: number;
  readonly vco2: number;
  /** L/min BTPS */ readonly ve: number;
  readonly bf: number;
  readonly petO2: number;
  readonly petCO2: number;
  readonly hr: number;
  readonly power: number;
}
export interface Test {
  readonly breaths: readonly Breath[];
  /** The same body without noise, once a second. */
  readonly still: readonly Breath[];
  readonly startS: number;
  readonly stopS: number;
  readonly endS: number;
}

/** Small generator of pseudo-random numbers (xorshift), normal by the sum of twelve. */
export function dice(seed: number): { uniform(): number; normal(): number } {
  let state = (seed * 2654435761 + 88675123) >>> 0 || 1;
  const uniform = () => {
    state ^= state << 13;
    state >>>= 0;
    state ^= state >>> 17;
    state ^= state << 5;
    state >>>= 0;
    return state / 4294967296;
  };
  for (let i = 0; i < 20; i++) uniform();
  return {
    uniform,
    normal: () => {
      let sum = -6;
      for (let i = 0; i < 12; i++) sum += uniform();
      return sum;
    },
  };
}
/** A bend rounded over about `width` on either side. */
const soft = (x: number, width = 0.04) => (x > 30 * width ? x : width * Math.log1p(Math.exp(x / width)));

export function exercise(person: Person, protocol: Protocol, seed: number, warmS = 180): Test {
  const { normal } = dice(seed);
  const gain = 0.0101; // L/min/W
  const base = 0.55; // unloaded work
  const power = (t: number) => {
    if (t < 0) return t < -warmS ? 0 : protocol.start;
    const steps = protocol.stageS > 0 ? Math.floor(t / protocol.stageS) : t / 60;
    return protocol.start + protocol.rise * steps;
  };
  const restS = 60;
  const still: Breath[] = [];
  let vo2 = 0.3;
  let co2 = 0.25;
  let falls = false;
  let stop = Number.POSITIVE_INFINITY;
  for (let t = -warmS - restS; t < stop + 150; t++) {
    const work = falls ? 0 : power(t);
    const demand = t < -warmS || falls ? (falls ? 0.5 : 0.3) : base + gain * work;
    const wanted = person.vo2Peak - soft(person.vo2Peak - demand, 0.03);
    vo2 += (wanted - vo2) / 32;
    const made = 0.84 * vo2 + 0.04 * Math.min(vo2, person.vt1) + 0.5 * soft(vo2 - person.vt1);
    co2 += (made - co2) / 16;
    const dead = 0.17 + 0.16 * Math.exp(-Math.max(0, vo2 - 0.3) / 0.9);
    const drive = person.fio2 < 0.19 ? 4 + 60 * (0.2093 - person.fio2) : 0;
    const paco2 = 40 - drive - 9 * soft(vo2 - person.vt2);
    const ve = (863 * co2) / paco2 / (1 - dead);
    const bf = 13 + 32 * (vo2 / person.vo2Peak) ** 2.2;
    const pio2 = person.fio2 * (person.pressureMmhg - 47);
    const ratio = co2 / vo2;
    const pao2 = pio2 - paco2 * (person.fio2 + (1 - person.fio2) / ratio);
    const hr = person.hrRest + (person.hrMax - person.hrRest) * Math.min(1, (vo2 - 0.3) / (person.vo2Peak - 0.3));
    still.push({ t: t + warmS + restS, vo2, vco2: co2, ve, bf, petO2: pao2, petCO2: paco2 + 1, hr, power: work });
    if (!falls && t > 120 && (vo2 >= person.stopAt * person.vo2Peak * 0.985 || demand > person.vo2Peak + 0.25)) {
      falls = true;
      stop = t;
    }
  }
  const breaths: Breath[] = [];
  let at = 0;
  let depth = 0;
  while (at < still.length - 5) {
    const now = still[Math.floor(at)] as Breath;
    const length = (60 / now.bf) * Math.exp(0.12 * normal());
    at += length;
    const here = still[Math.min(still.length - 1, Math.floor(at))] as Breath;
    depth = person.depthCarry * depth + person.depthNoise * Math.sqrt(1 - person.depthCarry ** 2) * normal();
    const scale = Math.exp(depth - person.depthNoise ** 2 / 2);
    const own = () => Math.exp(person.gasNoise * normal() - person.gasNoise ** 2 / 2);
    breaths.push({
      t: at,
      vo2: here.vo2 * scale * own(),
      vco2: here.vco2 * scale * own(),
      ve: here.ve * scale * own(),
      bf: 60 / length,
      petO2: here.petO2 + 1.5 * normal(),
      petCO2: here.petCO2 + 1.2 * normal(),
      hr: Math.round(here.hr + normal()),
      power: here.power,
    });
  }
  const startS = warmS + restS;
  return { breaths, still, startS, stopS: startS + stop, endS: startS + stop + 150 };
}

/** Highest mean over w seconds of the still body's uptake in the incremental phase. */
export function truePeak(test: Test, w = 30): number {
  let best = 0;
  for (let end = test.startS + w; end <= test.stopS; end++) {
    let sum = 0;
    for (let t = end - w; t < end; t++) sum += (test.still[Math.floor(t)] as Breath).vo2;
    best = Math.max(best, sum / w);
  }
  return best;
}

/** Means over w seconds, as a mixing chamber writes them; stamped at their end. */
export function mixed(breaths: readonly Breath[], w: number): Breath[] {
  const out: Breath[] = [];
  const last = breaths.at(-1)?.t ?? 0;
  for (let end = w; end <= last; end += w) {
    const inside = breaths.filter((b) => b.t > end - w && b.t <= end);
    if (inside.length === 0) continue;
    const mean = (key: keyof Breath) => inside.reduce((sum, b) => sum + b[key], 0) / inside.length;
    out.push({
      t: end,
      vo2: mean("vo2"),
      vco2: mean("vco2"),
      ve: mean("ve"),
      bf: mean("bf"),
      petO2: mean("petO2"),
      petCO2: mean("petCO2"),
      hr: Math.round(mean("hr")),
      power: (inside.at(-1) as Breath).power,
    });
  }
  return out;
}

/** Saturated vapour pressure, mmHg: the Antoine equation (the program uses another). */
export const vapour = (celsius: number) => 10 ** (8.07131 - 1730.63 / (233.426 + celsius));

/** What an analyser of dry mixed gas and a meter at ambient temperature (saturated) would read. */
export function raw(b: Breath, person: Person, meterC: number, fico2 = 0.0003) {
  const dry = (person.pressureMmhg - 47) / 863; // BTPS → STPD: 273.15/310.15/760 = 1/863
  const expired = b.ve * dry;
  const fin2 = 1 - person.fio2 - fico2;
  // Nitrogen balance: VI·FIN2 = VE·(1 − FEO2 − FECO2); uptake VI·FIO2 − VE·FEO2; output VE·FECO2 − VI·FICO2.
  const inspired = expired + b.vo2 - b.vco2; // volume balance, no nitrogen taken up
  const feo2 = (inspired * person.fio2 - b.vo2) / expired;
  const feco2 = (b.vco2 + inspired * fico2) / expired;
  const atps = expired * (760 / (person.pressureMmhg - vapour(meterC))) * ((273.15 + meterC) / 273.15);
  return { feo2, feco2, atps, fin2, inspired };
}
