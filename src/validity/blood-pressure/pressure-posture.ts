/**
 * The classes hold for seated readings with the arm at heart level.
 */
import type { Rule } from "../../kernel/rule.js";
import { finding, notRecorded } from "../finding.js";

const AFFECTED = ["systolic_pressure", "diastolic_pressure", "blood_pressure_class"] as const;

export const rule: Rule = {
  id: "pressure-posture",
  revision: 1,
  title: "Posture at the pressure readings",
  section: "blood_pressure",
  source: {
    authors: "Pickering TG, Hall JE, Appel LJ, et al.; Muntner P, Shimbo D, Carey RM, et al.",
    year: "2005–2019",
    title: "Measurement of blood pressure in humans",
    journal: "Hypertension",
    doi: "10.1161/01.HYP.0000150859.47929.8e",
    where: "seated, back supported, arm at heart level",
    verified: "seen",
  },
  judge: ({ visit }) => {
    const block = visit.session.blood_pressure;
    if (block?.readings === undefined) return [];
    const postures = block.readings.map((r) => r.posture ?? block.posture);
    if (postures.some((posture) => posture === undefined))
      return [notRecorded("posture", "Lying or standing readings differ from seated ones by several mmHg.", AFFECTED)];
    if (postures.includes("seated")) return [];
    const because = "Lying or standing readings differ from seated ones by several mmHg.";
    return [finding("weakens", `readings taken ${postures[0]}`, "seated", because, AFFECTED)];
  },
};
