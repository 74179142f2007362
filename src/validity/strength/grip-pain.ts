/**
 * Pain or recent surgery of hand or arm makes grip a test of the pain.
 */
import type { Rule } from "../../kernel/rule.js";
import { finding } from "../finding.js";

const AFFECTED = ["grip_strength", "grip_strength_left", "grip_strength_right"] as const;

export const rule: Rule = {
  id: "grip-pain",
  revision: 1,
  title: "Pain or surgery of the hand",
  section: "strength",
  source: {
    authors: "common practice",
    year: null,
    title: "Habit of the trade",
    where: "pain, recent injury or surgery is asked first",
    verified: "common practice",
  },
  judge: ({ visit }) => {
    const grip = visit.session.strength?.grip;
    if (grip?.pain_or_surgery !== true) return [];
    return [
      finding(
        "weakens",
        "pain, injury or surgery of hand or arm",
        "none",
        "The value says what the hand allows, not what the muscle can.",
        AFFECTED,
      ),
    ];
  },
};
