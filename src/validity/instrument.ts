/** Which instrument a value rests on, so that a calibration touches the values of that instrument and no other. */
import type { InstrumentEntry } from "../kernel/generated/laboratory.js";
import type { CalibrationCheck, Session } from "../kernel/generated/session.js";
import type { Instrument, Section } from "../kernel/measure.js";
import { catalogue, type MeasureId } from "../kernel/measures.js";
import type { Findings } from "../kernel/rule.js";

/** What an instrument of a kind carries when lab.yaml does not say. */
const BY_KIND: Readonly<Partial<Record<InstrumentEntry["kind"], readonly Instrument[]>>> = {
  "gas exchange system": ["gas analyser", "flow sensor"],
  "douglas bag system": ["gas analyser", "flow sensor"],
  treadmill: ["ergometer"],
  "cycle ergometer": ["ergometer"],
  "rowing ergometer": ["ergometer"],
  "other ergometer": ["ergometer"],
  "heart-rate monitor": ["heart-rate monitor"],
  sphygmomanometer: ["sphygmomanometer"],
  scales: ["scales"],
  stadiometer: ["stadiometer"],
  dxa: ["dxa"],
  "impedance analyser": ["impedance"],
  spirometer: ["spirometer"],
  dynamometer: ["dynamometer"],
  "lactate analyser": ["lactate analyser"],
  "pulse oximeter": ["pulse oximeter"],
};

export const instrumentOf = (findings: Findings, key: string): InstrumentEntry | undefined =>
  findings.visit.laboratory.instruments?.[key];

/** What results rest on an instrument: as lab.yaml says, else by its kind. */
export function carries(entry: InstrumentEntry | undefined): readonly Instrument[] {
  return entry?.measures ?? (entry === undefined ? [] : (BY_KIND[entry.kind] ?? []));
}

/** Ids of given values that rest on `parts` of the instrument with this key. */
export function restingOn(findings: Findings, key: string, parts: readonly Instrument[]): MeasureId[] {
  return (Object.keys(catalogue) as MeasureId[]).filter((id) => {
    const info = catalogue[id];
    const entry = findings.entry(id);
    if (entry === undefined || entry.kind === "not given" || !info.rests?.some((part) => parts.includes(part)))
      return false;
    const used = keysUsed(findings.visit.session, info.section, parts);
    return used.length === 0 || used.includes(key);
  });
}

/** Keys a section names for its instruments; none named means that any could have been used. */
function keysUsed(session: Session, section: Section, parts: readonly Instrument[]): string[] {
  const named = (key: string | undefined) => (key === undefined ? [] : [key]);
  const test = session.incremental;
  switch (section) {
    case "rest":
      return named(session.rest?.instrument);
    case "heart_rate_variability":
      return named(session.heart_rate_variability?.instrument);
    case "incremental":
    case "thresholds":
    case "economy":
      return parts.includes("ergometer") ? named(test?.ergometer) : gasPart(parts) ? named(test?.instrument) : [];
    case "lactate":
      return parts.includes("lactate analyser") ? named(session.lactate?.instrument) : [];
    default:
      return [];
  }
}

const gasPart = (parts: readonly Instrument[]) => parts.includes("gas analyser") || parts.includes("flow sensor");

/** The last check of each instrument and time of day: an earlier one that failed and was repeated does not count. */
export function lastChecks(findings: Findings, has: (check: CalibrationCheck) => boolean): readonly CalibrationCheck[] {
  const last = new Map<string, CalibrationCheck>();
  for (const check of findings.visit.session.calibration ?? [])
    if (has(check)) last.set(`${check.instrument}|${check.when ?? "before"}`, check);
  return [...last.values()];
}
