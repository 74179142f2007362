/**
 * Writes the raw series of the example practice: invented people, seeded, with the noise, lost breaths and coughs that
 * real instruments give. `npm run examples` rewrites them; the session files beside them are written by hand.
 */
import { mkdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { generateTest } from "../generator/breaths.js";
import { COMMA, csvText, LITRES, MILLILITRES, PLAIN } from "../generator/csv.js";
import { chance } from "../generator/random.js";
import { type Recipe, recipe, USUAL_FAULTS } from "../generator/recipe.js";

const PRACTICE = join(dirname(fileURLToPath(import.meta.url)), "../../examples/skarn-point");

function write(path: string, text: string): void {
  mkdirSync(dirname(join(PRACTICE, path)), { recursive: true });
  writeFileSync(join(PRACTICE, path), text);
}

/** A walk uphill, the grade rising by the minute: the observatory client's test. */
const uphill = { kind: "step", start: 0, rise: 2, stageS: 60, gradePct: 0, raises: "grade" } as const;
const observatory = (seed: number, changes: Partial<Recipe>) =>
  recipe(seed, {
    mode: "treadmill",
    protocol: uphill,
    restS: 120,
    warmUpS: 180,
    warmUpLoad: 5,
    recoveryS: 180,
    verificationS: 210,
    slope1: 0.9,
    offset: -0.02,
    barometricMmhg: 742,
    vo2Rest: 0.27,
    tauVo2: 33,
    hrRest: 62,
    hrMax: 181,
    veRise: 0.45,
    plateauS: 0,
    faults: { ...USUAL_FAULTS, lost: 0.003 },
    ...changes,
  });

/** A cycle ramp in watts, written with semicolons, decimal commas and mL/min. */
const rower = (seed: number, changes: Partial<Recipe>) =>
  recipe(seed, {
    mode: "cycle",
    posture: "seated",
    massKg: 82.4,
    protocol: { kind: "ramp", start: 80, rise: 25, stageS: 0, gradePct: 0, raises: "speed" },
    restS: 120,
    warmUpS: 240,
    warmUpLoad: 80,
    recoveryS: 180,
    slope1: 0.9,
    offset: -0.02,
    barometricMmhg: 751,
    vo2Rest: 0.34,
    hrRest: 54,
    hrMax: 191,
    ...changes,
  });

/** Running steps of one minute: the selection-test client. */
const runner = (seed: number, changes: Partial<Recipe>) =>
  recipe(seed, {
    mode: "treadmill",
    massKg: 63.1,
    protocol: { kind: "step", start: 7, rise: 0.6, stageS: 60, gradePct: 1, raises: "speed" },
    restS: 90,
    warmUpS: 180,
    warmUpLoad: 5.5,
    recoveryS: 150,
    slope1: 0.9,
    offset: -0.02,
    barometricMmhg: 748,
    vo2Rest: 0.26,
    hrRest: 66,
    hrMax: 198,
    ...changes,
  });

/** Writes one test and says its true phases, for the session file beside it. */
function writeTest(path: string, r: Recipe, columns = LITRES, style = PLAIN): void {
  const test = generateTest(r);
  write(path, csvText(test, columns, style));
  const phases = test.truth.phases.map((phase) => `${phase.name} ${Math.round(phase.fromS)}`).join(", ");
  console.log(`${path}: ${phases}`);
}

const observatoryTests: [string, Recipe][] = [
  ["2026-03-02-baseline", observatory(170302, { massKg: 66.8, vo2Peak: 2.6, vt1: 1.62, vt2: 2.18, plateauS: 75 })],
  [
    "2026-05-11-retest",
    observatory(170511, { massKg: 65.1, vo2Peak: 2.84, vt1: 1.83, vt2: 2.43, hrMax: 180, plateauS: 50 }),
  ],
  [
    "2026-07-20-retest",
    observatory(170720, { massKg: 64.6, vo2Peak: 2.93, vt1: 1.92, vt2: 2.52, hrMax: 180, plateauS: 45 }),
  ],
];
for (const [visit, r] of observatoryTests) writeTest(`clients/c-017/${visit}/treadmill.csv`, r);

const rowerTests: [string, Recipe][] = [
  // Stopped at 80 % of capacity by a painful knee: must not be read as a maximum.
  ["2026-02-16-baseline", rower(230216, { vo2Peak: 4.35, vt1: 2.6, vt2: 3.55, stopAt: 0.8 })],
  ["2026-04-27-retest", rower(230427, { vo2Peak: 4.5, vt1: 2.8, vt2: 3.75, massKg: 81.6, plateauS: 40 })],
];
for (const [visit, r] of rowerTests)
  writeTest(
    `clients/c-023/${visit}/cycle.csv`,
    r,
    MILLILITRES.filter((c) => c.channel !== "speed" && c.channel !== "grade"),
    COMMA,
  );

const runnerTests: [string, Recipe][] = [
  ["2026-03-23-baseline", runner(310323, { vo2Peak: 2.75, vt1: 1.75, vt2: 2.35 })],
  ["2026-06-01-retest", runner(310601, { vo2Peak: 2.9, vt1: 1.9, vt2: 2.5, massKg: 62.2 })],
];
for (const [visit, r] of runnerTests) writeTest(`clients/c-031/${visit}/treadmill.csv`, r);

/** Supine rest under a hood, a mean every 30 s: settling from a raised level, then steady with one restless spell. */
function restCsv(seed: number, vo2: number, rq: number, heartRate: number): string {
  const c = chance(seed);
  const lines = ["time,VO2,VCO2,VE,RF,HR", "s,mL/min,mL/min,L/min,1/min,1/min"];
  for (let t = 30; t <= 1800; t += 30) {
    const settling = 1 + 0.18 * Math.exp(-t / 200);
    const restless = t > 1080 && t < 1200 ? 1.14 : 1;
    const level = vo2 * settling * restless * (1 + 0.025 * c.normal());
    const co2 = level * rq * (1 + 0.02 * c.normal());
    const ve = (co2 / 1000) * 29 * (1 + 0.03 * c.normal());
    const frequency = 13.5 + 0.9 * c.normal();
    const hr = heartRate * (0.5 * settling + 0.5) * (1 + 0.015 * c.normal());
    lines.push([t, level.toFixed(0), co2.toFixed(0), ve.toFixed(2), frequency.toFixed(1), hr.toFixed(0)].join(","));
  }
  return `${lines.join("\n")}\n`;
}

/** Beat intervals in ms, one a line: breathing and slow waves, a few artefacts (a missed beat, an early one). */
function beatText(seed: number, meanMs: number, swingMs: number): string {
  const c = chance(seed);
  const beats: string[] = [];
  let t = 0;
  while (t < 420_000) {
    const breathing = swingMs * Math.sin((2 * Math.PI * t) / 4400);
    const slow = 0.6 * swingMs * Math.sin((2 * Math.PI * t) / 10_300 + 1);
    let rr = meanMs + breathing + slow + 0.35 * swingMs * c.normal();
    t += rr;
    if (c.happens(0.004)) rr *= 2;
    else if (c.happens(0.003)) rr *= 0.6;
    beats.push(rr.toFixed(0));
  }
  return `${["RR (ms)", ...beats].join("\n")}\n`;
}

const rests: [string, number, number, number, number][] = [
  ["clients/c-017/2026-03-02-baseline", 17, 216, 0.82, 61],
  ["clients/c-017/2026-05-11-retest", 18, 213, 0.81, 58],
  ["clients/c-017/2026-07-20-retest", 19, 214, 0.82, 57],
  ["clients/c-031/2026-03-23-baseline", 31, 208, 0.84, 64],
];
for (const [visit, seed, vo2, rq, hr] of rests) write(`${visit}/rest.csv`, restCsv(seed, vo2, rq, hr));
write("clients/c-017/2026-03-02-baseline/beats.txt", beatText(171, 985, 34));
write("clients/c-017/2026-05-11-retest/beats.txt", beatText(172, 1035, 38));

/** The laboratory's own pairs of peak uptake, a week apart without training: L/min, and mL/kg/min of the same people. */
function retestPairs(seed: number, people: number): { absolute: string; perMass: string } {
  const c = chance(seed);
  const absolute = ["test,retest"];
  const perMass = ["test,retest"];
  for (let i = 0; i < people; i++) {
    const truth = c.between(1.9, 4.6);
    const massKg = 50 + truth * 8 + 4 * c.normal();
    const test = truth * (1 + 0.028 * c.normal());
    const retest = truth * 1.004 * (1 + 0.028 * c.normal());
    absolute.push(`${test.toFixed(2)},${retest.toFixed(2)}`);
    perMass.push(
      `${((1000 * test) / massKg).toFixed(1)},${((1000 * retest) / (massKg + 0.3 * c.normal())).toFixed(1)}`,
    );
  }
  return { absolute: `${absolute.join("\n")}\n`, perMass: `${perMass.join("\n")}\n` };
}
const pairs = retestPairs(2025, 14);
write("retests/vo2-peak.csv", pairs.absolute);
write("retests/vo2-peak-per-mass.csv", pairs.perMass);

/** A client's training log from the day after one visit to the day before the next: some sessions missed, some longer. */
function trainingLog(seed: number, from: string, to: string, startMin: number): string {
  const c = chance(seed);
  const lines = ["date,minutes,rpe,distance_km,climb_m,heart_rate_bpm"];
  const day = 86_400_000;
  for (let t = Date.parse(from) + day; t < Date.parse(to); t += day) {
    const weekday = new Date(t).getUTCDay();
    const week = Math.floor((t - Date.parse(from)) / (7 * day));
    const share = ({ 2: 0.3, 4: 0.2, 6: 0.33, 0: 0.17 } as Record<number, number>)[weekday];
    if (share === undefined || c.happens(0.12)) continue;
    const minutes = Math.round(startMin * (1 + 0.03 * week) * share * c.between(0.85, 1.1));
    const hard = weekday === 2;
    const heartRate = Math.round((hard ? 142 : 124) + 4 * c.normal());
    const climb = weekday === 6 ? String(10 * Math.round(minutes * 0.35)) : "";
    const distance = weekday === 6 ? (minutes * 0.062).toFixed(1) : "";
    const rating = hard ? (c.happens(0.5) ? 7 : 6) : c.happens(0.3) ? 4 : 3;
    lines.push(
      [new Date(t).toISOString().slice(0, 10), minutes, rating, distance, climb, c.happens(0.2) ? "" : heartRate].join(
        ",",
      ),
    );
  }
  return `${lines.join("\n")}\n`;
}
write("clients/c-017/2026-05-11-retest/log.csv", trainingLog(1705, "2026-03-02", "2026-05-11", 215));
write("clients/c-017/2026-07-20-retest/log.csv", trainingLog(1707, "2026-05-11", "2026-07-20", 240));
