/**
 * What the overview pages need of one visit, small enough to keep for every visit of an archive: what was measured, what
 * needs a person, primary outcomes, goals, and when the plan asks for the next test.
 */
import { columnOf, entryOf, judgementOf, quantityOf, tableOf } from "../../kernel/entries.js";
import type { Client } from "../../kernel/generated/client.js";
import type { Change, Judgement, Remark } from "../../kernel/measure.js";
import { measureInfo } from "../../kernel/measures.js";
import type { Results } from "../../kernel/results.js";

export type FlagKind = "screening" | "referral" | "withheld" | "plan";

export interface Flag {
  readonly kind: FlagKind;
  readonly text: string;
  /** How many values fatal remarks withhold. */
  readonly values?: number;
}
export interface Outcome {
  readonly measure: string;
  readonly value: number;
  readonly unit: string;
  readonly decimals: number;
  /** One standard deviation of error of one test, where the change of this visit knows it. */
  readonly typical?: number;
  readonly errorFrom?: string;
  /** Against the baseline. */
  readonly change?: number;
  readonly verdict?: string;
  /** What differs from the visit before, as the trend of three visits or more says; else from the baseline. */
  readonly differs?: string;
}
export interface VisitSummary {
  readonly date: string;
  readonly label?: string;
  readonly purpose: Results["purpose"];
  /** Sections with at least one number. */
  readonly sections: readonly string[];
  readonly flags: readonly Flag[];
  readonly outcomes: readonly Outcome[];
  readonly goals: readonly { readonly measure: string; readonly verdict: string; readonly because: string }[];
  /** What the client came for, as client.yaml says it at this build. */
  readonly aims: readonly { readonly goal: string; readonly date?: string; readonly arrival?: string }[];
  /** Dates on which the plan of this visit asks for a test; a Monday where it only proposes a week. */
  readonly tests: readonly { readonly date: string; readonly proposed: boolean }[];
}

const NOT_MEASURED = ["visit", "screening", "preparation", "validity", "change", "programme", "altitude"];

export function summaryOf(results: Results, client: Pick<Client, "goals" | "primary_outcomes">): VisitSummary {
  const { entries } = results;
  const sections = new Set<string>();
  for (const entry of entries) {
    const section = entry.kind === "quantity" ? measureInfo(entry.id)?.section : undefined;
    if (section !== undefined && !NOT_MEASURED.includes(section)) sections.add(section);
  }
  return {
    date: results.date,
    ...(results.label === undefined ? {} : { label: results.label }),
    purpose: results.purpose,
    sections: [...sections],
    flags: flagsOf(results),
    outcomes: (client.primary_outcomes ?? []).flatMap((id) => outcomeOf(results, id)),
    goals: entries.flatMap((entry) => {
      const measure = entry.kind === "judgement" ? /^goal_(.+)_\d+$/.exec(entry.id)?.[1] : undefined;
      return measure === undefined
        ? []
        : [{ measure, verdict: (entry as Judgement).verdict, because: (entry as Judgement).because }];
    }),
    aims: (client.goals ?? []).map(({ goal, date, arrival }) => ({
      goal,
      ...(date === undefined ? {} : { date }),
      ...(arrival === undefined ? {} : { arrival }),
    })),
    tests: testsOf(results),
  };
}

function flagsOf(results: Results): Flag[] {
  const { entries } = results;
  const screening = judgementOf(results, "screening_decision");
  const refers = screening === undefined || screening.verdict === "proceed" ? [] : [screening.because];
  const limits = tableOf(results, "referral_flags");
  const outside = (limits?.rows ?? []).map(
    ([measure, found, limit, urgency]) => `${measure}: ${found}; limit ${limit}; ${urgency}`,
  );
  const fatal = entries.filter((entry): entry is Remark => entry.kind === "remark" && entry.severity === "fatal");
  const withheld = new Set(fatal.flatMap((remark) => remark.affects));
  const state = judgementOf(results, "programme_state");
  const unsigned =
    state !== undefined && state.verdict !== "ready" && tableOf(results, "programme_weeks") !== undefined;
  return [
    ...refers.map((text): Flag => ({ kind: "screening", text })),
    ...outside.map((text): Flag => ({ kind: "referral", text })),
    ...(fatal.length === 0 ? [] : [{ kind: "withheld", text: rulesOf(fatal), values: withheld.size } as const]),
    ...(unsigned ? [{ kind: "plan", text: state.because } as const] : []),
  ];
}

const rulesOf = (fatal: readonly Remark[]): string =>
  [...new Set(fatal.map((remark) => remark.rule.replace(/ r\d+$/, "").replaceAll("-", " ")))].join(", ");

function outcomeOf(results: Results, measure: string): Outcome[] {
  const { entries, date } = results;
  const at = quantityOf(results, measure);
  if (at === undefined) return [];
  const { value, unit, decimals } = at;
  const found = entryOf(results, `change_${measure}`);
  const change = found?.kind === "change" ? (found as Change) : undefined;
  // Where this visit and the baseline are not comparable, the change since another visit may still know the error.
  const weighed = entries.find(
    (entry): entry is Change =>
      entry.kind === "change" && entry.measure === measure && entry.typicalError !== undefined,
  );
  const trend = tableOf(results, `trend_${measure}`);
  const row = trend === undefined ? -1 : columnOf(trend, "date").indexOf(date);
  const differs =
    row < 0 || trend === undefined ? change?.differs.join("; ") : String(columnOf(trend, "differs")[row] ?? "");
  return [
    {
      measure,
      value,
      unit,
      decimals,
      ...(weighed?.typicalError === undefined ? {} : { typical: weighed.typicalError }),
      ...(weighed?.errorFrom === undefined ? {} : { errorFrom: weighed.errorFrom }),
      ...(change === undefined ? {} : { change: change.change, verdict: change.verdict }),
      ...(differs === undefined || differs === "" ? {} : { differs }),
    },
  ];
}

function testsOf(results: Results): { date: string; proposed: boolean }[] {
  const weeks = tableOf(results, "programme_weeks");
  if (weeks === undefined) return [];
  const [marks, mondays] = [columnOf(weeks, "mark"), columnOf(weeks, "monday")];
  return marks.flatMap((mark, i) => {
    const fixed = [...String(mark ?? "").matchAll(/test on (\d{4}-\d{2}-\d{2})/g)].map(([, date = ""]) => date);
    const proposed = /test proposed/.test(String(mark ?? "")) ? [String(mondays[i])] : [];
    return [
      ...fixed.map((date) => ({ date, proposed: false })),
      ...proposed.map((date) => ({ date, proposed: true })),
    ].filter(({ date }) => date > results.date);
  });
}
