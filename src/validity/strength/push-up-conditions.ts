/**
 * The rating tables hold for push-ups without a time limit, men from the toes and women from the knees.
 */
import type { Rule } from "../../kernel/rule.js";
import { finding, notRecorded } from "../finding.js";

export const rule: Rule = {
  id: "push-up-conditions",
  revision: 1,
  title: "Form of the push-ups",
  section: "strength",
  source: {
    authors: "Canadian Society for Exercise Physiology",
    year: 2003,
    title: "The Canadian Physical Activity, Fitness and Lifestyle Approach",
    where: "no time limit; men from the toes, women from the knees",
    verified: "seen",
  },
  judge: ({ visit }) => {
    const test = visit.session.strength?.push_ups;
    if (test === undefined) return [];
    const published = visit.client.sex === "male" ? "standard" : "modified";
    return [
      ...(test.form === undefined
        ? [notRecorded("form", "From the knees more repetitions are possible.", ["push_ups"], "weakens")]
        : []),
      ...(test.form !== undefined && test.form !== published
        ? [
            finding("record", `${test.form} form`, `${published} form`, "The rating tables hold for one form a sex.", [
              "push_ups",
            ]),
          ]
        : []),
      ...(test.time_limit_s === undefined
        ? []
        : [
            finding(
              "weakens",
              `time limit ${test.time_limit_s} s`,
              "no time limit",
              "The rating tables hold without one.",
              ["push_ups"],
            ),
          ]),
    ];
  },
};
