import { quantityOf, sinceBaseline } from "../kernel/entries.js";
import type { Chart } from "../kernel/figure.js";
import { records, table } from "./entries.js";
import { trendFigure } from "./trend-figure.js";

/** A primary measure over three visits or more, each point with the error of one test and changed conditions marked. */
export const trends: Chart = ({ results, earlier, speech }) => {
  if (earlier.length < 2) return [];
  return sinceBaseline(results)
    .filter((change) => change.primary)
    .flatMap((change) => {
      const course = table(results, `trend_${change.measure}`);
      const differs = new Map(
        (course === undefined ? [] : records(course)).map((row) => [row.date, String(row.differs ?? "")]),
      );
      const points = [...earlier, results].flatMap((visit) => {
        const at = quantityOf(visit, change.measure);
        return at === undefined ? [] : [{ date: visit.date, value: at.value, differs: differs.get(visit.date) ?? "" }];
      });
      if (points.length < 3) return [];
      const { measure, unit, decimals, typicalError } = change;
      return [
        trendFigure({
          measure,
          unit,
          decimals,
          points,
          speech,
          ...(typicalError === undefined ? {} : { error: typicalError }),
        }),
      ];
    });
};
