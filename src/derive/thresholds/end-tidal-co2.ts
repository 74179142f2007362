/**
 * VT2 by end-tidal CO2: PETCO2, rising or level until then, begins a lasting fall. It is a hyperbola of VE/VCO2's kind
 * upside down; the bend is sought downwards.
 */
import { fitBend } from "./bent-line.js";
import { channelOf, hyperbolicBend, type Points, type Reading, refusal, SIDE, withAxisError } from "./points.js";

export function endTidalCo2(points: Points, above: number): Reading {
  const method = "end-tidal CO2";
  const { x, y, weight, one, inverse } = channelOf(points, points.bins.petCO2);
  if (x.length === 0) return { method, because: "end-tidal CO2 was not recorded" };
  const out = fitBend({ x, y, weight, terms: [one, inverse], bent: hyperbolicBend, sign: -1, side: SIDE, above });
  if ("because" in out) return { method, because: out.because };
  const because = refusal(out.fit, "end-tidal CO2");
  if (because !== undefined) return { method, because };
  if (out.fit.change * out.fit.at >= (out.fit.coefficients[1] as number))
    return { method, because: "end-tidal CO2 stops rising but does not fall" };
  return withAxisError(points, method, out.fit.at, out.fit.low, out.fit.high);
}
