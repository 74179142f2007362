/** The primary outcomes of a client over the visits, in the order in which the last visit lists them. */
import type { Outcome, VisitSummary } from "./visit-summary.js";

export interface Course {
  readonly measure: string;
  /** Oldest first, one or more. */
  readonly points: readonly (Outcome & { readonly date: string })[];
}

export function courseOf(visits: readonly VisitSummary[]): readonly Course[] {
  const measures = new Set([...visits].reverse().flatMap((visit) => visit.outcomes.map((outcome) => outcome.measure)));
  return [...measures].map((measure) => ({
    measure,
    points: visits.flatMap((visit) =>
      visit.outcomes
        .filter((outcome) => outcome.measure === measure)
        .map((outcome) => ({ ...outcome, date: visit.date })),
    ),
  }));
}

/** The latest known error of a single test: not every visit can be weighed against another. */
export const knownError = ({ points }: Course): Outcome | undefined =>
  points.findLast((point) => point.typical !== undefined);
