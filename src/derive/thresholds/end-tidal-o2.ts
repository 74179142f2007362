/**
 * VT1 by end-tidal O2: PETO2 reaches its lowest and begins a lasting rise while PETCO2 does not yet fall. Alveolar
 * ventilation per VO2 sets PETO2, so its course has the form of VE/VO2 (a hyperbola with a bend), whatever the inspired
 * fraction: hypoxia shifts the level, not the bend.
 */
import type { FormulaInfo } from "../../kernel/formula.js";
import { fitBend } from "./bent-line.js";
import { NO_UPPER, pointsFrom, steps, vo2Or } from "./check-points.js";
import {
  channelOf,
  litres,
  type Points,
  type Reading,
  refusal,
  risesBetween,
  type Upper,
  withAxisError,
} from "./points.js";
import { problemOf } from "./v-slope.js";

export function endTidalO2(points: Points, upper: Upper): Reading {
  const method = "end-tidal O2";
  const channel = channelOf(points, points.bins.petO2);
  if (channel.x.length === 0) return { method, because: "end-tidal O2 was not recorded" };
  const out = fitBend(problemOf(channel, upper));
  if ("because" in out) return { method, because: out.because };
  const because = refusal(out.fit, "end-tidal O2");
  if (because !== undefined) return { method, because };
  if (out.fit.change * out.fit.at <= (out.fit.coefficients[1] as number))
    return { method, because: "end-tidal O2 stops falling but does not rise" };
  if (risesBetween(channel.x, channel.y, 0, out.fit.at))
    return { method, because: `end-tidal O2 already rises before its bend at ${litres(out.fit.at)}` };
  return withAxisError(points, method, out.fit);
}

const AXIS = steps(1, 0.1, 25);

export const info: FormulaInfo<[readonly number[], readonly number[]], number> = {
  id: "end-tidal-o2",
  revision: 1,
  title: "First ventilatory threshold by end-tidal O2",
  equation: "PETO2 = b + c/VO2 + d·(1 − VT1/VO2)⁺ begins a lasting rise",
  inputs: { VO2: { unit: "L/min", range: "15-s means, rising" }, PETO2: { unit: "mmHg", range: "15-s means" } },
  output: { unit: "L/min", decimals: 2 },
  source: {
    authors: "Whipp BJ, Ward SA, Wasserman K",
    year: 1986,
    title: "Respiratory markers of the anaerobic threshold",
    journal: "Adv Cardiol 35:47–64",
    where: "PETO2 rises from its minimum while PETCO2 does not fall",
    verified: "memory",
  },
  compute: (vo2, petO2) => vo2Or("end-tidal-o2", endTidalO2(pointsFrom({ vo2, petO2 }), NO_UPPER)),
  checks: [
    {
      given: [AXIS, AXIS.map((x) => 98 + (x > 2.2 ? 12 * (1 - 2.2 / x) : 0))],
      expect: 2.2,
      tolerance: 0.02,
      from: "by hand: level at 98 mmHg, from VO2 2.2 on 98 + 12·(1 − 2.2/VO2)",
    },
    { given: [steps(1, 0.2, 6), [100, 98, 97, 97, 99, 102]], expect: "refused", from: "six windows are too few" },
  ],
};
