/** Writes an estimate: its standard error on the value, and the sentence that it is not a measurement. */
import type { FormulaInfo } from "../../kernel/formula.js";
import type { MeasureId } from "../../kernel/measures.js";
import type { Notebook, Ref } from "../../kernel/notebook.js";

export const ESTIMATE = "An estimate, not a measurement.";
/** What a formula's caveat says in other words; not said twice on one value. */
const GENERIC = "It estimates; it does not measure.";

export function writeEstimate<Args extends readonly unknown[]>(
  book: Notebook,
  id: MeasureId,
  formula: FormulaInfo<Args, number>,
  args: { readonly [K in keyof Args]: Ref },
): void {
  const error =
    formula.see === undefined
      ? {}
      : {
          error: {
            typical: formula.see,
            from: `standard error of estimate, ${formula.source.authors.split(",")[0]} ${formula.source.year}`,
          },
        };
  const caveat = (formula.caveat ?? "").replace(GENERIC, "").trim();
  const known = formula.see !== undefined || /\b(error|SEE)\b/i.test(caveat);
  const note = [ESTIMATE, caveat, known ? "" : "Its standard error was not published with it."]
    .filter(Boolean)
    .join(" ");
  book.compute(id, formula, args, { ...error, note });
}

/** A reference to a session value, or undefined where it was not recorded. */
export function given(key: string, value: number | undefined, unit: string): Ref | undefined {
  return value === undefined ? undefined : { name: key, value, unit };
}
