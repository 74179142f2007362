/**
 * Critical power (or speed) and the finite work (or distance) above it, two-parameter model.
 *
 *     work-time      W = CP·t + W′                  (distance-time: d = CS·t + D′)
 *     inverse-time   P = CP + W′·(1/t)
 *     hyperbolic     t = W′ / (P − CP)              least squares on t, where the error is
 *
 * Bouts to exhaustion of 2 to 15 minutes. Three bouts leave one degree of freedom, so the fit looks better than it is.
 * The model overstates critical power a little and understates W′; it predicts only inside about 2 to 30 minutes.
 */
import { type FormulaInfo, OutOfRange } from "../../kernel/formula.js";
import { fitLine } from "../../kernel/statistics.js";

export type CriticalModel = "work-time" | "inverse-time" | "hyperbolic";
export interface Bout {
  /** s */
  readonly time: number;
  /** W, or m/s */
  readonly rate: number;
}
export interface CriticalRate {
  /** W, or m/s */
  readonly rate: number;
  /** J, or m */
  readonly capacity: number;
  /** Standard errors, in the same units. */
  readonly rateError: number;
  readonly capacityError: number;
}

/** Bouts in any order in. Throws OutOfRange for fewer than three, bouts outside 2 to 15 min, less than 5 min between shortest and longest, or rates that do not fall with time. */
export function criticalRate(model: CriticalModel, bouts: readonly Bout[]): CriticalRate {
  if (bouts.length < 3) throw new OutOfRange(info.id, "the number of bouts", bouts.length, "three or more");
  const times = bouts.map((b) => b.time);
  const [shortest, longest] = [Math.min(...times), Math.max(...times)];
  if (shortest < 120 || longest > 900)
    throw new OutOfRange(info.id, "bouts", `of ${shortest} to ${longest} s`, "120 to 900 s");
  if (longest - shortest < 300)
    throw new OutOfRange(info.id, "shortest and longest bout", `${longest - shortest} s apart`, "300 s apart or more");
  const found = solveModel(model, bouts);
  if (!(found.capacity > 0 && found.rate > 0))
    throw new OutOfRange(
      info.id,
      "the rate",
      "not falling with time",
      "bouts in which the longer one is the slower one",
    );
  return found;
}

function solveModel(model: CriticalModel, bouts: readonly Bout[]): CriticalRate {
  const times = bouts.map((b) => b.time);
  if (model === "work-time") {
    const work = bouts.map((b) => b.rate * b.time);
    const line = fitLine(times, work);
    return {
      rate: line.slope,
      capacity: line.intercept,
      rateError: line.slopeSe,
      capacityError: interceptError(times, line),
    };
  }
  const inverse = times.map((t) => 1 / t);
  const line = fitLine(
    inverse,
    bouts.map((b) => b.rate),
  );
  if (model === "inverse-time")
    return {
      rate: line.intercept,
      capacity: line.slope,
      rateError: interceptError(inverse, line),
      capacityError: line.slopeSe,
    };
  return hyperbola(bouts, line.intercept);
}

/** Standard error of a line's intercept. */
function interceptError(x: readonly number[], line: { readonly slopeSe: number }): number {
  return line.slopeSe * Math.sqrt(x.reduce((sum, v) => sum + v * v, 0) / x.length);
}

/** Least squares of t = W′/(P − CP): for a given CP the best W′ is closed, so only CP is searched. */
function hyperbola(bouts: readonly Bout[], start: number): CriticalRate {
  const lowest = Math.min(...bouts.map((b) => b.rate));
  const capacityAt = (cp: number) => {
    const inverse = bouts.map((b) => 1 / (b.rate - cp));
    return sum(bouts.map((b, i) => b.time * (inverse[i] as number))) / sum(inverse.map((v) => v * v));
  };
  const residual = (cp: number) => {
    const w = capacityAt(cp);
    return sum(bouts.map((b) => (b.time - w / (b.rate - cp)) ** 2));
  };
  let [low, high] = [Math.min(start, lowest) * 0.5, lowest * (1 - 1e-9)];
  const golden = (Math.sqrt(5) - 1) / 2;
  for (let i = 0; i < 200 && high - low > 1e-10 * lowest; i++) {
    const a = high - golden * (high - low);
    const b = low + golden * (high - low);
    if (residual(a) < residual(b)) high = b;
    else low = a;
  }
  const rate = (low + high) / 2;
  const capacity = capacityAt(rate);
  // Errors from the two-by-two normal matrix of the derivatives of t.
  const dw = bouts.map((b) => 1 / (b.rate - rate));
  const dc = bouts.map((b) => capacity / (b.rate - rate) ** 2);
  const [ww, cc, wc] = [
    sum(dw.map((v) => v * v)),
    sum(dc.map((v) => v * v)),
    sum(dw.map((v, i) => v * (dc[i] as number))),
  ];
  const variance = residual(rate) / (bouts.length - 2);
  const determinant = ww * cc - wc * wc;
  return {
    rate,
    capacity,
    rateError: Math.sqrt((variance * ww) / determinant),
    capacityError: Math.sqrt((variance * cc) / determinant),
  };
}

