/**
 * The schema of results.yaml: every committed results file keeps it, each kind of entry occurs in one, and what a hand
 * might do to a results file breaks it.
 */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { readResults } from "../../src/results/read.js";
import { ANNOTATIONS } from "../../src/validate/checker.js";
import { schemas } from "../validate/practice-tree.js";

const ajv = new Ajv2020({ strict: true, strictTypes: false, strictRequired: false, allowUnionTypes: true });
for (const keyword of [...ANNOTATIONS, "usual"]) ajv.addKeyword({ keyword, valid: true });
for (const format of ["date", "time", "date-time"]) ajv.addFormat(format, /^\d{4}-\d\d-\d\d/);
for (const schema of schemas) ajv.addSchema(schema, String(schema.$id));
const keeps = ajv.getSchema("https://waymark.invalid/schema/results.schema.json");
if (!keeps) throw new Error("no schema of results");

const root = join(import.meta.dirname, "../../examples");
const files = readdirSync(root, { recursive: true, encoding: "utf8" })
  .filter((file) => file.endsWith("results.yaml"))
  .sort();
type Block = Record<string, unknown>;
const documentOf = (file: string) => parse(readFileSync(join(root, file), "utf8")) as Record<string, Block>;
const faults = (document: unknown) =>
  keeps(document) ? [] : (keeps.errors ?? []).map((e) => `${e.instancePath} ${e.message} ${JSON.stringify(e.params)}`);

describe("schema of results", () => {
  for (const file of files) it(`holds for ${file}`, () => expect(faults(documentOf(file))).toEqual([]));

  it("is tried on every kind of entry", () => {
    const kinds = files.flatMap((file) =>
      readResults(readFileSync(join(root, file), "utf8")).entries.map((entry) => entry.kind),
    );
    expect([...new Set(kinds)].sort()).toEqual(["change", "judgement", "not given", "quantity", "remark", "table"]);
  });

  const first = files.find((file) => documentOf(file).body_mass) ?? "";
  const breaks: [string, (document: Record<string, Block>) => void][] = [
    ["a number without where it is from", (d) => delete d.body_mass?.formula],
    ["a number as a word", (d) => Object.assign(d.body_mass ?? {}, { value: "about 72" })],
    ["a number with two origins", (d) => Object.assign(d.body_mass ?? {}, { from: "session.yaml size.mass_kg" })],
    ["a digest cut short", (d) => Object.assign((d.sources as unknown as Block[])[0] ?? {}, { sha256: "9692cb" })],
    ["a reason left empty", (d) => Object.assign(d, { vo2_peak: { not_given: "" } })],
    ["a key nobody writes", (d) => Object.assign(d.body_mass ?? {}, { valeu: 72 })],
    ["another format", (d) => Object.assign(d, { waymark: "results 2" })],
    ["a formula without its revision", (d) => Object.assign(d.body_mass_index ?? {}, { formula: "body-mass-index" })],
  ];
  it.each(breaks)("refuses %s", (_, change) => {
    const document = documentOf(first);
    change(document);
    expect(faults(document)).not.toEqual([]);
  });
});
