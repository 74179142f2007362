/**
 * Builds the stale visits of a practice: client by client, results and HTML first, PDF printed beside. What is done is
 * noted every few seconds, so that an interrupted build goes on where it stopped.
 */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Diagnostic } from "../kernel/diagnostic.js";
import type { Printer } from "../report/printer.js";
import type { Edition } from "../report/render.js";
import type { VisitBuilt } from "./build-client.js";
import { asPlanned, contentsOf } from "./content-keys.js";
import { htmlName, pdfName, type WrittenPage } from "./editions.js";
import { Unreadable } from "./files.js";
import {
  type BuildRecord,
  type Built,
  freshRecord,
  type Output,
  readRecord,
  writeOutput,
  writeRecord,
} from "./freshness.js";
import { type ClientFolder, type Practice, RESULTS } from "./practice.js";
import type { Progress } from "./progress.js";

export interface BuildWish {
  readonly chosen: ReadonlySet<string>;
  /** Empty for results only. */
  readonly editions: readonly Edition[];
  readonly pdf: boolean;
  readonly useCache: boolean;
  /** Asked before each client: the user wants to stop. */
  readonly stopping?: () => boolean;
}
/** What is kept of a visit until the build ends: there may be many thousands. */
export interface Noted extends Pick<VisitBuilt, "visit" | "moves" | "choices" | "summary"> {
  /** Names of files. */
  readonly wrote: readonly string[];
}
export interface BuildReport {
  readonly problems: readonly Diagnostic[];
  readonly built: readonly Noted[];
  readonly fresh: number;
  /** Clients that could not be read or written, in words. */
  readonly failures: readonly string[];
  /** When browser and threads are gone, which nothing but the end of the program needs to wait for. */
  readonly closed: Promise<unknown>;
}

const NOTE_EVERY_MS = 3000;
/** Where this many clients fail, the disk or the practice's templates are at fault, and going on would change nothing. */
const MOST_FAILURES = 5;

