/**
 * How hard is easy, steady and hard for this client: three domains from two thresholds, or from what there is, in the
 * order thresholds → heart-rate reserve from a measured maximum → uptake reserve → predicted maximum. What the page rests
 * on is said, with its error; a middle domain narrower than the error is not printed.
 */
import { OutOfRange } from "../../kernel/formula.js";
import type { Results } from "../../kernel/results.js";
import { toDecimals } from "../../kernel/rounding.js";
import type { Visit } from "../../kernel/visit.js";
import { judgementOf, numberOf } from "../recorded.js";
import { agePredictedMaximum, PREDICTION_SD } from "./age-predicted-maximum.js";
import { type Boundaries, type Boundary, type Limit, measuredBoundaries } from "./boundaries.js";
import { heartRateReserve } from "./heart-rate-reserve.js";
import { separableThresholds } from "./separable-thresholds.js";
import { uptakeReserve } from "./uptake-reserve.js";

export type Word = "easy" | "steady" | "hard" | "steady to hard";
export interface Domain {
  readonly word: Word;
  readonly from?: Boundary;
  readonly to?: Boundary;
}
export interface Intensities {
  /** Word for the basis, as the judgement prints it. */
  readonly basis:
    | "two thresholds"
    | "one threshold"
    | "thresholds not separable"
    | "heart-rate reserve"
    | "uptake reserve"
    | "predicted maximum"
    | "exertion only";
  readonly because: string;
  readonly domains: readonly Domain[];
  /** Why no heart rate is printed, where a drug slows the heart. */
  readonly heartRateOff?: string;
}

const BLUNTING = ["beta blocker", "calcium-channel blocker", "other heart-rate lowering"];
/** Shares of reserve: moderate to 60 %, vigorous to 90 % (Garber 2011). */
const SHARES = { floor: 0.4, first: 0.6, second: 0.9 } as const;

export function intensitiesOf(results: Results, visit: Visit): Intensities {
  const drug = visit.client.medication?.find((one) => BLUNTING.includes(one));
  const found = fromThresholds(measuredBoundaries(results)) ?? fromReserve(results, drug !== undefined);
  if (drug === undefined) return found;
  return {
    ...found,
    domains: found.domains.map((domain) => ({
      ...domain,
      ...(domain.from ? { from: withoutHeartRate(domain.from) } : {}),
      ...(domain.to ? { to: withoutHeartRate(domain.to) } : {}),
    })),
    heartRateOff: `No heart-rate targets: a ${drug} changes what a heart rate means. Go by breathing, exertion, and speed or power.`,
  };
}

function withoutHeartRate(boundary: Boundary): Boundary {
  const { heartRate: _, ...rest } = boundary;
  return rest;
}

function fromThresholds({ first, second, remark }: Boundaries): Intensities | undefined {
  if (first === undefined && second === undefined) return undefined;
  const more = remark === undefined ? "" : ` ${remark}`;
  if (first === undefined || second === undefined) {
    const only = (first ?? second) as Boundary;
    return {
      basis: "one threshold",
      because: `Only the ${only.name} is given, so that ${first ? "steady and hard" : "easy and steady"} cannot be told apart by a number: go by breathing there.${more}`,
      domains: first
        ? [
            { word: "easy", to: first },
            { word: "steady to hard", from: first },
          ]
        : [
            { word: "easy", to: only },
            { word: "hard", from: only },
          ],
    };
  }
  const gap = gapOf(first, second);
  if (gap !== undefined && gap.gap < gap.least) {
    return {
      basis: "thresholds not separable",
      because: `The two thresholds lie ${gap.text} apart, less than their error of ${gap.leastText}: they were not separable, so there is no middle domain, and no session is laid out between them.${more}`,
      domains: [
        { word: "easy", to: first },
        { word: "hard", from: second },
      ],
    };
  }
  return {
    basis: "two thresholds",
    because: `Easy ends at the ${first.name}, hard begins at the ${second.name}, both from this client's own test.${more}`,
    domains: [
      { word: "easy", to: first },
      { word: "steady", from: first, to: second },
      { word: "hard", from: second },
    ],
  };
}

/** The gap in the first quantity both boundaries have, uptake before power, speed and heart rate. */
function gapOf(first: Boundary, second: Boundary) {
  const kinds = [
    ["uptake", "mL/kg/min", 1],
    ["power", "W", 0],
    ["speed", "km/h", 1],
  ] as const;
  for (const [kind, unit, decimals] of kinds) {
    const [a, b] = [first[kind], second[kind]];
    if (a === undefined || b === undefined || a.value <= 0) continue;
    const least = separableThresholds(a.value, seOf(a), seOf(b));
    const gap = b.value - a.value;
    return {
      gap,
      least,
      text: `${toDecimals(gap, decimals)} ${unit}`,
      leastText: `${toDecimals(least, decimals)} ${unit}`,
    };
  }
  return undefined;
}
const seOf = (limit: Limit): number =>
  limit.low === undefined || limit.high === undefined ? 0 : (limit.high - limit.low) / 3.92;

