/** The values a judgement rests on, as the results file prints them; withholding one of them withholds the judgement. */
import type { FormulaInput } from "../kernel/measure.js";
import type { MeasureId } from "../kernel/measures.js";
import type { Notebook } from "../kernel/notebook.js";
import { toDecimals } from "../kernel/rounding.js";

export function judgedFrom(book: Notebook, ids: readonly MeasureId[]): FormulaInput[] {
  return ids.flatMap((id) => {
    const entry = book.entry(id);
    if (entry?.kind !== "quantity") return [];
    return [{ name: id, text: `${toDecimals(entry.value, entry.decimals)} ${entry.unit}`.trim(), measure: id }];
  });
}
