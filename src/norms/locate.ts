/** Where a value stands in one table, in the table's own unit. One function a kind of table. */
import { OutOfRange } from "../kernel/formula.js";
import type { ReferenceTable } from "../kernel/generated/reference-table.js";
import type { NormPosition } from "../kernel/measure.js";
import { groupOf, refusals } from "./applies.js";
import { classOf } from "./classes.js";
import { equations } from "./equations.js";
import { lmsFor } from "./lms-parameters.js";
import { lmsValue } from "./lms-value.js";
import { lmsZ } from "./lms-z.js";
import { percentileLinear } from "./percentile-linear.js";
import type { Person } from "./person.js";
import { sumOfTerms } from "./regression.js";
import { acrossOf, type Band, bandOf, cell, pointsOf } from "./rows.js";
import { standardScore } from "./standard-score.js";
import { percentileOf, sideOf } from "./trusted-range.js";
import * as words from "./words.js";

/** The 5th percentile as lung-function statements print it. */
const LOWER_LIMIT_Z = -1.645;

/** The position, or `notGiven` with every reason. Never throws for a value or person out of range. */
export function locate(table: ReferenceTable, person: Person, x: number): NormPosition {
  const reasons = refusals(table, person);
  if (reasons.length > 0) return { table: table.id, notGiven: reasons.join("; ") };
  try {
    return KINDS[table.kind](table, person, x);
  } catch (error) {
    if (!(error instanceof OutOfRange)) throw error;
    return { table: table.id, notGiven: error.message };
  }
}

type Locate = (table: ReferenceTable, person: Person, x: number) => NormPosition;

const inBand = (run: (table: ReferenceTable, person: Person, x: number, band: Band) => NormPosition): Locate => {
  return (table, person, x) => {
    const band = bandOf(table, person);
    if (band === undefined) return { table: table.id, notGiven: words.noRow() };
    return run(table, person, x, band);
  };
};
const agesOf = (band: Band) => `${band.from} to ${band.to} years`;
const median = (value: number | undefined) => (value === undefined ? {} : { median: value });
const noted = (table: ReferenceTable, note?: string) => {
  const all = [note, table.caution].filter((text) => text !== undefined);
  return all.length === 0 ? {} : { note: all.join(" ") };
};

const percentileTable = inBand((table, person, x, band) => {
  const points = pointsOf(table, band);
  const [low, high] = [points[0], points[points.length - 1]];
  if (low === undefined || high === undefined) return { table: table.id, notGiven: words.noRow() };
  const base = {
    table: table.id,
    group: groupOf(table, person, agesOf(band)),
    ...median(cell(table, band.row, "p50")),
  };
  if (x < low[1]) return { ...base, ...noted(table, words.belowPercentile(low[0])) };
  if (x > high[1]) return { ...base, ...noted(table, words.abovePercentile(high[0])) };
  return { ...base, percentile: percentileLinear(points, x), ...noted(table, words.linear()) };
});

const quantileBands = inBand((table, person, x, band) => {
  const points = pointsOf(table, band);
  const error = table.reading_error ?? 0;
  return {
    table: table.id,
    group: groupOf(table, person, agesOf(band)),
    ...median(cell(table, band.row, "p50")),
    ...noted(table, words.quantileBand(points, x - error, x + error)),
  };
});

const meanSd = inBand((table, person, x, band) => {
  const across = acrossOf(table, person);
  if (table.across !== undefined && across === undefined) return { table: table.id, notGiven: words.noColumn() };
  const mean = cell(table, band.row, across?.column ?? "mean");
  const sd = cell(table, band.row, "sd");
  if (mean === undefined || sd === undefined) return { table: table.id, notGiven: words.notPrinted() };
  const z = standardScore(x, mean, sd);
  const ages = across === undefined ? agesOf(band) : `${agesOf(band)}, ${across.from} to ${across.to} cm`;
  return {
    table: table.id,
    group: groupOf(table, person, ages),
    ...percentileOf(table, z),
    z,
    ...median(cell(table, band.row, "p50")),
    ...noted(table, words.normal(mean, sd, sideOf(table, z))),
  };
});

