/**
 * Hard intervals wait for an exercise test taken to the client's limit without signs or symptoms (interval trials tested
 * people first; common practice). Whether there were signs has to be said: silence is no answer.
 */
import { entryOf } from "../../kernel/entries.js";
import type { Results } from "../../kernel/results.js";
import { compareAtDecimals, toDecimals } from "../../kernel/rounding.js";
import { quantityOf } from "../recorded.js";

/** Ends of a test that say the client went to a limit of their own. */
const TO_THE_LIMIT = ["exhaustion", "legs", "breathlessness", "cadence"];

/** A test that ends below this exchange ratio at its peak stopped short, whatever stopped it (as for a claim of VO2max). */
const LEAST_RATIO = 1;

/** Undefined where hard intervals may stand in a plan, else why not. `visits` newest first. */
export function whyNoIntervals(visits: readonly Results[]): string | undefined {
  for (const visit of visits) {
    const { date } = visit;
    const end = entryOf(visit, "stop_reason");
    const signs = entryOf(visit, "adverse_signs");
    if (end === undefined && signs === undefined) continue;
    if (signs?.kind === "judgement" && signs.verdict !== "none seen")
      return `signs were recorded in the exercise test of ${date} (${signs.verdict})`;
    if (signs?.kind !== "judgement")
      return `whether there were signs or symptoms in the exercise test of ${date} is not recorded`;
    if (end?.kind !== "judgement") return `why the exercise test of ${date} ended is not recorded`;
    if (!TO_THE_LIMIT.includes(end.verdict))
      return `the exercise test of ${date} did not go to the client's limit (${end.verdict})`;
    const ratio = quantityOf(visit, "rer_peak");
    if (ratio !== undefined && compareAtDecimals(ratio.value, LEAST_RATIO, 2) < 0)
      return `the exercise test of ${date} ended before the client's limit (exchange ratio at the peak ${toDecimals(ratio.value, 2)})`;
    return undefined;
  }
  return "no exercise test to the client's limit is recorded";
}
