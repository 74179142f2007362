/**
 * A healthy member of staff measured at a fixed work rate finds faults that syringe and cylinder miss. Where five or
 * more earlier values stand in the session they make the limits (mean ± 1.96 SD of that person's own history); else the
 * stated tolerance does.
 */
import type { BiologicalControl } from "../../kernel/generated/session.js";
import { toDecimals } from "../../kernel/rounding.js";
import type { Rule } from "../../kernel/rule.js";
import { mean, sampleSd } from "../../kernel/statistics.js";
import { finding } from "../finding.js";
import { carries, daysBetween, instrumentOf, restingOn } from "../instrument.js";

const MONTH_DAYS = 31;

export const rule: Rule = {
  id: "biological-control",
  revision: 1,
  title: "Biological control of an instrument",
  section: "validity",
  source: {
    authors: "American Thoracic Society",
    year: null,
    title: "Pulmonary Function Laboratory Manual, chapter 19 (exercise testing)",
    where: "quality control, items 1.1 to 1.5: weekly or at least monthly; mean ± 1.96 SD of the person's own history",
    verified: "seen",
  },
  judge: (findings) => {
    const groups = new Map<string, { instrument: string; list: BiologicalControl[] }>();
    for (const { instrument, biological_control: control } of findings.visit.session.calibration ?? []) {
      if (control === undefined) continue;
      const key = `${instrument}|${control.measure}`;
      const group = groups.get(key) ?? { instrument, list: [] };
      group.list.push(control);
      groups.set(key, group);
    }
    return [...groups.values()].flatMap(({ instrument, list }) => {
      const sorted = [...list].sort((a, b) => a.date.localeCompare(b.date));
      const last = sorted[sorted.length - 1];
      if (last === undefined) return [];
      const affects = restingOn(findings, instrument, carries(instrumentOf(findings, instrument)));
      const { low, high, text } = limitsOf(sorted.slice(0, -1), last);
      const days = daysBetween(last.date, findings.visit.session.date);
      return [
        ...(last.value < low || last.value > high
          ? [
              finding(
                "weakens",
                `biological control of ${instrument}, ${last.measure}: ${last.value}`,
                text,
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
    });
  },
};

function limitsOf(history: readonly BiologicalControl[], last: BiologicalControl) {
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
  const spread = (last.expected * last.tolerance_pct) / 100;
  const [low, high] = [last.expected - spread, last.expected + spread];
  return { low, high, text: `${last.expected} ± ${last.tolerance_pct} %` };
}
