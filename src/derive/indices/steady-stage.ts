/**
 * Whether a stage is steady enough for economy and fuel use.
 *
 *     complete, 3 minutes or more, RER below 1.00, not above the second threshold
 *
 * Above either limit uptake keeps rising or carbon dioxide comes from buffering, and neither cost nor fuel can be read.
 */
import type { FormulaInfo } from "../../kernel/formula.js";
import { compareAtDecimals } from "../../kernel/rounding.js";

export const SHORTEST_S = 180;

export interface StageFacts {
  readonly lengthS: number;
  /** L/min STPD */
  readonly vo2: number;
  readonly vco2: number;
  readonly complete: boolean;
  /** L/min, when the second threshold is known. */
  readonly secondThreshold: number | undefined;
}

/** The reason why a stage is not steady, or undefined when it is. */
export function whyNotSteady(stage: StageFacts): string | undefined {
  if (!stage.complete) return "not completed";
  if (stage.lengthS < SHORTEST_S - 1) return `shorter than ${SHORTEST_S / 60} min`;
  if (compareAtDecimals(stage.vco2 / stage.vo2, 1, 2) >= 0) return "RER 1.00 or above";
  return stage.secondThreshold !== undefined && stage.vo2 > stage.secondThreshold
    ? "above the second threshold"
    : undefined;
}

const steady: StageFacts = { lengthS: 240, vo2: 2.5, vco2: 2.2, complete: true, secondThreshold: 3 };
export const info: FormulaInfo<[StageFacts], string | undefined> = {
  id: "steady-stage",
  revision: 1,
  title: "Steady stage",
  equation: "complete, 3 min or more, RER < 1.00, VO2 up to the second threshold",
  inputs: { stage: { unit: "s, L/min", range: "any" } },
  output: { unit: "reason", decimals: 0 },
  source: {
    authors: "Achten J, Gleeson M, Jeukendrup AE",
    year: 2002,
    title: "Determination of the exercise intensity that elicits maximal fat oxidation",
    journal: "Med Sci Sports Exerc 34(1):92–97",
    where: "stages of 3 to 5 min (3 min from memory); RER below 1.0 is common practice",
    verified: "memory",
  },
  compute: whyNotSteady,
  checks: (
    [
      [{}, 0, "by hand: RER 0.88, below the threshold"],
      [{ vco2: 2.5 }, 1, "by hand: RER 1.00"],
      [{ lengthS: 120 }, 1, "by hand: two minutes"],
      [{ secondThreshold: 2.4 }, 1, "by hand: above the threshold"],
      [{ complete: false }, 1, "by hand: not completed"],
    ] as const
  ).map(([change, expect, from]) => ({
    given: [{ ...steady, ...change }],
    pick: (out) => (out === undefined ? 0 : 1),
    expect,
    tolerance: 0,
    from,
  })),
};
