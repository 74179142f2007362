/** Visits for the tests of this folder: the least a visit holds, with an incremental block and a series on top. */
import { readFileSync } from "node:fs";
import type { Incremental, Room } from "../../../src/kernel/generated/session.js";
import type { Channel, GasCondition, Series } from "../../../src/kernel/series.js";
import type { Visit } from "../../../src/kernel/visit.js";

const schema = JSON.parse(readFileSync("schema/blocks/choices.schema.json", "utf8")) as {
  properties: Record<string, { default: unknown }>;
};
/** The defaults of the schema itself. */
const defaults = Object.fromEntries(
  Object.entries(schema.properties).map(([key, row]) => [key, row.default]),
) as unknown as Visit["choices"];

export interface Parts {
  readonly incremental?: Incremental;
  readonly series?: Series;
  readonly room?: Room;
  readonly massKg?: number;
  readonly ageYears?: number;
  readonly medication?: Visit["client"]["medication"];
  readonly choices?: Partial<Visit["choices"]>;
  readonly lactate?: Visit["session"]["lactate"];
}

export function visitOf(parts: Parts): Visit {
  const { incremental, series, room, massKg = 70, ageYears = 30, medication, choices, lactate } = parts;
  return {
    laboratory: { waymark: "laboratory 1", name: "invented" } as Visit["laboratory"],
    client: { waymark: "client 1", id: "c-001", ...(medication ? { medication } : {}) } as unknown as Visit["client"],
    session: {
      waymark: "session 1",
      client: "c-001",
      date: "2026-03-02",
      purpose: "baseline",
      size: { mass_kg: [massKg] },
      ...(room ? { room } : {}),
      ...(lactate ? { lactate } : {}),
      ...(incremental ? { incremental } : {}),
    } as unknown as Visit["session"],
    file: "session.yaml",
    series: series ? { [series.file]: series } : {},
    choices: { ...defaults, ...choices },
    ageYears,
  };
}

export function seriesOf(
  channels: Partial<Record<Channel, ArrayLike<number>>>,
  conditions: Partial<Record<Channel, GasCondition>> = {},
  file = "test.csv",
): Series {
  const length = Math.max(...Object.values(channels).map((xs) => xs.length));
  return {
    file,
    length,
    channels: Object.fromEntries(Object.entries(channels).map(([name, xs]) => [name, Float64Array.from(xs)])),
    conditions,
    lines: Int32Array.from({ length }, (_, i) => i + 2),
    missing: {},
  };
}