function fromReserve(results: Results, blunted: boolean): Intensities {
  const rest = numberOf(results, "resting_heart_rate") ?? numberOf(results, "resting_pulse");
  const peak = numberOf(results, "heart_rate_peak");
  const predicted = numberOf(results, "heart_rate_max_predicted") ?? predictedFor(results.ageYears);
  const claimed = judgementOf(results, "maximality")?.verdict === "VO2max";
  const maximal = peak !== undefined && (claimed || (predicted !== undefined && peak >= predicted - PREDICTION_SD));
  if (!blunted && rest !== undefined && peak !== undefined && maximal)
    return reserve("heart-rate reserve", rest, peak, 0, results, [
      "No threshold is given, so the domains are shares of heart-rate reserve: 40 to 60 % easy, to 90 % steady, above it hard (ACSM 2011 classes).",
      `The maximum of ${toDecimals(peak, 0)} beats/min was measured. Classes by percent do not know this client's own thresholds.`,
    ]);
  const uptake = uptakeBoundaries(results);
  if (uptake !== undefined && claimed)
    return {
      basis: "uptake reserve",
      because:
        "No threshold and no usable heart rate is given, so the domains are shares of uptake reserve: 40 to 60 % easy, to 90 % steady, above it hard (ACSM 2011 classes). Speed and power come from metabolic equations, about 7 % off for one person.",
      domains: threeOf(uptake),
    };
  if (!blunted && rest !== undefined && predicted !== undefined)
    return reserve("predicted maximum", rest, predicted, PREDICTION_SD, results, [
      `No threshold and no measured maximum is given, so the domains are shares of heart-rate reserve with a maximum predicted from age, ${toDecimals(predicted, 0)} beats/min.`,
      `People of one age differ by about ${toDecimals(PREDICTION_SD, 0)} beats/min (one SD): a target may be wrong by 20. Breathing goes before the number.`,
    ]);
  return {
    basis: "exertion only",
    because:
      "There is no threshold, no heart rate at rest and no maximum to build on: go by breathing and exertion alone.",
    domains: threeOf({
      first: { name: "whole sentences" },
      second: { name: "single words" },
    }),
  };
}

function predictedFor(age: number): number | undefined {
  try {
    return agePredictedMaximum(age);
  } catch (error) {
    if (error instanceof OutOfRange) return undefined;
    throw error;
  }
}

type Three = { readonly floor?: Boundary; readonly first: Boundary; readonly second: Boundary };
const threeOf = ({ floor, first, second }: Three): Domain[] => [
  { word: "easy", to: first, ...(floor ? { from: floor } : {}) },
  { word: "steady", from: first, to: second },
  { word: "hard", from: second },
];

function reserve(
  basis: Intensities["basis"],
  rest: number,
  peak: number,
  sd: number,
  results: Results,
  because: readonly string[],
): Intensities {
  const uptake = uptakeBoundaries(results);
  const at = (key: keyof typeof SHARES): Boundary => {
    const share = SHARES[key];
    const value = heartRateReserve(rest, peak, share);
    const error = 1.96 * share * sd;
    const heartRate: Limit = sd === 0 ? { value } : { value, low: value - error, high: value + error };
    return { ...uptake?.[key], name: `${share * 100} % of heart-rate reserve`, heartRate };
  };
  try {
    return {
      basis,
      because: because.join(" "),
      domains: threeOf({ floor: at("floor"), first: at("first"), second: at("second") }),
    };
  } catch (error) {
    if (!(error instanceof OutOfRange)) throw error;
    return {
      basis: "exertion only",
      because: `Heart-rate reserve cannot be used: ${error.message}. Go by breathing and exertion alone.`,
      domains: threeOf({ first: { name: "whole sentences" }, second: { name: "single words" } }),
    };
  }
}

/** Boundaries by share of uptake reserve, in uptake; the tables turn them into speed and power. */
function uptakeBoundaries(results: Results): Required<Three> | undefined {
  const peak = numberOf(results, "vo2_peak_per_mass");
  if (peak === undefined || peak < 10 || peak > 95) return undefined;
  const at = (key: keyof typeof SHARES): Boundary => ({
    name: `${SHARES[key] * 100} % of uptake reserve`,
    uptake: { value: uptakeReserve(peak, SHARES[key]) },
  });
  return { floor: at("floor"), first: at("first"), second: at("second") };
}
