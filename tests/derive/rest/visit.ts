/** A visit for tests: the smallest one, with the parts a test is about put in. */
import { readFileSync } from "node:fs";
import type { Choices } from "../../../src/kernel/generated/choices.js";
import type { Client } from "../../../src/kernel/generated/client.js";
import type { Session } from "../../../src/kernel/generated/session.js";
import type { Channel, Series } from "../../../src/kernel/series.js";
import type { Visit } from "../../../src/kernel/visit.js";

/** House choices as the schema sets them by default. */
export function defaultChoices(): Choices {
  const schema = JSON.parse(
    readFileSync(new URL("../../../schema/blocks/choices.schema.json", import.meta.url), "utf8"),
  ) as { properties: Record<string, { default: unknown }> };
  return Object.fromEntries(
    Object.entries(schema.properties).map(([key, value]) => [key, value.default]),
  ) as unknown as Choices;
}

export interface VisitParts {
  readonly session?: Partial<Session>;
  readonly client?: Partial<Client>;
  readonly choices?: Partial<Choices>;
  readonly series?: Readonly<Record<string, Series>>;
  readonly ageYears?: number;
}

export function testVisit(parts: VisitParts = {}): Visit {
  return {
    laboratory: { waymark: "laboratory 1", name: "Invented laboratory" },
    client: { waymark: "client 1", id: "c-001", birth_date: "1986-01-01", sex: "female", ...parts.client } as Client,
    session: { waymark: "session 1", client: "c-001", date: "2026-03-02", purpose: "baseline", ...parts.session },
    file: "session.yaml",
    series: parts.series ?? {},
    choices: { ...defaultChoices(), ...parts.choices },
    ageYears: parts.ageYears ?? 40,
  };
}

/** A series from plain lists; null becomes a missing value. */
export function testSeries(
  file: string,
  channels: Partial<Record<Channel, readonly (number | null)[]>>,
  conditions: Series["conditions"] = {},
): Series {
  const entries = Object.entries(channels) as [Channel, readonly (number | null)[]][];
  const length = entries[0]?.[1].length ?? 0;
  return {
    file,
    length,
    channels: Object.fromEntries(entries.map(([id, xs]) => [id, Float64Array.from(xs, (x) => x ?? Number.NaN)])),
    conditions,
    lines: Int32Array.from({ length }, (_, i) => i + 2),
    missing: {},
  };
}
