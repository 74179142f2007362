/**
 * Drift of an instrument, from a healthy person measured at one work rate again and again.
 *
 *     trend = 100 · slope of value on days · 30.44 / mean
 *
 * A straight line through the values by date. Syringe and cylinder find what is wrong today; a slow drift stays inside
 * their limits every single day. The person changes too (training, body mass), so a trend asks for a second person before
 * it asks for service.
 */
import { type FormulaInfo, OutOfRange } from "../../kernel/formula.js";
import { fitLine, mean } from "../../kernel/statistics.js";
import { studentQuantile } from "../../kernel/student.js";

export type Point = readonly [day: number, value: number];
export const FEWEST = 6;
const DAYS_A_MONTH = 365.25 / 12;

/** Change in percent of the mean a month, with its 95 % interval. Throws OutOfRange below six values or within one day. */
export function controlTrend(points: readonly Point[]): { perMonth: number; low: number; high: number } {
  if (points.length < FEWEST) throw new OutOfRange(info.id, "controls", points.length, `${FEWEST} or more`);
  const days = points.map(([day]) => day);
  const values = points.map(([, value]) => value);
  if (Math.max(...days) === Math.min(...days)) throw new OutOfRange(info.id, "days", 0, "two or more");
  const middle = mean(values);
  if (!(middle > 0)) throw new OutOfRange(info.id, "mean", middle, "above 0");
  const line = fitLine(days, values);
  const percent = (slope: number) => (100 * slope * DAYS_A_MONTH) / middle;
  const reach = studentQuantile(0.975, points.length - 2) * line.slopeSe;
  return { perMonth: percent(line.slope), low: percent(line.slope - reach), high: percent(line.slope + reach) };
}

export const info: FormulaInfo<[readonly Point[]], number> = {
  id: "control-trend",
  revision: 1,
  title: "Trend of a biological control",
  equation: "trend = 100 · slope · 30.44 / mean",
  inputs: { controls: { unit: "days, and the control's unit", range: "six or more" } },
  output: { unit: "% a month", decimals: 1 },
  source: {
    authors: "Waymark",
    year: null,
    title: "Rule of this project",
    where:
      "least-squares line through six or more controls; the interval is that of a slope, with n − 2 degrees of freedom",
    verified: "own",
  },
  compute: (points) => controlTrend(points).perMonth,
  checks: [
    {
      given: [
        [
          [0, 100],
          [10, 101],
          [20, 102],
          [30, 103],
          [40, 104],
          [50, 105],
        ],
      ],
      expect: 2.969,
      tolerance: 0.001,
      from: "by hand: 0.1 a day · 30.4375 = 3.04375 a month; over the mean of 102.5 = 2.9695 %",
    },
    {
      given: [
        [
          [0, 1.5],
          [10, 1.5],
          [20, 1.5],
          [30, 1.5],
          [40, 1.5],
          [50, 1.5],
        ],
      ],
      expect: 0,
      tolerance: 1e-12,
      from: "by hand: nothing moved",
    },
    {
      given: [
        [
          [0, 1.5],
          [10, 1.5],
          [20, 1.5],
          [30, 1.5],
          [40, 1.5],
        ],
      ],
      expect: "refused",
      from: "five are too few",
    },
    {
      given: [
        [
          [3, 1],
          [3, 2],
          [3, 3],
          [3, 4],
          [3, 5],
          [3, 6],
        ],
      ],
      expect: "refused",
      from: "one day has no trend",
    },
  ],
};
