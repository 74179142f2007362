/** Computes a client's visits again and compares them with the committed results, byte for byte. Writes nothing. */
import { writeResults } from "../results/write.js";
import { computeClient, RESULTS, recorded, type Workshop } from "./build-client.js";
import { sourceText } from "./check-practice.js";
import { drawDiagnostics } from "./draw-diagnostic.js";
import { readBytes } from "./files.js";
import { moved, movesText } from "./moved.js";
import type { ClientFolder } from "./practice.js";

export interface ClientVerified {
  /** Visits that agree, and that do not; a client that cannot be computed counts as one that does not. */
  readonly same: number;
  readonly different: number;
  /** What is to be told of those that do not agree. */
  readonly text: string;
}

export function verifyClient(shop: Workshop, client: ClientFolder, chosen: ReadonlySet<string>): ClientVerified {
  const { practice } = shop;
  const { visits, diagnostics } = computeClient(shop, client);
  const errors = diagnostics.filter((d) => d.severity === "error");
  if (errors.length > 0) {
    const text = `${client.path}: cannot be computed\n${drawDiagnostics(errors, sourceText(practice))}\n`;
    return { same: 0, different: 1, text };
  }
  let same = 0;
  const told: string[] = [];
  for (const { visit, results } of visits) {
    if (!chosen.has(visit.path)) continue;
    const before = recorded(practice, visit);
    if (before && Buffer.compare(readBytes(practice.root, `${visit.path}/${RESULTS}`), writeResults(results)) === 0) {
      same++;
      continue;
    }
    const moves = before ? moved(before, results) : [];
    const why =
      before === undefined
        ? "  no results that can be read; build it"
        : moves.length > 0
          ? movesText(moves, false)
          : "  the text differs though no finding moved: it was edited by hand, or written by another version";
    told.push(`${visit.path}: differs\n${why}\n`);
  }
  return { same, different: told.length, text: told.join("") };
}
