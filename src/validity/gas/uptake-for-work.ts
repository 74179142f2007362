/**
 * Uptake against the metabolic equations for the work that was done, over the middle of the test.
 *
 * Limits of this project: 25 % below to 15 % above. Uptake lags in a ramp and trained runners are thrifty, so low is
 * given more room: 67 ramps of trained runners lie between 0.79 and 1.07. An instrument that scales all volumes moves
 * the share and leaves the ratio of the gases as it is.
 */
import { compareAtDecimals, toDecimals } from "../../kernel/rounding.js";
import type { Rule } from "../../kernel/rule.js";
import { finding } from "../finding.js";
import { costShare } from "./cost-share.js";

const AFFECTED = ["vo2_peak", "vo2_peak_per_mass"] as const;
const LOW = 0.75;
const HIGH = 1.15;

export const rule: Rule = {
  id: "uptake-for-work",
  revision: 1,
  title: "Oxygen uptake against the work done",
  section: "incremental",
  source: {
    authors: "American College of Sports Medicine, restated by Bushman BA",
    year: 2020,
    title: "Metabolic Calculations in Action: Parts 1 and 2",
    journal: "ACSM's Health & Fitness Journal 24(3):6–10; 24(4):5–8",
    doi: "10.1249/FIT.0000000000000562",
    where: "Box 1; the limits are working limits of this project",
    verified: "seen",
  },
  judge: (findings) => {
    const cost = costShare(findings);
    if (cost === undefined) return [];
    const limit = `${toDecimals(100 * LOW, 0)} to ${toDecimals(100 * HIGH, 0)} % of the metabolic equation`;
    const found = `uptake was ${toDecimals(100 * cost.share, 0)} % of what the work usually costs (median of ${cost.n} means)`;
    if (compareAtDecimals(cost.share, LOW, 2) < 0)
      return [
        finding(
          "weakens",
          found,
          limit,
          "Likely causes: a leak of expired gas at the mask, a flow sensor that reads low, handrails held, an ergometer that shows too much, a wrong body mass.",
          AFFECTED,
        ),
      ];
    if (compareAtDecimals(cost.share, HIGH, 2) > 0)
      return [
        finding(
          "weakens",
          found,
          limit,
          "Likely causes: a wrong gas condition (BTPS taken for STPD reads 22 % high, ATPS 12 %), a pressure reduced to sea level, a flow sensor that reads high, an oxygen analyser that drifted down, an ergometer that shows too little.",
          AFFECTED,
        ),
      ];
    return [];
  },
};
