/**
 * What is wrong with a reference table beyond its schema: rows that leave a gap or overlap, percentiles that do not
 * rise, a check that does not come out. The same for built-in tables (a test) and a laboratory's own (when read).
 */
import type { ReferenceTable } from "../kernel/generated/reference-table.js";
import type { NormPosition } from "../kernel/measure.js";
import { cellFaults } from "./check-cells.js";
import { classOf } from "./classes.js";
import { equations } from "./equations.js";
import { locate } from "./locate.js";
import type { Person } from "./person.js";
import { acrossBands, bandsFor, cell, columnsOf, pointsOf, rowsFor } from "./rows.js";

const BANDED: readonly ReferenceTable["kind"][] = [
  "percentile-table",
  "quantile-bands",
  "mean-sd",
  "mean-only",
  "class-limits",
];
const CURVES: readonly ReferenceTable["kind"][] = ["lms", "lms-spline"];

/** Sentences, one a fault; empty for a sound table that has passed the schema. */
export function faultsOf(table: ReferenceTable): readonly string[] {
  const shape = shapeFaults(table);
  if (shape.length > 0) return shape;
  return [
    ...table.applies.sex.flatMap((sex) => [
      ...(BANDED.includes(table.kind) ? bandFaults(table, sex) : []),
      ...(CURVES.includes(table.kind) ? curveFaults(table, sex) : []),
      ...(table.kind === "classes" ? classFaults(table, sex) : []),
    ]),
    ...(table.across === undefined ? [] : acrossFaults(table)),
    ...table.checks.flatMap((check, i) =>
      checkFault(table, i).map((fault) => `check ${i + 1} (${check.from}): ${fault}`),
    ),
  ];
}

function shapeFaults(table: ReferenceTable): readonly string[] {
  const faults: string[] = [];
  const columns = columnsOf(table);
  const need = (names: readonly string[]) =>
    names.filter((n) => !columns.includes(n)).map((n) => faults.push(`the column ${n} is missing`));
  if (BANDED.includes(table.kind)) need(["age_from", "age_to"]);
  if (table.kind === "mean-sd") need(table.across ? ["sd"] : ["mean", "sd"]);
  if (table.kind === "mean-only") need(["mean"]);
  if (table.kind === "lms") need(["age", "M", columns.includes("sigma") ? "sigma" : "S", "L"]);
  if (table.kind === "lms-spline") need(["age", "Mspline", "Sspline"]);
  if (table.kind === "classes") need(["class", "lower", "upper"]);
  if (table.kind === "regression" && table.terms === undefined) faults.push("a regression needs terms");
  if (table.kind === "formula" && equations[table.formula ?? ""] === undefined)
    faults.push(`the equation ${table.formula ?? "(none)"} is not known`);
  if ((table.kind === "classes" || table.kind === "class-limits") && table.guideline === undefined)
    faults.push("classes need the guideline's name");
  for (const sex of table.applies.sex) {
    if (table.columns !== undefined && rowsFor(table, sex).length === 0) faults.push(`there are no rows for ${sex}`);
    if (table.kind === "lms-spline" && table.coefficients?.[sex] === undefined)
      faults.push(`no coefficients for ${sex}`);
    for (const row of rowsFor(table, sex))
      if (row.length !== columns.length)
        faults.push(`${sex}: the row that begins ${row[0]} has ${row.length} cells for ${columns.length} columns`);
  }
  return faults.length > 0 ? faults : table.applies.sex.flatMap((sex) => cellFaults(table, sex));
}

function bandFaults(table: ReferenceTable, sex: Person["sex"]): readonly string[] {
  const [low, high] = table.applies.age_years;
  const bands = bandsFor(table, sex);
  const faults: string[] = [];
  let expected = low as number;
  for (const band of bands) {
    if (band.from !== expected) faults.push(`${sex}: a row begins at ${band.from} years where ${expected} was due`);
    expected = band.to + 1;
    const values =
      table.kind === "class-limits"
        ? band.row.slice(2).filter((c) => typeof c === "number")
        : pointsOf(table, band).map((point) => point[1]);
    for (let i = 1; i < values.length; i++)
      if ((values[i] as number) < (values[i - 1] as number))
        faults.push(`${sex}, ${band.from} to ${band.to}: ${values[i]} stands after ${values[i - 1]} and is lower`);
  }
  if (expected !== (high as number) + 1) faults.push(`${sex}: the rows end before ${high} years, or go beyond`);
  return faults;
}

function curveFaults(table: ReferenceTable, sex: Person["sex"]): readonly string[] {
  const [low, high] = table.applies.age_years as [number, number];
  const ages = rowsFor(table, sex).map((row) => cell(table, row, "age"));
  const [first, last] = [ages[0], ages[ages.length - 1]];
  const faults: string[] = [];
  if (first === undefined || last === undefined || first > low || last < high)
    faults.push(`${sex}: the rows go from ${first} to ${last} years, but the table says ${low} to ${high}`);
  if (ages.some((age, i) => i > 0 && !((age ?? Number.NaN) > (ages[i - 1] ?? Number.NaN))))
    faults.push(`${sex}: the ages of the rows do not rise`);
  return faults;
}

/** Every limit, and a hair to both sides of it, must fall in one class. */
function classFaults(table: ReferenceTable, sex: Person["sex"]): readonly string[] {
  const limits = rowsFor(table, sex)
    .flatMap((row) => [row[1], row[2]])
    .filter((limit) => typeof limit === "string")
    .map((limit) => Number(limit.split(" ")[1]));
  const step = 10 ** -(table.compare_decimals ?? 4);
  const person: Person = { sex, ageYears: table.applies.age_years[0] as number, facts: {} };
  return limits
    .flatMap((limit) => [limit - step, limit, limit + step])
    .filter((x) => classOf(table, person, x) === undefined)
    .map((x) => `${sex}: no class holds ${x}`);
}

function acrossFaults(table: ReferenceTable): readonly string[] {
  const bands = acrossBands(table);
  const range = table.across === undefined ? undefined : table.applies[table.across.fact];
  const [first, last] = [bands[0], bands[bands.length - 1]];
  const gap = bands.find((band, i) => i > 0 && band.from !== (bands[i - 1]?.to ?? 0) + 1);
  return [
    ...(gap === undefined ? [] : [`the column ${gap.column} does not follow on the one before`]),
    ...(first?.from === range?.[0] && last?.to === range?.[1]
      ? []
      : ["the columns do not cover the range it applies to"]),
  ];
}

function checkFault(table: ReferenceTable, index: number): readonly string[] {
  const check = table.checks[index];
  if (check === undefined) return [];
  const { sex, age_years: ageYears, value, ...facts } = check.given;
  const found = locate(table, { sex, ageYears, facts: facts as Person["facts"] }, value);
  const tolerance = check.tolerance ?? 0.05;
  return Object.entries(check.expect).flatMap(([key, expected]) => {
    const got = found[key as keyof NormPosition];
    const same =
      typeof expected === "number"
        ? typeof got === "number" && Math.abs(got - expected) <= tolerance
        : key === "category"
          ? got === `${table.guideline ?? table.title}: ${expected}`
          : typeof got === "string" && got.includes(String(expected));
    return same ? [] : [`${key} should be ${expected}, but is ${got ?? found.notGiven ?? "not given"}`];
  });
}
