/**
 * Mass and stature that belong together. A body mass index below 14 or above 60 kg/m² is far more often a slip of one
 * of the two than a person, and everything per kilogram rests on it.
 */

import { toDecimals } from "../../kernel/rounding.js";
import type { Rule } from "../../kernel/rule.js";
import { finding } from "../finding.js";

export const rule: Rule = {
  id: "size-plausible",
  revision: 1,
  title: "Mass against stature",
  section: "size",
  source: {
    authors: "Waymark",
    year: null,
    title: "Rule of this project",
    where: "a body mass index outside 14 to 60 kg/m² is far more often a slip than a person",
    verified: "own",
  },
  judge: ({ value }) => {
    const index = value("body_mass_index");
    if (index === undefined || (index >= 14 && index <= 60)) return [];
    const because = "Mass or stature may be a slip of the pen or of the unit.";
    return [
      finding("weakens", `body mass index ${toDecimals(index, 1)} kg/m²`, "14 to 60 kg/m²", because, [
        "body_mass",
        "stature",
      ]),
    ];
  },
};
