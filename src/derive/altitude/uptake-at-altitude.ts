/**
 * Peak oxygen uptake to expect on arrival at altitude, in percent of the low-altitude value.
 *
 *     pct = 100 − 3.250 h − 0.6732 h²      h in km
 *
 * A weighted fit of this project through 105 published groups (958 people, unacclimatised, 580 to 5720 m); the data are
 * published, the coefficients are ours. Groups scatter about it by 4.7 points and fitter people lose more. Staying does not
 * restore peak uptake. Never extended above 5720 m.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

/** Altitude in m (580 to 5720) to percent of the low-altitude peak. */
export function uptakeAtAltitude(altitudeM: number): number {
  requireRange(info.id, "altitude", altitudeM, 580, 5720, "m");
  const h = altitudeM / 1000;
  return 100 - 3.25 * h - 0.6732 * h * h;
}

export const info: FormulaInfo<[number], number> = {
  id: "uptake-at-altitude",
  revision: 1,
  title: "Peak oxygen uptake to expect on arrival at altitude",
  equation: "pct = 100 − 3.250 h − 0.6732 h², h in km",
  inputs: { altitude: { unit: "m", range: "580 to 5720" } },
  output: { unit: "%", decimals: 0 },
  see: 4.7,
  caveat:
    "The data are published, the curve through them is this program's; people differ, and fitter people lose more.",
  source: {
    authors: "MacInnis MJ, Nugent SF, MacLeod KE, Lohse KR",
    year: 2015,
    title: "Methods to estimate VO2max upon acute hypoxia exposure",
    journal: "Med Sci Sports Exerc 47:1869–1876",
    doi: "10.1249/MSS.0000000000000628",
    where: "open study-level data table of 105 groups; weighted least squares through 100 % at 0 km",
    verified: "seen",
  },
  compute: uptakeAtAltitude,
  checks: [
    { given: [4000], expect: 76.2, tolerance: 0.05, from: "by hand: 100 − 13.0 − 10.77" },
    {
      given: [4250],
      expect: 74.6,
      tolerance: 1,
      from: "weighted mean of 26 groups at 3800 to 4700 m in the open data: 74.6 %",
    },
    {
      given: [5390],
      expect: 61.7,
      tolerance: 1.5,
      from: "weighted mean of 13 groups at 4700 to 5720 m in the open data: 61.7 %",
    },
    { given: [6000], expect: "refused", from: "above the highest group" },
  ],
};
