/**
 * Head, trunk and limbs add up to the whole within 2 %, part by part; otherwise a figure was copied wrongly.
 */

import { toDecimals } from "../../kernel/rounding.js";
import type { Rule } from "../../kernel/rule.js";
import { finding } from "../finding.js";

const AFFECTED = ["fat_mass", "lean_mass", "body_fat_percent"] as const;

const both = (a: number | undefined, b: number | undefined) => (a === undefined || b === undefined ? undefined : a + b);

export const rule: Rule = {
  id: "dxa-regions-add-up",
  revision: 1,
  title: "Regions against the whole scan",
  section: "composition",
  source: {
    authors: "Waymark",
    year: null,
    title: "Rule of this project",
    where: "head, trunk and limbs add up to the whole within 2 %",
    verified: "own",
  },
  judge: ({ visit }) => {
    const dxa = visit.session.dxa;
    if (dxa?.whole === undefined) return [];
    const whole = dxa.whole;
    return (["fat_g", "lean_g", "bmc_g"] as const).flatMap((part) => {
      const arms = dxa.arms?.[part] ?? both(dxa.left_arm?.[part], dxa.right_arm?.[part]);
      const legs = dxa.legs?.[part] ?? both(dxa.left_leg?.[part], dxa.right_leg?.[part]);
      const sum = both(both(arms, legs), both(dxa.head?.[part], dxa.trunk?.[part]));
      const all = whole[part];
      if (sum === undefined || all === undefined || Math.abs(sum - all) <= 0.02 * all) return [];
      const found = `${part} of the regions ${toDecimals(sum, 0)} g, of the whole ${toDecimals(all, 0)} g`;
      return [
        finding("weakens", found, "2 %", "A figure of the printout was copied wrongly, or regions overlap.", [
          ...AFFECTED,
          "appendicular_lean_mass",
        ]),
      ];
    });
  },
};
