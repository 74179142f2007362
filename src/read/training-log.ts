/**
 * A client's training log, CSV: a row a session. The file's faults are found in one run; a row without a date or minutes is
 * an error, an empty cell elsewhere is simply not known.
 */
import type { Diagnostic } from "../kernel/diagnostic.js";
import type { TrainingLog } from "../kernel/generated/session.js";
import type { LoggedSession } from "../kernel/training-log.js";
import { splitCsv } from "./csv.js";
import { decodeLeniently } from "./decode.js";

export interface LogReading {
  readonly sessions?: readonly LoggedSession[];
  readonly diagnostics: readonly Diagnostic[];
}

/** Possible ranges; outside them the cell is a slip. */
const RANGE = {
  minutes: [1, 1440],
  rpe: [0, 10],
  distance_km: [0, 500],
  climb_m: [0, 10_000],
  heart_rate_bpm: [30, 240],
} as const;
type Key = keyof typeof RANGE;

/** `path` is the file in the practice folder, for messages. */
export function readTrainingLog(block: TrainingLog, content: Uint8Array | string, path: string): LogReading {
  const text = (typeof content === "string" ? content : decodeLeniently(content, undefined)).replace(/^\uFEFF/, "");
  const { rows, lines } = splitCsv(text, block.delimiter ?? ",");
  const diagnostics: Diagnostic[] = [];
  const fault = (line: number, found: string, expected: string, why: string, header?: string) =>
    diagnostics.push({
      code: "training-log",
      severity: "error",
      at: { file: path, line, ...(header === undefined ? {} : { header }) },
      found,
      expected,
      why,
    });
  const headers = (rows[0] ?? []).map((cell) => cell.trim());
  const header = (key: "date" | Key): string => block.columns?.[key] ?? key;
  const at = (key: "date" | Key): number => headers.indexOf(header(key));
  for (const key of ["date", "minutes"] as const)
    if (at(key) < 0)
      fault(
        1,
        `headers ${headers.join(", ") || "none"}`,
        `a column ${header(key)}`,
        "every session needs a date and minutes",
      );
  if (diagnostics.length > 0) return { diagnostics };

  const number = (row: readonly string[], line: number, key: Key): number | undefined => {
    const cell = (row[at(key)] ?? "").trim();
    if (at(key) < 0 || cell === "" || cell === "-") return undefined;
    const value = Number(block.decimal === "," ? cell.replace(",", ".") : cell);
    const [low, high] = RANGE[key];
    if (value >= low && value <= high) return value;
    fault(line, `"${cell}"`, `a number from ${low} to ${high}`, "a slip here moves the week's load", header(key));
    return undefined;
  };
  const sessions = rows.slice(1).flatMap((row, i): LoggedSession[] => {
    const line = lines[i + 1] ?? i + 2;
    if (row.every((cell) => cell.trim() === "")) return [];
    const date = (row[at("date")] ?? "").trim();
    if (!isDate(date)) {
      fault(line, `"${date}"`, "a date as 2026-03-02", "a session without a day belongs to no week", header("date"));
      return [];
    }
    const minutes = number(row, line, "minutes");
    if (minutes === undefined) {
      if ((row[at("minutes")] ?? "").trim() === "")
        fault(
          line,
          "no minutes",
          "a number from 1 to 1440",
          "a session without a duration has no load",
          header("minutes"),
        );
      return [];
    }
    const rest = {
      rating: number(row, line, "rpe"),
      distanceKm: number(row, line, "distance_km"),
      climbM: number(row, line, "climb_m"),
      heartRateBpm: number(row, line, "heart_rate_bpm"),
    };
    const known = Object.fromEntries(Object.entries(rest).filter(([, value]) => value !== undefined));
    return [{ date, minutes, ...known }];
  });
  return diagnostics.length > 0 ? { diagnostics } : { sessions, diagnostics };
}

const isDate = (text: string): boolean =>
  /^\d{4}-\d{2}-\d{2}$/.test(text) &&
  !Number.isNaN(Date.parse(text)) &&
  new Date(Date.parse(text)).toISOString().startsWith(text);