const meanOnly = inBand((table, person, x, band) => {
  const mean = cell(table, band.row, "mean");
  if (mean === undefined) return { table: table.id, notGiven: words.notPrinted() };
  return {
    table: table.id,
    group: groupOf(table, person, agesOf(band)),
    predicted: mean,
    percentPredicted: (100 * x) / mean,
    ...noted(table, words.meanOnly()),
  };
});

const lms: Locate = (table, person, x) => {
  const found = lmsFor(table, person);
  if (found === undefined) return { table: table.id, notGiven: words.noRow() };
  const { L, M, S } = found;
  const z = lmsZ(x, L, M, S);
  const percentile = percentileOf(table, z);
  const ages = `of ${Math.floor(person.ageYears)} years`;
  const lungs = table.kind === "lms-spline";
  return {
    table: table.id,
    group: groupOf(table, person, ages),
    ...percentile,
    // A table that is not good for the tails is not good for a z there either.
    ...(table.report_percentiles !== undefined && percentile.percentile === undefined ? {} : { z }),
    ...(lungs
      ? { predicted: M, percentPredicted: (100 * x) / M, lowerLimit: lmsValue(LOWER_LIMIT_Z, L, M, S) }
      : { median: M }),
    ...noted(table, sideOf(table, z)),
  };
};

const regression: Locate = (table, person, x) => {
  if (table.terms === undefined) return { table: table.id, notGiven: words.notPrinted() };
  const predicted = sumOfTerms(table, table.terms, person);
  if ("missing" in predicted) return { table: table.id, notGiven: words.missing(predicted.missing) };
  const lower = table.lower_terms === undefined ? undefined : sumOfTerms(table, table.lower_terms, person);
  return {
    ...predictedPosition(table, person, x, predicted.value),
    ...(lower !== undefined && "value" in lower ? { lowerLimit: lower.value } : {}),
  };
};

const formula: Locate = (table, person, x) => {
  const equation = equations[table.formula ?? ""];
  if (equation === undefined) return { table: table.id, notGiven: words.noEquation(table.formula ?? "") };
  const found = equation(person);
  if (typeof found === "string") return { table: table.id, notGiven: words.missing(found) };
  if (found.quantiles === undefined) return predictedPosition(table, person, x, found.predicted);
  const lower = found.quantiles.find(([percentile]) => percentile === 5)?.[1];
  return {
    table: table.id,
    group: groupOf(table, person, `of ${Math.floor(person.ageYears)} years`),
    predicted: found.predicted,
    percentPredicted: (100 * x) / found.predicted,
    ...(lower === undefined ? {} : { lowerLimit: lower }),
    ...noted(table, words.quantileBand(found.quantiles, x, x)),
  };
};

function predictedPosition(table: ReferenceTable, person: Person, x: number, predicted: number): NormPosition {
  if (!(predicted > 0)) return { table: table.id, notGiven: words.notPositive() };
  return {
    table: table.id,
    group: groupOf(table, person, `of ${Math.floor(person.ageYears)} years`),
    ...(table.see === undefined ? {} : { z: standardScore(x, predicted, table.see) }),
    predicted,
    percentPredicted: (100 * x) / predicted,
    ...noted(table, table.see === undefined ? words.noSpread() : words.see(table.see, table.unit)),
  };
}

const classes: Locate = (table, person, x) => {
  const found = classOf(table, person, x);
  const band = table.kind === "class-limits" ? bandOf(table, person) : undefined;
  if (table.kind === "class-limits" && band === undefined) return { table: table.id, notGiven: words.noRow() };
  const guideline = table.guideline ?? table.title;
  return {
    table: table.id,
    group: groupOf(table, person, band && agesOf(band)),
    category: `${guideline}: ${found ?? "between two printed classes"}`,
    ...noted(table),
  };
};

const KINDS: Readonly<Record<ReferenceTable["kind"], Locate>> = {
  "percentile-table": percentileTable,
  "quantile-bands": quantileBands,
  "mean-sd": meanSd,
  "mean-only": meanOnly,
  lms,
  "lms-spline": lms,
  regression,
  formula,
  classes,
  "class-limits": classes,
};
