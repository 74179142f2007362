/**
 * How much people of the client's kind differ, from the reference values recorded with the visit: the ground of the
 * default worthwhile change where a published table holds for the client.
 *
 * A wider pair of percentiles is used only where the table prints no narrower one, because tails are where measures are
 * least normal. A table that prints none of the pairs gives no spread.
 */
import { tableOf } from "../kernel/entries.js";
import type { Cell } from "../kernel/measure.js";
import type { Results } from "../kernel/results.js";
import { spreadFromPercentiles } from "./error/spread-from-percentiles.js";
import type { Spread } from "./known.js";

/** Lower percentiles in the order of preference; the upper is 100 minus it. */
const PAIRS = [25, 20, 10] as const;

interface Citable {
  readonly id: string;
  readonly source: { readonly authors: string; readonly year: number | string | null };
}

/** One spread a measure with printed percentiles on both sides; in the measure's unit. */
export function referenceSpreads(results: Results, tables: readonly Citable[]): readonly Spread[] {
  const curves = tableOf(results, "reference_percentiles");
  if (curves === undefined) return [];
  return curves.rows.flatMap((row) => {
    const cell = (key: string): Cell => row[curves.columns.findIndex((column) => column.key === key)] ?? null;
    const [measure, id, group] = [cell("measure"), cell("table"), cell("group")];
    for (const lower of PAIRS) {
      const [low, high] = [cell(`p${lower}`), cell(`p${100 - lower}`)];
      if (typeof measure !== "string" || typeof low !== "number" || typeof high !== "number" || !(high > low)) continue;
      const sd = spreadFromPercentiles(lower, low, high);
      return [{ measure, sd, from: named(tables, id, group, lower) }];
    }
    return [];
  });
}

function named(tables: readonly Citable[], id: Cell, group: Cell, lower: number): string {
  const source = tables.find((table) => table.id === id)?.source;
  const book = source === undefined ? `${id}` : `${source.authors}${source.year === null ? "" : ` ${source.year}`}`;
  const people = group === null ? "the reference group" : `the reference group (${group})`;
  return `${people}, from its percentiles ${lower} and ${100 - lower} taken as normal: ${book}`;
}
