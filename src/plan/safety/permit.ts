/**
 * Whether a plan may be made for a client, and how hard it may be. The strictest reading wins, and what was not asked
 * counts as a reason against.
 *
 *     stop, or pressure beyond limits → no plan · refer → no plan, unless only vigorous exercise waits for clearance ·
 *     proceed → a plan; vigorous sessions where screening asked about vigorous exercise, or a clearance covers it
 */

import { daysBetween } from "../../kernel/days.js";
import type { Clearance, Screening } from "../../kernel/generated/session.js";
import type { Results } from "../../kernel/results.js";
import type { Visit } from "../../kernel/visit.js";
import { columnOf, judgementOf, tableOf } from "../recorded.js";

export interface Permit {
  readonly plan: boolean;
  readonly vigorous: boolean;
  /** Weeks at the start that hold easy sessions only, for a client who was not active. */
  readonly easyWeeks: number;
  /** Why there is no plan, or why vigorous sessions are withheld; what allows them otherwise. */
  readonly because: string;
}

/** An inactive client starts light to moderate and goes on gradually (Riebe 2015); how long is a convention. */
const EASY_WEEKS = 4;
/** The sources of a plan are about adults. */
const ADULT = 18;

const HARD = ["vigorous", "maximal"];

export function permitOf(results: Results, visit: Visit): Permit {
  const none = (because: string): Permit => ({ plan: false, vigorous: false, easyWeeks: 0, because });
  if (results.ageYears < ADULT) return none("what plans rest on was found in adults of 18 years or more.");
  const pressure = judgementOf(results, "blood_pressure_referral");
  const decision = judgementOf(results, "screening_decision");
  if (decision?.verdict === "stop") return none(`the screening says stop. ${decision.because}`);
  if (pressure?.verdict === "emergency" || pressure?.verdict === "urgent referral")
    return none(`resting pressure lies beyond published limits. ${pressure.because}`);
  if (decision === undefined) return none("no screening is recorded, and a plan waits for one.");
  const screening: Screening = { ...visit.client.screening, ...visit.session.screening };
  const easyWeeks = screening.regularly_active === true ? 0 : EASY_WEEKS;
  if (decision.verdict !== "proceed") {
    const reasons = tableOf(results, "screening_reasons");
    const only =
      reasons !== undefined &&
      columnOf(reasons, "because").every((text) => /: clear before vigorous/.test(String(text)));
    return only
      ? { plan: true, vigorous: false, easyWeeks, because: `clearance is not recorded. ${decision.because}` }
      : none(`the screening says ${decision.verdict}, and no clearance is recorded. ${decision.because}`);
  }
  if (pressure !== undefined && pressure.verdict !== "within limits")
    return {
      plan: true,
      vigorous: false,
      easyWeeks,
      because: `resting pressure asks for a look first. ${pressure.because}`,
    };
  if (covers(screening.clearance, visit.session.date))
    return { plan: true, vigorous: true, easyWeeks, because: "a medical clearance for vigorous exercise is recorded" };
  if (!HARD.includes(screening.intended_intensity ?? ""))
    return {
      plan: true,
      vigorous: false,
      easyWeeks,
      because: `the screening asked about ${screening.intended_intensity ?? "no stated"} exercise only (intended_intensity), and no clearance is recorded`,
    };
  return { plan: true, vigorous: true, easyWeeks, because: "the screening gives no reason to ask a physician first" };
}

function covers(clearance: Clearance | undefined, date: string): boolean {
  if (clearance === undefined || !HARD.includes(clearance.intensity) || clearance.change_since !== false) return false;
  const days = daysBetween(clearance.date, date);
  return days >= 0 && days <= 366;
}
