/**
 * Body density from biceps, triceps, subscapular and suprailiac folds.
 *
 *     D = c − m · log10(S),  c and m by sex and completed years of age
 *
 * The rows of the published table do not join smoothly: a birthday can move the result by 1 to 2 points of fat.
 */
import { type FormulaInfo, OutOfRange, requireRange } from "../../kernel/formula.js";

/** Durnin & Womersley 1974, Table 5: from and to in completed years, c, m. */
const ROWS: Readonly<Record<"female" | "male", readonly (readonly [number, number, number, number])[]>> = {
  male: [
    [17, 19, 1.162, 0.063],
    [20, 29, 1.1631, 0.0632],
    [30, 39, 1.1422, 0.0544],
    [40, 49, 1.162, 0.07],
    [50, 72, 1.1715, 0.0779],
  ],
  female: [
    [16, 19, 1.1549, 0.0678],
    [20, 29, 1.1599, 0.0717],
    [30, 39, 1.1423, 0.0632],
    [40, 49, 1.1333, 0.0612],
    [50, 68, 1.1339, 0.0645],
  ],
};

/** Body density from four skinfolds: g/mL. Throws OutOfRange outside the ranges in `info`. */
export function densityFourSite(sex: "female" | "male", ageYears: number, sumMm: number): number {
  requireRange(info.id, "sum of four skinfolds", sumMm, 12, 200, "mm");
  const row = ROWS[sex].find(([from, to]) => Math.floor(ageYears) >= from && Math.floor(ageYears) <= to);
  if (row === undefined)
    throw new OutOfRange(info.id, "age", ageYears, sex === "female" ? "16 to 68 years" : "17 to 72 years");
  const [, , c, m] = row;
  return c - m * Math.log10(sumMm);
}

export const info: FormulaInfo<["female" | "male", number, number], number> = {
  id: "density-four-site",
  revision: 1,
  title: "Body density from four skinfolds",
  equation: "D = c − m · log10(S)",
  inputs: {
    sex: { unit: "", range: "female or male" },
    age: { unit: "years", range: "women 16 to 68, men 17 to 72" },
    "sum of four skinfolds": { unit: "mm", range: "12 to 200" },
  },
  output: { unit: "g/mL", decimals: 4 },
  caveat: "A fat share from skinfolds errs by 3 to 4 percentage points; follow the sum of skinfolds instead.",
  source: {
    authors: "Durnin JVGA, Womersley J",
    year: 1974,
    title: "Body fat assessed from total body density and its estimation from skinfold thickness",
    journal: "Br J Nutr 32(1):77–97",
    doi: "10.1079/BJN19740060",
    where: "Table 5",
    verified: "seen",
  },
  compute: densityFourSite,
  checks: [
    { given: ["male", 25, 40], expect: 1.06185, tolerance: 1e-5, from: "by hand: 1.1631 − 0.0632 · 1.60206" },
    {
      given: ["male", 25, 30],
      expect: 1.06935,
      tolerance: 0.0005,
      from: "the printed table of fat shares lists 12.9 % at 30 mm for ages 17 to 29 pooled; 495 / 462.9 = 1.06935",
    },
    {
      given: ["female", 29.5, 40],
      expect: 1.0450323,
      tolerance: 1e-5,
      from: "by hand: completed years, so the row 20–29; 1.1599 − 0.0717 · 1.60206",
    },
    { given: ["female", 69, 40], expect: "refused", from: "rows for women end at 68" },
    { given: ["male", 16.9, 40], expect: "refused", from: "rows for men begin at 17" },
  ],
};
