/** The training log a session names, looked up in the visit's folder. */
import type { Diagnostic } from "../kernel/diagnostic.js";
import type { Session, TrainingLog } from "../kernel/generated/session.js";
import { nearest } from "../kernel/near.js";
import type { LoggedSession } from "../kernel/training-log.js";
import type { Code } from "./codes.js";
import { fileNameFault } from "./file-name.js";
import type { VisitTexts } from "./visit.js";
import { type Words, words } from "./words.js";

/** How a log becomes sessions; read/ has it, and pipeline.ts hands it over. */
export type ReadLog = (
  block: TrainingLog,
  content: string | Uint8Array,
  path: string,
) => { readonly sessions?: readonly LoggedSession[]; readonly diagnostics: readonly Diagnostic[] };

export interface LogFound {
  readonly faults: readonly Diagnostic[];
  readonly sessions?: readonly LoggedSession[];
}

export function logOf(texts: VisitTexts, readLog: ReadLog | undefined): LogFound {
  const { session, seriesTexts } = texts;
  const block = (session.value as Partial<Session> | undefined)?.training_log;
  if (typeof block?.file !== "string" || readLog === undefined) return { faults: [] };
  const { file } = block;
  const report = (code: Code, why: Words) => ({
    faults: [{ code, severity: "error" as const, at: session.place(["training_log", "file"]), ...why }],
  });
  const fault = fileNameFault(file);
  if (fault !== undefined) return report("series-path", words.seriesPath(file, fault));
  const content = Object.hasOwn(seriesTexts, file) ? seriesTexts[file] : undefined;
  if (content === undefined)
    return report("series-missing", words.seriesMissing(file, nearest(file, texts.folder ?? [])));
  const folder = session.file.split("/").slice(0, -1).join("/");
  const reading = readLog(block, content, folder ? `${folder}/${file}` : file);
  return { faults: reading.diagnostics, ...(reading.sessions ? { sessions: reading.sessions } : {}) };
}
