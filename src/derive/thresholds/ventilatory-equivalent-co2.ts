/**
 * VT2 by ventilatory equivalents: VE/VCO2, flat or falling until then, begins a lasting rise. Fitted against VO2, as a
 * hyperbola with a bend; the rise after the bend must be a rise, not a slower fall.
 */
import { fitBend } from "./bent-line.js";
import { channelOf, hyperbolicBend, type Points, type Reading, refusal, SIDE, withAxisError } from "./points.js";

export function ventilatoryEquivalentCo2(points: Points, above: number): Reading {
  const method = "VE/VCO2";
  const { x, y, weight, one, inverse } = channelOf(points, points.bins.veVco2);
  const out = fitBend({ x, y, weight, terms: [one, inverse], bent: hyperbolicBend, sign: 1, side: SIDE, above });
  if ("because" in out) return { method, because: out.because };
  const because = refusal(out.fit, "VE/VCO2");
  if (because !== undefined) return { method, because };
  if (out.fit.change * out.fit.at <= (out.fit.coefficients[1] as number))
    return { method, because: "VE/VCO2 stops falling but does not rise" };
  return withAxisError(points, method, out.fit.at, out.fit.low, out.fit.high);
}
