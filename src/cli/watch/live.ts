/**
 * A practice kept open: asked for a visit's report, it computes what changed since it was last asked and nothing else.
 * Earlier visits, reference tables, compiled templates and the drawing engine stay in memory. Nothing is written.
 */
import type { Diagnostic } from "../../kernel/diagnostic.js";
import type { Document } from "../../kernel/document.js";
import type { Results } from "../../kernel/results.js";
import { compute } from "../../pipeline.js";
import type { Outcome, Reference } from "../../pipeline-parts.js";
import type { Edition } from "../../report/render.js";
import { writeResults } from "../../results/write.js";
import { inputsOf } from "../build-client.js";
import { clientDocument, readDocument, sourceText } from "../check-practice.js";
import { drawDiagnostics, drawSummary } from "../draw-diagnostic.js";
import type { Press } from "../editions.js";
import { type FileBytes, readFile, sha256, Unreadable } from "../files.js";
import { overrideFiles } from "../override-files.js";
import { filesIn, openPractice, type Practice, readIfThere } from "../practice.js";
import { openPress } from "../press.js";
import { openReference } from "../reference.js";

export interface Preview {
  /** The report as it is now; undefined while a file holds an error. */
  readonly html: string | undefined;
  /** "" when nothing is wrong. */
  readonly problems: string;
  readonly summary: string;
}
export interface Live {
  practice(): Practice;
  preview(visit: string, edition: Edition): Promise<Preview>;
}

interface Shelf {
  readonly key: string;
  /** Of the practice's own partials, words and style: they change a page, never a number. */
  readonly dress: string;
  readonly lab: Document;
  readonly reference: Reference;
  readonly diagnostics: readonly Diagnostic[];
  readonly press: Press;
}

export function openLive(root: string): Live {
  let shelf: Shelf | undefined;
  const outcomes = new Map<string, { readonly key: string; readonly outcome: Outcome }>();
  const pages = new Map<string, { readonly key: string; readonly html: string }>();

  const shelfOf = async (practice: Practice): Promise<Shelf> => {
    const own = [
      ...["norms", "profiles"].flatMap((folder) => filesIn(practice, folder, /\.ya?ml$/)),
      ...filesIn(practice, "retests", /\.csv$/),
    ];
    const key = digestOf([readFile(root, "lab.yaml"), ...own]);
    const dress = digestOf(overrideFiles(practice));
    if (shelf?.key === key && shelf.dress === dress) return shelf;
    const known = shelf?.key === key ? shelf : undefined;
    const lab = known?.lab ?? readDocument(root, "lab.yaml");
    const { reference, diagnostics } = known ?? (await openReference(practice, lab));
    shelf = { key, dress, lab, reference, diagnostics, press: openPress(practice, reference, true) };
    return shelf;
  };

  const previewNow = async (path: string, edition: Edition): Promise<Preview> => {
    const practice = openPractice(root);
    const client = practice.clients.find((c) => c.visits.some((visit) => visit.path === path));
    if (client === undefined) throw new Unreadable(path, "is no longer there", "Choose another visit.");
    const open = await shelfOf(practice);
    const document = clientDocument(practice, client);
    const earlier: Results[] = [];
    let key = sha256(`${open.key} ${readIfThere(practice, `${client.path}/client.yaml`)?.sha256 ?? ""}`);
    for (const visit of client.visits) {
      const inputs = inputsOf({ practice, lab: open.lab }, document, visit);
      const series = Object.values(inputs.series).map((file) => file.sha256);
      key = sha256([key, inputs.sessionSha256, ...(inputs.folder ?? []).filter(isInput), ...series].join(" "));
      const known = outcomes.get(visit.path);
      const outcome = known?.key === key ? known.outcome : compute(inputs, earlier, open.reference);
      outcomes.set(visit.path, { key, outcome });
      if (visit.path === path) return pageOf(practice, open, path, edition, key, outcome, earlier);
      if (outcome.results) earlier.push(outcome.results);
    }
    throw new Unreadable(path, "is no longer there", "Choose another visit.");
  };

  const pageOf = async (
    practice: Practice,
    { press, dress, diagnostics: shared }: Shelf,
    path: string,
    edition: Edition,
    key: string,
    { results, visit, diagnostics }: Outcome,
    earlier: readonly Results[],
  ): Promise<Preview> => {
    const all = [...shared, ...diagnostics];
    const told = {
      problems: drawDiagnostics(all, sourceText(practice)),
      summary: all.length === 0 ? "" : drawSummary(all),
    };
    if (results === undefined || visit === undefined) return { html: undefined, ...told };
    const place = `${path} ${edition}`;
    const wanted = `${key} ${dress}`;
    const known = pages.get(place);
    if (known?.key === wanted) return { html: known.html, ...told };
    const [page] = await press.render(visit, results, earlier, sha256(writeResults(results)), [edition]);
    if (page) pages.set(place, { key: wanted, html: page.html });
    return { html: page?.html, ...told };
  };

  // One at a time: two renderings at once would only slow each other down.
  let queue: Promise<unknown> = Promise.resolve();
  return {
    practice: () => openPractice(root),
    preview(visit, edition) {
      const next = queue.then(() => previewNow(visit, edition)).catch(asProblem);
      queue = next;
      return next;
    },
  };
}

const digestOf = (files: readonly FileBytes[]): string =>
  sha256(files.map((file) => `${file.path} ${file.sha256}`).join("\n"));

const isInput = (name: string) => !/^(\.|results\.yaml$|report.*\.(html|pdf)$)/.test(name);

/** A file that cannot be read is a problem of the practice; it stays visible and the watch goes on. */
function asProblem(error: unknown): Preview {
  const text = error instanceof Unreadable ? error.message : `a fault of this program: ${String(error)}`;
  return { html: undefined, problems: text, summary: "The report cannot be built." };
}
