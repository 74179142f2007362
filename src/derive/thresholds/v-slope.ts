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
import type { FormulaInfo } from "../../kernel/formula.js";
import { fitLine } from "../../kernel/statistics.js";
import { fitBend } from "./bent-line.js";
import { NO_UPPER, pointsFrom, vo2Or } from "./check-points.js";
import {
  type Channel,
  channelOf,
  hyperbolicBend,
  litres,
  type Points,
  type Reading,
  refusal,
  SIDE,
  type Upper,
  withAxisError,
} from "./points.js";

const LEAST_CHANGE = 0.1;
/** A lower slope surely above this is work above VT1; 1 is the theory, 0.05 what the gain of two analysers may add (own rule). */
const STEEP = 1.05;

export function vSlope(points: Points, upper: Upper): Reading {
  const method = "V-slope";
  const channel = channelOf(points, points.bins.rer);
  const out = fitBend(problemOf(channel, upper));
  if ("because" in out) return { method, because: out.because };
  const because = refusal(out.fit, "VCO2 against VO2");
  if (because !== undefined) return { method, because: steepFromTheStart(channel, upper.below) ?? because };
  const lower = out.fit.coefficients[0] as number;
  const steep = lower + out.fit.change;
  if (out.fit.change < LEAST_CHANGE)
    return { method, because: `the slope rises by ${out.fit.change.toFixed(2)} only; ${LEAST_CHANGE} is asked` };
  if (steep < 1) return { method, because: `the upper slope is ${steep.toFixed(2)}; it must be above 1` };
  const before = steepFromTheStart(channel, out.fit.at);
  if (before !== undefined) return { method, because: before };
  return withAxisError(points, method, out.fit);
}

/** The reason to give where VCO2 outruns VO2 from the start: VT1 lies before what was fitted, and a later bend is not it. */
function steepFromTheStart(channel: Channel, below: number): string | undefined {
  const kept = [...channel.x.keys()].filter((i) => (channel.x[i] as number) < below);
  if (kept.length < 4) return undefined;
  const x = kept.map((i) => channel.x[i] as number);
  const line = fitLine(
    x,
    kept.map((i) => (channel.x[i] as number) * (channel.y[i] as number)),
  );
  if (line.slope - 2 * line.slopeSe <= STEEP) return undefined;
  const from = litres(Math.min(...x));
  return `VCO2 already rises by ${line.slope.toFixed(2)} L for each litre of VO2 from ${from}, where the fitted part of the test begins: VT1 may lie at or below it`;
}

/** Shared with VE/VO2 and end-tidal O2, whose courses have the same form. */
export function problemOf(channel: Channel, upper: Upper) {
  const { x, y, weight, one, inverse, stores } = channel;
  return { x, y, weight, terms: [one, inverse, stores], bent: hyperbolicBend, sign: 1, side: SIDE, ...upper } as const;
}

// The printed points of a worked example: slope 0.92 below 2.20 L/min and 1.22 above, with fixed noise.
const EXAMPLE_VO2 = Array.from({ length: 25 }, (_, i) => (10 + i) / 10);
const EXAMPLE_VCO2 = [
  0.882, 0.954, 1.058, 1.135, 1.247, 1.331, 1.416, 1.524, 1.602, 1.705, 1.778, 1.887, 1.974, 2.089, 2.229, 2.337, 2.468,
  2.574, 2.714, 2.826, 2.954, 3.063, 3.204, 3.311, 3.441,
];

export const info: FormulaInfo<[readonly number[], readonly number[]], number> = {
  id: "v-slope",
  revision: 1,
  title: "First ventilatory threshold by V-slope",
  equation: "VCO2/VO2 = s1 + a/VO2 + d·(1 − VT1/VO2)⁺ + c·VO2′/VO2; d ≥ 0.1, s1 + d ≥ 1",
  inputs: {
    VO2: { unit: "L/min", range: "15-s means, rising" },
    VCO2: { unit: "L/min", range: "15-s means" },
  },
  output: { unit: "L/min", decimals: 2 },
  caveat: "Where the fitted part of a test begins above VT1, V-slope cannot show it.",
  source: {
    authors: "Beaver WL, Wasserman K, Whipp BJ",
    year: 1986,
    title: "A new method for detecting anaerobic threshold by gas exchange",
    journal: "J Appl Physiol 60(6):2020–2027",
    doi: "10.1152/jappl.1986.60.6.2020",
    where: "two regression lines of VCO2 on VO2. The fit as a ratio, the gates and the interval are this project's",
    verified: "seen",
  },
  compute: (vo2, vco2) => vo2Or("v-slope", vSlope(pointsFrom({ vo2, vco2 }), NO_UPPER)),
  checks: [
    {
      given: [EXAMPLE_VO2, EXAMPLE_VCO2],
      expect: 2.197,
      tolerance: 0.03,
      from: "worked points made with a break at 2.20; two least-squares lines meet at 2.197 (computed independently)",
    },
    {
      given: [EXAMPLE_VO2, EXAMPLE_VO2.map((x) => 0.95 * x)],
      expect: "refused",
      from: "one straight line has no threshold",
    },
  ],
};
