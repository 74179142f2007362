/** Repeated readings of one measure: one value, or a list of the single readings, as the session file gives them. */
export type OneOrMany = number | readonly number[];

export const listOf = (readings: OneOrMany): readonly number[] =>
  typeof readings === "number" ? [readings] : readings;

/** How far two readings lie apart, in % of their mean. Both above zero. */
export const percentApart = (first: number, second: number): number =>
  (100 * Math.abs(first - second)) / ((first + second) / 2);
