/**
 * VT2 (respiratory compensation point) by ventilation: VE against VCO2 is a line that turns steeper when acidosis
 * drives breathing beyond what CO2 asks.
 *
 *     VE/VCO2 = m + b/y + k·(1 − w/y)⁺        y = VCO2, smooth in time
 *
 * Fitted as the ratio for the same reason as V-slope. The bend is found in VCO2 and read off as the VO2 of that moment.
 * The upper slope must exceed the lower by 15 % (a rule of this project; smaller changes are within what posture,
 * speech or mouthpiece do).
 */
import type { FormulaInfo } from "../../kernel/formula.js";
import { fitBend } from "./bent-line.js";
import { broken, pointsFrom, steps, vo2Or } from "./check-points.js";
import { channelOf, hyperbolicBend, type Points, type Reading, refusal, SIDE, withAxisError } from "./points.js";

export const LEAST_RISE = 0.15;

export function ventilationOnCo2(points: Points, above: number): Reading {
  const method = "VE on VCO2";
  const channel = channelOf(points, points.bins.veVco2);
  if (channel.x.length === 0) return { method, because: "ventilation was not recorded" };
  const y = channel.x.map((x, i) => x * (points.bins.rer[channel.index[i] as number] as number));
  const inVo2 = (vco2: number) => readAcross(y, channel.x, vco2);
  const out = fitBend({
    x: y,
    y: channel.y,
    weight: channel.weight,
    terms: [channel.one, y.map((v) => 1 / v)],
    bent: hyperbolicBend,
    sign: 1,
    side: SIDE,
    above: readAcross(channel.x, y, above),
  });
  if ("because" in out) return { method, because: out.because };
  const { fit } = out;
  const at = inVo2(fit.at);
  const rival = fit.rival === undefined ? {} : { rival: inVo2(fit.rival) };
  const because = refusal({ ...fit, at, ...rival }, "VE against VCO2");
  if (because !== undefined) return { method, because };
  const rise = fit.change / (fit.coefficients[0] as number);
  if (rise < LEAST_RISE)
    return { method, because: `the slope of VE on VCO2 rises by ${(100 * rise).toFixed(0)} % only; 15 % is asked` };
  return withAxisError(points, method, {
    at,
    low: Math.min(at, inVo2(fit.low)),
    high: Math.max(at, inVo2(fit.high)),
    probability: fit.probability,
  });
}

/** y at the place where x reaches q, along the points in order of x. */
function readAcross(x: Float64Array, y: Float64Array, q: number): number {
  const order = [...x.keys()].sort((i, j) => (x[i] as number) - (x[j] as number));
  let before = order[0] as number;
  if ((x[before] as number) >= q) return y[before] as number;
  for (const k of order) {
    const here = x[k] as number;
    if (here >= q) {
      const from = x[before] as number;
      const part = here > from ? (q - from) / (here - from) : 0;
      return (y[before] as number) + part * ((y[k] as number) - (y[before] as number));
    }
    before = k;
  }
  return y[before] as number;
}

const AXIS = steps(1, 0.1, 25);

export const info: FormulaInfo<[readonly number[], readonly number[], readonly number[]], number> = {
  id: "ventilation-on-co2",
  revision: 1,
  title: "Second ventilatory threshold by ventilation on CO2",
  equation: "VE/VCO2 = m + b/VCO2 + k·(1 − w/VCO2)⁺; k ≥ 0.15·m; VT2 = VO2 where VCO2 is w",
  inputs: {
    VO2: { unit: "L/min", range: "15-s means, rising" },
    VCO2: { unit: "L/min", range: "15-s means" },
    VE: { unit: "L/min", range: "15-s means" },
  },
  output: { unit: "L/min", decimals: 2 },
  caveat: "It may be absent in short, low-effort or ventilation-limited tests.",
  source: {
    authors: "Beaver WL, Wasserman K, Whipp BJ",
    year: 1986,
    title: "A new method for detecting anaerobic threshold by gas exchange",
    journal: "J Appl Physiol 60(6):2020–2027",
    doi: "10.1152/jappl.1986.60.6.2020",
    where: "two regression lines of VE on VCO2",
    verified: "memory",
  },
  compute: (vo2, vco2, ventilation) =>
    vo2Or("ventilation-on-co2", ventilationOnCo2(pointsFrom({ vo2, vco2, ventilation }), 0)),
  checks: [
    {
      given: [AXIS, AXIS, broken(AXIS, 2.6, 72, 26, 34)],
      expect: 2.6,
      tolerance: 0.03,
      from: "by hand: slopes 26 and 34 L/L meet at VCO2 2.6 (RER 1); 34/26 − 1 = 31 %, above 15 %",
    },
    {
      given: [AXIS, AXIS, broken(AXIS, 2.6, 72, 26, 28)],
      expect: "refused",
      from: "by hand: 28/26 − 1 = 8 %, below 15 %",
    },
  ],
};
