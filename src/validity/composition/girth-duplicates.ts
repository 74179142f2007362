/**
 * Girths are read twice; where the two differ by more than 1 %, a third time.
 */
import type { Rule } from "../../kernel/rule.js";
import { duplicateFindings } from "../finding.js";

const PLACES = [
  "neck_cm",
  "abdomen_navel_cm",
  "waist_narrowest_cm",
  "hip_cm",
  "arm_cm",
  "thigh_cm",
  "calf_cm",
] as const;

export const rule: Rule = {
  id: "girth-duplicates",
  revision: 1,
  title: "Readings of the girths",
  section: "composition",
  source: {
    authors: "Esparza-Ros F, Vaquero-Cristóbal R, Marfell-Jones M",
    year: 2019,
    title: "International Standards for Anthropometric Assessment",
    journal: "ISAK",
    where: "measurement procedures: twice, a third beyond 5 % (skinfolds) or 1 %",
    verified: "memory",
  },
  judge: ({ visit }) => {
    const block = visit.session.girths;
    if (block === undefined) return [];
    return PLACES.flatMap((place) =>
      duplicateFindings(place.replace("_cm", "").replaceAll("_", " "), "cm", block[place], 1, ["girth_fat_percent"]),
    );
  },
};
