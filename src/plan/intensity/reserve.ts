/** Intensities without a threshold: shares of reserve, in the order measured maximum, uptake, predicted maximum. */
import { OutOfRange } from "../../kernel/formula.js";
import type { Results } from "../../kernel/results.js";
import { toDecimals } from "../../kernel/rounding.js";
import { judgementOf, numberOf } from "../recorded.js";
import { agePredictedMaximum, PREDICTION_SD } from "./age-predicted-maximum.js";
import type { Boundary, Limit } from "./boundaries.js";
import type { Domain, Intensities } from "./domains.js";
import { heartRateReserve } from "./heart-rate-reserve.js";
import { uptakeReserve } from "./uptake-reserve.js";

/** Shares of reserve: moderate to 60 %, vigorous to 90 % (Garber 2011). */
const SHARES = { floor: 0.4, first: 0.6, second: 0.9 } as const;

export function fromReserve(results: Results, blunted: boolean): Intensities {
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
