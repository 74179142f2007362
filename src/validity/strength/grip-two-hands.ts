/**
 * A hand is rarely more than 1.6 times the other. Where it is, the number may be the sum of both hands, which some
 * records keep, or a slip.
 */

import { toDecimals } from "../../kernel/rounding.js";
import type { Rule } from "../../kernel/rule.js";
import { finding } from "../finding.js";

const AFFECTED = ["grip_strength", "grip_strength_left", "grip_strength_right"] as const;

export const rule: Rule = {
  id: "grip-two-hands",
  revision: 1,
  title: "One hand far above the other",
  section: "strength",
  source: {
    authors: "Waymark",
    year: null,
    title: "Rule of this project",
    where: "a hand more than 1.6 times the other is far more often a sum of two hands or a slip",
    verified: "own",
  },
  judge: ({ value }) => {
    const left = value("grip_strength_left");
    const right = value("grip_strength_right");
    if (left === undefined || right === undefined) return [];
    const ratio = Math.max(left, right) / Math.min(left, right);
    if (ratio <= 1.6) return [];
    const found = `left ${toDecimals(left, 1)} kg, right ${toDecimals(right, 1)} kg`;
    return [
      finding(
        "weakens",
        found,
        "1.6 times the other hand",
        "The larger may be the sum of two hands, or one hand is hurt.",
        AFFECTED,
      ),
    ];
  },
};
