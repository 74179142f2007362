/**
 * How often the comparison claims a change that is not there, and whether the chances it prints come true.
 *
 *     npm run study:change [-- --json] [-- --pairs 10000]
 *
 * Every pair of visits goes through compare() itself, on values rounded as results record them. Each pair is another
 * invented client; where the laboratory's own retests are used, each pair has another laboratory too.
 */
import { fileURLToPath } from "node:url";
import { compare } from "../../src/compare/compare.js";
import type { Pair } from "../../src/compare/error/pairs.js";
import type { Known } from "../../src/compare/known.js";
import type { TypicalErrorTable } from "../../src/kernel/generated/typical-error.js";
import { type Change, isClaim } from "../../src/kernel/measure.js";
import { catalogue, type MeasureId } from "../../src/kernel/measures.js";
import { roundTo } from "../../src/kernel/rounding.js";
import { changeOf, nothingKnown, quantity, visit } from "../compare/visits.js";
import { type Chance, chance } from "../generator/random.js";

const CV = 0.05;
export const TEN_PERCENT = Math.log(1.1);

interface Setting {
  readonly name: string;
  readonly measure: MeasureId;
  /** Spread of one test: a share of the value, or an amount in the unit. */
  readonly error: { readonly share: number } | { readonly amount: number };
  readonly known: (lucky: Chance) => Known;
  readonly tests?: 1 | 2;
}

const measured = (setting: Setting, truth: number, lucky: Chance): number => {
  const { error, measure } = setting;
  const value =
    "share" in error
      ? truth * Math.exp(Math.log1p(error.share) * lucky.normal())
      : truth + error.amount * lucky.normal();
  return roundTo(value, catalogue[measure].decimals ?? 0);
};

const table = (measure: string, percent: number, df: number | "known"): TypicalErrorTable => ({
  id: "invented",
  population: "invented",
  applies: {},
  source: { authors: "invented", year: null, title: "invented", where: "invented" },
  verified: "seen",
  rows: [{ measures: [measure], statistic: "percent", value: percent, df }],
  checks: [{ measure, at: 1, expect: 1, tolerance: 1, from: "invented" }],
});
const published = (measure: string, percent: number, df: number | "known"): Known => ({
  ...nothingKnown,
  publishedErrors: [table(measure, percent, df)],
});
const own =
  (setting: () => Setting, level: number, spread: number, n: number) =>
  (lucky: Chance): Known => {
    const pairs = Array.from({ length: n }, (): Pair => {
      const truth = level + spread * lucky.normal();
      return [measured(setting(), truth, lucky), measured(setting(), truth, lucky)];
    });
    return { ...nothingKnown, laboratoryRetests: [{ measure: setting().measure, pairs, from: "invented" }] };
  };

const uptake: Setting = {
  name: "CV 5 %, published error on 44 degrees of freedom",
  measure: "vo2_peak_per_mass",
  error: { share: CV },
  known: () => published("vo2_peak_per_mass", 100 * CV, 44),
};
export const OWN_UPTAKE: Setting = {
  ...uptake,
  name: "CV 5 %, the laboratory's own 12 pairs",
  known: own(() => OWN_UPTAKE, 45, 6, 12),
};
const pressure: Setting = {
  name: "5.6 mmHg, the laboratory's own 20 pairs",
  measure: "systolic_pressure",
  error: { amount: 5.6 },
  known: own(() => pressure, 128, 12, 20),
};
export const SETTINGS: readonly Setting[] = [
  {
    ...uptake,
    name: "CV 5 %, published error taken as known",
    known: () => published("vo2_peak_per_mass", 100 * CV, "known"),
  },
  uptake,
  OWN_UPTAKE,
  pressure,
  { ...OWN_UPTAKE, name: "CV 5 %, own 12 pairs, two tests averaged at each visit", tests: 2 },
];
/** What goes wrong when the error in use is too small: shown, not hidden. */
export const UNDERSTATED: Setting = { ...uptake, name: "CV 7 % believed to be 5 %", error: { share: 0.07 } };

