/** The laboratory's own reference tables, from the files that lab.yaml names under norms. */
import type { Diagnostic } from "../kernel/diagnostic.js";
import type { Laboratory } from "../kernel/generated/laboratory.js";
import type { ReferenceTable } from "../kernel/generated/reference-table.js";
import { ownTableFaults } from "../norms/own-table.js";
import { readYaml } from "../read/yaml.js";
import type { Checker } from "../validate/checker.js";
import { validateDocument } from "../validate/visit.js";
import { readFile } from "./files.js";

export interface OwnTables {
  readonly tables: readonly ReferenceTable[];
  readonly diagnostics: readonly Diagnostic[];
}

/**
 * Tables to use beside the built-in ones. A faulty file is reported and not used: no client is placed by a table with
 * a slip in it. Throws for a file that is not there, as every reading of the practice does.
 */
export function laboratoryTables(
  root: string,
  laboratory: Laboratory,
  checker: Checker,
  builtIn: readonly ReferenceTable[],
): OwnTables {
  const taken = new Set(builtIn.map((table) => table.id));
  const tables: ReferenceTable[] = [];
  const diagnostics: Diagnostic[] = [];
  for (const file of laboratory.norms ?? []) {
    const document = readYaml(file, readFile(root, file).bytes);
    const shape = validateDocument("reference-table", document, checker);
    const faults = shape.some((d) => d.severity === "error")
      ? shape
      : [...shape, ...ownTableFaults(document, [...taken])];
    diagnostics.push(...faults);
    if (faults.some((d) => d.severity === "error")) continue;
    const table = document.value as ReferenceTable;
    taken.add(table.id);
    tables.push(table);
  }
  return { tables, diagnostics };
}
