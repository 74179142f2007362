/** Whom a table covers: every reason why it does not cover a person, in plain words. Nothing is extrapolated. */
import type { ReferenceTable } from "../kernel/generated/reference-table.js";
import { measureInfo } from "../kernel/measures.js";
import { toDecimals } from "../kernel/rounding.js";
import { once } from "./once.js";
import { FACTS, type Person } from "./person.js";

/** Bands are in completed years; curves by age take the decimal age. */
export const ageFor = (table: ReferenceTable, person: Person): number =>
  table.kind === "lms" || table.kind === "lms-spline" ? person.ageYears : Math.floor(person.ageYears);

/** Found once for a person and a table: choosing, placing and drawing all ask. */
const refused = new WeakMap<Person, Map<ReferenceTable, readonly string[]>>();

/** Empty when the table covers the person. */
export function refusals(table: ReferenceTable, person: Person): readonly string[] {
  const ofPerson = refused.get(person);
  const known = ofPerson?.get(table);
  if (known !== undefined) return known;
  const reasons = reasonsAgainst(table, person);
  if (ofPerson === undefined) refused.set(person, new Map([[table, reasons]]));
  else ofPerson.set(table, reasons);
  return reasons;
}

type Applies = ReferenceTable["applies"];
/** What a table limits beside sex and age. */
const limitsOf = once((_table, { sex: _sex, age_years: _ages, ...rest }: Applies) =>
  (Object.entries(rest) as [keyof typeof FACTS, readonly (number | string)[]][]).map(([key, limit]) => ({
    key,
    limit,
  })),
);

function reasonsAgainst(table: ReferenceTable, person: Person): readonly string[] {
  const { sex, age_years: ages } = table.applies;
  const found: string[] = [];
  if (!sex.includes(person.sex)) found.push(`it covers ${sex.map((s) => PEOPLE[s]).join(" and ")} only`);
  const age = ageFor(table, person);
  if (!(age >= (ages[0] as number) && age <= (ages[1] as number)))
    found.push(`it covers ages ${ages[0]} to ${ages[1]}, and the age is ${toDecimals(person.ageYears, 1)}`);
  for (const { key, limit } of limitsOf(table, table.applies)) {
    const { name, unit, refused: said } = FACTS[key];
    const fact = person.facts[key];
    const [low, high] = limit;
    if (typeof low === "number") {
      const range = `${low} to ${high} ${unit ?? ""}`.trim();
      if (typeof fact !== "number") found.push(`it covers ${name} ${range}, and ${name} was not recorded`);
      else if (!(fact >= low && fact <= (high as number)))
        found.push(`it covers ${name} ${range}, and ${name} is ${toDecimals(fact, 1)}`);
    } else if (fact === undefined) found.push(`it covers ${limit.join(" or ")} only, and the ${name} was not recorded`);
    else if (!limit.includes(String(fact)))
      found.push(said ?? `it covers ${limit.join(" or ")} only, and the ${name} is ${fact}`);
  }
  const pregnant = person.facts.pregnant === "yes" && table.applies.pregnant === undefined;
  if (pregnant && measureInfo(table.measure)?.section === "composition")
    found.push(FACTS.pregnant.refused ?? "it does not hold in pregnancy");
  if (PEAK_UPTAKE.includes(table.measure)) found.push(...(person.notAsReferences ?? []));
  return found;
}
const PEAK_UPTAKE: readonly string[] = ["vo2_peak", "vo2_peak_per_mass"];

export const PEOPLE = { female: "women", male: "men" } as const;

/** "women 40 to 49 years, treadmill": who the person is compared with. `ages` replaces the table's whole range. */
export function groupOf(table: ReferenceTable, person: Person, ages?: string): string {
  const { sex, age_years: range } = table.applies;
  const words = limitsOf(table, table.applies)
    .filter(({ limit }) => typeof limit[0] === "string")
    .map(({ key }) => {
      const word = String(person.facts[key]);
      return FACTS[key].inGroup?.(word) ?? word;
    })
    .filter((word) => word !== "");
  const people = sex.length === 2 && table.values?.all && !table.values.female ? "adults" : PEOPLE[person.sex];
  return [`${people} ${ages ?? `${range[0]} to ${range[1]} years`}`, ...words].join(", ");
}
