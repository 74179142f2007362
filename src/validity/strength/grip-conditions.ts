/**
 * A grip value fits a reference table only with the same dynamometer and posture; standing with a straight arm reads
 * higher.
 */
import type { Rule } from "../../kernel/rule.js";
import { notRecorded } from "../finding.js";

const AFFECTED = ["grip_strength", "grip_strength_left", "grip_strength_right"] as const;

export const rule: Rule = {
  id: "grip-conditions",
  revision: 1,
  title: "Posture and dynamometer of the grip test",
  section: "strength",
  source: {
    authors: "common practice",
    year: null,
    title: "Habit of the trade",
    where: "the protocol must match the table: dynamometer, posture, handle",
    verified: "common practice",
  },
  judge: ({ visit }) => {
    const grip = visit.session.strength?.grip;
    if (grip === undefined) return [];
    const missing = (["posture", "device_type", "handle_position"] as const).filter((name) => grip[name] === undefined);
    const needed = grip.posture === undefined || grip.device_type === undefined;
    const because = "Standing with a straight arm reads higher, and dynamometers differ.";
    return missing.length === 0
      ? []
      : [notRecorded(missing.join(", "), because, AFFECTED, needed ? "weakens" : "record")];
  },
};
