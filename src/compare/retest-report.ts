/**
 * Everything a laboratory should know about one set of test-retest pairs, with advice: what the error is, how well it is
 * known, and what is wrong with the data.
 */
import { toDecimals } from "../kernel/rounding.js";
import { mean, median, sampleSd } from "../kernel/statistics.js";
import { attempt } from "./attempt.js";
import { detectableChange } from "./error/detectable-change.js";
import { detectableChangePercent, type UpDown } from "./error/detectable-change-percent.js";
import { type Correlation, intraclassAgreement } from "./error/intraclass-agreement.js";
import { intraclassConsistency } from "./error/intraclass-consistency.js";
import { leastSignificantChange } from "./error/least-significant-change.js";
import { limitsOfAgreement } from "./error/limits-of-agreement.js";
import { meanShift, type Shift } from "./error/mean-shift.js";
import type { Pair } from "./error/pairs.js";
import { pairsNeeded } from "./error/pairs-needed.js";
import { rootMeanSquareSd } from "./error/root-mean-square-sd.js";
import { typicalError } from "./error/typical-error.js";
import { type Limits, typicalErrorLimits } from "./error/typical-error-limits.js";
import { typicalErrorPercent } from "./error/typical-error-percent.js";

export interface RetestReport {
  readonly n: number;
  readonly df: number;
  readonly means: { readonly test: number; readonly retest: number };
  readonly betweenSd: number;
  readonly typicalError: number;
  readonly typicalErrorLimits: Limits;
  /** Coefficient of variation by logarithms, %; absent where a value is not above 0. */
  readonly percent?: number;
  readonly agreement?: Correlation;
  readonly consistency?: Correlation;
  readonly shift: Shift;
  readonly limitsOfAgreement: Limits;
  /** Detectable change of one pair of tests, by t. */
  readonly detectable: number;
  readonly detectablePercent?: UpDown;
  /** Contains the shift; the typical error does not. */
  readonly rootMeanSquareSd: number;
  readonly leastSignificantChange: number;
  /** Pairs that would hold the error within 30 % of its estimate. */
  readonly pairsNeeded: number;
  /** Pairs to look at, by their place in the set (0-based). */
  readonly suspects: readonly number[];
  readonly remarks: readonly string[];
}

/** Two or more pairs. Throws OutOfRange for fewer, and where all pairs differ alike. */
export function retestReport(pairs: readonly Pair[]): RetestReport {
  const error = typicalError(pairs);
  const df = pairs.length - 1;
  const percent = attempt(() => typicalErrorPercent(pairs));
  const rms = rootMeanSquareSd(pairs);
  const found = suspects(pairs);
  const shift = meanShift(pairs);
  const agreement = attempt(() => intraclassAgreement(pairs));
  const consistency = attempt(() => intraclassConsistency(pairs));
  return {
    n: pairs.length,
    df,
    means: { test: mean(pairs.map(([a]) => a)), retest: mean(pairs.map(([, b]) => b)) },
    betweenSd: sampleSd(pairs.map(([a]) => a)),
    typicalError: error,
    typicalErrorLimits: typicalErrorLimits(error, df),
    ...(percent === undefined ? {} : { percent, detectablePercent: detectableChangePercent(percent, df) }),
    ...(agreement === undefined ? {} : { agreement }),
    ...(consistency === undefined ? {} : { consistency }),
    shift,
    limitsOfAgreement: limitsOfAgreement(pairs, 1.96),
    detectable: detectableChange(error, df),
    rootMeanSquareSd: rms,
    leastSignificantChange: leastSignificantChange(rms),
    pairsNeeded: pairsNeeded(0.3),
    suspects: found,
    remarks: remarksOn(pairs, shift, found, typicalErrorLimits(error, df).high / error),
  };
}

/**
 * Pairs whose difference stands far from the median difference, in robust standard deviations: a slip of the pen rather
 * than an unlucky day. The limit is 5 (1 + 8/n), because the median deviation of few pairs is itself uncertain: of clean
 * sets of six to fifty pairs fewer than one in two hundred has any pair beyond it (simulated). This project's own limit.
 */
export function suspects(pairs: readonly Pair[]): readonly number[] {
  if (pairs.length < 4) return [];
  const d = pairs.map(([a, b]) => b - a);
  const limit = 5 * (1 + 8 / pairs.length);
  const centre = median(d);
  const away = d.map((x) => Math.abs(x - centre));
  // 1.4826 makes the median absolute deviation a standard deviation for normal data; where
  // over half agree exactly, the mean of all but the largest tenth stands in.
  const spread =
    1.4826 * median(away) || mean([...away].sort((a, b) => a - b).slice(0, Math.ceil(0.9 * away.length) - 1));
  return spread === 0
    ? away.flatMap((x, i) => (x > 0 ? [i] : []))
    : away.flatMap((x, i) => (x > limit * spread ? [i] : []));
}

function remarksOn(pairs: readonly Pair[], shift: Shift, found: readonly number[], excess: number): string[] {
  const n = pairs.length;
  const remarks = found.map((i) => {
    const [test, retest] = pairs[i] as Pair;
    return `Pair ${i + 1} (${test} and ${retest}) differs far more than the others: look for a slip of the pen or of a unit before this set is used.`;
  });
  if (shift.low > 0 || shift.high < 0)
    remarks.push(
      `The retest was on average ${shift.mean > 0 ? "higher" : "lower"}: learning, habituation, fatigue or drift. A practice test beforehand removes most of it; the typical error does not contain it.`,
    );
  if (n < 10)
    remarks.push(
      `With ${n} pairs, fewer than ten, the true error may be ${toDecimals(excess, 1)} times as large: published errors are used instead where there are any.`,
    );
  else if (n < 28)
    remarks.push(
      `With ${n} pairs the true error may be ${toDecimals(excess, 1)} times as large; 28 pairs hold it within 30 %.`,
    );
  return remarks;
}
