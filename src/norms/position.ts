/** Where a value stands among other people, in the unit of the measure. */
import type { ReferenceTable } from "../kernel/generated/reference-table.js";
import type { NormPosition } from "../kernel/measure.js";
import { normalQuantile } from "../kernel/normal.js";
import { refusals } from "./applies.js";
import { lmsFor } from "./lms-parameters.js";
import { lmsValue } from "./lms-value.js";
import { locate } from "./locate.js";
import type { Person } from "./person.js";
import { acrossOf, bandOf, bandsFor, cell, pointsOf } from "./rows.js";
import { trustedRange } from "./trusted-range.js";
import * as words from "./words.js";

/**
 * The position of a value (in the measure's unit) in a table; `notGiven` with the reasons where the table does not
 * cover the person. Percentiles lie within what the source prints, beyond it the note says "below" or "above".
 */
export function positionIn(table: ReferenceTable, person: Person, value: number): NormPosition {
  const scale = table.scale ?? 1;
  return inMeasureUnit(locate(table, person, value * scale), scale);
}

/**
 * The position in the neighbouring age band, for a person within one year of the boundary; undefined elsewhere and
 * where the table ends. A birthday moves a percentile by tens of points in some tables, and both readers and retests
 * must see that coming.
 */
export function neighbourIn(table: ReferenceTable, person: Person, value: number): NormPosition | undefined {
  if (refusals(table, person).length > 0) return undefined;
  const band = bandOf(table, person);
  if (band === undefined) return undefined;
  const bands = bandsFor(table, person.sex);
  const other =
    person.ageYears - band.from < 1
      ? bands.find((b) => b.to === band.from - 1)
      : band.to + 1 - person.ageYears <= 1
        ? bands.find((b) => b.from === band.to + 1)
        : undefined;
  if (other === undefined) return undefined;
  const found = positionIn(table, { ...person, ageYears: other.from }, value);
  if (found.notGiven !== undefined) return undefined;
  return { ...found, note: found.note ? `${words.secondBand()} ${found.note}` : words.secondBand() };
}

/** Percentiles that a strip of a distribution is drawn from. */
export const STRIP = [1, 5, 10, 20, 25, 30, 40, 50, 60, 70, 75, 80, 90, 95, 99] as const;

const STRIP_SCORES = STRIP.map((p) => [p, normalQuantile(p / 100)] as const);

/**
 * Percentiles and their values in the measure's unit for the person's group, rising: the printed ones of a
 * percentile table, those of STRIP that a distribution is trusted for. Empty where the table gives none.
 */
export function percentileCurve(table: ReferenceTable, person: Person): readonly (readonly [number, number])[] {
  if (refusals(table, person).length > 0) return [];
  const scale = table.scale ?? 1;
  const at = valuesAt(table, person);
  return at.map(([percentile, value]) => [percentile, value / scale] as const);
}

function valuesAt(table: ReferenceTable, person: Person): readonly (readonly [number, number])[] {
  const band = bandOf(table, person);
  if (table.kind === "percentile-table" || table.kind === "quantile-bands")
    return band === undefined ? [] : pointsOf(table, band);
  const [low, high] = trustedRange(table);
  const z = STRIP_SCORES.filter(([p]) => p >= low && p <= high);
  if (table.kind === "mean-sd" && band !== undefined) {
    const mean = cell(table, band.row, acrossOf(table, person)?.column ?? "mean");
    const sd = cell(table, band.row, "sd");
    return mean === undefined || sd === undefined ? [] : z.map(([p, score]) => [p, mean + score * sd] as const);
  }
  if (table.kind !== "lms" && table.kind !== "lms-spline") return [];
  const lms = lmsFor(table, person);
  return lms === undefined ? [] : z.map(([p, score]) => [p, lmsValue(score, lms.L, lms.M, lms.S)] as const);
}

function inMeasureUnit(position: NormPosition, scale: number): NormPosition {
  if (scale === 1) return position;
  const { predicted, lowerLimit, median, ...rest } = position;
  return {
    ...rest,
    ...(predicted === undefined ? {} : { predicted: predicted / scale }),
    ...(lowerLimit === undefined ? {} : { lowerLimit: lowerLimit / scale }),
    ...(median === undefined ? {} : { median: median / scale }),
  };
}
