/** Writes an estimate: its standard error on the value, and the sentence that it is not a measurement. */
import type { FormulaInfo } from "../../kernel/formula.js";
import type { MeasureId } from "../../kernel/measures.js";
import type { Notebook, Ref } from "../../kernel/notebook.js";

export const ESTIMATE = "An estimate, not a measurement.";

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
  const caveat = formula.caveat === undefined || formula.caveat.startsWith("It estimates") ? "" : ` ${formula.caveat}`;
  const unknown = formula.see === undefined ? " Its standard error was not published with it." : "";
  book.compute(id, formula, args, {
    ...error,
    note: `${ESTIMATE}${caveat.includes("error") ? caveat : caveat + unknown}`,
  });
}

/** A reference to a session value, or undefined where it was not recorded. */
export function given(key: string, value: number | undefined, unit: string): Ref | undefined {
  return value === undefined ? undefined : { name: key, value, unit };
}
