/** Equations that are no sum of terms, by the id a table of kind `formula` names. */
import { hansen1984 } from "./hansen-1984.js";
import type { Person } from "./person.js";

/** The predicted value in the equation's unit, or the name of the fact that is missing. Throws OutOfRange. */
export type Equation = (person: Person) => number | string;

export const equations: Readonly<Record<string, Equation>> = {
  "hansen-1984": ({ sex, ageYears, facts }) => {
    if (typeof facts.stature_cm !== "number") return "stature";
    if (typeof facts.mass_kg !== "number") return "body mass";
    if (typeof facts.exercise_mode !== "string") return "mode of the incremental test";
    return hansen1984(sex, ageYears, facts.stature_cm, facts.mass_kg, facts.exercise_mode);
  },
};
