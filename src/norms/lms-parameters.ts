/** L, M and S of a table at a person's age: straight lines between the printed rows, never past the first or last. */
import type { ReferenceTable } from "../kernel/generated/reference-table.js";
import type { Person } from "./person.js";
import { columnsOf, type Row, rowsFor } from "./rows.js";

export interface Lms {
  readonly L: number;
  readonly M: number;
  readonly S: number;
}

/** Undefined where the age lies outside the rows, or a row lacks a number. */
export function lmsFor(table: ReferenceTable, person: Person): Lms | undefined {
  return table.kind === "lms-spline" ? fromSpline(table, person) : fromRows(table, person);
}

function fromRows(table: ReferenceTable, person: Person): Lms | undefined {
  const columns = columnsOf(table);
  const at = (name: string) => interpolated(rowsFor(table, person.sex), columns, name, person.ageYears);
  const M = at("M");
  const L = at("L");
  // Some papers print sigma, the SD in the measure's unit, where others print S = sigma/M.
  const S = columns.includes("S") ? at("S") : interpolatedSigma(table, person);
  return L === undefined || M === undefined || S === undefined ? undefined : { L, M, S };
}

function interpolatedSigma(table: ReferenceTable, person: Person): number | undefined {
  const columns = columnsOf(table);
  const sigma = columns.indexOf("sigma");
  const median = columns.indexOf("M");
  const rows = rowsFor(table, person.sex).map((row): Row => [...row, Number(row[sigma]) / Number(row[median])]);
  return interpolated(rows, [...columns, "S"], "S", person.ageYears);
}

/** M = exp(M1 + M2·ln stature + M3·ln age + Mspline), S = exp(S1 + S2·ln age + Sspline), L = L1 + L2·ln age. */
function fromSpline(table: ReferenceTable, person: Person): Lms | undefined {
  const of = table.coefficients?.[person.sex];
  const stature = person.facts.stature_cm;
  const rows = rowsFor(table, person.sex);
  const spline = (name: string) => interpolated(rows, columnsOf(table), name, person.ageYears);
  const m = spline("Mspline");
  const s = spline("Sspline");
  if (of === undefined || typeof stature !== "number" || m === undefined || s === undefined) return undefined;
  const lnAge = Math.log(person.ageYears);
  return {
    M: Math.exp(of.M[0] + of.M[1] * Math.log(stature) + of.M[2] * lnAge + m),
    S: Math.exp(of.S[0] + of.S[1] * lnAge + s),
    L: of.L[0] + of.L[1] * lnAge,
  };
}

function interpolated(rows: readonly Row[], columns: readonly string[], name: string, age: number): number | undefined {
  const x = columns.indexOf("age");
  const y = columns.indexOf(name);
  const only = rows[0];
  if (rows.length === 1 && only?.[x] === age && typeof only[y] === "number") return only[y];
  for (let i = 1; i < rows.length; i++) {
    const [a, b] = [rows[i - 1], rows[i]];
    const [a1, a2, v1, v2] = [a?.[x], b?.[x], a?.[y], b?.[y]];
    if (typeof a1 !== "number" || typeof a2 !== "number" || typeof v1 !== "number" || typeof v2 !== "number") continue;
    if (age >= a1 && age <= a2) return v1 + ((v2 - v1) * (age - a1)) / (a2 - a1);
  }
  return undefined;
}
