/**
 * The right side is measured, by the same person at each visit.
 */
import type { Rule } from "../../kernel/rule.js";
import { finding, notRecorded } from "../finding.js";

export const rule: Rule = {
  id: "skinfold-method",
  revision: 1,
  title: "Side and measurer of the skinfolds",
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
    const missing = (["side", "measurer", "caliper"] as const).filter((name) => block[name] === undefined);
    return [
      ...(missing.length > 0
        ? [notRecorded(missing.join(", "), "Another person or caliper reads another sum.", ["skinfold_sum"])]
        : []),
      ...(block.side === "left"
        ? [
            finding("weakens", "measured on the left", "right side", "The equations were made on the right side.", [
              "skinfold_sum",
            ]),
          ]
        : []),
    ];
  },
};
