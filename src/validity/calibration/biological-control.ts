/**
 * A healthy member of staff measured at a fixed work rate finds faults that syringe and cylinder miss. Where five or
 * more earlier values stand in lab.yaml or the session they make the limits (mean ± 1.96 SD of that person's own history);
 * else the stated tolerance does. A trend through six or more is told even while each value is inside its limits.
 */

import { type Control, type ControlSeries, controlsOf } from "../../kernel/controls.js";
import { daysBetween } from "../../kernel/days.js";
import { compareAtDecimals, toDecimals } from "../../kernel/rounding.js";
import type { Finding, Findings, Rule } from "../../kernel/rule.js";
import { mean, sampleSd } from "../../kernel/statistics.js";
import { finding } from "../finding.js";
import { carries, instrumentOf, restingOn } from "../instrument.js";
import { type NumberRow, readRows } from "../read-rows.js";

const MONTH_DAYS = 31;

export const rule: Rule = {
  id: "biological-control",
  revision: 2, // reads the record in lab.yaml too, and its trend
  title: "Biological control of an instrument",
  section: "validity",
  source: {
    authors: "American Thoracic Society",
    year: null,
    title: "Pulmonary Function Laboratory Manual, chapter 19 (exercise testing)",
    where: "quality control, items 1.1 to 1.5: weekly or at least monthly; mean ± 1.96 SD of the person's own history",
    verified: "seen",
  },
  judge: (findings) => [
    ...controlsOf(findings.visit).flatMap((series) => latest(findings, series)),
    ...readRows(findings.entry("biological_control_trends")).flatMap((row) => drift(findings, row)),
  ],
};

/** The last control against its limits, and its age. */
function latest(findings: Findings, { instrument, measure, controls }: ControlSeries): Finding[] {
  const last = controls[controls.length - 1];
  if (last === undefined) return [];
  const affects = restingOn(findings, instrument, carries(instrumentOf(findings, instrument)));
  const limits = limitsOf(controls.slice(0, -1), last);
  const days = daysBetween(last.date, findings.visit.session.date);
  return [
    ...(limits !== undefined && (last.value < limits.low || last.value > limits.high)
      ? [
          finding(
            "weakens",
            `biological control of ${instrument}, ${measure}: ${last.value}`,
            limits.text,
            "Repeat, or use another control person; if it stays outside, have the instrument serviced. Likely causes: leak, analyser, sensor, ergometer.",
            affects,
          ),
        ]
      : []),
    ...(days > MONTH_DAYS
      ? [
          finding(
            "record",
            `last biological control of ${instrument} ${days} days before the visit`,
            "within a month",
            "A slow drift is found only by regular controls.",
            affects,
          ),
        ]
      : []),
  ];
}

/** A trend whose 95 % interval leaves out zero. For the record: every value may still be inside its limits. */
function drift(findings: Findings, row: NumberRow): Finding[] {
  const { instrument, measure, controls, per_month_pct: trend, low_pct: low, high_pct: high } = row;
  if (typeof trend !== "number" || typeof low !== "number" || typeof high !== "number") return [];
  if (compareAtDecimals(low, 0, 1) <= 0 && compareAtDecimals(high, 0, 1) >= 0) return [];
  const key = String(instrument);
  return [
    finding(
      "record",
      `${key}, ${measure}: ${toDecimals(trend, 1)} % a month over ${controls} controls (95 % interval ${toDecimals(low, 1)} to ${toDecimals(high, 1)})`,
      "an interval that holds 0",
      "The controls move in one direction. Measure a second control person before service: the first may have trained or changed weight. Comparisons between visits months apart carry this drift.",
      restingOn(findings, key, carries(instrumentOf(findings, key))),
    ),
  ];
}

/** Limits from the person's own history of five or more, else the stated tolerance; undefined where neither is there. */
function limitsOf(history: readonly Control[], last: Control) {
  if (history.length >= 5) {
    const values = history.map((c) => c.value);
    const [middle, spread] = [mean(values), 1.96 * sampleSd(values)];
    const [low, high] = [middle - spread, middle + spread];
    return {
      low,
      high,
      text: `${toDecimals(low, 3)} to ${toDecimals(high, 3)} (mean ± 1.96 SD of ${history.length} earlier values)`,
    };
  }
  if (last.expected === undefined || last.tolerancePct === undefined) return undefined;
  const spread = (last.expected * last.tolerancePct) / 100;
  const [low, high] = [last.expected - spread, last.expected + spread];
  return { low, high, text: `${last.expected} ± ${last.tolerancePct} %` };
}
