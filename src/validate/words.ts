/** All wording of the validation stage. Each entry gives found, expected, why and, where it can, fix. */
export interface Words {
  readonly found: string;
  readonly expected: string;
  readonly why: string;
  readonly fix?: string;
}

/** A value as a message shows it: short, on one line, control and direction characters written out. */
export function show(value: unknown): string {
  if (value === null || value === undefined) return "nothing";
  if (Array.isArray(value)) return value.length === 1 ? "a list of one" : `a list of ${value.length}`;
  if (typeof value === "object") return "a mapping";
  if (typeof value !== "string") return String(value);
  const clean = value.replace(/[\p{Cc}\p{Cf}\u2028\u2029]/gu, (c) => `\\u{${(c.codePointAt(0) ?? 0).toString(16)}}`);
  return `"${clean.length > 60 ? `${clean.slice(0, 57)}...` : clean}"`;
}

const list = (items: readonly unknown[]) => items.map(String).join(", ");
const meaning = (description: string | undefined) => (description ? `; ${lower(firstSentence(description))}` : "");

/** "Stature without shoes, to 0.1 cm. Measured at …" gives its first sentence, without the stop. */
export function firstSentence(text: string): string {
  const end = /[.:;](\s|$)/.exec(text);
  return (end ? text.slice(0, end.index) : text).trim();
}
const lower = (text: string) => (/^[A-Z][a-z ]/.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text);

