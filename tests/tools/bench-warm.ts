/** One visit, warm: what a watch or a long build pays for each once everything is loaded and compiled. */
import { readFileSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import { computeVisitOf } from "../../src/cli/build-client.js";
import { readDocument } from "../../src/cli/check-practice.js";
import { EDITIONS } from "../../src/cli/editions.js";
import { openPractice, type Practice } from "../../src/cli/practice.js";
import { openReference } from "../../src/cli/reference.js";
import { openShop } from "../../src/cli/shop.js";
import { derive } from "../../src/derive/derive.js";
import type { Document } from "../../src/kernel/document.js";
import type { Laboratory } from "../../src/kernel/generated/laboratory.js";
import type { Visit } from "../../src/kernel/visit.js";
import type { Reference } from "../../src/pipeline-parts.js";
import { splitCsv } from "../../src/read/csv.js";
import { readSeries, type SeriesMapping } from "../../src/read/series.js";
import { visitsOf } from "./bench-floors.js";

export interface Warm {
  readonly breaths: number;
  readonly csvMs: number;
  readonly seriesMs: number;
  /** Reading, cleaning and everything derived of the exercise test alone: peak, thresholds with intervals, indices. */
  readonly testMs: number;
  /** The whole visit: session, every block, norms, rules, comparison, plan. */
  readonly computeMs: number;
  readonly visitMs: number;
}

const ROUNDS = 40;

async function cpu(work: () => unknown): Promise<number> {
  for (let i = 0; i < ROUNDS / 2; i++) await work();
  const start = process.cpuUsage();
  for (let i = 0; i < ROUNDS; i++) await work();
  const { user, system } = process.cpuUsage(start);
  return (user + system) / 1000 / ROUNDS;
}

export async function warm(folder: string): Promise<Warm> {
  const practice = openPractice(folder);
  const lab = readDocument(folder, "lab.yaml");
  const { reference } = await openReference(practice, lab);
  const visit = visitsOf(folder)[1] as string;
  const client = practice.clients.find((one) => one.id === basename(dirname(visit)));
  const found = client?.visits.find((one) => one.name === basename(visit));
  if (client === undefined || found === undefined) throw new Error(`no visit ${visit}`);
  const csv = readFileSync(join(visit, "treadmill.csv"), "utf8");
  const mapping = (lab.value as Laboratory).instruments?.cart as SeriesMapping;
  const shop = await openShop(practice, { editions: EDITIONS });
  return {
    breaths: csv.trimEnd().split("\n").length - 1,
    csvMs: await cpu(() => splitCsv(csv, ",")),
    seriesMs: await cpu(() => readSeries("treadmill.csv", csv, mapping)),
    testMs: await cpu(() => derive(testOnly(practice, lab, reference, found.path, csv, mapping))),
    computeMs: await cpu(() => computeVisitOf({ practice, lab, reference }, found.path)),
    visitMs: await cpu(() => shop.build(client, new Set([found.path]))),
  };
}

let kept: Visit | undefined;

/** The visit with nothing but body size and its exercise test, the series read anew from its text. */
function testOnly(
  practice: Practice,
  lab: Document,
  reference: Reference,
  path: string,
  csv: string,
  mapping: SeriesMapping,
): Visit {
  kept ??= computeVisitOf({ practice, lab, reference }, path).visit;
  const series = readSeries("treadmill.csv", csv, mapping).series;
  if (kept === undefined || series === undefined) throw new Error("the visit cannot be computed");
  const { waymark, client, date, purpose, size, room, incremental } = kept.session;
  const session = {
    waymark,
    client,
    date,
    purpose,
    ...(size && { size }),
    ...(room && { room }),
    ...(incremental && { incremental }),
  };
  return { ...kept, session, series: { "treadmill.csv": series } };
}
