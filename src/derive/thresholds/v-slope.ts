/**
 * VT1 by V-slope: VCO2 against VO2 is a line that turns steeper where lactic acid begins to drive out extra CO2.
 *
 *     VCO2 = s1·VO2 + a below VT1,   slope s2 = s1 + d above,   so   VCO2/VO2 = s1 + a/x + d·(1 − VT1/x)⁺ + c·x′/x
 *
 * Fitted as the ratio of bin sums against a VO2 that is smooth in time: one breath's depth moves VO2 and VCO2
 * together (r ≈ 0.95), so it cancels in the ratio and hardly stands on the axis; a fit of VCO2 on raw VO2 has that
 * error on both axes and flattens. The last term is CO2 going into stores after each step of load; above VT2, where
 * hyperventilation adds CO2, a second bend at the VT2 found from ventilation takes up the rest.
 */
import { fitBend } from "./bent-line.js";
import {
  type Channel,
  channelOf,
  hyperbolicBend,
  type Points,
  type Reading,
  refusal,
  SIDE,
  type Upper,
  withAxisError,
} from "./points.js";

const LEAST_CHANGE = 0.1;

export function vSlope(points: Points, upper: Upper): Reading {
  const method = "V-slope";
  const channel = channelOf(points, points.bins.rer);
  const out = fitBend(problemOf(channel, upper));
  if ("because" in out) return { method, because: out.because };
  const because = refusal(out.fit, "VCO2 against VO2");
  if (because !== undefined) return { method, because };
  const lower = out.fit.coefficients[0] as number;
  const steep = lower + out.fit.change;
  if (out.fit.change < LEAST_CHANGE)
    return { method, because: `the slope rises by ${out.fit.change.toFixed(2)} only; ${LEAST_CHANGE} is asked` };
  if (steep < 1) return { method, because: `the upper slope is ${steep.toFixed(2)}; it must be above 1` };
  return withAxisError(points, method, out.fit.at, out.fit.low, out.fit.high);
}

/** Shared with VE/VO2 and end-tidal O2, whose courses have the same form. */
export function problemOf(channel: Channel, upper: Upper) {
  const { x, y, weight, one, inverse, stores } = channel;
  return { x, y, weight, terms: [one, inverse, stores], bent: hyperbolicBend, sign: 1, side: SIDE, ...upper } as const;
}
