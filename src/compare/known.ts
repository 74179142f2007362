/** What comparing needs beside the results themselves; pipeline and command line gather it. */
import type { Client } from "../kernel/generated/client.js";
import type { TypicalErrorTable } from "../kernel/generated/typical-error.js";
import type { Pair } from "./error/pairs.js";

/** Test-retest pairs of one measure from this laboratory: a file that lab.yaml names, or visits with purpose reliability. */
export interface RetestSet {
  readonly measure: string;
  readonly pairs: readonly Pair[];
  /** "within 7" as printed beside the error. */
  readonly daysBetween?: string;
  /** Who was tested and how, in one line. */
  readonly from: string;
  /** The file they stand in, relative to the practice; absent for pairs out of visits. */
  readonly file?: string;
  /** Conditions that must agree with the visit's, by the names of Results.conditions (mode: treadmill). */
  readonly conditions?: Readonly<Record<string, string>>;
}

/** A value the client wants to reach, with its date. Bounds in the measure's unit. */
export interface Target {
  readonly measure: string;
  readonly goal: string;
  readonly date?: string;
  readonly atLeast?: number;
  readonly atMost?: number;
}

/** How much people of the client's kind differ, in the measure's unit: ground of the default worthwhile change. */
export interface Spread {
  readonly measure: string;
  readonly sd: number;
  readonly mean?: number;
  readonly sex?: "female" | "male";
  readonly from: string;
}

export interface Known {
  readonly laboratoryRetests: readonly RetestSet[];
  readonly publishedErrors: readonly TypicalErrorTable[];
  /** Measures declared at baseline, as ids. */
  readonly primaryOutcomes: readonly string[];
  readonly targets: readonly Target[];
  /** Smallest change that matters to this client, by measure, in its unit. */
  readonly worthwhile: Readonly<Record<string, { readonly value: number; readonly from: string }>>;
  readonly spreads?: readonly Spread[];
}

/**
 * What is known of a client, from client.yaml, the laboratory's retests and the published tables. A target's `worthwhile`
 * is the smallest change in that measure that matters to the client.
 */
export function knownOf(
  client: Pick<Client, "goals" | "primary_outcomes">,
  laboratoryRetests: readonly RetestSet[],
  publishedErrors: readonly TypicalErrorTable[],
  spreads: readonly Spread[] = [],
): Known {
  const targets = (client.goals ?? []).flatMap((goal) => (goal.targets ?? []).map((target) => ({ goal, target })));
  return {
    laboratoryRetests,
    publishedErrors,
    spreads,
    primaryOutcomes: client.primary_outcomes ?? [],
    targets: targets.map(({ goal, target }) => ({
      measure: target.measure,
      goal: goal.goal,
      ...(goal.date === undefined ? {} : { date: goal.date }),
      ...(target.at_least === undefined ? {} : { atLeast: target.at_least }),
      ...(target.at_most === undefined ? {} : { atMost: target.at_most }),
    })),
    worthwhile: Object.fromEntries(
      targets.flatMap(({ target }) =>
        target.worthwhile === undefined
          ? []
          : [
              [
                target.measure,
                { value: target.worthwhile, from: `the client's own: ${target.from ?? "agreed at baseline"}` },
              ],
            ],
      ),
    ),
  };
}
