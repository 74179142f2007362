/**
 * VT1 by excess CO2: VCO2²/VO2 − VCO2, the CO2 beyond an exchange ratio of 1 times VCO2, is about flat or falls until
 * VT1 and then rises without return.
 *
 * With a broken V-slope line the rise after VT1 is not quite straight: it is (x − v)·(1 + g·(1 − v/x)) with g the change
 * of slope over 2·RER − 1. A straight bend would read VT1 about 0.03 L/min too high; g = 0.42 (a change of 0.35 at an
 * RER of 0.92, the middle of what is seen) removes that.
 */
import { fitBend } from "./bent-line.js";
import { channelOf, type Points, type Reading, refusal, SIDE, type Upper, withAxisError } from "./points.js";

const CURVE = 0.42;
const bent = (x: number, v: number): number => (x > v ? (x - v) * (1 + CURVE * (1 - v / x)) : 0);

export function excessCo2(points: Points, upper: Upper): Reading {
  const method = "excess CO2";
  const excess = points.bins.rer.map((rer, i) => rer * (rer - 1) * (points.x[i] as number));
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
  return withAxisError(points, method, out.fit.at, out.fit.low, out.fit.high);
}
