/**
 * Draws diagnostics for a terminal, and lists them for an editor or a CI annotator. The frame is ASCII, and nothing in
 * the input can move the cursor.
 */
import type { Diagnostic } from "../kernel/diagnostic.js";

/** Text of a file of the practice, by the path a diagnostic names; undefined when there is none to show. */
export type SourceText = (file: string) => string | undefined;

const WIDTH = 100;
const CONTEXT = 1;

/** All diagnostics, a blank line between them, and nothing after the last. */
export function drawDiagnostics(diagnostics: readonly Diagnostic[], source: SourceText): string {
  return diagnostics.map((d) => drawDiagnostic(d, source(d.at.file))).join("\n\n");
}

/** One diagnostic: heading, the line with its neighbours, and what was expected, why, and how to mend it. */
export function drawDiagnostic(diagnostic: Diagnostic, text?: string): string {
  const { severity, code, at, found, expected, why, fix } = diagnostic;
  const place = [at.file, at.line, at.column].filter((part) => part !== undefined).join(":");
  const header = at.header === undefined ? "" : `   column "${visible(at.header)}"`;
  const frame = text === undefined || at.line === undefined ? [] : drawFrame(diagnostic, text);
  const facts = [
    ...(frame.length === 0 || at.column === undefined ? [["Found", found]] : []),
    ["Expected", expected],
    ["Why", why],
    ...(fix === undefined ? [] : [["Fix", fix]]),
  ].map(([name = "", words = ""]) => `  ${name.padEnd(10)}${visible(words)}`);
  return [
    `${severity} ${code}   ${visible(place)}${header}`,
    "",
    ...(frame.length > 0 ? [...frame, ""] : []),
    ...facts,
  ].join("\n");
}

/** "2 errors and 1 warning in 1 file." */
export function drawSummary(diagnostics: readonly Diagnostic[]): string {
  const errors = diagnostics.filter((d) => d.severity === "error").length;
  const files = new Set(diagnostics.map((d) => d.at.file)).size;
  const parts = [count(errors, "error"), count(diagnostics.length - errors, "warning")].filter(
    (p) => !p.startsWith("0 "),
  );
  return parts.length === 0 ? "No problems found." : `${parts.join(" and ")} in ${count(files, "file")}.`;
}
const count = (n: number, noun: string) => `${n} ${noun}${n === 1 ? "" : "s"}`;

function drawFrame({ at, found }: Diagnostic, text: string): string[] {
  const line = at.line ?? 1;
  const lines = text.split(/\r\n|\r|\n/);
  if (line > lines.length) return [];
  const first = Math.max(1, line - CONTEXT);
  const last = Math.min(lines.length, line + CONTEXT);
  const digits = String(last).length;
  // A long line is cut so that the mark stays in view.
  const column = at.column ?? 1;
  const skip = column > WIDTH - 20 ? column - 40 : 0;
  const show = (raw: string, from = 0) => {
    const part = raw.replace(/^\uFEFF/, "").slice(from, from + WIDTH);
    return `${from > 0 ? "..." : ""}${visible(part)}${raw.length > from + WIDTH ? "..." : ""}`;
  };
  const drawn: string[] = [];
  for (let n = first; n <= last; n++) {
    const raw = lines[n - 1] ?? "";
    if (n > line && raw.trim() === "") continue;
    drawn.push(`  ${n === line ? ">" : " "} ${String(n).padStart(digits)} | ${show(raw, skip)}`.trimEnd());
    if (n !== line || at.column === undefined) continue;
    const before = raw.replace(/^\uFEFF/, "").slice(skip, column - 1);
    const marked = raw.replace(/^\uFEFF/, "").slice(column - 1, column - 1 + (at.length ?? 1));
    const indent = " ".repeat(width(before) + (skip > 0 ? 3 : 0));
    const carets = "^".repeat(Math.max(1, Math.min(width(marked.slice(0, WIDTH)), WIDTH)));
    drawn.push(`    ${" ".repeat(digits)} | ${indent}${carets} found ${visible(found)}`);
  }
  return drawn;
}

const width = (text: string) => [...visible(text)].length;

/** Text with control, format and direction characters, and tabs, written as \u{...}: nothing in it moves the cursor. */
export function visible(text: string): string {
  return text.replace(
    /[\p{Cc}\p{Cf}\p{Cs}\u2028\u2029]/gu,
    (c) => `\\u{${(c.codePointAt(0) ?? 0).toString(16).padStart(2, "0")}}`,
  );
}

/** One problem as data: flat, stable names, 1-based lines and columns, endColumn excluded. */
export interface ListedDiagnostic {
  readonly file: string;
  readonly line: number | null;
  readonly column: number | null;
  readonly endColumn: number | null;
  readonly severity: "error" | "warning";
  readonly code: string;
  /** One line that can stand alone. */
  readonly message: string;
  readonly found: string;
  readonly expected: string;
  readonly why: string;
  readonly fix: string | null;
  readonly header: string | null;
}

export function listDiagnostics(diagnostics: readonly Diagnostic[]): ListedDiagnostic[] {
  return diagnostics.map(({ code, severity, at, found, expected, why, fix }) => ({
    file: at.file,
    line: at.line ?? null,
    column: at.column ?? null,
    endColumn: at.column === undefined ? null : at.column + (at.length ?? 1),
    severity,
    code,
    message: `found ${found}; expected ${expected}${fix === undefined ? "" : `; ${fix}`}`,
    found,
    expected,
    why,
    fix: fix ?? null,
    header: at.header ?? null,
  }));
}