function onePair(
  setting: Setting,
  truth: number,
  after: number,
  lucky: Chance,
  worthwhile?: (before: number) => number,
): Change {
  const { measure, tests = 1 } = setting;
  const visits = (dates: readonly string[], value: number, purpose: "baseline" | "retest") =>
    dates.slice(0, tests).map((date) => visit(date, [quantity(measure, measured(setting, value, lucky))], { purpose }));
  const before = visits(["2026-03-02", "2026-03-04"], truth, "baseline");
  const now = visits(["2026-05-11", "2026-05-13"], after, "retest");
  const first = before[0]?.entries[0];
  const known = setting.known(lucky);
  const threshold = worthwhile && first?.kind === "quantity" ? worthwhile(first.value) : undefined;
  const last = now.at(-1) as (typeof now)[number];
  const entries = compare(last, [...before, ...now.slice(0, -1)], {
    ...known,
    worthwhile: threshold === undefined ? {} : { [measure]: { value: threshold, from: "invented" } },
  });
  return changeOf(entries, `change_${measure}`);
}

const LEVELS: Partial<Record<MeasureId, readonly [mean: number, sd: number]>> = {
  vo2_peak_per_mass: [45, 6],
  systolic_pressure: [128, 12],
};
const someone = (setting: Setting, lucky: Chance) => {
  const [mean, sd] = LEVELS[setting.measure] ?? [100, 10];
  return mean + sd * lucky.normal();
};

export interface FalseAlarmRow {
  readonly setting: string;
  readonly pairs: number;
  /** Claims of a change although nothing changed, %. */
  readonly claimed: number;
  /** 95 % intervals that hold the true change of zero, %. */
  readonly held: number;
}
export function falseAlarmStudy(setting: Setting, pairs: number, seed: number): FalseAlarmRow {
  const lucky = chance(seed);
  let claimed = 0;
  let held = 0;
  for (let i = 0; i < pairs; i++) {
    const truth = someone(setting, lucky);
    const change = onePair(setting, truth, truth, lucky);
    if (isClaim(change)) claimed++;
    if ((change.low as number) <= 0 && (change.high as number) >= 0) held++;
  }
  return { setting: setting.name, pairs, claimed: (100 * claimed) / pairs, held: (100 * held) / pairs };
}

export interface ReliabilityRow {
  readonly printed: string;
  readonly pairs: number;
  /** Mean of the chances printed in this class, %. */
  readonly mean: number;
  /** How often the true change was as said, %. */
  readonly cameTrue: number;
}
/** Chances of a rise of at least 10 %, binned by tenths, against the truth. `gain` draws the true gain in log units. */
export function reliabilityStudy(
  setting: Setting,
  pairs: number,
  seed: number,
  gain: (lucky: Chance) => number,
): ReliabilityRow[] {
  const lucky = chance(seed);
  const bins = Array.from({ length: 10 }, () => ({ n: 0, sum: 0, hits: 0 }));
  for (let i = 0; i < pairs; i++) {
    const truth = someone(setting, lucky);
    const by = gain(lucky);
    const change = onePair(setting, truth, truth * Math.exp(by), lucky, (before) => before * Math.expm1(TEN_PERCENT));
    const printed = change.chances?.higher as number;
    const bin = bins[Math.min(9, Math.floor(printed / 10))] as (typeof bins)[number];
    bin.n++;
    bin.sum += printed;
    if (by >= TEN_PERCENT) bin.hits++;
  }
  return bins.map((bin, i) => ({
    printed: `${10 * i} to ${10 * (i + 1)}`,
    pairs: bin.n,
    mean: bin.sum / bin.n,
    cameTrue: (100 * bin.hits) / bin.n,
  }));
}

