/**
 * Stature, mass and girths are read twice; where the two differ by more than 1 %, a third time.
 */
import type { Rule } from "../../kernel/rule.js";
import { duplicateFindings } from "../finding.js";

export const rule: Rule = {
  id: "size-duplicates",
  revision: 1,
  title: "Readings of stature, mass, waist and hip",
  section: "size",
  source: {
    authors: "Esparza-Ros F, Vaquero-Cristóbal R, Marfell-Jones M",
    year: 2019,
    title: "International Standards for Anthropometric Assessment",
    journal: "ISAK",
    where: "measurement procedures: twice, a third beyond 5 % (skinfolds) or 1 %",
    verified: "memory",
  },
  judge: ({ visit }) => {
    const size = visit.session.size;
    if (size === undefined) return [];
    return [
      ...duplicateFindings("stature", "cm", size.stature_cm, 1, ["stature"]),
      ...duplicateFindings("body mass", "kg", size.mass_kg, 1, ["body_mass"]),
      ...duplicateFindings("waist", "cm", size.waist_cm, 1, ["waist"]),
      ...duplicateFindings("hip", "cm", size.hip_cm, 1, ["hip"]),
    ];
  },
};
