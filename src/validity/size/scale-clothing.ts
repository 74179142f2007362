/**
 * Body mass is taken in minimal clothing; ordinary clothes and shoes weigh 1 to 2 kg.
 */
import type { Rule } from "../../kernel/rule.js";
import { finding, notRecorded } from "../finding.js";

export const rule: Rule = {
  id: "scale-clothing",
  revision: 1,
  title: "Clothing on the scales",
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
    if (size?.mass_kg === undefined) return [];
    if (size.clothing === undefined) return [notRecorded("clothing", "Clothes weigh up to 2 kg.", ["body_mass"])];
    if (size.clothing !== "ordinary") return [];
    const because = "Ordinary clothes weigh 1 to 2 kg, and never the same twice.";
    return [finding("weakens", "weighed in ordinary clothing", "minimal or light clothing", because, ["body_mass"])];
  },
};
