/** Loads what the program brings to every visit: schemas, rules, tables. Each part only when asked for. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { RetestSet } from "../compare/known.js";
import type { Diagnostic } from "../kernel/diagnostic.js";
import type { Document } from "../kernel/document.js";
import type { EventProfile } from "../kernel/generated/event-profile.js";
import type { Laboratory } from "../kernel/generated/laboratory.js";
import type { ReferenceTable } from "../kernel/generated/reference-table.js";
import type { TypicalErrorTable } from "../kernel/generated/typical-error.js";
import type { Reference } from "../pipeline-parts.js";
import { readPairs } from "../read/retests.js";
import { type Checker, openChecker, type Schemas } from "../validate/checker.js";
import { readFile } from "./files.js";
import { filesNotNamed } from "./files-not-named.js";
import { PROGRAM } from "./freshness.js";
import { laboratoryProfiles } from "./own-profiles.js";
import { laboratoryTables } from "./own-tables.js";
import type { Practice } from "./practice.js";
import { programYaml } from "./program-yaml.js";
import { archivedRepeats, repeatedClients } from "./reliability-visits.js";

export function loadSchemas(): Schemas {
  const folder = join(PROGRAM, "schema");
  return readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".schema.json"))
    .sort()
    .map((file) => JSON.parse(readFileSync(join(folder, file), "utf8")) as Record<string, unknown>);
}

export const loadChecker = (): Promise<Checker> => openChecker(loadSchemas());

/** The YAML tables of a folder of the program, parsed; the tests prove each against its schema. */
function tablesIn<T>(folder: string): T[] {
  const path = join(PROGRAM, folder);
  return readdirSync(path)
    .filter((file) => file.endsWith(".yaml"))
    .sort()
    .map((file) => programYaml<T>(join(path, file)));
}

/** The laboratory's own retests, from the files lab.yaml names. A faulty file is reported, and counts for nothing. */
function laboratoryRetests(
  practice: Practice,
  laboratory: Laboratory,
): { sets: RetestSet[]; diagnostics: Diagnostic[] } {
  const diagnostics: Diagnostic[] = [];
  const sets = (laboratory.retests ?? []).flatMap((entry): RetestSet[] => {
    const reading = readPairs(entry.file, readFile(practice.root, entry.file).bytes);
    diagnostics.push(...reading.diagnostics);
    if (reading.diagnostics.length > 0) return [];
    return [
      {
        measure: entry.measure,
        pairs: reading.pairs,
        file: entry.file,
        from: entry.from ?? "the laboratory's own retests",
        ...(entry.days_between === undefined ? {} : { daysBetween: String(entry.days_between) }),
        ...(entry.mode === undefined ? {} : { conditions: { mode: entry.mode } }),
      },
    ];
  });
  return { sets, diagnostics };
}

export interface OpenedReference {
  readonly reference: Reference;
  /** Faults of the laboratory's retest files and tables: what is faulty counts for nothing. */
  readonly diagnostics: readonly Diagnostic[];
}

export const builtInTables = (): ReferenceTable[] => tablesIn<ReferenceTable>("src/norms/tables");

/** Everything a computing stage needs beside the visit: what the program brings, and what the laboratory adds. */
export async function openReference(practice: Practice, lab: Document): Promise<OpenedReference> {
  const { rules } = await import("../rules.generated.js");
  const laboratory = (lab.value ?? { waymark: "laboratory 1", name: "" }) as Laboratory;
  const checker = await loadChecker();
  const retests = laboratoryRetests(practice, laboratory);
  const builtIn = builtInTables();
  const builtInProfiles = tablesIn<EventProfile>("src/plan/profiles");
  const profiles = laboratoryProfiles(practice.root, laboratory, checker, builtInProfiles);
  const own = laboratoryTables(practice.root, laboratory, checker, builtIn);
  const base = { checker, rules, tables: [...builtIn, ...own.tables] };
  const repeats = archivedRepeats(practice) ?? (await fromVisits(practice, lab, base));
  return {
    reference: {
      ...base,
      publishedErrors: tablesIn<TypicalErrorTable>("src/compare/tables"),
      laboratoryRetests: [...retests.sets, ...repeats],
      eventProfiles: [...builtInProfiles, ...profiles.profiles],
    },
    diagnostics: [
      ...retests.diagnostics,
      ...own.diagnostics,
      ...profiles.diagnostics,
      ...filesNotNamed(practice.root, laboratory),
    ],
  };
}

/** Loaded only where a practice has such visits. */
const fromVisits = async (practice: Practice, lab: Document, base: Pick<Reference, "checker" | "rules" | "tables">) =>
  repeatedClients(practice).length === 0
    ? []
    : (await import("./reliability.js")).reliabilityRetests(practice, lab, base);
