/**
 * Fat and carbohydrate oxidation, Frayn.
 *
 *     fat = 1.67·VO2 − 1.67·VCO2 − 1.92·n
 *     carbohydrate = 4.55·VCO2 − 3.21·VO2 − 2.87·n        L/min STPD, n = urinary nitrogen in g/min; g/min
 *
 * Stoichiometry of glucose and of palmitoyl-stearoyl-oleoyl-glycerol. Without nitrogen the small share of protein is
 * divided between the two. Outside the ratios at which either is zero the sum has no meaning, so it is refused.
 */
import { type FormulaInfo, OutOfRange, requireRange } from "../../kernel/formula.js";
import { type In, lPerMin } from "../../kernel/unit.js";

/** Both in g/min. */
export interface Oxidation {
  readonly fat: number;
  readonly carbohydrate: number;
}

/** L/min STPD and g/min of urinary nitrogen in, g/min out. Throws OutOfRange where either fuel would be negative. */
export function frayn1983(vo2: In<"L/min">, vco2: In<"L/min">, nitrogenGramsPerMin = 0): Oxidation {
  requireRange(info.id, "oxygen uptake", vo2, 0.05, 8, "L/min");
  const fat = 1.67 * vo2 - 1.67 * vco2 - 1.92 * nitrogenGramsPerMin;
  const carbohydrate = 4.55 * vco2 - 3.21 * vo2 - 2.87 * nitrogenGramsPerMin;
  if (fat < 0 || carbohydrate < 0)
    throw new OutOfRange(info.id, "VCO2/VO2", (vco2 / vo2).toFixed(3), "ratios of 0.706 to 1.000 in steady state");
  return { fat, carbohydrate };
}

export const info: FormulaInfo<[In<"L/min">, In<"L/min">, number?], Oxidation> = {
  id: "frayn-1983",
  revision: 1,
  title: "Fat and carbohydrate oxidation (Frayn)",
  equation: "fat = 1.67·VO2 − 1.67·VCO2 − 1.92·n · carbohydrate = 4.55·VCO2 − 3.21·VO2 − 2.87·n",
  inputs: {
    VO2: { unit: "L/min STPD", range: "steady state" },
    VCO2: { unit: "L/min STPD", range: "ratio 0.706 to 1.000" },
    n: { unit: "g/min urinary nitrogen, 0 when not measured", range: "0 and above" },
  },
  output: { unit: "g/min", decimals: 2 },
  caveat: "Without urinary nitrogen protein is counted as fat and carbohydrate; the nitrogen terms are from memory.",
  source: {
    authors: "Frayn KN",
    year: 1983,
    title: "Calculation of substrate oxidation rates in vivo from gaseous exchange",
    journal: "J Appl Physiol 55(2):628–634",
    doi: "10.1152/jappl.1983.55.2.628",
    where: "stoichiometry in the paper's opening; final equations as restated; nitrogen terms from memory",
    verified: "seen",
  },
  compute: frayn1983,
  checks: [
    {
      given: [lPerMin(2), lPerMin(1.7)],
      pick: (o) => o.fat,
      expect: 0.501,
      tolerance: 0.0005,
      from: "by hand: 1.67·0.3",
    },
    {
      given: [lPerMin(2), lPerMin(1.7)],
      pick: (o) => o.carbohydrate,
      expect: 1.315,
      tolerance: 0.0005,
      from: "by hand: 4.55·1.7 − 3.21·2",
    },
    { given: [lPerMin(2), lPerMin(2.02)], expect: "refused", from: "a ratio above 1.00 gives negative fat" },
  ],
};
