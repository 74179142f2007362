import type { ReferenceTable } from "../../src/kernel/generated/reference-table.js";
import type { Person } from "../../src/norms/person.js";

/** A person the table covers: the first accepted word, the middle of each range, and a body for equations. */
export function personFor(table: ReferenceTable, sex: Person["sex"], ageYears: number): Person {
  const { sex: _sexes, age_years: _ages, ...rest } = table.applies;
  const limits = Object.entries(rest).map(([key, limit]) => {
    const [low, high] = limit;
    return [key, typeof low === "number" ? (low + (high as number)) / 2 : low] as const;
  });
  const body = { stature_cm: sex === "male" ? 178 : 165, mass_kg: sex === "male" ? 80 : 65, body_mass_index: 25 };
  return { sex, ageYears, facts: { ...body, ...Object.fromEntries(limits) } as Person["facts"] };
}
