/**
 * Sends texts of an invented practice through the whole program: reading, checking, computing, comparing, planning,
 * and writing and reading results.yaml again. What a test sees is what the results file says.
 */
import { openReference } from "../../src/cli/reference.js";
import type { Diagnostic } from "../../src/kernel/diagnostic.js";
import type { Entry, Quantity, Table } from "../../src/kernel/measure.js";
import type { Results } from "../../src/kernel/results.js";
import { compute } from "../../src/pipeline.js";
import type { Reference } from "../../src/pipeline-parts.js";
import { readYaml } from "../../src/read/yaml.js";
import { readResults } from "../../src/results/read.js";
import { writeResults } from "../../src/results/write.js";

export const LAB = `waymark: laboratory 1
name: Invented laboratory
altitude_m: 100
`;
export const clientText = (changes: { sex?: string; birth?: string; more?: string } = {}) => `waymark: client 1
id: "c-900"
birth_date: ${changes.birth ?? "1990-06-01"}
sex: ${changes.sex ?? "male"}
${changes.more ?? ""}`;
export const sessionText = (blocks: string, head = "") => `waymark: session 1
client: "c-900"
date: 2026-03-02
start_time: "09:00"
purpose: baseline
${head}${blocks}`;

export interface Sent {
  readonly lab?: string;
  readonly client?: string;
  readonly session: string;
  readonly files?: Readonly<Record<string, string>>;
  readonly earlier?: readonly Results[];
  /** Of the visit, where it is not the usual one. */
  readonly folder?: string;
}
export interface Answer {
  readonly diagnostics: readonly Diagnostic[];
  readonly errors: readonly string[];
  /** As read back from the text of results.yaml; absent where the input was refused. */
  readonly results?: Results;
  readonly text: string;
  entry(id: string): Entry | undefined;
  value(id: string): number | undefined;
  quantity(id: string): Quantity | undefined;
  /** "not given" and judgements: the sentence. */
  because(id: string): string | undefined;
  verdict(id: string): string | undefined;
  /** Rows of a table as objects. */
  rows(id: string): readonly Record<string, number | string | null>[];
}

let opened: Promise<Reference> | undefined;
/** The program's own rules, tables and schemas; no laboratory's. */
export const reference = (): Promise<Reference> => {
  opened ??= openReference({ root: "/nowhere", clients: [] }, readYaml("lab.yaml", LAB)).then((o) => o.reference);
  return opened;
};

export async function send(sent: Sent): Promise<Answer> {
  const bytes = (text: string) => ({ bytes: new TextEncoder().encode(text), sha256: "0".repeat(64) });
  const folder = sent.folder ?? "clients/c-900/2026-03-02";
  const outcome = compute(
    {
      lab: readYaml("lab.yaml", sent.lab ?? LAB),
      client: readYaml("clients/c-900/client.yaml", sent.client ?? clientText()),
      session: readYaml(`${folder}/session.yaml`, sent.session),
      sessionSha256: "0".repeat(64),
      series: Object.fromEntries(Object.entries(sent.files ?? {}).map(([name, text]) => [name, bytes(text)])),
      folder: ["session.yaml", ...Object.keys(sent.files ?? {})],
    },
    sent.earlier ?? [],
    await reference(),
  );
  return answer(outcome.diagnostics, outcome.results);
}

function answer(diagnostics: readonly Diagnostic[], made: Results | undefined): Answer {
  const text = made === undefined ? "" : writeResults(made).toString();
  const results = made === undefined ? undefined : readResults(text);
  const entry = (id: string) => results?.entries.find((e) => e.id === id);
  const quantity = (id: string) => {
    const found = entry(id);
    return found?.kind === "quantity" ? found : undefined;
  };
  return {
    diagnostics,
    errors: diagnostics.filter((d) => d.severity === "error").map((d) => `${d.code}: ${d.found}`),
    ...(results === undefined ? {} : { results }),
    text,
    entry,
    quantity,
    value: (id) => quantity(id)?.value,
    because(id) {
      const found = entry(id);
      return found !== undefined && "because" in found ? found.because : undefined;
    },
    verdict(id) {
      const found = entry(id);
      return found !== undefined && "verdict" in found ? found.verdict : undefined;
    },
    rows(id) {
      const found = entry(id);
      return found?.kind === "table" ? rowsOf(found) : [];
    },
  };
}

const rowsOf = (table: Table) =>
  table.rows.map((row) => Object.fromEntries(table.columns.map((column, i) => [column.key, row[i] ?? null])));
