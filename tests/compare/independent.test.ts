/**
 * The statistics again, by general-purpose libraries that share no code with this project: simple-statistics for means and
 * spreads, jstat for t, chi-square and F. Four digits, on the same seeded data.
 */
import { jStat } from "jstat";
import { mean, rootMeanSquare, sampleCorrelation, sampleStandardDeviation, sampleVariance } from "simple-statistics";
import { describe, expect, it } from "vitest";
import { chances } from "../../src/compare/error/chances.js";
import { changeInterval } from "../../src/compare/error/change-interval.js";
import { intraclassConsistency } from "../../src/compare/error/intraclass-consistency.js";
import type { Pair } from "../../src/compare/error/pairs.js";
import { typicalErrorLimits } from "../../src/compare/error/typical-error-limits.js";
import { logError } from "../../src/compare/error/typical-error-percent.js";
import { retestReport } from "../../src/compare/retest-report.js";
import { chiSquareQuantile, fisherCdf, fisherQuantile, studentCdf, studentQuantile } from "../../src/kernel/student.js";
import { chance } from "../generator/random.js";

/** Agreement to four significant digits. */
const fourDigits = (ours: number, theirs: number) =>
  expect(Math.abs(ours - theirs), `${ours} against ${theirs}`).toBeLessThanOrEqual(0.5e-4 * Math.abs(theirs) + 1e-12);

const { normal } = chance(7);
const sets: Pair[][] = [5, 12, 40].map((n) =>
  Array.from({ length: n }, () => {
    const truth = 45 + 6 * normal();
    return [truth + 2 * normal(), truth + 0.5 + 2 * normal()];
  }),
);

describe("against independent libraries", () => {
  for (const pairs of sets)
    it(`the report of ${pairs.length} pairs`, () => {
      const d = pairs.map(([a, b]) => b - a);
      const [first, second] = [pairs.map(([a]) => a), pairs.map(([, b]) => b)];
      const n = pairs.length;
      const report = retestReport(pairs);
      const te = sampleStandardDeviation(d) / Math.SQRT2;
      fourDigits(report.typicalError, te);
      fourDigits(report.betweenSd, sampleStandardDeviation(first));
      fourDigits(report.shift.mean, mean(d));
      const half = (jStat.studentt.inv(0.975, n - 1) * sampleStandardDeviation(d)) / Math.sqrt(n);
      fourDigits(report.shift.low, mean(d) - half);
      fourDigits(report.rootMeanSquareSd, rootMeanSquare(d) / Math.SQRT2);
      fourDigits(report.limitsOfAgreement.high, mean(d) + 1.96 * sampleStandardDeviation(d));
      fourDigits(report.detectable, jStat.studentt.inv(0.975, n - 1) * Math.SQRT2 * te);
      fourDigits(report.typicalErrorLimits.high, te * Math.sqrt((n - 1) / jStat.chisquare.inv(0.025, n - 1)));
      fourDigits(typicalErrorLimits(te, n - 1).low, te * Math.sqrt((n - 1) / jStat.chisquare.inv(0.975, n - 1)));
      const logs = pairs.map(([a, b]) => Math.log(b / a));
      fourDigits(logError(pairs), sampleStandardDeviation(logs) / Math.SQRT2);
      // For pairs ICC(3,1) = 2 cov / (var₁ + var₂): another route than the mean squares.
      const covariance =
        sampleCorrelation(first, second) * sampleStandardDeviation(first) * sampleStandardDeviation(second);
      const icc = intraclassConsistency(pairs);
      fourDigits(icc.value, (2 * covariance) / (sampleVariance(first) + sampleVariance(second)));
      const f = (1 + icc.value) / (1 - icc.value);
      const low = f / jStat.centralF.inv(0.975, n - 1, n - 1);
      fourDigits(icc.low, (low - 1) / (low + 1));
    });

  it("t, chi-square and F over a grid", () => {
    for (const df of [1, 2, 5, 9, 30, 120])
      for (const t of [-3.2, -1.1, 0.4, 2.3]) fourDigits(studentCdf(t, df), jStat.studentt.cdf(t, df));
    for (const p of [0.025, 0.2, 0.9, 0.975, 0.995]) {
      fourDigits(studentQuantile(p, 11), jStat.studentt.inv(p, 11));
      fourDigits(studentQuantile(p, Number.POSITIVE_INFINITY), jStat.normal.inv(p, 0, 1));
      fourDigits(chiSquareQuantile(p, 11), jStat.chisquare.inv(p, 11));
      fourDigits(fisherQuantile(p, 5, 17), jStat.centralF.inv(p, 5, 17));
      fourDigits(fisherCdf(2 * p, 5, 17), jStat.centralF.cdf(2 * p, 5, 17));
    }
  });

  it("interval and chances of a change", () => {
    for (const [change, te, df, w] of [
      [3.5, 1.3, 9, 1],
      [-2.5, 1.3, 27, 0.5],
      [0.02, 0.0489, 44, 0.01],
    ] as const) {
      const se = Math.SQRT2 * te;
      fourDigits(changeInterval(change, te, df).low, change - jStat.studentt.inv(0.975, df) * se);
      fourDigits(chances(change, te, df, w).higher, 1 - jStat.studentt.cdf((w - change) / se, df));
      fourDigits(chances(change, te, df, w).lower, jStat.studentt.cdf((-w - change) / se, df));
    }
  });
});
