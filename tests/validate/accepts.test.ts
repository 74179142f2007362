/** The quick answer against the schema compiler (Ajv): what is quickly accepted, the compiler finds no fault in. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { type DocumentKind, openChecker, thoroughChecker } from "../../src/validate/checker.js";
import { FUZZ_RUNS } from "../hostile/fuzz-runs.js";
import fc from "../tools/properties.js";
import { schemas } from "./practice-tree.js";

const KINDS: Readonly<Record<string, DocumentKind>> = {
  "session.yaml": "session",
  "client.yaml": "client",
  "lab.yaml": "laboratory",
};
const documents = readdirSync("examples", { recursive: true, encoding: "utf8" })
  .sort()
  .flatMap((file) => {
    const kind = KINDS[file.split("/").at(-1) ?? ""];
    return kind === undefined ? [] : [{ kind, value: parse(readFileSync(join("examples", file), "utf8")) as unknown }];
  });
const tables = readdirSync("src/norms/tables").map((file) => ({
  kind: "reference-table" as const,
  value: parse(readFileSync(join("src/norms/tables", file), "utf8")) as unknown,
}));
const all = [...documents, ...tables];

/** Every place in a value, as a path. */
function places(value: unknown, path: readonly (string | number)[] = []): (readonly (string | number)[])[] {
  if (typeof value !== "object" || value === null) return [path];
  return [path, ...Object.entries(value).flatMap(([key, inner]) => places(inner, [...path, key]))];
}
function replaced(value: unknown, path: readonly (string | number)[], by: unknown): unknown {
  const [step, ...rest] = path;
  if (step === undefined) return by;
  const copy = Array.isArray(value) ? [...value] : { ...(value as object) };
  const at = copy as Record<string, unknown>;
  if (by === ABSENT && rest.length === 0 && Array.isArray(copy)) copy.splice(Number(step), 1);
  else if (by === ABSENT && rest.length === 0) delete at[step];
  else at[step] = replaced(at[step], rest, by);
  return copy;
}
const at = (value: unknown, path: readonly (string | number)[]): unknown =>
  path.reduce((part, step) => (part as Record<string, unknown>)[step], value);
const ABSENT = Symbol("absent");

describe("the quick answer of the checker", () => {
  it("accepts examples without loading the compiler, and the compiler agrees", async () => {
    const quick = await openChecker(schemas);
    const thorough = thoroughChecker(schemas);
    for (const { kind, value } of all) expect(quick.check(kind, value)).toEqual(thorough.check(kind, value));
  });

  it("gives what the compiler gives for any edited document", async () => {
    const quick = await openChecker(schemas);
    const thorough = thoroughChecker(schemas);
    const other = fc.constantFrom<unknown[]>(
      ...[
        ABSENT,
        null,
        true,
        0,
        -1,
        1e9,
        0.5,
        3.7,
        "",
        "x",
        "2026-02-30",
        "2026-03-02",
        "25:00",
        "08:10",
        "c-017",
        [],
        [1],
        ["a", "a"],
        {},
        { a: 1 },
        "y".repeat(3000),
      ],
    );
    const key = fc.constantFrom("sexx", "mass_kg", "confirmed", "note", "toString");
    let clean = 0;
    fc.assert(
      fc.property(fc.constantFrom(...all), fc.nat(), other, fc.option(key), (document, n, by, extra) => {
        const paths = places(document.value);
        const path = paths[n % paths.length] as readonly (string | number)[];
        let value = by === ABSENT && path.length === 0 ? {} : replaced(document.value, path, by);
        if (extra !== null && path.length > 0)
          value = replaced(document.value, [...path.slice(0, -1), extra], by === ABSENT ? 1 : by);
        const found = thorough.check(document.kind, value);
        expect(quick.check(document.kind, value)).toEqual(found);
        if (found.errors.length + found.unusual.length === 0) clean++;
      }),
      { seed: 11, numRuns: 1500 * FUZZ_RUNS },
    );
    expect(clean).toBeGreaterThan(100);
  });

  it("finds the unusual numbers that the compiler finds, in its order, without it", async () => {
    const quick = await openChecker(schemas);
    const thorough = thoroughChecker(schemas);
    const numbers = (value: unknown) => places(value).filter((path) => typeof at(value, path) === "number");
    let several = 0;
    fc.assert(
      fc.property(
        fc.constantFrom(...documents),
        fc.array(fc.tuple(fc.nat(), fc.double({ min: 0.5, max: 1.6, noNaN: true })), { minLength: 1, maxLength: 6 }),
        ({ kind, value }, edits) => {
          const places = numbers(value);
          if (places.length === 0) return;
          let edited = value;
          for (const [n, factor] of edits) {
            const path = places[n % places.length] as readonly (string | number)[];
            const number = (at(value, path) as number) * factor;
            edited = replaced(edited, path, Number.isInteger(at(value, path)) ? Math.round(number) : number);
          }
          const found = thorough.check(kind, edited);
          expect(quick.check(kind, edited)).toEqual(found);
          if (found.errors.length === 0 && found.unusual.length > 1) several++;
        },
      ),
      { seed: 12, numRuns: 1000 * FUZZ_RUNS },
    );
    expect(several).toBeGreaterThan(50);
  });
});
