/**
 * VT1 by end-tidal O2: PETO2 reaches its lowest and begins a lasting rise while PETCO2 does not yet fall. Alveolar
 * ventilation per VO2 sets PETO2, so its course has the form of VE/VO2 (a hyperbola with a bend), whatever the inspired
 * fraction: hypoxia shifts the level, not the bend.
 */
import { fitBend } from "./bent-line.js";
import { channelOf, type Points, type Reading, refusal, type Upper, withAxisError } from "./points.js";
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
  return withAxisError(points, method, out.fit.at, out.fit.low, out.fit.high);
}
