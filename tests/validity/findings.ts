/** What a rule is given: values stated outright, or those derived from a visit. */
import { deriveIncremental } from "../../src/derive/incremental.js";
import { deriveIndices } from "../../src/derive/indices.js";
import { deriveRest } from "../../src/derive/rest.js";
import { deriveSize } from "../../src/derive/size.js";
import { deriveThresholds } from "../../src/derive/thresholds.js";
import type { Entry } from "../../src/kernel/measure.js";
import { catalogue, type MeasureId } from "../../src/kernel/measures.js";
import { openNotebook } from "../../src/kernel/notebook.js";
import type { Findings } from "../../src/kernel/rule.js";
import type { Visit } from "../../src/kernel/visit.js";

/** Findings with the given values and no others. */
export function stated(
  visit: Visit,
  values: Partial<Record<MeasureId, number>>,
  entries: readonly Entry[] = [],
): Findings {
  const quantities = (Object.entries(values) as [MeasureId, number][]).map(
    ([id, value]): Entry => ({
      kind: "quantity",
      id,
      value,
      unit: catalogue[id].unit ?? "",
      decimals: catalogue[id].decimals ?? 0,
      origin: { kind: "key", key: "test" },
    }),
  );
  const all = [...quantities, ...entries];
  const entry = (id: MeasureId) => all.find((e) => e.id === id);
  return {
    visit,
    entry,
    value(id) {
      const found = entry(id);
      return found?.kind === "quantity" ? found.value : undefined;
    },
  };
}

/** Findings with what size, rest, incremental test, thresholds and indices derive from the visit. */
export function derivedFindings(visit: Visit): Findings {
  const book = openNotebook();
  deriveSize(book, visit);
  deriveRest(book, visit);
  deriveThresholds(book, visit, deriveIncremental(book, visit));
  deriveIndices(book, visit);
  return { visit, value: (id) => book.value(id), entry: (id) => book.entry(id) };
}
