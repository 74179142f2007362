/**
 * A test as an instrument would write it: breaths of irregular length with correlated errors and the usual faults,
 * or means over fixed intervals, or a mixing chamber. The truth stands beside the rows.
 */
import { type Course, course, type Truth } from "./course.js";
import { type Chance, chance } from "./random.js";
import type { Recipe } from "./recipe.js";

/** One row; a channel that a fault blanked is 0, as instruments write it. */
export interface Row {
  /** End of the breath or interval, s from the start of the file. */
  readonly time: number;
  readonly vo2: number; // L/min STPD
  readonly vco2: number; // L/min STPD
  readonly ve: number; // L/min BTPS
  readonly vt: number; // L BTPS
  readonly bf: number; // 1/min
  readonly peto2: number; // mmHg
  readonly petco2: number; // mmHg
  readonly hr: number; // 1/min
  readonly speed: number; // km/h
  readonly grade: number; // %
  readonly power: number; // W
}
export interface GeneratedTest {
  readonly recipe: Recipe;
  readonly rows: readonly Row[];
  readonly truth: Truth;
}

/** The whole test: same recipe, same rows. */
export function generateTest(r: Recipe): GeneratedTest {
  const c = chance(r.seed ^ 0x5bd1e995);
  const noiseFree = r.sampling.kind === "mixing" ? blended(course(r)) : course(r);
  const breaths = breathe(r, noiseFree, c);
  const whole = r.sampling.kind === "breath" ? breaths : means(breaths, r.sampling.everyS);
  return { recipe: r, rows: kill(r, withDropouts(r, whole, noiseFree.seconds, c)), truth: noiseFree.truth };
}

function breathe(r: Recipe, path: Course, c: Chance): Row[] {
  const rows: Row[] = [];
  const spread = () => c.normal() * (r.noise.tails === "heavy" && c.happens(1 / 8) ? 3 : 1);
  const keep = Math.sqrt(1 - r.noise.lag1 ** 2);
  const sharedO2 = Math.sqrt(r.noise.vo2Vco2);
  const sharedVe = Math.min(0.99, r.noise.vo2Ve / Math.max(sharedO2, 0.01));
  const vtMax = 0.7 + 0.55 * r.vo2Peak;
  let shared = 0;
  let t = c.between(0, 2);
  for (;;) {
    const now = Math.min(path.seconds - 1, Math.floor(t));
    const ve = path.ve[now] as number;
    const depth = vtMax * (1 - Math.exp(-ve / (14 * vtMax)));
    const usual = (60 * depth) / ve;
    const length = Math.max(0.5, usual * (1 + 0.12 * c.normal()));
    t += length;
    if (t >= path.seconds) return rows;
    const middle = Math.max(0, Math.floor(t - length / 2));
    shared = r.noise.lag1 * shared + keep * spread();
    const error = (share: number) => r.noise.vo2Sd * (share * shared + Math.sqrt(1 - share * share) * spread());
    let [o2, co2, air] = [1 + error(sharedO2), 1 + error(sharedO2), 1 + error(sharedVe)].map((x) =>
      Math.max(0.05, x),
    ) as [number, number, number];
    const odd = c.happens(r.faults.coughs);
    const cough = c.happens(0.5);
    if (odd) {
      o2 *= cough ? 1.6 : 0.4;
      co2 *= cough ? 1.5 : 0.4;
      air *= cough ? 2.2 : 0.5;
    }
    const lost = c.happens(r.faults.lost);
    const carbon = c.normal();
    const load = path.loads[middle] as Row & (typeof path.loads)[number];
    const minuteVolume = (path.ve[middle] as number) * air;
    rows.push({
      time: t,
      vo2: lost ? 0 : (path.vo2[middle] as number) * o2,
      vco2: lost ? 0 : (path.vco2[middle] as number) * co2,
      ve: minuteVolume,
      vt: (minuteVolume * length) / 60,
      bf: 60 / length,
      peto2: (path.peto2[middle] as number) + r.noise.endTidalMmhg * (0.8 * c.normal() - 0.6 * carbon),
      petco2: (path.petco2[middle] as number) + r.noise.endTidalMmhg * 0.8 * carbon,
      hr: Math.round(path.heartRate[middle] as number),
      speed: load.speed,
      grade: load.grade,
      power: load.power,
    });
  }
}

/** Gases through a chamber that empties with 12 s; the volume is measured at the mouth and not delayed. */
function blended(path: Course): Course {
  const slow = (xs: Float64Array) => {
    const out = xs.slice();
    for (let i = 1; i < out.length; i++)
      out[i] = (out[i - 1] as number) + ((xs[i] as number) - (out[i - 1] as number)) / 12;
    return out;
  };
  return { ...path, vo2: slow(path.vo2), vco2: slow(path.vco2) };
}

/** Means over fixed intervals. Lost breaths are left out, as an instrument that averages does. */
function means(rows: readonly Row[], everyS: number): Row[] {
  const out: Row[] = [];
  let group: Row[] = [];
  let edge = everyS;
  const close = () => {
    const last = group.at(-1);
    if (last !== undefined) {
      const mean = (pick: (row: Row) => number) => group.reduce((sum, row) => sum + pick(row), 0) / group.length;
      out.push({
        ...last,
        time: edge,
        vo2: mean((x) => x.vo2),
        vco2: mean((x) => x.vco2),
        ve: mean((x) => x.ve),
        vt: mean((x) => x.vt),
        bf: mean((x) => x.bf),
        peto2: mean((x) => x.peto2),
        petco2: mean((x) => x.petco2),
        hr: Math.round(mean((x) => x.hr)),
      });
    }
    group = [];
  };
  for (const row of rows) {
    while (row.time > edge) {
      close();
      edge += everyS;
    }
    if (row.vo2 > 0) group.push(row);
  }
  close();
  return out;
}

function withDropouts(r: Recipe, rows: readonly Row[], seconds: number, c: Chance): Row[] {
  let kept = [...rows];
  for (let i = 0; i < r.faults.dropouts; i++) {
    const from = c.between(0.2, 0.9) * seconds;
    const to = from + c.between(8, 20);
    kept = kept.filter((row) => row.time < from || row.time > to);
  }
  return kept;
}

function kill(r: Recipe, rows: readonly Row[]): Row[] {
  return rows.map((row) => {
    const dead = r.faults.dead.filter((d) => row.time >= d.fromS).map((d) => [d.channel, 0] as const);
    return dead.length === 0 ? row : { ...row, ...Object.fromEntries(dead) };
  });
}
