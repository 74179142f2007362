/**
 * The cuff fits the arm. A cuff that is too small reads too high, one too large too low, by 5 to 10 mmHg and more.
 */
import type { Rule } from "../../kernel/rule.js";
import { finding, notRecorded } from "../finding.js";

const AFFECTED = ["systolic_pressure", "diastolic_pressure", "blood_pressure_class"] as const;
const BECAUSE = "A cuff too small reads too high, one too large too low.";
/** Arm circumference in cm: from, and below. */
const FITS = {
  "small-adult": [22, 27],
  adult: [27, 35],
  "large-adult": [35, 45],
  thigh: [45, 53],
} as const;

export const rule: Rule = {
  id: "pressure-cuff",
  revision: 1,
  title: "Cuff against the arm",
  section: "blood_pressure",
  source: {
    authors: "Pickering TG, Hall JE, Appel LJ, et al.; McEvoy JW, McCarthy CP, Bruno RM, et al.",
    year: "2005–2024",
    title: "Measurement of blood pressure in humans; 2024 ESC guidelines",
    journal: "Hypertension; Eur Heart J",
    where: "small adult 22–26, adult 27–34, large adult 35–44, thigh 45–52 cm",
    verified: "memory",
  },
  judge: ({ visit }) => {
    const block = visit.session.blood_pressure;
    if (block?.readings === undefined) return [];
    const cuffs = [...new Set(block.readings.map((r) => r.cuff ?? block.cuff))];
    const arm = block.arm_circumference_cm;
    if (arm === undefined || cuffs.includes(undefined))
      return [notRecorded(arm === undefined ? "arm circumference" : "cuff", BECAUSE, AFFECTED)];
    const fits = Object.entries(FITS).find(([, [from, below]]) => arm >= from && arm < below)?.[0];
    const wrong = cuffs.filter((cuff) => cuff !== fits);
    if (wrong.length === 0) return [];
    return [
      finding(
        "weakens",
        `${wrong.join(", ")} cuff on an arm of ${arm} cm`,
        fits === undefined ? "arms of 22 to 52 cm" : `${fits} cuff`,
        BECAUSE,
        AFFECTED,
      ),
    ];
  },
};
