/**
 * Predicted resting energy expenditure from body mass, Owen and others.
 *
 *     women           795 + 7.18·M
 *     trained women   50.4 + 21.1·M
 *     men             879 + 10.2·M        kg; kcal/d
 *
 * From 44 women (8 of them trained) of 43 to 143 kg and 60 men up to 171 kg. The line for trained women rests on eight
 * people and is never chosen by itself.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** kg, years and sex in, kcal/d out; `trained` takes the line of the eight trained women. Throws OutOfRange outside the sample. */
export function owen(massKg: number, ageYears: number, sex: "female" | "male", trained = false): number {
  requireRange(info.id, "age", ageYears, 18, sex === "male" ? 82 : 65, "years");
  requireRange(info.id, "body mass", massKg, 43, sex === "male" ? 171 : 143, "kg");
  if (sex === "male") return 879 + 10.2 * massKg;
  return trained ? 50.4 + 21.1 * massKg : 795 + 7.18 * massKg;
}

export const info: FormulaInfo<[number, number, "female" | "male", boolean?], number> = {
  id: "owen",
  revision: 1,
  title: "Predicted resting energy expenditure (Owen)",
  equation: "women: 795 + 7.18·M · men: 879 + 10.2·M",
  inputs: {
    M: { unit: "kg", range: "43 to 143 women, 43 to 171 men" },
    age: { unit: "years", range: "18 to 65 women, 18 to 82 men" },
    sex: { unit: "", range: "female, male" },
  },
  output: { unit: "kcal/d", decimals: 0 },
  caveat: "The men's line is from memory, to be checked against the source.",
  source: {
    authors: "Owen OE and others",
    year: "1986, 1987",
    title: "A reappraisal of caloric requirements in healthy women; A reappraisal of the caloric requirements of men",
    journal: "Am J Clin Nutr 44:1–19; 46:875–885",
    doi: "10.1093/ajcn/44.1.1",
    where: "abstract of 1986 for women; the men's line from memory",
    verified: "memory",
  },
  compute: owen,
  checks: [
    { given: [60, 30, "female"], expect: 1225.8, tolerance: 0.001, from: "by hand: 795 + 7.18·60" },
    { given: [60, 30, "female", true], expect: 1316.4, tolerance: 0.001, from: "by hand: 50.4 + 21.1·60" },
    { given: [80, 30, "male"], expect: 1695, tolerance: 0.001, from: "by hand: 879 + 10.2·80" },
    { given: [60, 70, "female"], expect: "refused", from: "the women were 18 to 65 years" },
  ],
};
