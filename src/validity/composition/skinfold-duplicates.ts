/**
 * Skinfolds are read twice; where the two differ by more than 5 %, a third time.
 */
import type { Rule } from "../../kernel/rule.js";
import { duplicateFindings } from "../finding.js";

const SITES = [
  "chest",
  "midaxillary",
  "triceps",
  "biceps",
  "subscapular",
  "abdomen",
  "suprailiac",
  "thigh",
  "calf",
] as const;

export const rule: Rule = {
  id: "skinfold-duplicates",
  revision: 1,
  title: "Readings of the skinfolds",
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
    const block = visit.session.skinfolds;
    if (block === undefined) return [];
    return SITES.flatMap((site) => duplicateFindings(`${site} fold`, "mm", block[`${site}_mm`], 5, ["skinfold_sum"]));
  },
};
