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
import { fitBend } from "./bent-line.js";
import { channelOf, hyperbolicBend, type Points, type Reading, refusal, SIDE, withAxisError } from "./points.js";

export const LEAST_RISE = 0.15;

export function ventilationOnCo2(points: Points, above: number): Reading {
  const method = "VE on VCO2";
  const channel = channelOf(points, points.bins.veVco2);
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
  return withAxisError(points, method, at, Math.min(at, inVo2(fit.low)), Math.max(at, inVo2(fit.high)));
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
