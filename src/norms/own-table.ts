/** What is wrong with a laboratory's own reference table, beyond the schema, at its place in the file. */
import type { Diagnostic } from "../kernel/diagnostic.js";
import type { Document } from "../kernel/document.js";
import type { ReferenceTable } from "../kernel/generated/reference-table.js";
import { measureInfo } from "../kernel/measures.js";
import { faultsOf } from "./check-table.js";

/** `document` has passed the schema. `builtIn` are the ids that are taken. Empty when the table can be used. */
export function ownTableFaults(document: Document, builtIn: readonly string[]): readonly Diagnostic[] {
  const table = document.value as ReferenceTable;
  const fault = (key: string, found: string, expected: string, why: string): Diagnostic => ({
    code: "reference-table",
    severity: "error",
    at: document.place([key]),
    found,
    expected,
    why,
  });
  const name = document.file.replace(/^.*\//, "").replace(/\.ya?ml$/, "");
  const measure = measureInfo(table.measure);
  return [
    ...(table.id === name
      ? []
      : [
          fault(
            "id",
            table.id,
            `${name}, the file's name`,
            "the id is printed beside every number and must lead to the file",
          ),
        ]),
    ...(builtIn.includes(table.id)
      ? [
          fault(
            "id",
            table.id,
            "an id that no built-in table has",
            "two tables under one name cannot be told apart in a report",
          ),
        ]
      : []),
    ...(measure?.unit === undefined
      ? [fault("measure", table.measure, "the id of a measure with a unit", "the table would never be used")]
      : []),
    ...faultsOf(table).map((text) =>
      fault(
        text.startsWith("check") ? "checks" : table.values ? "values" : "kind",
        text,
        "rows that cover applies without gap or overlap and rise, and checks that come out",
        "a slip in a reference table puts every client in the wrong place",
      ),
    ),
  ];
}