const sum = (xs: readonly number[]) => xs.reduce((total, x) => total + x, 0);

const POWER: readonly Bout[] = [
  { time: 180, rate: 361 },
  { time: 360, rate: 306 },
  { time: 720, rate: 278 },
];
const SPEED: readonly Bout[] = [
  { time: 255, rate: 1200 / 255 },
  { time: 560, rate: 2400 / 560 },
  { time: 875, rate: 3600 / 875 },
];
const computed = "worked example computed independently with a numerical library";
export const info: FormulaInfo<[CriticalModel, readonly Bout[]], CriticalRate> = {
  id: "critical-rate",
  revision: 1,
  title: "Critical power or speed",
  equation: "W = CP·t + W′ · P = CP + W′/t · t = W′/(P − CP)",
  inputs: {
    model: { unit: "", range: "work-time, inverse-time, hyperbolic" },
    bouts: { unit: "s, W or m/s", range: "three or more of 120 to 900 s, 300 s apart or more" },
  },
  output: { unit: "W or m/s", decimals: 1 },
  caveat: "Same model and same durations at each visit.",
  source: {
    authors: "Monod H, Scherrer J; Moritani T; Hughson RL; Hill DW",
    year: "1965–1993",
    title: "The critical power concept: a review",
    journal: "Sports Med 16:237–254",
    where: "models",
    verified: "memory",
  },
  compute: criticalRate,
  checks: [
    { given: ["work-time", POWER], pick: (r) => r.rate, expect: 250.29, tolerance: 0.005, from: `${computed}: CP` },
    { given: ["work-time", POWER], pick: (r) => r.capacity, expect: 19980, tolerance: 1, from: `${computed}: W′` },
    {
      given: ["work-time", POWER],
      pick: (r) => r.rateError,
      expect: 0.25,
      tolerance: 0.005,
      from: `${computed}: standard error`,
    },
    {
      given: ["work-time", POWER],
      pick: (r) => r.capacityError,
      expect: 118,
      tolerance: 1,
      from: `${computed}: standard error`,
    },
    { given: ["inverse-time", POWER], pick: (r) => r.rate, expect: 250.5, tolerance: 0.05, from: `${computed}: CP` },
    { given: ["inverse-time", POWER], pick: (r) => r.capacity, expect: 19903, tolerance: 1, from: `${computed}: W′` },
    { given: ["hyperbolic", POWER], pick: (r) => r.rate, expect: 250.13, tolerance: 0.01, from: `${computed}: CP` },
    { given: ["hyperbolic", POWER], pick: (r) => r.capacity, expect: 20070, tolerance: 5, from: `${computed}: W′` },
    { given: ["work-time", SPEED], pick: (r) => r.rate, expect: 3.8706, tolerance: 0.0001, from: `${computed}: CS` },
    { given: ["work-time", SPEED], pick: (r) => r.capacity, expect: 219.5, tolerance: 0.1, from: `${computed}: D′` },
    {
      given: ["work-time", SPEED],
      pick: (r) => r.rateError,
      expect: 0.036,
      tolerance: 0.0005,
      from: `${computed}: standard error`,
    },
    { given: ["work-time", POWER.slice(0, 2)], expect: "refused", from: "two bouts" },
    {
      given: ["work-time", [{ time: 100, rate: 400 }, ...POWER]],
      expect: "refused",
      from: "a bout of less than two minutes",
    },
  ],
};
