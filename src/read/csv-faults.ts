/** Collects what is wrong with one CSV: many cells with one fault are one message, which counts them. */
import type { Diagnostic, Severity } from "../kernel/diagnostic.js";
import { type Cells, rowOf } from "./cells.js";
import type { Words } from "./words.js";

/** Column and length of a cell on its line; unknown in a file with quoted cells, which may span lines. */
export function cellPlace(cells: Cells, row: number, index: number): Pick<FaultPlace, "column" | "length"> {
  if (cells.quoted) return {};
  const texts = rowOf(cells, row);
  const raw = texts[index] ?? "";
  const before = texts.slice(0, index).reduce((sum, cell) => sum + cell.length + 1, 0);
  return { column: before + raw.length - raw.trimStart().length + 1, length: Math.max(1, raw.trim().length) };
}

export interface FaultPlace {
  readonly line?: number;
  readonly column?: number;
  readonly length?: number;
  readonly header?: string;
  /** Faults of one code and key are one message; its words are told how many more there were. */
  readonly key?: string;
}
export interface FaultList {
  add(severity: Severity, code: string, why: Words | ((more: number) => Words), at: FaultPlace): void;
  /** Marks a column whose values cannot be judged further. */
  spoil(header: string): void;
  isSpoilt(header: string): boolean;
  count(): number;
  errors(): number;
  all(): Diagnostic[];
}

export function faultList(file: string): FaultList {
  const found = new Map<
    string,
    { severity: Severity; code: string; why: (more: number) => Words; at: FaultPlace; n: number }
  >();
  const spoilt = new Set<string>();
  return {
    add(severity, code, why, at) {
      const id = `${code} ${at.key ?? ""}`;
      const known = found.get(id);
      if (known) known.n++;
      else found.set(id, { severity, code, why: typeof why === "function" ? why : () => why, at, n: 1 });
    },
    spoil: (header) => spoilt.add(header),
    isSpoilt: (header) => spoilt.has(header),
    count: () => found.size,
    errors: () => [...found.values()].filter((f) => f.severity === "error").length,
    all: () =>
      [...found.values()].map(({ severity, code, why, at, n }) => ({
        code,
        severity,
        at: {
          file,
          ...(at.line === undefined ? {} : { line: at.line }),
          ...(at.column === undefined ? {} : { column: at.column, length: at.length ?? 1 }),
          ...(at.header === undefined ? {} : { header: at.header }),
        },
        ...why(n - 1),
      })),
  };
}
