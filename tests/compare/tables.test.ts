/** Published errors: valid by schema, every check holds, every id agrees with its file. */
import { readdirSync, readFileSync } from "node:fs";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { errorModelFor } from "../../src/compare/error-model.js";
import { modelOf } from "../../src/compare/published-error.js";
import { measureInfo } from "../../src/kernel/measures.js";
import { nothingKnown, publishedErrors, visit } from "./visits.js";

const validate = new Ajv2020({ allErrors: true, strict: false }).compile(
  JSON.parse(readFileSync("schema/typical-error.schema.json", "utf8")),
);
const files = readdirSync("src/compare/tables").sort();

describe("published errors", () => {
  it("have ids equal to their files", () => {
    expect(publishedErrors.map((t) => `${t.id}.yaml`)).toEqual(files);
    expect(files.length).toBeGreaterThanOrEqual(10);
  });

  for (const table of publishedErrors)
    describe(table.id, () => {
      it("is valid by its schema", () => {
        validate(table);
        expect(validate.errors ?? []).toEqual([]);
      });

      it("gives an error for each row in the form the row needs", () => {
        for (const row of table.rows) {
          expect(row.statistic === "uptake-line" ? row.intercept : row.value).toBeGreaterThan(0);
          expect(modelOf(table, row).errorAt(40)).toBeGreaterThan(0);
        }
      });

      for (const check of table.checks)
        it(`${check.measure} at ${check.at} varies by ${check.expect}: ${check.from}`, () => {
          const person = {
            ...visit("2026-03-02", []),
            sex: check.sex ?? table.applies.sex?.[0] ?? ("female" as const),
            ageYears: (table.applies.age_years ?? [40])[0] as number,
            conditions: { mode: table.applies.mode?.[0] ?? "cycle" },
          };
          const unit = measureInfo(check.measure)?.unit ?? table.rows[0].unit ?? "";
          const model = errorModelFor({ measure: check.measure, unit }, person, {
            ...nothingKnown,
            publishedErrors: [table],
          });
          const error = model?.errorAt(check.at) as number;
          const inUnit = model?.scale === "log" ? check.at * Math.expm1(error) : error;
          expect(Math.abs(inUnit - check.expect), `got ${inUnit}`).toBeLessThanOrEqual(check.tolerance);
        });
    });

  it("are refused for people and modes they do not cover", () => {
    const ask = (more: object) =>
      errorModelFor(
        { measure: "vo2_peak", unit: "L/min" },
        { ...visit("2026-03-02", []), ...more },
        { ...nothingKnown, publishedErrors },
      )?.from;
    expect(ask({ conditions: { mode: "cycle" } })).toContain("2018");
    expect(ask({ conditions: { mode: "treadmill" } })).toContain("1982");
    expect(ask({ conditions: { mode: "rowing" } })).toBeUndefined();
    expect(ask({ conditions: {} })).toBeUndefined();
    expect(ask({ ageYears: 17.9 })).toBeUndefined();
    expect(ask({ ageYears: 80.9 })).toContain("2018");
    expect(ask({ ageYears: 81 })).toBeUndefined();
  });

  it("say so where they are from memory", () => {
    const model = errorModelFor({ measure: "fat_mass", unit: "kg" }, visit("2026-03-02", []), {
      ...nothingKnown,
      publishedErrors,
    });
    expect(model?.from).toContain("from memory, to be checked against the source");
  });
});
