/**
 * A difference of more than 10 mmHg systolic between the arms is noted, and the higher arm is the one to follow.
 */

import { roundTo, toDecimals } from "../../kernel/rounding.js";
import type { Rule } from "../../kernel/rule.js";
import { finding } from "../finding.js";

const AFFECTED = ["systolic_pressure", "diastolic_pressure", "blood_pressure_class"] as const;

export const rule: Rule = {
  id: "pressure-arms",
  revision: 1,
  title: "Difference between the arms",
  section: "blood_pressure",
  source: {
    authors: "Pickering TG, Hall JE, Appel LJ, et al.; McEvoy JW, McCarthy CP, Bruno RM, et al.",
    year: "2005–2024",
    title: "Measurement of blood pressure in humans; 2024 ESC guidelines",
    journal: "Hypertension; Eur Heart J",
    where: "the higher arm is used; more than 10 mmHg systolic is noted",
    verified: "memory",
  },
  judge: ({ value }) => {
    const apart = value("arm_pressure_difference");
    if (apart === undefined || roundTo(apart, 0) <= 10) return [];
    const because = "Follow the higher arm; a difference that lasts is for a physician to look at.";
    return [finding("record", `arms ${toDecimals(apart, 0)} mmHg apart`, "10 mmHg systolic", because, AFFECTED)];
  },
};
