/**
 * How hard is easy, steady and hard for this client: three domains from two thresholds, or from what there is, in the
 * order thresholds → heart-rate reserve from a measured maximum → uptake reserve → predicted maximum. What the page rests
 * on is said, with its error; a middle domain narrower than the error is not printed.
 */
import type { Results } from "../../kernel/results.js";
import { toDecimals } from "../../kernel/rounding.js";
import type { Visit } from "../../kernel/visit.js";
import { type Boundaries, type Boundary, type Limit, measuredBoundaries } from "./boundaries.js";
import { fromReserve } from "./reserve.js";
import { separableThresholds } from "./separable-thresholds.js";

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

export function intensitiesOf(results: Results, visit: Visit): Intensities {
  const drug = visit.client.medication?.find((one) => BLUNTING.includes(one));
  const reserve = fromReserve(results, drug !== undefined);
  const found = fromThresholds(measuredBoundaries(results), reserve) ?? reserve;
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

/**
 * Easy never ends at the second threshold: that is the lower limit of hard, an hour of it is a race. Where the first one
 * is missing easy ends at its share of reserve, if that lies below, else where whole sentences end, without a number.
 */
function withoutFirst(second: Boundary, reserve: Intensities, more: string): Intensities {
  const share = reserve.domains.find((domain) => domain.word === "easy")?.to;
  const below =
    share?.heartRate !== undefined && second.heartRate !== undefined && share.heartRate.value < second.heartRate.value;
  const easy: Boundary = below ? { name: share.name, heartRate: share.heartRate } : { name: "whole sentences" };
  const until = below
    ? `Easy ends at ${share.name} (ACSM 2011 classes), which does not know this client's own first threshold: whole sentences go before the number.`
    : "Where easy ends is not known as a number: go by whole sentences there.";
  return {
    basis: "one threshold",
    because: `Only the ${second.name} is given: hard begins there. ${until}${more}`,
    domains: [
      { word: "easy", to: easy },
      { word: "steady", from: easy, to: second },
      { word: "hard", from: second },
    ],
  };
}

function fromThresholds({ first, second, remark }: Boundaries, reserve: Intensities): Intensities | undefined {
  const more = remark === undefined ? "" : ` ${remark}`;
  if (first === undefined) return second === undefined ? undefined : withoutFirst(second, reserve, more);
  if (second === undefined)
    return {
      basis: "one threshold",
      because: `Only the ${first.name} is given, so that steady and hard cannot be told apart by a number: go by breathing there.${more}`,
      domains: [
        { word: "easy", to: first },
        { word: "steady to hard", from: first },
      ],
    };
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
