/**
 * The two best trials of a hand lie within 10 %; otherwise the client was still learning or did not give all.
 */

import { listOf } from "../../kernel/readings.js";
import { toDecimals } from "../../kernel/rounding.js";
import type { Rule } from "../../kernel/rule.js";
import { finding } from "../finding.js";

export const rule: Rule = {
  id: "grip-spread",
  revision: 1,
  title: "Spread of the grip trials",
  section: "strength",
  source: {
    authors: "common practice",
    year: null,
    title: "Habit of the trade",
    where: "the two best trials within 10 %",
    verified: "common practice",
  },
  judge: ({ visit }) => {
    const grip = visit.session.strength?.grip;
    if (grip === undefined) return [];
    return (["left", "right"] as const).flatMap((side) => {
      const [best, second] = [...listOf(grip[`${side}_kg`] ?? [])].sort((a, b) => b - a);
      if (best === undefined || second === undefined || Math.round(1e6 * (best - second)) <= Math.round(1e5 * best))
        return [];
      const found = `two best of the ${side} hand ${toDecimals(best, 1)} and ${toDecimals(second, 1)} kg`;
      return [
        finding("weakens", found, "10 % apart", "The client was still learning the test or did not give all.", [
          "grip_strength",
          `grip_strength_${side}`,
        ]),
      ];
    });
  },
};
