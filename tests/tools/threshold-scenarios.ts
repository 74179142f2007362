/** The kinds of test the coverage study runs, each a change to a seeded recipe. Held apart so that tests may use them. */
import type { Channel } from "../../src/kernel/series.js";
import { NO_FAULTS, NOISE, type Recipe, recipe, USUAL_FAULTS } from "../generator/recipe.js";

export interface Scenario {
  readonly name: string;
  readonly make: (seed: number) => Recipe;
  /** Channels the laboratory does not record. */
  readonly without?: readonly Channel[];
}

const steps = (stageS: number) => (seed: number) => {
  const drawn = recipe(seed);
  const perMinute =
    drawn.protocol.kind === "ramp" ? drawn.protocol.rise : (drawn.protocol.rise * 60) / drawn.protocol.stageS;
  const rise = Math.max(0.05, (perMinute * stageS) / 60);
  return recipe(seed, { protocol: { ...drawn.protocol, kind: "step", stageS, rise } });
};
const submaximal = (seed: number, stopAt: number): Recipe => {
  const drawn = recipe(seed);
  return recipe(seed, { stopAt, vt1: drawn.vo2Peak * 0.58, vt2: drawn.vo2Peak * (stopAt + 0.04) });
};

export const SCENARIOS: readonly Scenario[] = [
  { name: "ramps and steps, clean", make: (seed) => recipe(seed, { faults: NO_FAULTS }) },
  { name: "the usual faults", make: (seed) => recipe(seed) },
  {
    name: "coughs and lost breaths",
    make: (seed) => recipe(seed, { faults: { ...USUAL_FAULTS, coughs: 0.04, lost: 0.01 } }),
  },
  { name: "noisy: 12 % a breath", make: (seed) => recipe(seed, { noise: { ...NOISE, vo2Sd: 0.12 } }) },
  { name: "heavy tails", make: (seed) => recipe(seed, { noise: { ...NOISE, tails: "heavy" } }) },
  {
    name: "errors hardly shared",
    make: (seed) => recipe(seed, { noise: { ...NOISE, vo2Sd: 0.05, vo2Vco2: 0.5, vo2Ve: 0.4 } }),
  },
  { name: "errors that persist", make: (seed) => recipe(seed, { noise: { ...NOISE, lag1: 0.4 } }) },
  {
    name: "quiet: 2 % a breath",
    make: (seed) => recipe(seed, { noise: { ...NOISE, vo2Sd: 0.02, endTidalMmhg: 0.5 } }),
  },
  { name: "mild curves, 0.06 L/min wide", make: (seed) => recipe(seed, { softness: 0.06 }) },
  { name: "steps of 60 s", make: steps(60) },
  { name: "steps of 120 s", make: steps(120) },
  { name: "steps of 180 s", make: steps(180) },
  { name: "10-s means", make: (seed) => recipe(seed, { sampling: { kind: "mean", everyS: 10 } }) },
  { name: "mixing chamber, 15 s", make: (seed) => recipe(seed, { sampling: { kind: "mixing", everyS: 15 } }) },
  { name: "hypoxia, FIO2 0.15", make: (seed) => recipe(seed, { fio2: 0.15, veSlope: 31 + (seed % 5) }) },
  { name: "four dropouts", make: (seed) => recipe(seed, { faults: { ...USUAL_FAULTS, dropouts: 4 } }) },
  { name: "slow kinetics", make: (seed) => recipe(seed, { tauVo2: 55, tauStores: 25 }) },
  { name: "no end-tidal gases", make: (seed) => recipe(seed), without: ["peto2_mmhg", "petco2_mmhg"] },
  { name: "no VT2", make: (seed) => recipe(seed, { vt2: null }) },
  { name: "stopped at 80 %, before VT2", make: (seed) => submaximal(seed, 0.8) },
  { name: "stopped at 70 %, before VT2", make: (seed) => submaximal(seed, 0.7) },
  {
    name: "stopped at 55 %, before VT1",
    make: (seed) => recipe(seed, { stopAt: 0.55, vt1: recipe(seed).vo2Peak * 0.6 }),
  },
];
