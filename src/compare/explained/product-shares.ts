/**
 * How much of a change each factor of a product explains.
 *
 *     y = x₁ · x₂ · …,   share of factor i = L · ln(xᵢ after / xᵢ before),   L = (y₂ − y₁) / ln(y₂/y₁)
 *
 * L is the logarithmic mean of y. The shares add up to y₂ − y₁ exactly and do not depend on which factor is changed first,
 * as "hold mass constant, then uptake" does. A divisor counts with its logarithm negative.
 */
import { type FormulaInfo, OutOfRange } from "../../kernel/formula.js";

/** One factor before and after; power −1 for a divisor. All values above 0. */
export interface Factor {
  readonly before: number;
  readonly after: number;
  readonly power: 1 | -1;
}

/** Shares in the order of the factors, in the unit of the product. */
export function productShares(factors: readonly Factor[], constant = 1): readonly number[] {
  if (factors.length === 0) throw new OutOfRange(info.id, "number of factors", 0, "one or more");
  for (const { before, after } of factors)
    if (!(before > 0 && after > 0 && before * after < Number.POSITIVE_INFINITY))
      throw new OutOfRange(info.id, "factor", `${before}, ${after}`, "numbers above 0");
  const product = (side: "before" | "after") => factors.reduce((y, f) => y * f[side] ** f.power, constant);
  const [y1, y2] = [product("before"), product("after")];
  const logMean = Math.abs(y2 / y1 - 1) < 1e-9 ? (y1 + y2) / 2 : (y2 - y1) / Math.log(y2 / y1);
  return factors.map((f) => logMean * f.power * Math.log(f.after / f.before));
}

export const info: FormulaInfo<[readonly Factor[], number], readonly number[]> = {
  id: "product-shares",
  revision: 1,
  title: "Shares of a change among the factors of a product",
  equation: "L ln(x after/x before), L = (y₂ − y₁)/ln(y₂/y₁)",
  inputs: {
    factors: { unit: "any", range: "above 0" },
    constant: { unit: "any", range: "above 0" },
  },
  output: { unit: "as the product", decimals: 2 },
  source: {
    authors: "Ang BW",
    year: 2005,
    title: "The LMDI approach to decomposition analysis: a practical guide",
    journal: "Energy Policy 33:867–871",
    where: "additive decomposition",
    verified: "memory",
  },
  compute: productShares,
  checks: [
    {
      given: [
        [
          { before: 1, after: 2, power: 1 },
          { before: 1, after: 2, power: 1 },
        ],
        1,
      ],
      expect: 1.5,
      tolerance: 1e-12,
      pick: (shares) => shares[0] as number,
      from: "by hand: from 1 to 4 by two equal doublings, half of 3 each",
    },
    {
      given: [
        [
          { before: 3, after: 3.3, power: 1 },
          { before: 75, after: 75, power: -1 },
        ],
        1000,
      ],
      expect: 4,
      tolerance: 1e-9,
      pick: (shares) => shares[0] as number,
      from: "by hand: 40 to 44 mL/kg/min at one mass, all of it uptake",
    },
    {
      given: [
        [
          { before: 3, after: 3, power: 1 },
          { before: 75, after: 72, power: -1 },
        ],
        1000,
      ],
      expect: 5 / 3,
      tolerance: 1e-9,
      pick: (shares) => shares[1] as number,
      from: "by hand: 40 to 41.667 mL/kg/min at one uptake, all of it mass",
    },
    {
      given: [[{ before: 0, after: 1, power: 1 }], 1],
      expect: "refused",
      from: "nothing divides a change from zero among factors",
    },
  ],
};
