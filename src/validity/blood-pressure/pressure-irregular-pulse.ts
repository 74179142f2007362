/**
 * With an irregular pulse oscillometric readings are unsafe and are repeated by auscultation.
 */
import type { Rule } from "../../kernel/rule.js";
import { finding } from "../finding.js";

const AFFECTED = ["systolic_pressure", "diastolic_pressure", "blood_pressure_class"] as const;

export const rule: Rule = {
  id: "pressure-irregular-pulse",
  revision: 1,
  title: "Irregular pulse",
  section: "blood_pressure",
  source: {
    authors: "Pickering TG, Hall JE, Appel LJ, et al.; McEvoy JW, McCarthy CP, Bruno RM, et al.",
    year: "2005–2024",
    title: "Measurement of blood pressure in humans; 2024 ESC guidelines",
    journal: "Hypertension; Eur Heart J",
    where: "arrhythmia: repeat, by auscultation",
    verified: "memory",
  },
  judge: ({ visit }) => {
    const block = visit.session.blood_pressure;
    if (block?.irregular_pulse !== true || block.method === "auscultatory") return [];
    const how = block.method ?? "a method that was not recorded";
    const because = "The device finds pressure from the size of regular beats.";
    return [
      finding("weakens", `irregular pulse, read by ${how}`, "auscultation", because, [...AFFECTED, "resting_pulse"]),
    ];
  },
};
