/**
 * VT1 by excess CO2: VCO2²/VO2 − VCO2, the CO2 beyond an exchange ratio of 1 times VCO2, is about flat or falls until
 * VT1 and then rises without return.
 *
 * With a broken V-slope line the rise after VT1 is not quite straight: it is (x − v)·(1 + g·(1 − v/x)) with g the change
 * of slope over 2·RER − 1. A straight bend would read VT1 about 0.03 L/min too high; g = 0.42 (a change of 0.35 at an
 * RER of 0.92, the middle of what is seen) removes that.
 */
import type { FormulaInfo } from "../../kernel/formula.js";
import { fitBend } from "./bent-line.js";
import { broken, NO_UPPER, pointsFrom, steps, vo2Or } from "./check-points.js";
import {
  channelOf,
  litres,
  type Points,
  type Reading,
  refusal,
  risesBetween,
  SIDE,
  type Upper,
  withAxisError,
} from "./points.js";
import type { BentTerm } from "./profile.js";

const CURVE = 0.42;
const bent: BentTerm = (x, v, into) => {
  for (let i = 0; i < x.length; i++) {
    const here = x[i] as number;
    into[i] = here > v ? (here - v) * (1 + CURVE * (1 - v / here)) : 0;
  }
};

export function excessCo2(points: Points, upper: Upper): Reading {
  const method = "excess CO2";
  const excess = points.bins.rer.map((rer, i) => excessOf(points.x[i] as number, rer * (points.x[i] as number)));
  const { x, y, weight, one, stores } = channelOf(points, excess);
  const terms = [one, x, stores.map((s, i) => s * (x[i] as number))];
  const out = fitBend({
    x,
    y,
    weight: weight.map((w, i) => w / (x[i] as number) ** 2),
    terms,
    bent,
    sign: 1,
    side: SIDE,
    ...upper,
  });
  if ("because" in out) return { method, because: out.because };
  const because = refusal(out.fit, "excess CO2");
  if (because !== undefined) return { method, because };
  if ((out.fit.coefficients[1] as number) + out.fit.change <= 0)
    return { method, because: "excess CO2 still falls after its bend" };
  if (risesBetween(x, y, 0, out.fit.at))
    return { method, because: `excess CO2 already rises before its bend at ${litres(out.fit.at)}` };
  return withAxisError(points, method, out.fit);
}

/** Excess CO2, in the unit of its inputs. */
const excessOf = (vo2: number, vco2: number): number => (vco2 * vco2) / vo2 - vco2;

export const info: FormulaInfo<[readonly number[], readonly number[]], number> = {
  id: "excess-co2",
  revision: 1,
  title: "First ventilatory threshold by excess CO2",
  equation: "ExCO2 = VCO2²/VO2 − VCO2; VT1 where its lasting rise begins",
  inputs: {
    VO2: { unit: "L/min", range: "15-s means, rising; a single value gives ExCO2 itself" },
    VCO2: { unit: "L/min", range: "15-s means" },
  },
  output: { unit: "L/min", decimals: 2 },
  caveat: "It reads the same two channels as V-slope and is no independent witness.",
  source: {
    authors: "Gaskill SE, Ruby BC, Walker AJ, Sanchez OA, Serfass RC, Leon AS",
    year: 2001,
    title: "Validity and reliability of combining three methods to determine ventilatory threshold",
    journal: "Med Sci Sports Exerc 33(11):1841–1848",
    doi: "10.1097/00005768-200111000-00007",
    where: "abstract: one of the three methods; the equation is from memory",
    verified: "memory",
  },
  compute: (vo2, vco2) =>
    vo2.length === 1
      ? excessOf(Number(vo2[0]), Number(vco2[0]))
      : vo2Or("excess-co2", excessCo2(pointsFrom({ vo2, vco2 }), NO_UPPER)),
  checks: [
    { given: [[2.5], [2.6]], expect: 0.104, tolerance: 1e-9, from: "by hand: 2.6² / 2.5 − 2.6" },
    {
      given: [steps(1, 0.1, 25), broken(steps(1, 0.1, 25), 2.2, 2.02, 0.92, 1.27)],
      expect: 2.2,
      tolerance: 0.03,
      from: "by hand: VCO2 on two lines that meet at VO2 2.2",
    },
    {
      given: [steps(1, 0.1, 25), steps(0.9, 0.09, 25)],
      expect: "refused",
      from: "a steady ratio of 0.9 has no threshold",
    },
  ],
};
