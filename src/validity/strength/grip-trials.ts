/**
 * Three trials a hand: the best of fewer is lower, and the published values are the best or the mean of three.
 */
import { listOf } from "../../kernel/readings.js";
import type { Rule } from "../../kernel/rule.js";
import { finding } from "../finding.js";

export const rule: Rule = {
  id: "grip-trials",
  revision: 1,
  title: "Number of grip trials",
  section: "strength",
  source: {
    authors: "common practice",
    year: null,
    title: "Habit of the trade",
    where: "three trials a hand, alternating, 60 s rest",
    verified: "common practice",
  },
  judge: ({ visit }) => {
    const grip = visit.session.strength?.grip;
    if (grip === undefined) return [];
    return (["left", "right"] as const).flatMap((side) => {
      const readings = grip[`${side}_kg`];
      if (readings === undefined || listOf(readings).length >= 3) return [];
      const because = "The best of fewer trials is lower than the best of three.";
      return [
        finding("weakens", `${listOf(readings).length} with the ${side} hand`, "three trials a hand", because, [
          "grip_strength",
          `grip_strength_${side}`,
        ]),
      ];
    });
  },
};
