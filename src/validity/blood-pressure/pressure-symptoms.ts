/**
 * From 180 systolic or 120 diastolic it matters at once whether the client has symptoms: with them it is an emergency.
 * The question is asked and its answer written down.
 */

import { roundTo } from "../../kernel/rounding.js";
import type { Rule } from "../../kernel/rule.js";
import { notRecorded } from "../finding.js";

export const rule: Rule = {
  id: "pressure-symptoms",
  revision: 1,
  title: "Symptoms with a high pressure",
  section: "blood_pressure",
  source: {
    authors: "Whelton PK, Carey RM, Aronow WS, et al.",
    year: 2018,
    title: "2017 ACC/AHA guideline for high blood pressure in adults",
    journal: "Hypertension 71(6):e13–e115",
    doi: "10.1161/HYP.0000000000000065",
    where: "with symptoms an emergency, without them same-day contact",
    verified: "memory",
  },
  judge: ({ visit, value }) => {
    const systolic = value("systolic_pressure");
    const diastolic = value("diastolic_pressure");
    if (systolic === undefined || diastolic === undefined || visit.session.blood_pressure?.symptoms !== undefined)
      return [];
    if (roundTo(systolic, 0) < 180 && roundTo(diastolic, 0) < 120) return [];
    const because = "With chest pain, breathlessness, disturbed vision or weakness such a pressure is an emergency.";
    return [notRecorded("symptoms", because, ["blood_pressure_referral"], "weakens")];
  },
};
