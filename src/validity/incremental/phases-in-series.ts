/**
 * The stated phases must follow each other and lie inside the series. A recovery written before the test began, or after
 * the file ends, makes another part of the file the test: its peak, its length and its thresholds are then of that part.
 */
import { toDecimals } from "../../kernel/rounding.js";
import type { Finding, Rule } from "../../kernel/rule.js";
import { finding } from "../finding.js";

const ORDER = [
  ["rest_start_s", "rest"],
  ["warm_up_start_s", "warm-up"],
  ["incremental_start_s", "incremental phase"],
  ["recovery_start_s", "recovery"],
  ["verification_start_s", "verification bout"],
  ["verification_end_s", "end of the verification bout"],
] as const;
/** Clocks of ergometer and analyser differ by some seconds. */
const SLACK_S = 30;
const AFFECTED = ["vo2_peak", "vo2_peak_per_mass", "test_duration", "vt1_vo2", "vt2_vo2", "heart_rate_peak"] as const;

export const rule: Rule = {
  id: "phases-in-series",
  revision: 1,
  title: "Stated phases against the series",
  section: "incremental",
  source: {
    authors: "this project",
    year: null,
    title: "Order of the phases of an incremental test",
    where: "rule stated above; a difference of 30 s is accepted",
    verified: "own",
  },
  judge: ({ visit }) => {
    const block = visit.session.incremental;
    const phases = block?.phases;
    if (phases === undefined) return [];
    const stated = ORDER.flatMap(([key, name]) => (phases[key] === undefined ? [] : [{ name, at: phases[key] }]));
    const out: Finding[] = [];
    for (const [i, later] of stated.entries()) {
      const before = stated[i - 1];
      if (before === undefined || later.at > before.at) continue;
      out.push(
        finding(
          "fatal",
          `${later.name} at ${later.at} s, but ${before.name} at ${before.at} s`,
          "phases in the order of the test",
          "Another part of the file is taken for the test. Correct incremental.phases in the session.",
          AFFECTED,
        ),
      );
    }
    const end = lastOf(visit.series[block?.series ?? ""]?.channels.time_s);
    const beyond = stated.find(({ at }) => end !== undefined && at > end + SLACK_S);
    if (beyond !== undefined && end !== undefined)
      out.push(
        finding(
          "weakens",
          `${beyond.name} at ${beyond.at} s, but the series ends at ${toDecimals(end, 0)} s`,
          "phases inside the series",
          "Likely causes: a file cut short, a slip in the time, or two clocks. The length of the test and what lies at its end cannot be trusted.",
          AFFECTED,
        ),
      );
    return out;
  },
};

function lastOf(time: Float64Array | undefined): number | undefined {
  const finite = time?.findLast((t) => Number.isFinite(t));
  return finite;
}
