/**
 * Limb lengths of one person differ by less than 3 cm; a larger gap is far more often a slip, and the composite
 * divides by them.
 */
import type { Rule } from "../../kernel/rule.js";
import { finding } from "../finding.js";

export const rule: Rule = {
  id: "reach-limb-sides",
  revision: 1,
  title: "Limb length of the two sides",
  section: "mobility",
  source: {
    authors: "Waymark",
    year: null,
    title: "Rule of this project",
    where: "limb lengths of one person differ by less than 3 cm",
    verified: "own",
  },
  judge: ({ visit }) => {
    const reach = visit.session.mobility?.reach;
    const left = reach?.left?.limb_length_cm;
    const right = reach?.right?.limb_length_cm;
    if (left === undefined || right === undefined || Math.abs(left - right) < 3) return [];
    return [
      finding(
        "weakens",
        `left ${left} cm, right ${right} cm`,
        "less than 3 cm apart",
        "One of the two may be a slip.",
        ["reach_composite_left", "reach_composite_right"],
      ),
    ];
  },
};
