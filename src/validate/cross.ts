/** Faults that show only when two files, or a file and its folder, are looked at together. */
import type { Diagnostic } from "../kernel/diagnostic.js";
import type { Document, Path } from "../kernel/document.js";
import { roundTo } from "../kernel/rounding.js";
import { KG_PER_POUND } from "../kernel/unit.js";
import { decimalAge, readDate } from "./calendar.js";
import type { Code } from "./codes.js";
import { isConfirmed } from "./confirmed.js";
import { type Words, words } from "./words.js";

const text = (document: Document | undefined, ...path: string[]): string | undefined => {
  let value: unknown = document?.value;
  for (const key of path) value = (value as Record<string, unknown> | null | undefined)?.[key];
  return typeof value === "string" ? value : undefined;
};
const number = (root: unknown, ...path: string[]): number | undefined => {
  let value = root;
  for (const key of path) value = (value as Record<string, unknown> | null | undefined)?.[key];
  return typeof value === "number" ? value : undefined;
};
/** A number, or the first of a list of readings. */
const firstNumber = (root: unknown, ...path: string[]): number | undefined =>
  number(root, ...path) ?? number(root, ...path, "0");
const date = (document: Document | undefined, ...path: string[]): string | undefined => {
  const found = text(document, ...path);
  return found !== undefined && readDate(found) ? found : undefined;
};
const fault = (
  document: Document,
  severity: Diagnostic["severity"],
  code: Code,
  path: Path,
  why: Words,
): Diagnostic => ({
  code,
  severity,
  at: document.place(path),
  ...why,
});

/** clients/<id>/<date>[-<label>]/session.yaml, where the file stands in such folders. */
export function folderFaults(client: Document | undefined, session: Document): Diagnostic[] {
  const found: Diagnostic[] = [];
  const folders = /(?:^|\/)clients\/([^/]+)\/([^/]+)\/[^/]+$/.exec(session.file);
  const id = text(client, "id");
  const named = text(session, "client");
  if (client && folders && id !== undefined && folders[1] !== id)
    found.push(fault(client, "error", "folder-name", ["id"], words.folderName(folders[1] ?? "", id)));
  const owner = id ?? folders?.[1];
  // A client file with the id of another folder has been reported already.
  if (named !== undefined && owner !== undefined && named !== owner && (id === undefined || named !== folders?.[1]))
    found.push(fault(session, "error", "client-mismatch", ["client"], words.clientMismatch(named, owner)));
  const day = date(session, "date");
  const label = text(session, "label");
  if (folders && day !== undefined) {
    const folder = folders[2] ?? "";
    const wanted = label === undefined ? day : `${day}-${label}`;
    const fits = label === undefined ? folder === day || folder.startsWith(`${day}-`) : folder === wanted;
    if (!fits)
      found.push(
        fault(
          session,
          "error",
          "folder-name",
          [folder.startsWith(day) ? "label" : "date"],
          words.folderName(folder, wanted),
        ),
      );
    if (text(session, "purpose") === "reliability" && !folder.includes("reliability"))
      found.push(fault(session, "warning", "folder-name", ["purpose"], words.repeatLabel(folder)));
  }
  return found;
}

/**
 * Pressure expected at an altitude in metres, mmHg: West JB, J Appl Physiol 81:1850-1854, 1996. Between sea level and
 * 3000 m it stays within 5 mmHg of the standard atmosphere, far less than the weather moves a barometer.
 */
const expectedPressure = (metres: number): number => {
  const h = metres / 1000;
  return Math.exp(6.63268 - 0.1112 * h - 0.00149 * h ** 2);
};

/** Weather moves pressure by up to about 25 mmHg; beyond that, altitude or pressure is a slip. */
export function pressureFaults(lab: Document, session: Document): Diagnostic[] {
  const altitude = number(lab.value, "altitude_m");
  const pressure = number(session.value, "room", "pressure_mmhg");
  if (altitude === undefined || pressure === undefined || pressure < 230 || pressure > 830) return [];
  const expected = expectedPressure(altitude);
  if (Math.abs(pressure - expected) <= 25 || isConfirmed(session.value, ["room", "pressure_mmhg"])) return [];
  const reduced = altitude > 250 && Math.abs(pressure - 760) <= 25;
  const why = words.pressureAltitude(String(pressure), String(altitude), String(roundTo(expected, 0)), reduced);
  return [fault(session, "warning", "pressure-altitude", ["room", "pressure_mmhg"], why)];
}

/** Body mass over squared stature beyond which one of the two, or its unit, is a slip more often than it is true, kg/m². */
const BODY_USUAL = [12, 45] as const;

/** A mass that stands by itself and not beside its stature: pounds lie in the range of kilograms. */
export function bodyFaults(session: Document): Diagnostic[] {
  const [mass, stature] = (["mass_kg", "stature_cm"] as const).map((key) => firstNumber(session.value, "size", key));
  if (mass === undefined || stature === undefined || stature < 100 || isConfirmed(session.value, ["size", "mass_kg"]))
    return [];
  const index = (kilograms: number) => kilograms / (stature / 100) ** 2;
  if (index(mass) >= BODY_USUAL[0] && index(mass) <= BODY_USUAL[1]) return [];
  const pounds = index(mass * KG_PER_POUND);
  const corrected = pounds >= 17 && pounds <= 40 ? String(roundTo(mass * KG_PER_POUND, 1)) : undefined;
  const why = words.bodyOdd(String(mass), String(stature), String(roundTo(index(mass), 1)), BODY_USUAL, corrected);
  return [fault(session, "warning", corrected ? "unit-slip" : "unusual-value", ["size", "mass_kg"], why)];
}

/** Birth, consent and visit in their order. */
export function dateFaults(client: Document, session: Document): Diagnostic[] {
  const visit = date(session, "date");
  const birth = date(client, "birth_date");
  const found: Diagnostic[] = [];
  if (visit === undefined) return found;
  if (birth !== undefined && visit <= birth)
    found.push(fault(session, "error", "visit-before-birth", ["date"], words.beforeBirth(visit, birth)));
  else if (birth !== undefined) {
    const age = decimalAge(birth, visit);
    if ((age < 8 || age > 95) && !isConfirmed(client.value, ["birth_date"]))
      found.push(fault(client, "warning", "age-unusual", ["birth_date"], words.ageUnusual(String(roundTo(age, 1)))));
  }
  const consent = date(client, "consent", "date");
  const withdrawn = date(client, "consent", "withdrawn");
  if (consent !== undefined && visit < consent)
    found.push(fault(session, "warning", "consent-after-visit", ["date"], words.consentAfter(visit, consent, false)));
  if (withdrawn !== undefined && visit > withdrawn)
    found.push(fault(session, "error", "consent-after-visit", ["date"], words.consentAfter(visit, withdrawn, true)));
  return found;
}
