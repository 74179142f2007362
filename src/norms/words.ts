/** All wording of the norms stage. */
import type { Point } from "./percentile-linear.js";

export const ordinal = (n: number): string => {
  const tens = Math.floor(n) % 100;
  const ending = tens >= 11 && tens <= 13 ? "th" : (["th", "st", "nd", "rd"][Math.floor(n) % 10] ?? "th");
  return `${n}${ending}`;
};

export const belowPercentile = (p: number) => `Below the ${ordinal(p)} percentile, the lowest given.`;
export const abovePercentile = (p: number) => `Above the ${ordinal(p)} percentile, the highest given.`;
export const linear = () => "Linear between printed percentiles.";
export const normal = (mean: number, sd: number, side?: string) =>
  [side, `Normal distribution with the printed mean ${mean} and SD ${sd}.`].filter(Boolean).join(" ");
export const meanOnly = () => "Mean of the age group; no spread is printed, so no percentile can be given.";
export const see = (value: number, unit: string) => `The equation's standard error of estimate is ${value} ${unit}.`;
export const noSpread = () => "No standard error is published, so percent of predicted stands without a z.";
export const noRow = () => "no printed row covers this age";
export const noColumn = () => "no printed column covers this stature";
export const notPrinted = () => "the source prints no number here";
export const missing = (fact: string) => `${fact} was not recorded`;
export const noEquation = (id: string) => `the equation ${id} is not known`;
export const notPositive = () => "the equation gives no positive value for this person";
export const noEdition = (key: string, value: string) => `no reference table is named ${value} (${key})`;
export const secondBand = () => "Next age band, shown within a year of the boundary.";

/** Between which printed quantiles a value lies; low and high differ where the quantiles were read with an error. */
export function quantileBand(points: readonly Point[], low: number, high: number): string {
  const side = (x: number) => points.filter(([, value]) => x >= value).length;
  const name = (i: number) => {
    const [under, over] = [points[i - 1]?.[0], points[i]?.[0]];
    if (under === undefined) return `below the ${ordinal(over ?? 0)} percentile`;
    if (over === undefined) return `above the ${ordinal(under)} percentile`;
    return `between the ${ordinal(under)} and ${ordinal(over)} percentile`;
  };
  const found = [...new Set([side(low), side(high)])].map(name).join(", or ");
  return `${found.charAt(0).toUpperCase()}${found.slice(1)}.`;
}
