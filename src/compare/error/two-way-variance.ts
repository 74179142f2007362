/**
 * Mean squares of a table of people (rows) by trials (columns), the ground of the intraclass correlations.
 */
import { OutOfRange } from "../../kernel/formula.js";
import { mean } from "../../kernel/statistics.js";

/** One row a person, one column a trial or judge; complete. */
export type Scores = readonly (readonly number[])[];

export interface MeanSquares {
  readonly people: number;
  readonly trials: number;
  readonly betweenPeople: number;
  readonly betweenTrials: number;
  readonly residual: number;
}

/** Throws OutOfRange for fewer than two people or trials, an incomplete table, or scores that do not vary at all. */
export function meanSquares(formula: string, scores: Scores): MeanSquares {
  const n = scores.length;
  const k = scores[0]?.length ?? 0;
  if (n < 2 || k < 2)
    throw new OutOfRange(formula, "table", `${n} by ${k}`, "two or more people by two or more trials");
  if (scores.some((row) => row.length !== k || !row.every(Number.isFinite)))
    throw new OutOfRange(formula, "table", "a gap", "a finite score in every cell");
  const grand = mean(scores.flat());
  const rows = scores.map(mean);
  const columns = Array.from({ length: k }, (_, j) => mean(scores.map((row) => row[j] as number)));
  const sum = (xs: readonly number[]) => xs.reduce((total, x) => total + (x - grand) ** 2, 0);
  let rest = 0;
  for (let i = 0; i < n; i++)
    for (let j = 0; j < k; j++)
      rest += ((scores[i]?.[j] as number) - (rows[i] as number) - (columns[j] as number) + grand) ** 2;
  if (sum(rows) + rest === 0) throw new OutOfRange(formula, "table", "scores that are all alike", "scores that vary");
  return {
    people: n,
    trials: k,
    betweenPeople: (k * sum(rows)) / (n - 1),
    betweenTrials: (n * sum(columns)) / (k - 1),
    residual: rest / ((n - 1) * (k - 1)),
  };
}

/** Shrout & Fleiss (1979): six targets rated by four judges. */
export const SIX_BY_FOUR: Scores = [
  [9, 2, 5, 8],
  [6, 1, 3, 2],
  [8, 4, 6, 8],
  [7, 1, 2, 6],
  [10, 5, 6, 9],
  [6, 2, 4, 7],
];
