/** Formulas refuse by throwing OutOfRange; comparing turns a refusal into an absence it can name. */
import { OutOfRange } from "../kernel/formula.js";

/** undefined where a formula refuses its input. */
export function attempt<T>(run: () => T): T | undefined {
  try {
    return run();
  } catch (error) {
    if (error instanceof OutOfRange) return undefined;
    throw error;
  }
}
