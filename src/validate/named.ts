/** Names in lab.yaml and client.yaml that must mean something elsewhere: measures, files of the practice. */
import type { Diagnostic } from "../kernel/diagnostic.js";
import type { Document, Path } from "../kernel/document.js";
import type { Client } from "../kernel/generated/client.js";
import type { Laboratory } from "../kernel/generated/laboratory.js";
import { catalogue, measureInfo } from "../kernel/measures.js";
import { nearest } from "../kernel/near.js";
import type { Code } from "./codes.js";
import { fileNameFault } from "./file-name.js";
import { words } from "./words.js";

type Named = readonly [name: unknown, path: Path];
const listOf = <T>(value: readonly T[] | undefined): readonly T[] => (Array.isArray(value) ? value : []);

/** Measures that a client's goals and primary outcomes name. */
export function measureFaults(document: Document): Diagnostic[] {
  const client = document.value as Partial<Client> | null;
  const named: Named[] = listOf(client?.primary_outcomes).map((id, i): Named => [id, ["primary_outcomes", i]]);
  for (const [g, goal] of listOf(client?.goals).entries())
    for (const [t, target] of listOf(goal?.targets).entries())
      named.push([target?.measure, ["goals", g, "targets", t, "measure"]]);
  return unknownMeasures(document, named);
}

/** Measures and files that lab.yaml names, and volumes whose gas condition it does not state. */
export function laboratoryFaults(document: Document): Diagnostic[] {
  const laboratory = document.value as Partial<Laboratory> | null;
  const retests = listOf(laboratory?.retests);
  const files: Named[] = [
    [laboratory?.logo, ["logo"]],
    ...retests.map((r, i): Named => [r?.file, ["retests", i, "file"]]),
    ...listOf(laboratory?.norms).map((file, i): Named => [file, ["norms", i]]),
  ];
  return [
    ...unknownMeasures(
      document,
      retests.map((r, i): Named => [r?.measure, ["retests", i, "measure"]]),
    ),
    ...files.flatMap(([name, path]): Diagnostic[] => {
      const fault = typeof name === "string" ? fileNameFault(name) : undefined;
      if (fault === undefined) return [];
      const why = words.seriesPath(String(name), fault, "the practice folder");
      return [{ code: "series-path" satisfies Code, severity: "error", at: document.place(path), ...why }];
    }),
    ...gasConditionFaults(document),
  ];
}

/** The id that a slip of the pen made, else those that begin with its longest known beginning (grip_max: grip_strength …). */
function nearMeasures(id: string, known: readonly string[]): readonly string[] {
  const near = nearest(id, known);
  if (near !== undefined) return [near];
  // What the trade calls VO2max is recorded as a peak, which a rule may then call a maximum.
  const plain = (text: string) =>
    text
      .toLowerCase()
      .replace(/[\s._-]+/g, "")
      .replace(/^vo2max(?!estimate)/, "vo2peak");
  for (let length = plain(id).length; length >= 3; length--) {
    const alike = known.filter((candidate) => plain(candidate).startsWith(plain(id).slice(0, length)));
    if (alike.length > 0) return alike.sort((a, b) => a.length - b.length).slice(0, 4);
  }
  return [];
}

function unknownMeasures(document: Document, named: readonly Named[]): Diagnostic[] {
  const known = Object.keys(catalogue);
  return named.flatMap(([id, path]): Diagnostic[] => {
    if (typeof id !== "string" || measureInfo(id) !== undefined) return [];
    const why = words.unknownMeasure(id, nearMeasures(id, known));
    return [{ code: "unknown-measure" satisfies Code, severity: "error", at: document.place(path), ...why }];
  });
}

/** Volumes whose gas condition lab.yaml does not state. */
function gasConditionFaults(lab: Document): Diagnostic[] {
  const instruments = (lab.value as Laboratory | null)?.instruments;
  const found: Diagnostic[] = [];
  for (const [key, entry] of Object.entries(instruments ?? {}))
    for (const [channel, column] of Object.entries(entry?.columns ?? {})) {
      const isVolume = /ventilation|volume/.test(channel);
      if (isVolume && typeof column === "object" && column !== null && !("condition" in column))
        found.push({
          code: "gas-condition-missing" satisfies Code,
          severity: "warning",
          at: lab.place(["instruments", key, "columns", channel], "key"),
          ...words.gasConditionMissing(channel),
        });
    }
  return found;
}
