/** Invented recorded results and clients for plans; every number here is made up. */
import { readdirSync, readFileSync } from "node:fs";
import { parse } from "yaml";
import type { Goal, Plan } from "../../src/kernel/generated/client.js";
import type { EventProfile } from "../../src/kernel/generated/event-profile.js";
import type { Session } from "../../src/kernel/generated/session.js";
import type { Entry, MeasurementError, Table } from "../../src/kernel/measure.js";
import { catalogue, type MeasureId } from "../../src/kernel/measures.js";
import type { Results } from "../../src/kernel/results.js";
import type { Visit } from "../../src/kernel/visit.js";
import { plan } from "../../src/plan/plan.js";
import { rounded } from "../../src/results/record.js";
import { defaultChoices, visitOf } from "../derive/visit-of.js";

export const profiles: readonly EventProfile[] = readdirSync("src/plan/profiles")
  .filter((file) => file.endsWith(".yaml"))
  .map((file) => parse(readFileSync(`src/plan/profiles/${file}`, "utf8")) as EventProfile);

export const quantity = (id: MeasureId, value: number, error?: MeasurementError): Entry => ({
  kind: "quantity",
  id,
  value,
  unit: catalogue[id].unit ?? "",
  decimals: catalogue[id].decimals ?? 0,
  origin: { kind: "key", key: "session.yaml invented" },
  ...(error ? { error } : {}),
});
export const judged = (id: MeasureId, verdict: string, because = "Invented."): Entry => ({
  kind: "judgement",
  id,
  verdict,
  because,
});

export const PROCEED = judged("screening_decision", "proceed");
/** A test to exhaustion without signs, and two thresholds far apart, on a treadmill. */
export const THRESHOLDS: readonly Entry[] = [
  judged("stop_reason", "exhaustion"),
  judged("adverse_signs", "none seen"),
  quantity("vt1_heart_rate", 142, { low: 137, high: 147, from: "fit" }),
  quantity("vt2_heart_rate", 168, { low: 160, high: 176, from: "fit" }),
  quantity("vt1_vo2_per_mass", 25, { low: 24, high: 26, from: "fit" }),
  quantity("vt2_vo2_per_mass", 36, { low: 34, high: 38, from: "fit" }),
  quantity("vt1_speed", 8.4),
  quantity("vt2_speed", 11.2),
];

export function resultsOf(entries: readonly Entry[], more: Partial<Results> = {}): Results {
  return {
    client: "c-017",
    sex: "female",
    date: "2026-03-02",
    purpose: "baseline",
    ageYears: 40,
    sources: [],
    choices: defaultChoices,
    conditions: { mode: "treadmill" },
    entries,
    ...more,
  };
}

export interface Asked {
  readonly plan?: Plan;
  readonly goals?: readonly Goal[];
  readonly date?: string;
  readonly client?: Partial<Visit["client"]>;
  readonly session?: Partial<Session>;
  readonly log?: Visit["trainingLog"];
}
export const GOAL: Goal = { goal: "an invented goal", date: "2026-08-29" };

export function visitFor(asked: Asked = {}): Visit {
  const visit = visitOf(
    {
      date: asked.date ?? "2026-03-02",
      screening: { intended_intensity: "maximal", regularly_active: true },
      ...asked.session,
    },
    {
      client: {
        activity: "recreational",
        goals: (asked.goals ?? [GOAL]) as NonNullable<Visit["client"]["goals"]>,
        plan: asked.plan ?? {},
        ...asked.client,
      },
    },
  );
  return asked.log ? { ...visit, trainingLog: asked.log } : visit;
}

/** The plan's entries as they are recorded. */
export const planFor = (results: Results, visit: Visit, earlier: readonly Results[] = []): readonly Entry[] =>
  plan(results, visit, earlier, profiles).map(rounded);

export interface Row {
  readonly [key: string]: number | string | null;
}
export function rowsOf(entries: readonly Entry[], id: string): Row[] {
  const table = entries.find((e): e is Table => e.id === id && e.kind === "table");
  if (table === undefined) return [];
  return table.rows.map((row) => Object.fromEntries(table.columns.map((column, i) => [column.key, row[i] ?? null])));
}
export const number = (row: Row | undefined, key: string): number => Number(row?.[key]);
