/**
 * Two maximal pulls lie within 250 N of each other; otherwise another is made.
 */

import { listOf } from "../../kernel/readings.js";
import { toDecimals } from "../../kernel/rounding.js";
import type { Rule } from "../../kernel/rule.js";
import { finding } from "../finding.js";

const AFFECTED = ["mid_thigh_pull_force", "mid_thigh_pull_force_per_mass"] as const;

export const rule: Rule = {
  id: "pull-agreement",
  revision: 1,
  title: "Agreement of the two best pulls",
  section: "strength",
  source: {
    authors: "Comfort P, Dos'Santos T, Beckham GK, Stone MH, Guppy SN, Haff GG",
    year: 2019,
    title: "Standardization and methodological considerations for the isometric midthigh pull",
    journal: "Strength Cond J 41(2):57–79",
    doi: "10.1519/SSC.0000000000000433",
    where: "two maximal pulls within 250 N",
    verified: "memory",
  },
  judge: ({ visit }) => {
    const pull = visit.session.strength?.mid_thigh_pull;
    if (pull === undefined) return [];
    const [best, second] = [...listOf(pull.peak_force_n)].sort((a, b) => b - a);
    const because = "A single best pull may be a bounce, and the client may have had more.";
    if (best === undefined || second === undefined)
      return [finding("weakens", "one pull", "two pulls within 250 N", because, AFFECTED)];
    if (best - second <= 250) return [];
    return [finding("weakens", `two best pulls ${toDecimals(best - second, 0)} N apart`, "250 N", because, AFFECTED)];
  },
};
