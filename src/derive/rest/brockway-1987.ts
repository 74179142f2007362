/**
 * Energy expenditure from gas exchange, Brockway's equation.
 *
 *     EE = (16.58·VO2 + 4.51·VCO2) · 1440 / 4.184 − 5.90/4.184 · N
 *
 * Coefficients in kJ per litre and per gram of urinary nitrogen; 1 kcal = 4.184 kJ. Steady state only: with extra CO2
 * from buffering (ratio above 1.0) VCO2 no longer speaks of fuel.
 */
import { type FormulaInfo, OutOfRange, requireRange } from "../../kernel/formula.js";
import { type In, KJ_PER_KCAL, lPerMin } from "../../kernel/unit.js";

/** L/min STPD and g/d of urinary nitrogen (0 when not measured) in, kcal/d out. Throws OutOfRange above a ratio of 1.0. */
export function brockway1987(vo2: In<"L/min">, vco2: In<"L/min">, nitrogenGramsPerDay = 0): number {
  requireRange(info.id, "oxygen uptake", vo2, 0.05, 8, "L/min");
  requireRange(info.id, "carbon dioxide output", vco2, 0.03, 9, "L/min");
  requireRange(info.id, "urinary nitrogen", nitrogenGramsPerDay, 0, 60, "g/d");
  if (vco2 > vo2)
    throw new OutOfRange(info.id, "VCO2/VO2", (vco2 / vo2).toFixed(2), "steady state with a ratio up to 1.00");
  return (1440 * (16.58 * vo2 + 4.51 * vco2) - 5.9 * nitrogenGramsPerDay) / KJ_PER_KCAL;
}

export const info: FormulaInfo<[In<"L/min">, In<"L/min">, number?], number> = {
  id: "brockway-1987",
  revision: 1,
  title: "Energy expenditure (Brockway)",
  equation: "EE = (1440·(16.58·VO2 + 4.51·VCO2) − 5.90·N) / 4.184",
  inputs: {
    VO2: { unit: "L/min STPD", range: "0.05 to 8" },
    VCO2: { unit: "L/min STPD", range: "0.03 to 9, not above VO2" },
    N: { unit: "g/d urinary nitrogen, 0 when not measured", range: "0 to 60" },
  },
  output: { unit: "kcal/d", decimals: 0 },
  source: {
    authors: "Brockway JM",
    year: 1987,
    title: "Derivation of formulae used to calculate energy expenditure in man",
    journal: "Hum Nutr Clin Nutr 41C:463–471",
    where: "final equation",
    verified: "memory",
  },
  compute: brockway1987,
  checks: [
    {
      given: [lPerMin(2), lPerMin(1.7)],
      expect: 14051.6,
      tolerance: 0.5,
      from: "by hand: 16.58·2 + 4.51·1.7 = 40.827 kJ/min = 9.758 kcal/min, times 1440",
    },
    { given: [lPerMin(2), lPerMin(2.1)], expect: "refused", from: "a ratio above 1.0 is not steady state" },
  ],
};
