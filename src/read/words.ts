/** All wording of the read stage. Each function gives found, expected, why and, where it can, fix. */
export interface Words {
  readonly found: string;
  readonly expected: string;
  readonly why: string;
  readonly fix?: string;
}

/** Text quoted for a message: shortened, control and direction characters written out. */
export function quote(text: string): string {
  const clean = text.replace(/[\p{Cc}\p{Cf}\u2028\u2029]/gu, (c) => `\\u{${(c.codePointAt(0) ?? 0).toString(16)}}`);
  return `"${clean.length > 60 ? `${clean.slice(0, 57)}...` : clean}"`;
}

const plural = (n: number, one: string, many = `${one}s`) => `${n} ${n === 1 ? one : many}`;

export const words = {
  tooLarge: (size: number, limit: number): Words => ({
    found: `a file of ${plural(Math.ceil(size / 1024), "kilobyte")}`,
    expected: `at most ${Math.floor(limit / 1024)} kilobytes`,
    why: "a record of one visit is a few kilobytes; a file this large is something else",
    fix: "check that this is the file you meant; raw samples belong in a CSV beside it",
  }),
  utf16: (): Words => ({
    found: "text in UTF-16",
    expected: "text in UTF-8",
    why: "only UTF-8 reads the same on every machine, and Git shows no differences in other encodings",
    fix: "save the file again as UTF-8",
  }),
  notUtf8: (): Words => ({
    found: "bytes that are not UTF-8",
    expected: "text in UTF-8",
    why: "a guess at the encoding could change letters and signs in a record that is kept for years",
    fix: "save the file again as UTF-8",
  }),
  emptyFile: (): Words => ({
    found: "an empty file",
    expected: "keys and values",
    why: "an empty file is more often a failed save than an intention",
    fix: "write the file, or delete it",
  }),
  hidden: (code: number, kind: "control" | "direction" | "invisible"): Words => ({
    found: `the ${kind} character U+${code.toString(16).toUpperCase().padStart(4, "0")}`,
    expected: "text that can be seen",
    why:
      kind === "direction"
        ? "it makes an editor show text in another order than it is stored, so a reviewer reads something else"
        : "nobody can see it in an editor, and it changes the value it stands in",
    fix: "delete the character",
  }),
  tab: (): Words => ({
    found: "a tab",
    expected: "spaces",
    why: "YAML does not allow tabs for indenting, because their width differs between editors",
    fix: "replace the tab by spaces; two a level are usual",
  }),
  duplicateKey: (key: string): Words => ({
    found: `${key} twice in one mapping`,
    expected: "each key once",
    why: "one of the two values would be lost without a word",
    fix: "delete the one that is not true",
  }),
  syntax: (detail: string, advice: string): Words => ({
    found: detail,
    expected: "YAML",
    why: "what follows cannot be read reliably until this is mended",
    fix: advice,
  }),
  alias: (detail: string): Words => ({
    found: detail,
    expected: "at most 100 uses of an anchor, each defined above its use",
    why: "repeated references can make a small file enormous",
    fix: "write the values out",
  }),
  nesting: (limit: number): Words => ({
    found: `values nested more than ${limit} deep`,
    expected: "a few levels",
    why: "no record here is that deep; a bracket was probably never closed",
    fix: "look for an opening bracket or brace without its partner",
  }),
  badKey: (key: string): Words => ({
    found: `the key ${quote(key)}`,
    expected: "a plain name",
    why: "it has a meaning of its own for the program that reads the file",
    fix: "delete the line",
  }),
  keyNotText: (): Words => ({
    found: "a list or mapping as a key",
    expected: "a plain name",
    why: "only names can be looked up",
    fix: "write name: and the list or mapping after it",
  }),
  notFinite: (source: string): Words => ({
    found: source,
    expected: "a number that exists",
    why: "infinity and not-a-number cannot be measured, and would spread through every sum",
    fix: "write the value, or delete the key when there is none",
  }),

  csvTooLarge: (size: number, limit: number): Words => ({
    found: `a file of ${plural(Math.ceil(size / 1_048_576), "megabyte")}`,
    expected: `at most ${Math.floor(limit / 1_048_576)} megabytes`,
    why: "a long test breath by breath is under one megabyte",
    fix: "check that this is the file you meant; cut it to the test",
  }),
  csvTooMany: (what: "lines" | "columns", n: number, limit: number): Words => ({
    found: `${n} ${what}`,
    expected: `at most ${limit} ${what}`,
    why: "reading is bounded, so that a wrong file cannot stop a build of the whole practice",
    fix: "check that this is the file you meant",
  }),
  csvEmpty: (headerRow: number): Words => ({
    found: "no row of data",
    expected: `column headers on line ${headerRow} and data below them`,
    why: "a series without samples is more often a failed export than an intention",
    fix: "export the file again, or take its name out of the session",
  }),
  csvQuote: (): Words => ({
    found: "a quotation mark that is never closed",
    expected: "quotation marks in pairs",
    why: "everything after it would be one cell",
    fix: "close it, or delete it",
  }),
  csvHeaderMissing: (channel: string, wanted: string, headers: readonly string[], near?: string): Words => ({
    found: `no column ${quote(wanted)}; the file has ${headers.slice(0, 12).map(quote).join(", ")}${headers.length > 12 ? `, and ${headers.length - 12} more` : ""}`,
    expected: `a column ${quote(wanted)}, which lab.yaml names for ${channel}`,
    why: `without it there is no ${channel}`,
    fix: near
      ? `did you mean ${quote(near)}? Change the column in lab.yaml to that`
      : "correct the column in lab.yaml, or header_row if the headers stand on another line",
  }),
  /** `line`: where the headers were seen instead. */
  csvNoHeader: (wanted: readonly string[], headers: readonly string[], line?: number): Words => ({
    found: `none of the columns ${wanted.slice(0, 6).map(quote).join(", ")}; the line has ${headers.slice(0, 6).map(quote).join(", ")}${headers.length > 6 ? `, and ${headers.length - 6} more` : ""}`,
    expected: "the headers that columns: of this instrument in lab.yaml names",
    why: "without them nothing of the file can be read",
    fix: line
      ? `they stand on line ${line}: write header_row: ${line} for this instrument in lab.yaml`
      : "correct header_row or delimiter of this instrument in lab.yaml, or name the instrument that wrote the file",
  }),
  csvHeaderTwice: (header: string): Words => ({
    found: `two columns ${quote(header)}`,
    expected: "one",
    why: "it cannot be told which of them is meant",
    fix: "rename one of the two headers in the file",
  }),
  csvRowLength: (cells: number, headers: number, more: number, commas: boolean): Words => ({
    found: `${plural(cells, "cell")}${also(more, "row")}`,
    expected: `${headers}, one for each header`,
    why: "a row that is longer or shorter has its values under the wrong headers",
    fix: commas
      ? "decimal commas cannot stand unquoted in a file separated by commas: export with semicolons or tabs"
      : "complete the row, or delete it if the recording was cut off there",
  }),
  csvUnitRow: (cells: readonly string[]): Words => ({
    found: `a row without any number: ${cells.slice(0, 4).map(quote).join(", ")}`,
    expected: "data right below the headers",
    why: "a row of units read as data would be a damaged sample",
    fix: "write skip_rows: 1 for this instrument in lab.yaml",
  }),
  csvSummary: (begin: readonly string[]): Words => ({
    found: `rows below the data that begin with ${begin.slice(0, 4).map(quote).join(", ")}`,
    expected: "data down to the last row",
    why: "a summary read as data would be samples that nobody measured",
    fix: `write ends_before: [${JSON.stringify(begin[0])}] for this instrument in lab.yaml; the raw file stays as it is`,
  }),
  csvCell: (cell: string, unit: string, more: number, comma: boolean, point: boolean): Words => ({
    found: `${quote(cell)}${also(more, "cell")}`,
    expected: `a number in ${unit}, or a mark for a missing value`,
    why: "a cell that is not a number cannot be told from a damaged one",
    fix: comma
      ? 'the numbers have a decimal comma: write decimal: "," for this instrument in lab.yaml'
      : point
        ? 'the numbers have a decimal point: write decimal: "." for this instrument in lab.yaml'
        : `correct the cell; if ${quote(cell)} means "no value", add it to missing: of this instrument in lab.yaml`,
  }),
  csvTime: (now: string, before: string, more: number): Words => ({
    found: `${now} after ${before}${also(more, "row")}`,
    expected: "time that goes forward",
    why: "every window and every stage is found by time",
    fix: "look at the rows around this line: two recordings may have been joined, or rows sorted",
  }),
  csvTimeMissing: (more: number): Words => ({
    found: `no time${also(more, "row")}`,
    expected: "a time in every row",
    why: "a sample without time belongs to no stage",
    fix: "fill the cell in, or delete the row",
  }),
  csvTimeTwice: (now: string, more: number): Words => ({
    found: `${now} twice${also(more, "row")}`,
    expected: "each time once",
    why: "two samples at one time have no duration between them",
    fix: "export with more digits of time, or delete the repeated row",
  }),
  csvUnit: (median: string, unit: string, low: number, high: number, looks: string | undefined): Words => ({
    found: `a median of ${median} ${unit}`,
    expected: `a median from ${low} to ${high} ${unit}`,
    why: "no living client has a median like this, so the unit or the column in lab.yaml is wrong",
    fix: looks
      ? `the numbers look like ${looks}: correct the unit in lab.yaml`
      : "correct the unit or the column in lab.yaml",
  }),
  csvChannelEmpty: (rows: number): Words => ({
    found: `no value in ${plural(rows, "row")}`,
    expected: "numbers",
    why: "the sensor was perhaps not connected; what depends on it is not given",
    fix: "check the sensor before the next test; if it was never used, nothing is to be done",
  }),
};

function also(more: number, what: string): string {
  return more > 0 ? ` (and ${plural(more, `more ${what}`)})` : "";
}
