/**
 * Peak oxygen uptake on the cycle: 5th, 50th and 95th percentile by quantile regression (Koch 2009).
 *
 *     per kg    b0 + b1·A + b2·A² + b3·S + b4·B + b5·A·B + b6·S·B + b7·A·S + b8·A·S·B
 *     absolute  c0 + c1·A + c2·A² + c3·S + c4·A·S
 *
 * A is the age group (1 for 25 to 34 … 5 for 65 to 80), S is 1 for men and 2 for women, B is 1 above a body mass index
 * of 25. Between the three percentiles nothing is known, so only the band is named. The absolute 95th percentile is
 * left out: as transcribed it lies at twice the median of older women, so one of its coefficients must be wrong.
 */
import { type FormulaInfo, OutOfRange, requireRange } from "../kernel/formula.js";

const PER_KG = {
  5: [30.9643, -2.5661, -0.0263, -3.7224, 1.8765, 0.1082, -2.9703, 0.7361, 0.2799],
  50: [47.7565, -0.988, -0.2356, -8.8697, 2.3597, -2.0308, -3.7405, 0.2512, 1.3797],
  95: [61.3721, -1.9479, -0.3053, -9.1229, 3.8892, -1.9492, -6.7455, 0.0716, 1.69],
} as const;
const ABSOLUTE = { 5: [2966, -192, -3.3333, -800, 76.6667], 50: [4307, -241, -20, -1281, 133] } as const;

/** mL/kg/min at a percentile of 5, 50 or 95. */
export function shipPerMass(percentile: 5 | 50 | 95, sex: string, ageYears: number, bodyMassIndex: number): number {
  const [A, S] = [ageGroup(ageYears), sexCode(sex)];
  requireRange(info.id, "body mass index", bodyMassIndex, 12, 70, "kg/m²");
  const B = bodyMassIndex > 25 ? 1 : 0;
  const by = [1, A, A * A, S, B, A * B, S * B, A * S, A * S * B];
  return PER_KG[percentile].reduce((sum, b, i) => sum + b * (by[i] as number), 0);
}

/** mL/min at a percentile of 5 or 50. */
export function shipAbsolute(percentile: 5 | 50, sex: string, ageYears: number): number {
  const [A, S] = [ageGroup(ageYears), sexCode(sex)];
  const by = [1, A, A * A, S, A * S];
  return ABSOLUTE[percentile].reduce((sum, c, i) => sum + c * (by[i] as number), 0);
}

function ageGroup(ageYears: number): number {
  const age = Math.floor(ageYears);
  requireRange(info.id, "age", age, 25, 80, "years");
  return Math.min(5, Math.floor((age - 25) / 10) + 1); // the last group is printed as over 64
}

function sexCode(sex: string): number {
  if (sex !== "male" && sex !== "female") throw new OutOfRange(info.id, "sex", sex, "female or male");
  return sex === "male" ? 1 : 2;
}

export const info: FormulaInfo<[5 | 50 | 95, string, number, number], number> = {
  id: "ship-2009",
  revision: 1,
  title: "Peak oxygen uptake on the cycle, Study of Health in Pomerania",
  equation: "b0 + b1·A + b2·A² + b3·S + b4·B + b5·A·B + b6·S·B + b7·A·S + b8·A·S·B",
  inputs: {
    percentile: { unit: "", range: "5, 50 or 95" },
    sex: { unit: "", range: "female or male" },
    age: { unit: "years", range: "25 to 80" },
    body_mass_index: { unit: "kg/m²", range: "12 to 70" },
  },
  output: { unit: "mL/kg/min", decimals: 1 },
  source: {
    authors: "Koch B, Schäper C, Ittermann T, et al.",
    year: 2009,
    title: "Reference values for cardiopulmonary exercise testing in healthy volunteers: the SHIP study",
    journal: "Eur Respir J 33:389–397",
    doi: "10.1183/09031936.00074208",
    where: "Tables 3 and 4, read in a public transcription; last coefficient and coding also in a later equation table",
    verified: "seen",
  },
  compute: shipPerMass,
  checks: [
    {
      given: [50, "male", 40, 24],
      expect: 36.47,
      tolerance: 0.01,
      from: "by hand: 47.7565 − 1.976 − 0.9424 − 8.8697 + 0.5024",
    },
    {
      given: [5, "female", 40, 24],
      expect: 21.23,
      tolerance: 0.01,
      from: "by hand: 30.9643 − 5.1322 − 0.1052 − 7.4448 + 2.9444",
    },
    {
      given: [95, "male", 70, 28],
      expect: 31.08,
      tolerance: 0.01,
      from: "by hand: 61.3721 − 9.7395 − 7.6325 − 9.1229 + 3.8892 − 9.746 − 6.7455 + 0.358 + 8.45",
    },
    { given: [50, "male", 24, 24], expect: "refused", from: "the source begins at 25 years" },
  ],
};
