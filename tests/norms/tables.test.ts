/** One test over all built-in reference tables. The printed rows themselves are the outside source. */
import { readFileSync } from "node:fs";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { measureInfo } from "../../src/kernel/measures.js";
import { faultsOf } from "../../src/norms/check-table.js";
import type { Person } from "../../src/norms/person.js";
import { percentileCurve, positionIn } from "../../src/norms/position.js";
import { acrossBands, bandsFor, cell, columnsOf, pointsOf, rowsFor } from "../../src/norms/rows.js";
import { builtInTables, builtInTableTexts } from "./built-in-tables.js";
import { personFor } from "./person-for.js";

const tables = builtInTables();
const ajv = new Ajv2020({ allErrors: true, strict: true, strictTypes: false, strictRequired: false });
const validate = ajv.compile(JSON.parse(readFileSync("schema/reference-table.schema.json", "utf8")));

it("has a table for each kind the engine knows", () => {
  const kinds = [...new Set(tables.map((t) => t.kind))].sort();
  expect(kinds).toEqual([
    "class-limits",
    "classes",
    "formula",
    "lms",
    "lms-spline",
    "mean-only",
    "mean-sd",
    "percentile-table",
    "quantile-bands",
    "regression",
  ]);
});

it("has ids that equal their file names", () => {
  expect(tables.map((t) => `${t.id}.yaml`)).toEqual(builtInTableTexts().map(({ file }) => file));
});

for (const table of tables)
  describe(table.id, () => {
    it("is valid by the schema", () => {
      validate(table);
      expect(validate.errors ?? []).toEqual([]);
    });
    it("covers its range without gap or overlap, rises, and its checks come out", () => {
      expect(faultsOf(table)).toEqual([]);
    });
    it("belongs to a measure of the catalogue", () => {
      for (const id of [table.measure, ...(table.also ?? [])]) {
        const unit = measureInfo(id)?.unit;
        expect(unit, id).toBeDefined();
        // Either the same unit, or a factor between the two.
        expect(unit === table.unit, `${unit} and ${table.unit}`).toBe(table.scale === undefined);
      }
    });
    it("reproduces every printed row", () => {
      for (const sex of table.applies.sex) {
        const scale = table.scale ?? 1;
        const at = (ageYears: number, x: number, facts: Person["facts"] = {}) => {
          const person = personFor(table, sex, ageYears);
          return positionIn(table, { ...person, facts: { ...person.facts, ...facts } }, x / scale);
        };
        if (table.kind === "percentile-table")
          for (const band of bandsFor(table, sex))
            for (const [percentile, value] of pointsOf(table, band))
              for (const age of [band.from, band.to + 0.99])
                expect(at(age, value).percentile, `${sex} ${band.from} p${percentile}`).toBeCloseTo(percentile, 9);
        if (table.kind === "mean-sd")
          for (const band of bandsFor(table, sex)) {
            const columns = table.across
              ? acrossBands(table).map((b) => ({ column: b.column, facts: { [table.across?.fact ?? ""]: b.from } }))
              : [{ column: "mean", facts: {} }];
            for (const { column, facts } of columns) {
              const mean = cell(table, band.row, column);
              const sd = cell(table, band.row, "sd");
              if (mean === undefined || sd === undefined) continue;
              expect(at(band.from, mean, facts).percentile).toBeCloseTo(50, 9);
              // Φ(1) = 0.8413 and Φ(−1) = 0.1587, any printed normal table.
              expect(at(band.to, mean + sd, facts).percentile).toBeCloseTo(84.13, 2);
              expect(at(band.to, mean - sd, facts).percentile).toBeCloseTo(15.87, 2);
            }
          }
        if (table.kind === "lms")
          for (const row of rowsFor(table, sex)) {
            const [age, M] = [cell(table, row, "age") as number, cell(table, row, "M") as number];
            // A last row beyond the range is only there to interpolate towards.
            if (age > (table.applies.age_years[1] as number)) continue;
            expect(at(age, M).percentile).toBeCloseTo(50, 9);
            expect(at(age, M).median).toBeCloseTo(M / scale, 12);
          }
        if (table.kind === "lms-spline")
          for (const row of rowsFor(table, sex)) {
            const age = cell(table, row, "age") as number;
            const median = at(age, 1).predicted as number;
            expect(at(age, median).percentile).toBeCloseTo(50, 9);
            expect(at(age, median).percentPredicted).toBeCloseTo(100, 9);
          }
      }
    });
    it("gives a percentile curve that rises and agrees with the position", () => {
      for (const sex of table.applies.sex) {
        const [low, high] = table.applies.age_years as [number, number];
        const person = personFor(table, sex, (low + high) / 2);
        const curve = percentileCurve(table, person);
        for (let i = 1; i < curve.length; i++)
          expect(curve[i]?.[1]).toBeGreaterThanOrEqual(curve[i - 1]?.[1] as number);
        if (table.kind === "quantile-bands") continue;
        const middle = curve.slice(1, -1);
        for (const [percentile, value] of middle)
          expect(positionIn(table, person, value).percentile).toBeCloseTo(percentile, 6);
      }
    });
    it("has no column that nothing reads", () => {
      const known =
        /^(age_from|age_to|p\d+|mean|sd|n|age|M|S|L|sigma|Mspline|Sspline|class|lower|upper|\d+-\d+|(>=|>|<=|<) .+)$/;
      expect(columnsOf(table).filter((column) => !known.test(column))).toEqual([]);
    });
  });
