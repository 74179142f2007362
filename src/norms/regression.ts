/** The sum of terms of a regression table: each a coefficient times facts. */
import type { ReferenceTable } from "../kernel/generated/reference-table.js";
import { CM_PER_INCH, KG_PER_POUND } from "../kernel/unit.js";
import { FACTS, type Person } from "./person.js";

type Terms = NonNullable<ReferenceTable["terms"]>;
const NAMES: Readonly<Record<string, string>> = {
  mass_lb: FACTS.mass_kg.name,
  mass_kg: FACTS.mass_kg.name,
  stature_in: FACTS.stature_cm.name,
  stature_cm: FACTS.stature_cm.name,
  body_mass_index: FACTS.body_mass_index.name,
};
export type Sum = { readonly value: number } | { readonly missing: string };

/** The predicted value in the table's unit, or the name of the fact that is missing. */
export function sumOfTerms(table: ReferenceTable, terms: Terms, person: Person): Sum {
  const list = terms[person.sex] ?? terms.all;
  if (list === undefined) return { missing: "an equation for this sex" };
  let value = 0;
  for (const [coefficient, ...facts] of list) {
    let term = coefficient as number;
    for (const fact of facts) {
      const factor = factorOf(table, String(fact), person);
      if (factor === undefined) return { missing: NAMES[String(fact)] ?? String(fact) };
      term *= factor;
    }
    value += term;
  }
  return { value };
}

/** A fact as the source's equation takes it: coded, or in the source's own unit. */
function factorOf(table: ReferenceTable, fact: string, person: Person): number | undefined {
  const coded = table.coding?.[fact];
  if (coded !== undefined) return coded[fact === "sex" ? person.sex : String(person.facts[fact])];
  if (fact === "age_years") return person.ageYears;
  if (fact === "mass_lb") return scaled(person.facts.mass_kg, 1 / KG_PER_POUND);
  if (fact === "stature_in") return scaled(person.facts.stature_cm, 1 / CM_PER_INCH);
  return scaled(person.facts[fact], 1);
}

const scaled = (x: number | string | undefined, factor: number) => (typeof x === "number" ? x * factor : undefined);
