/** Runs a computation whose refusal becomes a line in the notebook: the number, or "not given, because …". */
import { OutOfRange } from "../kernel/formula.js";
import type { MeasureId } from "../kernel/measures.js";
import type { Extra, FormulaName, Notebook, Ref } from "../kernel/notebook.js";

/** Writes the number `run` returns, or the reason it refused with. Returns the number if given. */
export function foundOrWithheld(
  book: Notebook,
  id: MeasureId,
  formula: FormulaName,
  inputs: readonly Ref[],
  run: () => number,
  more?: Extra,
): number | undefined {
  const outcome = attempt(run);
  if (outcome.because !== undefined) {
    book.withhold(id, outcome.because);
    return undefined;
  }
  book.found(id, outcome.value, formula, inputs, more);
  return outcome.value;
}

export type Outcome<T> = { readonly value: T; readonly because?: undefined } | { readonly because: string };

/** The value, or the sentence a formula refused with. Any other error passes on. */
export function attempt<T>(run: () => T): Outcome<T> {
  try {
    return { value: run() };
  } catch (error) {
    if (error instanceof OutOfRange) return { because: error.message };
    throw error;
  }
}
