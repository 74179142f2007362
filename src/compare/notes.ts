/** Sentences that belong beside a change: regression to the mean, and what training is reported to give. */
import type { Quantity, Section } from "../kernel/measure.js";
import { toDecimals } from "../kernel/rounding.js";
import { attempt } from "./attempt.js";
import { expectedDrift } from "./error/regression-to-the-mean.js";
import { testsNeeded } from "./error/tests-needed.js";
import type { ErrorModel } from "./error-model.js";
import type { Spread } from "./known.js";
import { spoken } from "./spoken.js";

const EXTREME = 1.5; // standard deviations from the group's mean (common practice)
const EXTREME_PERCENTILE = 7; // the share of a normal distribution beyond 1.5 standard deviations is 6.7 %

/** A caution where the baseline was extreme for its group, with the drift to expect where the reliability is known. */
export function regressionNote(
  baseline: Quantity,
  tests: number,
  model: ErrorModel | undefined,
  spread: Spread | undefined,
): string | undefined {
  const place = positionOf(baseline, spread);
  if (place === undefined) return undefined;
  const reliability = model?.reliability;
  const middle = spread?.mean;
  const drift =
    reliability === undefined || middle === undefined
      ? undefined
      : attempt(() => expectedDrift(baseline.value, middle, reliability));
  const size =
    drift === undefined
      ? "part of an extreme result is chance, and a second test tends back towards the middle without any real change"
      : `a second test would on average read ${spoken(baseline.id, Math.abs(drift), baseline.decimals, baseline.unit)} ${drift > 0 ? "higher" : "lower"} without any real change`;
  const cure = tests > 1 ? "" : "; two baseline tests, averaged, would guard against it";
  return `The first value was ${place.side} for the reference group (${place.where}): ${size}${cure}.`;
}

/** On which side of its group an extreme baseline stands, by z-score or percentile of its norm or by the retest sample. */
function positionOf(baseline: Quantity, spread: Spread | undefined): { side: string; where: string } | undefined {
  const z =
    baseline.norms?.find((norm) => norm.z !== undefined)?.z ??
    (spread?.mean === undefined ? undefined : (baseline.value - spread.mean) / spread.sd);
  if (z !== undefined)
    return Math.abs(z) < EXTREME
      ? undefined
      : { side: z > 0 ? "high" : "low", where: `${toDecimals(Math.abs(z), 1)} SD from its mean` };
  const percentile = baseline.norms?.find((norm) => norm.percentile !== undefined)?.percentile;
  if (percentile === undefined || (percentile > EXTREME_PERCENTILE && percentile < 100 - EXTREME_PERCENTILE))
    return undefined;
  return { side: percentile > 50 ? "high" : "low", where: `percentile ${toDecimals(percentile, 0)}` };
}

/**
 * What training programmes are reported to give, printed beside the detectable change. Group means against control:
 * Milanović Z, Sporiš G, Weston M (2015), Sports Med 45:1469–1481, abstract; 28 trials, 723 adults of 18 to 45 years.
 */
const UPTAKE_GAIN = {
  gain: 4.9,
  limits: 1.4,
  from: "28 controlled trials, adults of 18 to 45 years who began at 40.8 on average, Milanović 2015",
};

export function expectedGainNote(measure: string, ageYears: number, detectable: number): string | undefined {
  if (measure !== "vo2_peak_per_mass" || ageYears < 18 || ageYears >= 46) return undefined;
  const { gain, limits, from } = UPTAKE_GAIN;
  const compared =
    detectable > gain
      ? "less than one pair of tests can show, so a real gain of this size will often stay unproven"
      : "more than this pair of tests needs to show it";
  return `Programmes of endurance training gain ${gain} ± ${limits} mL/kg/min on average (${from}). That is ${compared} (${toDecimals(detectable, 1)} mL/kg/min).`;
}

/** Said where the two values were placed in different reference tables: the values may be compared, the positions not. */
export function referenceNote(before: Quantity, now: Quantity): string | undefined {
  const table = (q: Quantity) => q.norms?.find((norm) => norm.notGiven === undefined)?.table;
  const [was, is] = [table(before), table(now)];
  if (was === undefined || is === undefined || was === is) return undefined;
  return `The reference edition differs (${was}, now ${is}): percentiles and z-scores of the two visits are not compared.`;
}

/** How many tests would have to be averaged before a worthwhile change could be shown; nothing where one pair suffices. */
export function averagingNote(error: number, worthwhile: number, print: (value: number) => string): string | undefined {
  const tests = attempt(() => testsNeeded(error, worthwhile));
  if (tests === undefined || tests < 2) return undefined;
  const many = tests > 10 ? "more than ten" : `${tests}`;
  return `To show a change as small as ${print(worthwhile)}, ${many} tests on different days would have to be averaged at each visit.`;
}

/** A caution where the earlier test was the client's first of its kind. */
export const learningNote = (conditions: Readonly<Record<string, string>>, section: Section): string | undefined =>
  conditions.familiarised === "false" && ["incremental", "thresholds", "economy"].includes(section)
    ? "The earlier test was the client's first of this kind: part of a rise may be learning."
    : undefined;
