/** Equations that are no sum of terms, by the id a table of kind `formula` names. */
import { hansen1984 } from "./hansen-1984.js";
import type { Point } from "./percentile-linear.js";
import type { Person } from "./person.js";
import { shipAbsolute, shipPerMass } from "./ship-2009.js";

export interface Predicted {
  readonly predicted: number;
  /** Percentiles the source gives by equation; the value's band among them is named. */
  readonly quantiles?: readonly Point[];
}
/** In the equation's unit, or the name of the fact that is missing. Throws OutOfRange. */
export type Equation = (person: Person) => Predicted | string;

export const equations: Readonly<Record<string, Equation>> = {
  "hansen-1984": ({ sex, ageYears, facts }) => {
    if (typeof facts.stature_cm !== "number") return "stature";
    if (typeof facts.mass_kg !== "number") return "body mass";
    if (typeof facts.exercise_mode !== "string") return "mode of the incremental test";
    return { predicted: hansen1984(sex, ageYears, facts.stature_cm, facts.mass_kg, facts.exercise_mode) };
  },
  "ship-2009-per-mass": ({ sex, ageYears, facts }) => {
    const bmi = facts.body_mass_index;
    if (typeof bmi !== "number") return "body mass index";
    const at = (percentile: 5 | 50 | 95): Point => [percentile, shipPerMass(percentile, sex, ageYears, bmi)];
    return { predicted: at(50)[1], quantiles: [at(5), at(50), at(95)] };
  },
  "ship-2009-absolute": ({ sex, ageYears }) => {
    const at = (percentile: 5 | 50): Point => [percentile, shipAbsolute(percentile, sex, ageYears)];
    return { predicted: at(50)[1], quantiles: [at(5), at(50)] };
  },
};
