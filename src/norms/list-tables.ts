/** What reference tables there are, for whom, and for one person which apply and why the others do not. */
import type { Choices } from "../kernel/generated/choices.js";
import type { ReferenceTable } from "../kernel/generated/reference-table.js";
import { PEOPLE, refusals } from "./applies.js";
import { isChosen } from "./norms.js";
import { FACTS, type Person } from "./person.js";

export interface TableListing {
  readonly id: string;
  readonly title: string;
  readonly measure: string;
  readonly unit: string;
  readonly kind: ReferenceTable["kind"];
  readonly role: ReferenceTable["role"];
  /** "vo2_reference: vo2peak-by-mode", or "" where the table is used wherever it applies. */
  readonly choice: string;
  /** "women and men, 20 to 79 years, mode of the incremental test treadmill". */
  readonly covers: string;
  readonly population: string;
  readonly source: string;
  readonly verified: ReferenceTable["verified"];
  /** For a person: empty when the table covers them. */
  readonly refusals?: readonly string[];
  /** For a person with choices: whether those choices name the table. */
  readonly chosen?: boolean;
}

/** One listing a table, by measure and id. With a person each says whether it applies; with choices, whether it is in use. */
export function listTables(
  tables: readonly ReferenceTable[],
  person?: Person,
  choices?: Choices,
): readonly TableListing[] {
  return [...tables]
    .sort((a, b) => compare(a.measure, b.measure) || compare(a.id, b.id))
    .map((table) => ({
      id: table.id,
      title: table.title,
      measure: table.measure,
      unit: table.unit,
      kind: table.kind,
      role: table.role,
      choice: Object.entries(table.choice ?? {})
        .map(([key, values]) => `${key}: ${values.join(" or ")}`)
        .join(", "),
      covers: coverage(table),
      population: [table.population.who, table.population.country, table.population.n && `n = ${table.population.n}`]
        .filter(Boolean)
        .join(", "),
      source:
        `${table.source.authors} (${table.source.year ?? "no year"}). ${table.source.title}. ${table.source.journal ?? ""} ${table.source.where}`
          .replace(/\s+/g, " ")
          .trim(),
      verified: table.verified,
      ...(person === undefined ? {} : { refusals: refusals(table, person) }),
      ...(choices === undefined ? {} : { chosen: isChosen(table, choices) }),
    }));
}

/** Order by code unit: the same on every machine. */
const compare = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);

function coverage({ applies }: ReferenceTable): string {
  const { sex, age_years: ages, ...rest } = applies;
  const facts = Object.entries(rest).map(([key, limit]) => {
    const { name, unit } = FACTS[key as keyof typeof FACTS];
    return typeof limit[0] === "number"
      ? `${name} ${limit[0]} to ${limit[1]} ${unit ?? ""}`.trim()
      : `${name} ${limit.join(" or ")}`;
  });
  return [sex.map((s) => PEOPLE[s]).join(" and "), `${ages[0]} to ${ages[1]} years`, ...facts].join(", ");
}
