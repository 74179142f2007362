/**
 * Where the data of a raw file end: at the row that begins as the instrument's ends_before says, or before a summary that
 * the instrument adds. Rows are known by what they begin with; who asks says how to read that.
 */

/** Text of the first cell that holds any, trimmed; "" for a blank row. */
export const beginningOf = (row: readonly string[]): string =>
  row.map((cell) => cell.trim()).find((cell) => cell !== "") ?? "";

export interface RowsBelow {
  readonly beginning: (row: number) => string;
  /** The first row of data, and one more than the last row of the file. */
  readonly first: number;
  readonly count: number;
}

/** The first row that begins with one of the marks, or `count`. */
export function endOfData({ beginning, first, count }: RowsBelow, marks: readonly string[]): number {
  if (marks.length === 0) return count;
  let row = first;
  while (row < count && !marks.includes(beginning(row))) row++;
  return row;
}

/** More rows than a summary has: what is below the numbers then is something else. */
const LONGEST_SUMMARY = 20;

/**
 * What the rows below the data begin with, where the file ends with rows that begin with words and the row above them
 * with a number. Empty where one of them begins with a mark for a missing value, or with what may be a mistyped number.
 */
export function summaryBelow(
  { beginning, first, count }: RowsBelow,
  isMissing: (text: string) => boolean,
): readonly string[] {
  const words: string[] = [];
  for (let row = count - 1; row >= first && words.length <= LONGEST_SUMMARY; row--) {
    const begins = beginning(row);
    if (/^[+-]?[.,]?\d/.test(begins)) return words.reverse();
    if (begins === "") continue;
    if (isMissing(begins) || !/^\p{L}{2}/u.test(begins)) return [];
    words.push(begins);
  }
  return [];
}
