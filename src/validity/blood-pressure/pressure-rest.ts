/**
 * Five minutes of quiet sitting come before the first reading.
 */
import type { Rule } from "../../kernel/rule.js";
import { finding, notRecorded } from "../finding.js";

const AFFECTED = ["systolic_pressure", "diastolic_pressure", "blood_pressure_class"] as const;

export const rule: Rule = {
  id: "pressure-rest",
  revision: 1,
  title: "Rest before the pressure readings",
  section: "blood_pressure",
  source: {
    authors: "Pickering TG, Hall JE, Appel LJ, et al.; Muntner P, Shimbo D, Carey RM, et al.",
    year: "2005–2019",
    title: "Measurement of blood pressure in humans",
    journal: "Hypertension",
    doi: "10.1161/01.HYP.0000150859.47929.8e",
    where: "5 minutes of seated rest",
    verified: "seen",
  },
  judge: ({ visit }) => {
    const block = visit.session.blood_pressure;
    const [first] = block?.readings ?? [];
    if (block === undefined || first === undefined) return [];
    const rest = first.rest_min ?? block.rest_min;
    const because = "Pressure keeps falling during the first minutes of sitting.";
    if (rest === undefined) return [notRecorded("rest_min", because, AFFECTED)];
    return rest >= 5 ? [] : [finding("weakens", `${rest} min of rest`, "5 min", because, AFFECTED)];
  },
};
