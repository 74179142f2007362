/** An invented visit for tests: the blocks given, every choice at its default. */
import { readFileSync } from "node:fs";
import type { Choices } from "../../src/kernel/generated/choices.js";
import type { Laboratory } from "../../src/kernel/generated/laboratory.js";
import type { Session } from "../../src/kernel/generated/session.js";
import type { Entry, Judgement, Quantity, Table } from "../../src/kernel/measure.js";
import type { Visit } from "../../src/kernel/visit.js";

const schema = JSON.parse(readFileSync("schema/blocks/choices.schema.json", "utf8")) as {
  properties: Record<string, { default: unknown }>;
};
export const defaultChoices = Object.fromEntries(
  Object.entries(schema.properties).map(([key, { default: value }]) => [key, value]),
) as unknown as Choices;

export interface Around {
  readonly sex?: "female" | "male";
  readonly ageYears?: number;
  readonly choices?: Partial<Choices>;
  readonly laboratory?: Partial<Laboratory>;
  readonly client?: Partial<Visit["client"]>;
}

export function visitOf(blocks: Partial<Session>, around: Around = {}): Visit {
  return {
    laboratory: { waymark: "laboratory 1", name: "Invented laboratory", ...around.laboratory },
    client: {
      waymark: "client 1",
      id: "c-017",
      birth_date: "1986-03-02",
      sex: around.sex ?? "female",
      ...around.client,
    },
    session: { waymark: "session 1", client: "c-017", date: "2026-03-02", purpose: "baseline", ...blocks },
    file: "session.yaml",
    series: {},
    choices: { ...defaultChoices, ...around.choices },
    ageYears: around.ageYears ?? 40,
  };
}

export const find = (entries: readonly Entry[], id: string): Entry | undefined => entries.find((e) => e.id === id);
export const quantity = (entries: readonly Entry[], id: string): Quantity | undefined =>
  entries.find((e): e is Quantity => e.id === id && e.kind === "quantity");
export const judgement = (entries: readonly Entry[], id: string): Judgement | undefined =>
  entries.find((e): e is Judgement => e.id === id && e.kind === "judgement");
export const table = (entries: readonly Entry[], id: string): Table | undefined =>
  entries.find((e): e is Table => e.id === id && e.kind === "table");
export const because = (entries: readonly Entry[], id: string): string | undefined => {
  const entry = find(entries, id);
  return entry?.kind === "not given" || entry?.kind === "judgement" ? entry.because : undefined;
};
