/**
 * The laboratory's own error from visits repeated without training between them. Computed from the session files each
 * time, never from results of an earlier build, and without comparing, so that no verdict rests on a stale number.
 */
import type { RetestSet } from "../compare/known.js";
import { retestPairs } from "../compare/retest-pairs.js";
import type { Document } from "../kernel/document.js";
import type { Results } from "../kernel/results.js";
import { measure } from "../pipeline.js";
import type { Reference } from "../pipeline-parts.js";
import { inputsOf } from "./build-client.js";
import { clientDocument } from "./check-practice.js";
import type { Practice } from "./practice.js";
import { repeatedClients } from "./reliability-visits.js";

/** One set a measure and kind of exercise; none without such visits. A visit with an error counts for nothing; its own build reports it. */
export function reliabilityRetests(
  practice: Practice,
  lab: Document,
  reference: Pick<Reference, "checker" | "rules" | "tables">,
): readonly RetestSet[] {
  const measured = repeatedClients(practice).flatMap(({ client, visits }) => {
    const document = clientDocument(practice, client);
    return visits.flatMap((visit) => {
      const { results } = measure(inputsOf({ practice, lab }, document, visit), reference);
      return results === undefined ? [] : [slim(results)];
    });
  });
  return retestPairs(measured);
}

/** Without tables: pairs need none, and they are most of what a visit weighs. */
const slim = (results: Results): Results => ({
  ...results,
  entries: results.entries.filter((entry) => entry.kind !== "table"),
});
