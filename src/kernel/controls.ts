/**
 * Biological controls of the instruments a visit used: from lab.yaml (the record of years) and from the session, none
 * later than the visit, so that a control added next month moves no result of today.
 */
import type { Visit } from "./visit.js";

export interface Control {
  readonly date: string;
  readonly value: number;
  readonly expected?: number;
  readonly tolerancePct?: number;
}
export interface ControlSeries {
  /** Key of the instrument in lab.yaml. */
  readonly instrument: string;
  /** What is measured: "vo2 at 100 W". */
  readonly measure: string;
  /** By date; one a date, that of the session before that of lab.yaml. */
  readonly controls: readonly Control[];
}

export function controlsOf(visit: Visit): readonly ControlSeries[] {
  const groups = new Map<string, { instrument: string; measure: string; byDate: Map<string, Control> }>();
  const add = (instrument: string, measure: string, control: Control) => {
    if (control.date > visit.session.date) return;
    const key = `${instrument}|${measure}`;
    const group = groups.get(key) ?? { instrument, measure, byDate: new Map<string, Control>() };
    group.byDate.set(control.date, { ...group.byDate.get(control.date), ...control });
    groups.set(key, group);
  };
  for (const instrument of instrumentsUsed(visit))
    for (const { date, measure, value } of visit.laboratory.instruments?.[instrument]?.biological_controls ?? [])
      add(instrument, measure, { date, value });
  for (const { instrument, biological_control: c } of visit.session.calibration ?? [])
    if (c !== undefined)
      add(instrument, c.measure, {
        date: c.date,
        value: c.value,
        expected: c.expected,
        tolerancePct: c.tolerance_pct,
      });
  return [...groups.values()].map(({ instrument, measure, byDate }) => ({
    instrument,
    measure,
    controls: [...byDate.values()].sort((a, b) => (a.date < b.date ? -1 : 1)),
  }));
}

/** Keys that the session names where a control of the whole chain is usual: gas exchange, ergometers, calibrations. */
function instrumentsUsed({ session }: Visit): ReadonlySet<string> {
  const named = [
    session.rest?.instrument,
    session.incremental?.instrument,
    session.incremental?.ergometer,
    ...(session.calibration ?? []).map((check) => check.instrument),
  ];
  return new Set(named.filter((key) => key !== undefined));
}
