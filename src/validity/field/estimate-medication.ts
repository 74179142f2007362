/**
 * Estimates made from heart rate mean little with medicines that slow the heart; that has to be asked.
 */
import type { Rule } from "../../kernel/rule.js";
import { notRecorded } from "../finding.js";

const FROM_HEART_RATE = [
  "vo2max_estimate_mile_walk",
  "vo2max_estimate_two_km_walk",
  "vo2max_estimate_mile_jog",
  "vo2max_estimate_treadmill_walk",
  "vo2max_estimate_treadmill_jog",
  "vo2max_estimate_cycle_stages",
  "vo2max_estimate_cycle_single",
] as const;

export const rule: Rule = {
  id: "estimate-medication",
  revision: 1,
  title: "Medication behind estimates from heart rate",
  section: "submaximal",
  source: {
    authors: "common practice",
    year: null,
    title: "Habit of the trade",
    where: "estimates from heart rate need medication asked",
    verified: "common practice",
  },
  judge: ({ visit, entry }) => {
    const affected = FROM_HEART_RATE.filter((id) => entry(id)?.kind === "quantity");
    const asked = visit.client.medication !== undefined || visit.session.submaximal?.beta_blocker !== undefined;
    if (affected.length === 0 || asked) return [];
    return [
      notRecorded(
        "medication",
        "Medicines that slow the heart make these estimates read too high.",
        affected,
        "weakens",
      ),
    ];
  },
};
