/**
 * Energy expenditure from gas exchange, Weir's equation without a nitrogen term of its own.
 *
 *     EE = 1440 · (3.941·VO2 + 1.106·VCO2)        VO2, VCO2 in L/min STPD, EE in kcal/d
 *
 * 1440 minutes make a day; with mL/min the factor would be 1.44, a slip of a thousandfold, so litres are branded.
 * Where urinary nitrogen was measured 2.17 kcal for each gram of it are taken off: protein yields less heat per
 * litre of oxygen. Without it, ordinary protein oxidation is left out, which reads about 1 % higher than the short form.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";
import { type In, lPerMin } from "../../kernel/unit.js";

/** L/min STPD and g/d of urinary nitrogen (0 when not measured) in, kcal/d out. Throws OutOfRange outside 0.05 to 8 L/min. */
export function weir1949(vo2: In<"L/min">, vco2: In<"L/min">, nitrogenGramsPerDay = 0): number {
  requireRange(info.id, "oxygen uptake", vo2, 0.05, 8, "L/min");
  requireRange(info.id, "carbon dioxide output", vco2, 0.03, 9, "L/min");
  requireRange(info.id, "urinary nitrogen", nitrogenGramsPerDay, 0, 60, "g/d");
  return 1440 * (3.941 * vo2 + 1.106 * vco2) - 2.17 * nitrogenGramsPerDay;
}

export const info: FormulaInfo<[In<"L/min">, In<"L/min">, number?], number> = {
  id: "weir-1949",
  revision: 1,
  title: "Energy expenditure (Weir, 3.941 and 1.106)",
  equation: "EE = 1440·(3.941·VO2 + 1.106·VCO2) − 2.17·N",
  inputs: {
    VO2: { unit: "L/min STPD", range: "0.05 to 8" },
    VCO2: { unit: "L/min STPD", range: "0.03 to 9" },
    N: { unit: "g/d urinary nitrogen, 0 when not measured", range: "0 to 60" },
  },
  output: { unit: "kcal/d", decimals: 0 },
  caveat: "It reads about 1 % higher than the short form with 3.9 and 1.1; never mix the two in a comparison.",
  source: {
    authors: "Weir JB de V",
    year: 1949,
    title: "New methods for calculating metabolic rate with special reference to protein metabolism",
    journal: "J Physiol 109:1–9",
    doi: "10.1113/jphysiol.1949.sp004363",
    where: "energy equation and nitrogen term, as restated in secondary texts",
    verified: "seen",
  },
  compute: weir1949,
  checks: [
    {
      given: [lPerMin(0.3), lPerMin(0.24)],
      expect: 2084.7,
      tolerance: 0.06,
      from: "published calculator page, energy expenditure from a metabolic cart: 0.30 and 0.24 L/min give 2084.7 kcal/d",
    },
    {
      given: [lPerMin(0.25), lPerMin(0.2125)],
      expect: 1757.2,
      tolerance: 0.05,
      from: "by hand: 1.44 · (3.941·250 + 1.106·212.5)",
    },
    { given: [lPerMin(0.25), lPerMin(0.2125), 12], expect: 1731.2, tolerance: 0.05, from: "by hand: 1757.2 − 2.17·12" },
    { given: [lPerMin(250), lPerMin(212.5)], expect: "refused", from: "millilitres taken for litres" },
  ],
};