export interface ExceedanceRow {
  /** A printed chance, %. */
  readonly chance: number;
  /** Share of pairs whose printed chance was at most that, %: equal to it when the chances are calibrated. */
  readonly share: number;
}
/** A true gain of exactly 10 %: the chance printed for "10 % or more" must be spread evenly over 0 to 100. */
export function exactGainStudy(setting: Setting, pairs: number, seed: number) {
  const lucky = chance(seed);
  const printed: number[] = [];
  let claimed = 0;
  let held = 0;
  for (let i = 0; i < pairs; i++) {
    const truth = someone(setting, lucky);
    const change = onePair(
      setting,
      truth,
      truth * Math.exp(TEN_PERCENT),
      lucky,
      (before) => before * Math.expm1(TEN_PERCENT),
    );
    printed.push(change.chances?.higher as number);
    if (change.verdict === "higher, beyond error") claimed++;
    const gain = change.before * Math.expm1(TEN_PERCENT);
    if ((change.low as number) <= gain && (change.high as number) >= gain) held++;
  }
  const rows: ExceedanceRow[] = [5, 10, 20, 30, 40, 50, 60, 70, 80, 90, 95].map((p) => ({
    chance: p,
    share:
      (100 * printed.filter((x) => x <= p - 0.5).length + (100 * printed.filter((x) => x === p).length) / 2) / pairs,
  }));
  return { rows, claimed: (100 * claimed) / pairs, held: (100 * held) / pairs };
}

export function study(pairs: number, seed = 20260302) {
  return {
    seed,
    pairs,
    noTrueChange: SETTINGS.map((setting, i) => falseAlarmStudy(setting, pairs, seed + i)),
    understatedError: falseAlarmStudy(UNDERSTATED, pairs, seed + 50),
    tenPercentGain: exactGainStudy(OWN_UPTAKE, pairs, seed + 100),
    gainsOfEverySize: reliabilityStudy(
      OWN_UPTAKE,
      pairs,
      seed + 200,
      (lucky) => TEN_PERCENT + lucky.between(-0.35, 0.35),
    ),
    noneOrTenPercent: reliabilityStudy(OWN_UPTAKE, pairs, seed + 300, (lucky) =>
      lucky.happens(0.5) ? TEN_PERCENT : 0,
    ),
  };
}

function print(result: ReturnType<typeof study>): string {
  const f = (x: number) => (Number.isFinite(x) ? x.toFixed(1).padStart(6) : "     -");
  const alarms = [...result.noTrueChange, result.understatedError].map(
    (r) => `${f(r.claimed)}   ${f(r.held)}   ${r.setting}`,
  );
  const reliability = (rows: readonly ReliabilityRow[]) =>
    rows.map((r) => `  ${r.printed.padEnd(10)}${String(r.pairs).padStart(7)}  ${f(r.mean)}   ${f(r.cameTrue)}`);
  return [
    `${result.pairs} pairs each, seed ${result.seed}`,
    "",
    "Nothing changed: claims of a change, and intervals that hold zero (%)",
    "claims     held",
    ...alarms,
    "",
    "True gain of exactly 10 %, CV 5 %, own 12 pairs: claims " +
      `${f(result.tenPercentGain.claimed).trim()} %, intervals that hold the gain ${f(result.tenPercentGain.held).trim()} %`,
    "Chance printed for a rise of 10 % or more: share of pairs at or below it (equal when calibrated)",
    ...result.tenPercentGain.rows.map((r) => `  ${String(r.chance).padStart(3)}  ${f(r.share)}`),
    "",
    "True gains spread evenly from -22 to +56 %: chance printed, and how often it came true",
    "  class        pairs    mean  came true",
    ...reliability(result.gainsOfEverySize),
    "",
    "Half the clients gain 10 %, half nothing: the chances read as if nothing was known beforehand, so they are off here",
    ...reliability(result.noneOrTenPercent),
  ].join("\n");
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const at = process.argv.indexOf("--pairs");
  const result = study(at > 0 ? Number(process.argv[at + 1]) : 10_000);
  process.stdout.write(`${process.argv.includes("--json") ? JSON.stringify(result, null, 2) : print(result)}\n`);
}
