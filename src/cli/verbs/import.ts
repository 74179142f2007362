import { existsSync, readFileSync, statSync } from "node:fs";
import { basename, join, resolve } from "node:path";
import { readSeries, type SeriesMapping } from "../../read/series.js";
import { readYaml } from "../../read/yaml.js";
import { validateDocument } from "../../validate/visit.js";
import { readDocument } from "../check-practice.js";
import { drawDiagnostics } from "../draw-diagnostic.js";
import { LARGEST_FILE, sha256, slashed, Unreadable, writeAtomically } from "../files.js";
import { instrumentEntry } from "../import/instrument.js";
import { blockText, withBlock } from "../import/into-session.js";
import { type Entry, entryText, withInstrument } from "../import/lab-entry.js";
import { propose } from "../import/propose.js";
import { columnTable, fileFacts, firstRows } from "../import/shown.js";
import { type Sniffed, sniff } from "../import/sniff.js";
import { beatsText, dxaBlock, lactateBlock } from "../import/tables.js";
import { toldBy } from "../import/told.js";
import { findPractice, openPractice, SESSION, select } from "../practice.js";
import { loadChecker } from "../reference.js";
import { type ExitCode, type Flags, type Io, type Verb, WrongUse } from "../verb.js";

const HELP = `waymark import FILE --as KEY        learn how an instrument writes its files; the mapping goes to lab.yaml
waymark import FILE --block NAME    a small table becomes a block of a session: lactate or dxa

  --column CHANNEL=HEADER     this column holds the channel, whatever it is called
  --unit CHANNEL=UNIT         the unit of a column, where the file does not write it
  --condition CHANNEL=WORD    the gas condition of a volume: BTPS, ATPS, STPD, ATPD or ambient
  --kind WORDS                what the instrument is; without it, told from the columns
  --replace                   write over the columns that KEY has in lab.yaml
  --into VISIT                with --as: copy the file to the visit; with --block: put the block into its session
  --show                      write nothing

Delimiter, decimal mark, headers, rows of units and forms of time are found by looking; columns by their
names in the trade, English and German. Everything assumed is said. Channels: waymark guide instrument.columns
`;

export const verb: Verb = {
  help: HELP,
  options: {
    as: { type: "string" },
    block: { type: "string" },
    column: { type: "string", multiple: true },
    unit: { type: "string", multiple: true },
    condition: { type: "string", multiple: true },
    kind: { type: "string" },
    replace: { type: "boolean" },
    into: { type: "string" },
    show: { type: "boolean" },
  },
  async run([file, ...rest], flags, io) {
    if (file === undefined || rest.length > 0) throw new WrongUse("import takes one file");
    if ((flags.as === undefined) === (flags.block === undefined))
      throw new WrongUse("import needs --as KEY for an instrument's file, or --block lactate or dxa for a table");
    const bytes = bytesOf(resolve(io.cwd, file), file);
    const sniffed = sniff(bytes);
    if (sniffed === undefined)
      throw new Unreadable(file, "holds no table of numbers", "Export it as CSV or text, one sample a line.");
    return typeof flags.as === "string"
      ? importInstrument(file, bytes, sniffed, flags.as, flags, io)
      : importBlock(file, sniffed, String(flags.block), flags, io);
  },
};

async function importInstrument(
  file: string,
  bytes: Uint8Array,
  found: Sniffed,
  key: string,
  flags: Flags,
  io: Io,
): Promise<ExitCode> {
  if (!/^[a-z][a-z0-9_]*$/.test(key)) throw new WrongUse("--as takes small letters, digits and _, such as cart");
  const root = findPractice(io.cwd);
  const beats = beatsText(found);
  const content = beats ? new TextEncoder().encode(beats.text) : bytes;
  const sniffed = beats ? (sniff(content) ?? found) : found;
  const proposed = propose(sniffed, toldBy(flags, sniffed));
  io.out(`${fileFacts(file, found)}\n`);
  if (beats) io.out(`One time between beats a line, in ${beats.unit}; a header is needed above them.\n`);
  if (proposed.columns.length === 0)
    throw new Unreadable(file, "has no column whose name is known", "Name them: --column CHANNEL=HEADER.");
  const entry = instrumentEntry(sniffed, proposed, typeof flags.kind === "string" ? flags.kind : undefined);
  io.out(`\n${columnTable(proposed)}\n`);
  const reading = readSeries(basename(file), content, entry as unknown as SeriesMapping, file);
  if (reading.series) io.out(`\nThe first rows as understood:\n\n${firstRows(reading.series)}\n`);
  const assumed = proposed.columns.flatMap((column) => column.assumed);
  if (assumed.length > 0) io.out(`\nAssumed; look whether it is so:\n${assumed.map((line) => `  ${line}\n`).join("")}`);
  if (proposed.missing.length > 0)
    io.out(`\nStill to be said:\n${proposed.missing.map((line) => `  ${line}\n`).join("")}`);
  if (reading.diagnostics.length > 0) io.say(`\n${drawDiagnostics(reading.diagnostics, () => sniffed.text)}\n`);
  if (reading.diagnostics.some((d) => d.severity === "error")) {
    io.say("\nNothing was written: the file cannot be read in this way.\n");
    return 1;
  }
  if (flags.show) {
    io.out(`\nNothing written. In lab.yaml it would be:\n\n${entryText(key, entry, 2)}`);
    return 0;
  }
  return written(root, key, entry, { file, content, beats: beats !== undefined }, flags, io);
}

