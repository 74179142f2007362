/**
 * Where in the practice's files a chain ends: "clients/c-017/2026-03-02-baseline/session.yaml:12" beside a session key, so
 * that an editor or terminal can open the line. Where the chain names no key (many numbers of one block went into the
 * value), the blocks it was read from are named instead.
 */
import type { Document, Path } from "../kernel/document.js";
import { measureInfo } from "../kernel/measures.js";
import type { Link } from "./chain.js";

/** Documents by the name the results file gives them: session.yaml, client.yaml, lab.yaml. */
export type Documents = Readonly<Record<string, Document | undefined>>;

const KEY = /^((?:session|client|lab)\.yaml) ([a-z0-9_]+(?:\.[A-Za-z0-9_-]+)*)/;
const TEST = ["session.yaml incremental"];
const PLAN = ["client.yaml plan", "client.yaml goals", "session.yaml training_log"];

/** What the measures of a section are read from, most telling first. */
const READ: Readonly<Record<string, readonly string[]>> = {
  visit: ["session.yaml date"],
  screening: ["session.yaml screening", "client.yaml screening", "lab.yaml screening_sign_off"],
  preparation: ["session.yaml preparation"],
  size: ["session.yaml size"],
  blood_pressure: ["session.yaml blood_pressure"],
  rest: ["session.yaml rest", "session.yaml preparation"],
  heart_rate_variability: ["session.yaml heart_rate_variability"],
  lungs: ["session.yaml lungs"],
  strength: ["session.yaml strength"],
  mobility: ["session.yaml mobility"],
  field: ["session.yaml field_tests"],
  submaximal: ["session.yaml submaximal"],
  incremental: TEST,
  thresholds: TEST,
  economy: TEST,
  lactate: ["session.yaml lactate"],
  hypoxia: ["session.yaml hypoxia"],
  programme: PLAN,
  altitude: ["client.yaml goals", "client.yaml plan"],
};
/** Measures whose section is read from several blocks. */
const READ_BY_ID: readonly (readonly [RegExp, readonly string[]])[] = [
  [/^(critical_|work_above_critical)/, ["session.yaml critical_power"]],
  [/^(skinfold|body_density)/, ["session.yaml skinfolds"]],
  [/^girth/, ["session.yaml girths"]],
  [/^impedance/, ["session.yaml impedance"]],
  [/^(.*_least_change|fat_|lean_|body_fat_|dxa_|android|appendicular)/, ["session.yaml dxa", "lab.yaml instruments"]],
  [/^(change_|trend_|explained_|expected_gain)/, ["session.yaml date"]],
  [/^reference_percentiles$/, ["client.yaml birth_date", "client.yaml sex"]],
  [/^goal_/, ["client.yaml goals"]],
];

/** "file:line" of what a text such as "session.yaml size.mass_kg" names; undefined where it names nothing in a file. */
export function placeOf(text: string, documents: Documents): string | undefined {
  const match = KEY.exec(text);
  const document = documents[match?.[1] ?? ""];
  if (match === null || document === undefined) return undefined;
  const path: Path = (match[2] ?? "").split(".").map((step) => (/^\d+$/.test(step) ? Number(step) : step));
  for (let length = path.length; length > 0; length--) {
    const upTo = path.slice(0, length);
    if (document.span(upTo) === undefined) continue;
    const { file, line } = document.place(upTo, "key");
    return `${file}:${line}`;
  }
  return undefined;
}

/** The same chain with places, down to its ends; an end without a key is given the blocks it was read from. */
export function withPlaces(link: Link, documents: Documents): Link {
  const at = placeOf(link.key ?? "", documents);
  const inputs = link.inputs.map((input) => withPlaces(input, documents));
  const given = link.given.map((item) => {
    const place = placeOf(item.name, documents);
    return place === undefined ? item : { ...item, at: place };
  });
  const ends = at !== undefined || inputs.length > 0 || given.some((item) => item.at !== undefined);
  const read = ends ? [] : blocksOf(link.id, documents);
  return { ...link, ...(at === undefined ? {} : { at }), ...(read.length > 0 ? { read } : {}), given, inputs };
}

function blocksOf(id: string, documents: Documents): { readonly key: string; readonly at: string }[] {
  const section = measureInfo(id)?.section ?? "";
  const keys = READ_BY_ID.find(([pattern]) => pattern.test(id))?.[1] ?? READ[section] ?? [];
  return keys.flatMap((key) => {
    const at = placeOf(key, documents);
    return at === undefined ? [] : [{ key, at }];
  });
}
