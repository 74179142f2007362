/**
 * Peak oxygen pulse cannot pass stroke volume times arteriovenous difference: 200 mL · 170 mL/L = 34 mL a beat in the
 * largest hearts measured. A value above it is an error of flow, of gas condition or of heart rate.
 */
import { compareAtDecimals, toDecimals } from "../../kernel/rounding.js";
import type { Rule } from "../../kernel/rule.js";
import { finding } from "../finding.js";

const CEILING = 34;

export const rule: Rule = {
  id: "oxygen-pulse-ceiling",
  revision: 1,
  title: "Ceiling of the oxygen pulse",
  section: "incremental",
  source: {
    authors: "authors of Physiol Rev 103(3):1693–1787 (names not read)",
    year: 2023,
    title: "Reference values of sedentary individuals and elite endurance athletes (Table 1)",
    journal: "Physiol Rev 103(3):1693–1787",
    doi: "10.1152/physrev.00017.2022",
    where: "stroke volume up to 200 mL (seen); arteriovenous difference up to 170 mL/L (from memory)",
    verified: "memory",
  },
  judge: ({ value }) => {
    const pulse = value("oxygen_pulse_peak");
    if (pulse === undefined || compareAtDecimals(pulse, CEILING, 1) <= 0) return [];
    return [
      finding(
        "weakens",
        `${toDecimals(pulse, 1)} mL/beat`,
        `up to ${CEILING} mL/beat`,
        "No heart is known to deliver this. Likely causes: a heart-rate monitor that missed beats, a flow sensor that reads high, a wrong gas condition or unit.",
        ["oxygen_pulse_peak", "vo2_peak", "heart_rate_at_peak"],
      ),
    ];
  },
};
