/**
 * The published stance times are means of three trials stopped at 45 s.
 */
import { listOf } from "../../kernel/readings.js";
import type { Rule } from "../../kernel/rule.js";
import { finding, notRecorded } from "../finding.js";

export const rule: Rule = {
  id: "stance-trials",
  revision: 1,
  title: "Trials of the single-leg stance",
  section: "mobility",
  source: {
    authors: "Springer BA, Marin R, Cyhan T, Roberts H, Gill NW",
    year: 2007,
    title: "Normative values for the unipedal stance test with eyes open and closed",
    journal: "J Geriatr Phys Ther 30(1):8–15",
    doi: "10.1519/00139143-200704000-00003",
    where: "three trials, 45-s ceiling",
    verified: "memory",
  },
  judge: ({ visit }) => {
    const stance = visit.session.mobility?.single_leg_stance;
    if (stance === undefined) return [];
    const sides = (["left", "right"] as const).flatMap((side) => {
      const trials = stance[`${side}_s`];
      if (trials === undefined || listOf(trials).length >= 3) return [];
      return [
        finding(
          "weakens",
          `${listOf(trials).length} on the ${side} leg`,
          "three trials",
          "The mean of fewer trials is less sure and starts lower.",
          [`single_leg_stance_${side}`],
        ),
      ];
    });
    const both = ["single_leg_stance_left", "single_leg_stance_right"] as const;
    if (stance.ceiling_s === undefined)
      return [...sides, notRecorded("ceiling_s", "A watch stopped earlier cuts the time short.", both)];
    if (stance.ceiling_s === 45) return sides;
    return [
      ...sides,
      finding("record", `stopped at ${stance.ceiling_s} s`, "45 s", "The published values were stopped at 45 s.", both),
    ];
  },
};