async function written(
  root: string,
  key: string,
  entry: Entry,
  source: { readonly file: string; readonly content: Uint8Array; readonly beats: boolean },
  flags: Flags,
  io: Io,
): Promise<ExitCode> {
  const lab = readDocument(root, "lab.yaml");
  if (lab.value === undefined)
    throw new Unreadable("lab.yaml", "cannot be read as YAML", "waymark check says what is wrong with it.");
  const known = (lab.value as { instruments?: Record<string, Entry> }).instruments?.[key];
  if (known?.columns !== undefined && !flags.replace)
    throw new Unreadable(
      "lab.yaml",
      `knows the columns of ${key} already`,
      "To write over them: --replace. For another instrument, another --as KEY.",
    );
  const { kind, measures, ...mapping } = entry;
  const kept = {
    ...(known?.kind && !flags.kind ? {} : { kind }),
    ...(known?.measures || !measures ? {} : { measures }),
  };
  const text = withInstrument(lab.text, key, { ...kept, ...mapping });
  const faults = validateDocument("laboratory", readYaml("lab.yaml", text), await loadChecker());
  const errors = faults.filter((d) => d.severity === "error");
  if (errors.length > 0) {
    io.say(`\n${drawDiagnostics(errors, () => text)}\n\nNothing was written: lab.yaml would hold an error.\n`);
    return 1;
  }
  writeAtomically(join(root, "lab.yaml"), text);
  io.out(`\nWritten to lab.yaml under instruments.${key}.\n`);
  const name = source.beats ? basename(source.file).replace(/(\.\w+)?$/, "-rr.txt") : basename(source.file);
  if (typeof flags.into === "string") {
    const visit = visitOf(root, flags.into, io.cwd);
    copyInto(join(root, visit, name), source.content, `${visit}/${name}`);
    io.out(`The file is ${visit}/${name}.\n`);
  } else if (source.beats) io.out("With --into VISIT a copy with a header is put beside the session.\n");
  io.out(`In the block that uses it, write:   instrument: ${key}   and   series: ${name}\n`);
  return 0;
}

function importBlock(file: string, sniffed: Sniffed, name: string, flags: Flags, io: Io): ExitCode {
  if (name !== "lactate" && name !== "dxa") throw new WrongUse("--block takes lactate or dxa");
  const read = name === "dxa" ? dxaBlock(sniffed) : lactateBlock(sniffed, propose(sniffed, toldBy(flags, sniffed)));
  io.say(`${fileFacts(file, sniffed)}\n`);
  if (read === undefined)
    throw new Unreadable(
      file,
      name === "dxa" ? "names no region of the body that is known" : "has no column of lactate",
      name === "dxa"
        ? "Its first column must hold regions: trunk, left arm …"
        : "Name it: --column lactate_mmol_l=HEADER.",
    );
  for (const note of read.notes) io.say(`  ${note}\n`);
  if (typeof flags.into !== "string" || flags.show) {
    io.out(blockText(read.block, read.keys));
    if (typeof flags.into !== "string") io.say("Paste it into a session, or name one: --into VISIT\n");
    return 0;
  }
  const root = findPractice(io.cwd);
  const path = `${visitOf(root, flags.into, io.cwd)}/${SESSION}`;
  const { text } = readDocument(root, path);
  writeAtomically(join(root, path), withBlock(path, text, read.block, read.keys));
  io.out(`${path}: ${read.block} now holds ${Object.keys(read.keys).join(", ")}.\n`);
  return 0;
}

function visitOf(root: string, asked: string, cwd: string): string {
  const paths = [...select(openPractice(root), [asked], cwd)];
  if (paths.length !== 1) throw new WrongUse(`--into ${asked} names ${paths.length} visits; it takes one`);
  return paths[0] as string;
}

function copyInto(path: string, content: Uint8Array, shown: string): void {
  if (existsSync(path)) {
    if (sha256(readFileSync(path)) === sha256(content)) return;
    throw new Unreadable(slashed(shown), "is there already and holds something else", "Rename one of the two.");
  }
  writeAtomically(path, content);
}

function bytesOf(path: string, shown: string): Uint8Array {
  const stat = statSync(path, { throwIfNoEntry: false });
  if (stat === undefined) throw new Unreadable(shown, "does not exist", "Check the path.");
  if (!stat.isFile()) throw new Unreadable(shown, "is not a file", "Name a CSV or text file.");
  if (stat.size > LARGEST_FILE) throw new Unreadable(shown, "is larger than 50 MB", "Export one test a file.");
  return readFileSync(path);
}
