/**
 * Resting pressure at which an exercise test is put off.
 *
 *     systolic > 200 or diastolic > 110 mmHg
 *
 * A relative contraindication in the guideline; this project puts the test off and refers. Compared as printed, in
 * whole mmHg.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";
import { roundTo } from "../../kernel/rounding.js";

/** mmHg, mmHg to whether the test is put off. */
export function testDeferral(systolic: number, diastolic: number): boolean {
  requireRange(info.id, "systolic pressure", systolic, 50, 300, "mmHg");
  requireRange(info.id, "diastolic pressure", diastolic, 20, 200, "mmHg");
  return roundTo(systolic, 0) > 200 || roundTo(diastolic, 0) > 110;
}

export const info: FormulaInfo<[number, number], boolean> = {
  id: "test-deferral",
  revision: 1,
  title: "Resting pressure that puts off an exercise test",
  equation: "systolic > 200 or diastolic > 110 mmHg",
  inputs: {
    systolic: { unit: "mmHg", range: "50 to 300" },
    diastolic: { unit: "mmHg", range: "20 to 200" },
  },
  output: { unit: "yes or no", decimals: 0 },
  source: {
    authors: "Gibbons RJ, Balady GJ, Bricker JT, et al.",
    year: 2002,
    title: "ACC/AHA 2002 guideline update for exercise testing",
    journal: "Circulation 106:1883–1892",
    where: "relative contraindications, as printed in ACSM's Guidelines, Box 3.5",
    verified: "seen",
  },
  compute: testDeferral,
  checks: [
    { given: [204, 98], expect: 1, tolerance: 0, pick: Number, from: "Box 3.5: above 200 systolic" },
    { given: [200, 110], expect: 0, tolerance: 0, pick: Number, from: "Box 3.5: the limits themselves are not above" },
    { given: [150, 111], expect: 1, tolerance: 0, pick: Number, from: "Box 3.5: above 110 diastolic" },
    { given: [150, 0], expect: "refused", from: "a diastolic of 0 was not found" },
  ],
};
