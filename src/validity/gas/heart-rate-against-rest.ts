/**
 * The highest heart rate of a hard test against the resting one of the same visit. Even a person of low fitness more than
 * adds 60 beats from rest to exhaustion; no one multiplies the resting rate by more than five. Outside either, one of the
 * two records is off, and with it every target that is a share of the reserve between them.
 *
 * A test ended early says nothing, so the lower limit waits for a respiratory exchange ratio of 1.05; drugs that hold the
 * heart rate down silence it.
 */
import { compareAtDecimals, toDecimals } from "../../kernel/rounding.js";
import type { Rule } from "../../kernel/rule.js";
import { finding } from "../finding.js";

const LEAST_RISE = 60;
const LARGEST_RATIO = 5;
const HARD = 1.05;
const LOWERING: readonly string[] = ["beta blocker", "calcium-channel blocker", "other heart-rate lowering"];

export const rule: Rule = {
  id: "heart-rate-against-rest",
  revision: 1,
  title: "Highest heart rate against the resting one",
  section: "incremental",
  source: {
    authors: "Waymark",
    year: null,
    title: "Rule of this project",
    where: "a rise of less than 60 /min at an exchange ratio of 1.05 or more, or more than five times the resting rate",
    verified: "own",
  },
  judge: ({ value, visit }) => {
    const rest = value("resting_heart_rate") ?? value("resting_pulse");
    const peak = value("heart_rate_peak");
    if (rest === undefined || peak === undefined || !(rest > 0)) return [];
    const found = `${toDecimals(peak, 0)} /min at most, ${toDecimals(rest, 0)} /min at rest`;
    const affects = ["heart_rate_peak", "heart_rate_at_peak", "resting_heart_rate"] as const;
    if (compareAtDecimals(peak / rest, LARGEST_RATIO, 2) > 0)
      return [
        finding(
          "weakens",
          found,
          `up to ${LARGEST_RATIO} times the resting rate`,
          "One of the two is not a true heart rate. Likely causes: noise counted as beats in the test, beats missed at rest.",
          affects,
        ),
      ];
    const blunted = visit.client.medication?.some((drug) => LOWERING.includes(drug)) === true;
    const hard = compareAtDecimals(value("rer_peak") ?? 0, HARD, 2) >= 0;
    if (blunted || !hard || peak - rest >= LEAST_RISE) return [];
    return [
      finding(
        "weakens",
        found,
        `a rise of ${LEAST_RISE} /min or more in a hard test`,
        "Likely causes: a monitor that lost beats in the test, a resting rate taken before the client had settled, a drug that holds the heart rate down and was not recorded, a heart that does not speed up as it should.",
        affects,
      ),
    ];
  },
};