export const words = {
  misspelt: (key: string, near: string, description?: string): Words => ({
    found: `the key ${key}`,
    expected: near,
    why: `a key that is not known would be passed over, and its value lost${description ? `; ${near}: ${lower(firstSentence(description))}` : ""}`,
    fix: `did you mean ${near}?`,
  }),
  keyInOtherUnit: (key: string, near: string, corrected: string | undefined, isNumber: boolean): Words => ({
    found: `the key ${key}`,
    expected: near,
    why: "units stand in key names, so a value under the key of another unit would be read wrongly",
    fix: corrected
      ? `write ${near}: ${corrected}`
      : isNumber
        ? `convert the value and write it as ${near}`
        : `write ${near}`,
  }),
  keyWithoutUnit: (key: string, near: string, description?: string): Words => ({
    found: `the key ${key}`,
    expected: near,
    why: `units stand in key names, so that a value cannot be read in another one${description ? `; ${near}: ${lower(firstSentence(description))}` : ""}`,
    fix: `if the value is in that unit, write ${near}`,
  }),
  misplaced: (key: string, block: string): Words => ({
    found: `the key ${key}`,
    expected: `${key} inside ${block}`,
    why: "a key in the wrong place would be passed over, and its value lost",
    fix: `move it to ${block}, and indent it there`,
  }),
  /** `meant` is "key: 12.8" where a comma between braces cut that number in two. */
  unknownKey: (key: string, known: readonly string[], where: string, meant?: string): Words => ({
    found: `the key ${key}`,
    expected:
      known.length > 0 ? `one of: ${list(known.slice(0, 30))}${known.length > 30 ? ", ..." : ""}` : "no keys here",
    why: `${where} has no such key, and a value nobody reads is lost`,
    fix:
      meant !== undefined
        ? `a comma between braces ends a value: if a decimal comma was meant, write ${meant}`
        : "delete it, or move it to remarks if it matters",
  }),
  /** `isItem`: what lacks the key is one entry of a list. */
  missingKey: (key: string, where: string, description?: string, allowed?: readonly unknown[], isItem?: boolean) => ({
    found: `no ${key} in ${where}`,
    expected: description ? `${key}: ${lower(firstSentence(description))}` : key,
    why: `${where} cannot be used without it`,
    fix: `add ${key}${allowed ? `, one of: ${list(allowed)}` : ""}${isItem ? "; if it was not measured, delete the whole entry" : ""}`,
  }),
  missingCompanion: (key: string, needs: string, description?: string): Words => ({
    found: `${key} without ${needs}`,
    expected: `${needs} beside it${meaning(description)}`,
    why: "one of the two says nothing without the other",
    fix: `add ${needs}, or delete ${key}`,
  }),
  empty: (key: string, expected: string): Words => ({
    found: "no value",
    expected,
    why: "an empty key does not say whether it was forgotten, not measured, or zero",
    fix: `write the value, or delete ${key}: what is not there counts as not recorded`,
  }),
  wrongType: (value: unknown, expected: string, fix?: string): Words => ({
    found: show(value),
    expected,
    why: "a value of another kind cannot be read as what the key means",
    ...(fix ? { fix } : {}),
  }),
  quoteNeeded: (written: string, expected: string): Words => ({
    found: `${written} without quotes`,
    expected: `${expected}, in quotes`,
    why: "without quotes it is read as a number or another plain value, and 017 would become 17",
    fix: `write "${written}"`,
  }),
  decimalComma: (written: string, corrected: string, expected: string): Words => ({
    found: `"${written}"`,
    expected,
    why: "YAML numbers have a decimal point; with a comma the value is text",
    fix: `write ${corrected}`,
  }),
  /** `written` is "187,2", which a list reads as two items. */
  cutItem: (written: string, expected: string): Words => ({
    found: `"${written}"`,
    expected,
    why: "a comma ends an item of a list, and the decimals become a reading of their own",
    fix: `if a decimal comma was meant, write ${written.replace(",", ".")}; if these are two readings, correct the second`,
  }),
  notInList: (value: unknown, allowed: readonly unknown[], near?: string, description?: string): Words => ({
    found: show(value),
    expected: `one of: ${list(allowed)}`,
    why: `only these are understood${meaning(description)}`,
    ...(near ? { fix: `did you mean ${near}?` } : {}),
  }),
  formatLine: (value: unknown, wanted: string): Words => ({
    found: show(value),
    expected: wanted,
    why: "the line says which format the file is in, so that a later version still reads it rightly",
    fix: `write waymark: ${wanted}`,
  }),
  noSuchDate: (value: string, shape: "order" | "calendar", suggestions: readonly string[]): Words => ({
    found: show(value),
    expected: "a date that exists, as year-month-day",
    why:
      shape === "calendar" ? "the calendar has no such day" : "day and month cannot be told apart in any other order",
    ...(suggestions.length > 0 ? { fix: `write ${suggestions.join(" or ")}, if that is the day` } : {}),
  }),
  wrongShape: (value: unknown, expected: string, corrected?: string): Words => ({
    found: show(value),
    expected,
    why: "other programs and later visits rely on this form",
    ...(corrected ? { fix: `write "${corrected}"` } : {}),
  }),
  wrongLength: (found: string, expected: string): Words => ({
    found,
    expected,
    why: "outside these bounds the value cannot mean what the key says",
  }),
  repeated: (value: unknown): Words => ({
    found: `${show(value)} twice`,
    expected: "each item once",
    why: "what is counted twice weighs twice",
    fix: "delete one of them",
  }),
  impossible: (found: string, expected: string, description?: string): Words => ({
    found,
    expected,
    why: `a value outside this range cannot be right, and all that rests on it would be wrong${meaning(description)}`,
    fix: "look the value up again and correct it, or delete the key",
  }),
  /** `readings` are "like metres: write 168", one for each unit that would fit. */
  slip: (found: string, expected: string, readings: readonly string[], certain: boolean, key: string): Words => ({
    found,
    expected,
    why: certain
      ? "a value in another unit is read as this one, and all that rests on it would be wrong"
      : "the value is possible but unusual, and would be quite usual in another unit",
    fix: `${found} looks ${readings.join("; or ")}${certain ? "" : `, or confirm it with confirmed: {${key}: "why you are sure"}`}`,
  }),
  unusual: (found: string, expected: string, key: string, description?: string): Words => ({
    found,
    expected,
    why: `it may be true, but a person has to say so${meaning(description)}`,
    fix: `look the value up again; if it is true, write confirmed: {${key}: "why you are sure"} beside it`,
  }),
  confirmedUnknown: (key: string, near?: string): Words => ({
    found: `confirmed for ${key}`,
    expected: "a key of the mapping confirmed stands in",
    why: "a confirmation of something that is not there confirms nothing",
    fix: near ? `did you mean ${near}?` : "delete it, or name the key it was meant for",
  }),
  tooMany: (more: number): Words => ({
    found: `${more} more problems in this file`,
    expected: "a record with a few slips at most",
    why: "so many problems have one cause: a wrong file, or one key in the wrong place near the top",
    fix: "mend the first ones and check again",
  }),
  noVariant: (found: string, expected: string): Words => ({
    found,
    expected,
    why: "the value is understood in these forms only",
  }),

  unknownClient: (id: string, file: string): Words => ({
    found: `client ${show(id)}`,
    expected: `a file ${file}`,
    why: "age, sex for reference values and goals come from it",
    fix: "write the client file, or correct the id",
  }),
  clientMismatch: (session: string, client: string): Words => ({
    found: `client ${show(session)}`,
    expected: show(client),
    why: "the visit would be counted to somebody else",
    fix: `write "${client}", or move the folder`,
  }),
  folderName: (folder: string, expected: string): Words => ({
    found: `the folder ${show(folder)}`,
    expected: `a folder ${expected}`,
    why: "folders are found and sorted by their names, so the name has to tell the truth",
    fix: "rename the folder, or correct the file",
  }),
  repeatLabel: (folder: string): Words => ({
    found: `purpose reliability in the folder ${show(folder)}`,
    expected: "a label that holds the word reliability, such as 2026-03-05-reliability",
    why: "repeats are found by their folders' names; without the word this visit does not count for the laboratory's own error",
    fix: "rename the folder and the label, or change the purpose",
  }),
  beforeBirth: (visit: string, birth: string): Words => ({
    found: `a visit on ${visit}`,
    expected: `a date after the birth on ${birth}`,
    why: "one of the two dates is wrong, and age decides on reference values",
    fix: "correct date in session.yaml, or birth_date in client.yaml",
  }),
  ageUnusual: (age: string): Words => ({
    found: `an age of ${age} years at the visit`,
    expected: "usually from 8 to 95 years",
    why: "age decides on reference values; a slip in a year of birth is easily made",
    fix: 'look the date up again; if it is true, write confirmed: {birth_date: "why you are sure"} in client.yaml',
  }),
  consentAfter: (visit: string, consent: string, withdrawn: boolean): Words => ({
    found: `a visit on ${visit}, ${withdrawn ? "after consent was withdrawn on" : "before the consent of"} ${consent}`,
    expected: "a visit for which consent stands",
    why: "testing and keeping a record need the client's agreement",
    fix: "check both dates",
  }),
  pressureAltitude: (found: string, altitude: string, expected: string, reduced: boolean): Words => ({
    found: `${found} mmHg at a site ${altitude} m above sea level`,
    expected: `about ${expected} mmHg, give or take 25 for the weather`,
    why: "gas volumes are converted with the pressure in the room; every uptake would be wrong by the same share",
    fix: reduced
      ? "this looks like a pressure reduced to sea level, as weather services report it: read the barometer in the room"
      : 'look up both; if they are true, write confirmed: {pressure_mmhg: "why you are sure"}',
  }),
  bodyOdd: (mass: string, stature: string, index: string, usual: readonly number[], kilograms?: string): Words => ({
    found: `${mass} kg at ${stature} cm, a body mass index of ${index}`,
    expected: `usually ${usual[0]} to ${usual[1]} kg/m²`,
    why: "every value per kilogram rests on body mass",
    fix: `${kilograms ? `${mass} looks like pounds: write ${kilograms}` : "look both values up again"}; if they are true, write confirmed: {mass_kg: "why you are sure"}`,
  }),
  sameVisitTwice: (date: string, label: string | undefined, other: string): Words => ({
    found: `another visit on ${date}${label ? ` with the label ${label}` : " without a label"}: ${other}`,
    expected: "a label of its own for each visit on one day",
    why: "results of the two could not be told apart",
    fix: "give one of them another label, in the file and in the folder's name",
  }),
  seriesPath: (name: string, fault: string, folder = "the visit's folder"): Words => ({
    found: show(name),
    expected: `the name of a file in ${folder}`,
    why: `${fault}; a record must be whole when its folder is archived`,
    fix: `copy the file into ${folder} and write its name from there`,
  }),
  seriesMissing: (name: string, near?: string): Words => ({
    found: `no file ${show(name)} in the visit's folder`,
    expected: "the file the session names",
    why: "what rests on the series cannot be worked out",
    fix: near ? `did you mean ${near}?` : "copy the file there, or correct the name",
  }),
  unknownInstrument: (key: string, known: readonly string[], near?: string): Words => ({
    found: `the instrument ${show(key)}`,
    expected: known.length > 0 ? `one of lab.yaml: ${list(known)}` : "an instrument described in lab.yaml",
    why: "without the instrument nobody knows how it was calibrated or what its columns mean",
    fix: near ? `did you mean ${near}?` : "describe it under instruments: in lab.yaml, or correct the key",
  }),
  noColumns: (instrument: string, name: string): Words => ({
    found: `${instrument}, which has no columns in lab.yaml`,
    expected: "columns: in lab.yaml that say what each column holds",
    why: `without them ${name} cannot be read`,
    fix: `add columns: to ${instrument} in lab.yaml; waymark import FILE --as ${instrument} writes them`,
  }),
  noInstrument: (name: string): Words => ({
    found: `series ${show(name)} without instrument`,
    expected: "instrument: with the key of an instrument in lab.yaml",
    why: "its columns mapping says what the file holds",
    fix: "add instrument: beside series:",
  }),
  unknownMeasure: (id: string, near: readonly string[]): Words => ({
    found: `the measure ${show(id)}`,
    expected: "the id of a measure, as results.yaml writes it (vo2_peak_per_mass)",
    why: "a measure that is not known is never followed up",
    ...(near.length > 0 ? { fix: `did you mean ${near.join(" or ")}?` } : {}),
  }),
  gasConditionMissing: (channel: string): Words => ({
    found: `${channel} without condition`,
    expected: "condition: ATPS, BTPS, STPD, ATPD or ambient",
    why: "the same volume differs by a fifth between conditions; what needs a conversion is not given without it",
    fix: "the instrument's manual says which it writes",
  }),
  personal: (what: string, found: string, key: string): Words => ({
    found: `${found}, which looks like ${what}`,
    expected: "a record without names and contact data",
    why: "the folder is archived and shared under a pseudonym",
    fix: `take it out and keep it with the client's contact data; if it is none, add confirmed: {${key}: "why you are sure"} beside it`,
  }),
};
