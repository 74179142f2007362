/**
 * Grip and appendicular lean mass against the case-finding limits for older adults.
 *
 *     EWGSOP2, from 60 years   grip below 27 kg (men) or 16 kg (women); ALM index below 7.0 or 5.5 kg/m²
 *
 * The limits were drawn 2 to 2.5 SD below young adults in order to find frail old people. In a younger client they
 * mean nothing and are refused. Values are compared as printed.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";
import { compareAtDecimals } from "../../kernel/rounding.js";

export const OLDER_ADULT_LIMITS = {
  male: { gripKg: 27, indexKgM2: 7 },
  female: { gripKg: 16, indexKgM2: 5.5 },
} as const;

/** How many of the two values given lie below their limit, 0 to 2. Throws OutOfRange below 60 years. */
export function olderAdultLimits(
  sex: "female" | "male",
  ageYears: number,
  gripKg: number | undefined,
  indexKgM2: number | undefined,
): number {
  requireRange(info.id, "age", ageYears, 60, 120, "years");
  const limit = OLDER_ADULT_LIMITS[sex];
  const weak = gripKg !== undefined && compareAtDecimals(gripKg, limit.gripKg, 1) < 0;
  const little = indexKgM2 !== undefined && compareAtDecimals(indexKgM2, limit.indexKgM2, 2) < 0;
  return Number(weak) + Number(little);
}

export const info: FormulaInfo<["female" | "male", number, number | undefined, number | undefined], number> = {
  id: "older-adult-limits",
  revision: 1,
  title: "Muscle limits for older adults",
  equation: "grip below 27 (men) or 16 kg (women); appendicular lean mass index below 7.0 or 5.5 kg/m²",
  inputs: {
    sex: { unit: "", range: "female or male" },
    age: { unit: "years", range: "60 to 120" },
    grip: { unit: "kg", range: "or not measured" },
    "appendicular lean mass index": { unit: "kg/m²", range: "or not measured" },
  },
  output: { unit: "values below their limit", decimals: 0 },
  caveat: "Limits for finding cases among older adults; they are no diagnosis and say nothing of younger people.",
  source: {
    authors: "Cruz-Jentoft AJ, Bahat G, Bauer J, et al.",
    year: 2019,
    title: "Sarcopenia: revised European consensus on definition and diagnosis",
    journal: "Age Ageing 48(1):16–31",
    doi: "10.1093/ageing/afy169",
    where: "Table 3",
    verified: "seen",
  },
  compute: olderAdultLimits,
  checks: [
    { given: ["male", 70, 26.9, 7.2], expect: 1, tolerance: 0, from: "Table 3: grip below 27 kg" },
    { given: ["male", 70, 27, 7], expect: 0, tolerance: 0, from: "Table 3: the limits themselves are not below" },
    { given: ["female", 70, 15.9, 5.49], expect: 2, tolerance: 0, from: "Table 3: below 16 kg and 5.5 kg/m²" },
    { given: ["female", 59.9, 15, 5], expect: "refused", from: "limits for older adults only" },
  ],
};