export async function buildPractice(
  practice: Practice,
  wish: BuildWish,
  openProgress: (total: number) => Progress,
): Promise<BuildReport> {
  // Of the others nothing is read: one client's build takes no longer in a large archive.
  const clients = practice.clients.filter((client) => client.visits.some(({ path }) => wish.chosen.has(path)));
  const contents = await contentsOf(practice, clients);
  const outputs = [
    RESULTS,
    ...wish.editions.flatMap((edition) => (wish.pdf ? [htmlName(edition), pdfName(edition)] : [htmlName(edition)])),
  ];
  const keyOf = (path: string) => contents.get(path)?.key ?? "";
  const records = openRecords(practice);
  const stale = new Set<string>();
  for (const client of clients) {
    const record = wish.useCache ? records.of(client) : {};
    for (const { path } of client.visits.filter((visit) => wish.chosen.has(visit.path))) {
      const built = record[path];
      const fresh = freshRecord(join(practice.root, path), built, keyOf(path), outputs);
      if (fresh === undefined) stale.add(path);
      else if (fresh !== built) records.note(client, path, fresh);
    }
  }
  if (stale.size === 0) {
    records.write();
    return { problems: [], built: [], fresh: wish.chosen.size, failures: [], closed: Promise.resolve() };
  }

  // Loaded only when there is something to build: finding nothing changed takes no formula.
  const { openCrew } = await import("./crew.js");
  const printing = wish.pdf && wish.editions.length > 0;
  const crew = await openCrew(practice, { editions: wish.editions }, stale.size, printing);
  const printer = printing ? (await import("../report/printer.js")).openPrinter() : undefined;
  const progress = openProgress(stale.size);
  const problems = new Map<string, Diagnostic>();
  const report = (list: readonly Diagnostic[]) => {
    for (const diagnostic of list) problems.set(JSON.stringify(diagnostic), diagnostic);
  };
  const built: Noted[] = [];
  const failures = new Set<string>();
  const unsteady = new Set<ClientFolder>();
  let failed = 0;
  let noted = performance.now();
  const note = (client: ClientFolder, done: VisitBuilt, wrote: readonly Output[]) => {
    const { visit, moves, choices, summary } = done;
    const { path } = visit;
    built.push({ visit, wrote: wrote.map(({ file }) => file), moves, choices, summary });
    // What was edited since this build began is whole, but not of the content that the key stands for: built again next time.
    if (!asPlanned(practice, client, done, contents.get(path))) unsteady.add(client);
    if (!unsteady.has(client)) records.note(client, path, { key: keyOf(path), outputs: wrote });
    progress.step(path);
    if (performance.now() - noted < NOTE_EVERY_MS) return;
    noted = performance.now();
    records.write();
  };
  const work = clients.filter((client) => client.visits.some((visit) => stale.has(visit.path))).values();
  // Each lane takes the next client when its last one is built and printed: no more pages wait than there are lanes.
  const lane = async () => {
    for (const client of work) {
      if (wish.stopping?.() === true || failed >= MOST_FAILURES) return;
      try {
        const outcome = await crew.build(client, stale);
        report(outcome.diagnostics);
        await printAll(practice, outcome.visits, printer, (done, wrote) => note(client, done, wrote));
      } catch (error) {
        // The disk's word, or the browser's: both are for the user to mend, and other clients go on.
        if (!(error instanceof Unreadable) && !/^(NoBrowser|PrintError)$/.test((error as Error).name)) throw error;
        failures.add((error as Error).message);
        if ((error as Error).name !== "NoBrowser") failed++; // without a browser there is HTML still
      }
    }
  };
  const close = () => Promise.all([printer?.close(), crew.close()]);
  try {
    report(await crew.diagnostics());
    await Promise.all(Array.from({ length: crew.size + 1 }, lane));
  } catch (error) {
    await close();
    throw error;
  } finally {
    progress.end();
    try {
      records.write();
    } catch (error) {
      failures.add((error as Error).message); // costs the next build time, nothing else
    }
  }
  const closed = close();
  closed.catch(() => undefined); // told to whoever waits
  return {
    problems: [...problems.values()],
    built: built.sort((a, b) => (a.visit.path < b.visit.path ? -1 : 1)),
    fresh: wish.chosen.size - stale.size,
    failures: [...failures],
    closed,
  };
}

async function printAll(
  practice: Practice,
  visits: readonly VisitBuilt[],
  printer: Printer | undefined,
  note: (done: VisitBuilt, wrote: readonly Output[]) => void,
): Promise<void> {
  // One visit after the other: pages that wait for the browser are memory.
  for (const done of visits) {
    const folder = join(practice.root, done.visit.path);
    const pdfs = printer ? await Promise.all(done.pages.map((page) => printPage(folder, page, printer))) : [];
    note(done, [...done.wrote, ...pdfs]);
  }
}

async function printPage(folder: string, page: WrittenPage, printer: Printer): Promise<Output> {
  const html = readFileSync(join(folder, htmlName(page.edition)), "utf8");
  return writeOutput(folder, pdfName(page.edition), await printer.print(html, page.facts));
}

/** The records of the practice's clients. Only what is noted and not yet written is held. */
function openRecords({ root }: Practice) {
  const noted = new Map<ClientFolder, { [visit: string]: Built }>();
  const recordOf = (client: ClientFolder) => noted.get(client) ?? { ...readRecord(root, client.id) };
  return {
    of: (client: ClientFolder): BuildRecord => recordOf(client),
    /** Outputs that an earlier build made of the same content stay known beside those of this one. */
    note(client: ClientFolder, visit: string, { key, outputs }: Built) {
      const record = recordOf(client);
      const before = record[visit]?.key === key ? record[visit].outputs : [];
      const names = new Set(outputs.map(({ file }) => file));
      record[visit] = { key, outputs: [...before.filter(({ file }) => !names.has(file)), ...outputs] };
      noted.set(client, record);
    },
    write() {
      for (const [client, record] of noted) {
        const there = client.visits.flatMap(({ path }) => (record[path] ? [[path, record[path]] as const] : []));
        writeRecord(root, client.id, Object.fromEntries(there));
        noted.delete(client);
      }
    },
  };
}
