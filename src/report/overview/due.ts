/**
 * When a client is due for a retest: the first test that the plan of the last visit asks for, else common practice, 8 to
 * 12 weeks after the last visit, and not while the client is away for the goal: then once it is over. Dates only: nothing
 * here knows today.
 */
import { addDays } from "../../kernel/days.js";
import type { VisitSummary } from "./visit-summary.js";

export interface Due {
  readonly from: string;
  /** The end of a range; absent for a day. */
  readonly to?: string;
  readonly why: "plan" | "proposed" | "practice" | "goal";
}

const [EARLIEST, LATEST] = [56, 84]; // 8 and 12 weeks: common practice

export function dueAfter(last: VisitSummary): Due {
  const test = [...last.tests].sort((a, b) => (a.date < b.date ? -1 : 1))[0];
  if (test !== undefined) return { from: test.date, why: test.proposed ? "proposed" : "plan" };
  const [from, to] = [addDays(last.date, EARLIEST), addDays(last.date, LATEST)];
  const aim = last.aims[0];
  const leaves = aim?.arrival ?? aim?.date;
  if (aim?.date === undefined || leaves === undefined || aim.date <= last.date || leaves > to)
    return { from, to, why: "practice" };
  return leaves > from ? { from, to: leaves, why: "practice" } : { from: aim.date, why: "goal" };
}

/** Sections measured at the visit before and not at the last one; repeats for reliability do not count. */
export function missingSince(visits: readonly VisitSummary[]): readonly string[] {
  const [last, before] = visits.filter((visit) => visit.purpose !== "reliability").reverse();
  if (last === undefined || before === undefined) return [];
  return before.sections.filter((section) => !last.sections.includes(section));
}
