/**
 * Lactate threshold by two lines in logarithms (Beaver).
 *
 *     ln(lactate) on ln(load): two least-squares lines, all splits with two or more points on each side,
 *     the split with the lowest pooled residual sum of squares; threshold where the two lines meet
 *
 * Logarithms turn a curve into two nearly straight parts. With few points the split is uncertain.
 */
import { type FormulaInfo, OutOfRange } from "../../kernel/formula.js";
import { fitLine } from "../../kernel/statistics.js";
import { at, type Point, requireCurve } from "./curve.js";
import { WORKED } from "./worked-example.js";

/** Points in rising load in, load out. Throws OutOfRange for fewer than five steps, falling lactate, loads of 0, a second line that is not steeper, or lines that meet outside the data. */
export function logLog(points: readonly Point[]): number {
  requireCurve(info.id, points, 5);
  const [firstLoad] = at(points, 0);
  if (firstLoad <= 0)
    throw new OutOfRange(info.id, "the first load", firstLoad, "loads above 0, which have a logarithm");
  const x = points.map(([load]) => Math.log(load));
  const y = points.map(([, lactate]) => Math.log(lactate));
  let best: { meet: number; rss: number; steeper: boolean } | undefined;
  for (let n = 2; n <= points.length - 2; n++) {
    const low = fitLine(x.slice(0, n), y.slice(0, n));
    const high = fitLine(x.slice(n), y.slice(n));
    const rss = low.rss + high.rss;
    if (best !== undefined && rss >= best.rss) continue;
    best = { rss, steeper: high.slope > low.slope, meet: (low.intercept - high.intercept) / (high.slope - low.slope) };
  }
  if (best === undefined || !best.steeper)
    throw new OutOfRange(info.id, "the second line", "not steeper than the first", "curves that bend upward");
  const load = Math.exp(best.meet);
  const lastLoad = at(points, points.length - 1)[0];
  if (!(load > firstLoad && load < lastLoad))
    throw new OutOfRange(info.id, "the meeting point", load.toFixed(1), `loads of ${firstLoad} to ${lastLoad}`);
  return load;
}

export const info: FormulaInfo<[readonly Point[]], number> = {
  id: "log-log",
  revision: 1,
  title: "Lactate threshold by two lines in logarithms",
  equation: "ln(lactate) on ln(load), two lines of lowest pooled residual, threshold where they meet",
  inputs: { steps: { unit: "load, mmol/L", range: "five or more, loads above 0" } },
  output: { unit: "W or km/h", decimals: 1 },
  source: {
    authors: "Beaver WL, Wasserman K, Whipp BJ",
    year: 1985,
    title: "Improved detection of lactate threshold during exercise using a log-log transformation",
    journal: "J Appl Physiol 59:1936–1940",
    where: "method",
    verified: "memory",
  },
  compute: logLog,
  checks: [
    {
      given: [WORKED],
      expect: 10.56,
      tolerance: 0.01,
      from: "worked example computed independently: split after three points, pooled residual 0.0306",
    },
    { given: [WORKED.slice(0, 4)], expect: "refused", from: "four steps" },
  ],
};
