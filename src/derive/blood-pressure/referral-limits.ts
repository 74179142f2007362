/**
 * Where a resting pressure stands against published limits for referral.
 *
 *     emergency         ≥ 180 systolic or ≥ 120 diastolic, with symptoms
 *     urgent referral   ≥ 180 or ≥ 110
 *     routine referral  ≥ 140 or ≥ 90
 *     within limits     below all
 *
 * Pressures are compared as printed, in whole mmHg. The limits are those of guidelines; the physician responsible for
 * the laboratory must agree to them (screening_sign_off in lab.yaml).
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";
import { roundTo } from "../../kernel/rounding.js";

const REFERRAL = ["within limits", "routine referral", "urgent referral", "emergency"] as const;
export type Referral = (typeof REFERRAL)[number];

/** mmHg, mmHg and whether symptoms came with it, to the referral. Throws OutOfRange for pressures no reading can have. */
export function referralLimits(systolic: number, diastolic: number, symptoms: boolean): Referral {
  requireRange(info.id, "systolic pressure", systolic, 50, 300, "mmHg");
  requireRange(info.id, "diastolic pressure", diastolic, 20, 200, "mmHg");
  const s = roundTo(systolic, 0);
  const d = roundTo(diastolic, 0);
  if (symptoms && (s >= 180 || d >= 120)) return "emergency";
  if (s >= 180 || d >= 110) return "urgent referral";
  return s >= 140 || d >= 90 ? "routine referral" : "within limits";
}

const level = (referral: Referral) => REFERRAL.indexOf(referral);
export const info: FormulaInfo<[number, number, boolean], Referral> = {
  id: "referral-limits",
  revision: 1,
  title: "Referral limits of resting blood pressure",
  equation: "urgent from 180 or 110, routine from 140 or 90 mmHg; emergency from 180 or 120 with symptoms",
  inputs: {
    systolic: { unit: "mmHg", range: "50 to 300" },
    diastolic: { unit: "mmHg", range: "20 to 200" },
    symptoms: { unit: "", range: "yes or no" },
  },
  output: { unit: "level", decimals: 0 },
  caveat: "The limits need the agreement of the physician responsible for the laboratory.",
  source: {
    authors: "McEvoy JW, McCarthy CP, Bruno RM, et al.; Whelton PK, Carey RM, Aronow WS, et al.",
    year: 2024,
    title: "2024 ESC Guidelines for elevated blood pressure and hypertension; 2017 ACC/AHA guideline",
    journal: "Eur Heart J 45(38):3912–4018; Hypertension 71(6):e13–e115",
    doi: "10.1093/eurheartj/ehae178",
    where: "urgent evaluation from 180/110 (seen); with symptoms and from 180/120 an emergency (from memory)",
    verified: "memory",
  },
  compute: referralLimits,
  checks: [
    {
      given: [180, 80, false],
      expect: 2,
      tolerance: 0,
      pick: level,
      from: "McEvoy 2024: urgent evaluation from 180/110",
    },
    { given: [179, 109, false], expect: 1, tolerance: 0, pick: level, from: "McEvoy 2024: just below 180/110" },
    { given: [139, 89, false], expect: 0, tolerance: 0, pick: level, from: "McEvoy 2024: below 140/90" },
    { given: [140, 70, false], expect: 1, tolerance: 0, pick: level, from: "McEvoy 2024: from 140" },
    { given: [182, 80, true], expect: 3, tolerance: 0, pick: level, from: "Whelton 2018: with symptoms an emergency" },
    { given: [120, 0, false], expect: "refused", from: "a diastolic of 0 was not found" },
  ],
};
