/**
 * The submaximal cycle tests were made at 50 rpm; a faster cadence costs oxygen that the equation does not see. On an
 * ergometer that keeps power it matters less, but it is kept.
 */
import type { Rule } from "../../kernel/rule.js";
import { finding, notRecorded } from "../finding.js";

export const rule: Rule = {
  id: "cycle-cadence",
  revision: 1,
  title: "Cadence of the submaximal cycle test",
  section: "submaximal",
  source: {
    authors: "Anning J, in National Strength and Conditioning Association",
    year: 2012,
    title: "NSCA's Guide to Tests and Assessments, chapter 5",
    where: "cycle tests at 50 rpm",
    verified: "seen",
  },
  judge: ({ visit }) => {
    const block = visit.session.submaximal;
    return (["cycle_single", "cycle_stages"] as const).flatMap((name) => {
      const test = block?.[name];
      if (test === undefined) return [];
      const affects = [`vo2max_estimate_${name}`] as const;
      const because = "Cadence changes heart rate and oxygen cost at the same power.";
      if (test.cadence_rpm === undefined) return [notRecorded("cadence_rpm", because, affects)];
      if (Math.abs(test.cadence_rpm - 50) <= 10) return [];
      return [
        finding(
          "weakens",
          `cadence ${test.cadence_rpm} rpm`,
          "50 rpm (within 10, a limit of this project)",
          because,
          affects,
        ),
      ];
    });
  },
};
