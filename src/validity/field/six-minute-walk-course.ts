/**
 * The course is 30 m long, and the better of two walks counts: turning costs time, and practice adds some 25 m.
 */
import type { Rule } from "../../kernel/rule.js";
import { finding, notRecorded } from "../finding.js";

export const rule: Rule = {
  id: "six-minute-walk-course",
  revision: 1,
  title: "Course and practice of the six-minute walk",
  section: "field",
  source: {
    authors: "Holland AE, Spruit MA, Troosters T, et al.",
    year: 2014,
    title: "An official ERS/ATS technical standard: field walking tests in chronic respiratory disease",
    journal: "Eur Respir J 44:1428–1446",
    doi: "10.1183/09031936.00150314",
    where: "30 m course; two tests, because the second is longer",
    verified: "memory",
  },
  judge: ({ visit }) => {
    const walk = visit.session.field_tests?.six_minute_walk;
    if (walk === undefined) return [];
    const affects = ["six_minute_walk_distance", "six_minute_walk_percent"] as const;
    return [
      ...(walk.corridor_m === undefined
        ? [notRecorded("corridor_m", "A short course costs distance in turns.", affects)]
        : []),
      ...(walk.corridor_m !== undefined && walk.corridor_m < 30
        ? [
            finding(
              "weakens",
              `course of ${walk.corridor_m} m`,
              "30 m",
              "A short course costs distance in turns.",
              affects,
            ),
          ]
        : []),
      ...(walk.trial === undefined ? [notRecorded("trial", "The second walk is longer than the first.", affects)] : []),
      ...(walk.trial === 1
        ? [finding("record", "first trial", "the better of two", "The second walk is longer than the first.", affects)]
        : []),
    ];
  },
};
