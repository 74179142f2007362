/** Biological controls of the instruments used: every value up to the visit, and the trend of each series. */

import { type ControlSeries, controlsOf } from "../kernel/controls.js";
import { dayOf } from "../kernel/days.js";
import type { Cell } from "../kernel/measure.js";
import type { Notebook, Ref } from "../kernel/notebook.js";
import { mean } from "../kernel/statistics.js";
import type { Visit } from "../kernel/visit.js";
import { attempt } from "./found-or-withheld.js";
import { controlTrend, info } from "./preparation/control-trend.js";

export function deriveControls(book: Notebook, visit: Visit): void {
  const all = controlsOf(visit);
  if (all.length === 0) return;
  const values: Ref[] = [
    { name: "lab.yaml instruments", value: "biological_controls", unit: "" },
    { name: "session.yaml calibration", value: "biological_control", unit: "" },
  ];
  book.table(
    "biological_controls",
    [
      { key: "instrument", title: "Instrument" },
      { key: "measure", title: "Measured" },
      { key: "date", title: "Date" },
      { key: "value", title: "Value", decimals: 3 },
      { key: "from_earlier_pct", title: "From the mean of the earlier ones", unit: "%", decimals: 1 },
    ],
    all.flatMap(rowsOf),
    info,
    values,
  );
  book.table(
    "biological_control_trends",
    [
      { key: "instrument", title: "Instrument" },
      { key: "measure", title: "Measured" },
      { key: "controls", title: "Controls", decimals: 0 },
      { key: "mean", title: "Mean", decimals: 3 },
      { key: "per_month_pct", title: "Trend a month", unit: "%", decimals: 1 },
      { key: "low_pct", title: "95 % from", unit: "%", decimals: 1 },
      { key: "high_pct", title: "95 % to", unit: "%", decimals: 1 },
      { key: "remark", title: "Remark" },
    ],
    all.map(trendOf),
    info,
    values,
  );
}

const rowsOf = ({ instrument, measure, controls }: ControlSeries): Cell[][] =>
  controls.map(({ date, value }, i) => {
    const before = i === 0 ? undefined : mean(controls.slice(0, i).map((control) => control.value));
    return [instrument, measure, date, value, before ? (100 * (value - before)) / before : null];
  });

function trendOf({ instrument, measure, controls }: ControlSeries): Cell[] {
  const points = controls.map(({ date, value }) => [dayOf(date), value] as const);
  const found = attempt(() => controlTrend(points));
  const head: Cell[] = [instrument, measure, controls.length, mean(controls.map((control) => control.value))];
  return found.because === undefined
    ? [...head, found.value.perMonth, found.value.low, found.value.high, null]
    : [...head, null, null, null, found.because];
}
