/**
 * Coverage study of the ventilatory thresholds: many seeded tests with known truth, how often the printed 95 %
 * interval holds it, how far off the estimate is, how often a threshold is found that is not there.
 *
 *     npm run study:thresholds [tests per scenario]      writes src/derive/thresholds/coverage.yaml
 */
import { writeFileSync } from "node:fs";
import { findThresholds, type Verdict } from "../../src/derive/thresholds/find.js";
import { isFound } from "../../src/derive/thresholds/points.js";
import { preparedOf } from "../derive/incremental/prepared.js";
import { generateTest } from "../generator/breaths.js";
import { visitOfTest } from "../generator/visit.js";
import { SCENARIOS } from "./threshold-scenarios.js";

interface Tally {
  tests: number;
  present: number;
  given: number;
  held: number;
  invented: number;
  errors: number[];
  halfWidths: number[];
}
const fresh = (): Tally => ({ tests: 0, present: 0, given: 0, held: 0, invented: 0, errors: [], halfWidths: [] });

function count(
  tally: Tally,
  truth: number | undefined,
  found: { vo2: number; low: number; high: number } | undefined,
): void {
  tally.tests++;
  if (truth === undefined) {
    if (found !== undefined) tally.invented++;
    return;
  }
  tally.present++;
  if (found === undefined) return;
  tally.given++;
  if (found.low <= truth && truth <= found.high) tally.held++;
  tally.errors.push(found.vo2 - truth);
  tally.halfWidths.push((found.high - found.low) / 2);
}

const given = (verdict: Verdict) => ("because" in verdict ? undefined : verdict);
const mean = (xs: readonly number[]) => (xs.length === 0 ? Number.NaN : xs.reduce((a, b) => a + b, 0) / xs.length);
const percent = (part: number, whole: number) => (whole === 0 ? "-" : ((100 * part) / whole).toFixed(1));
const fixed = (x: number) => (Number.isFinite(x) ? x.toFixed(3) : "-");

function row(name: string, t: Tally): string[] {
  const bias = mean(t.errors);
  const sd = Math.sqrt(mean(t.errors.map((e) => (e - bias) ** 2)));
  return [
    name,
    String(t.tests),
    percent(t.given, t.present),
    fixed(bias),
    fixed(sd),
    fixed(mean(t.halfWidths)),
    percent(t.held, t.given),
    percent(t.invented, t.tests - t.present),
  ];
}

const each = Number(process.argv[2] ?? 300);
const only = process.argv[3];
const head = ["scenario", "tests", "given_pct", "bias", "sd", "half_width", "held_pct", "invented_pct"];
const tables: Record<string, string[][]> = { vt1: [], vt2: [] };
const methods = new Map<string, Tally>();
for (const scenario of SCENARIOS) {
  if (only !== undefined && !scenario.name.includes(only)) continue;
  const vt1 = fresh();
  const vt2 = fresh();
  for (let seed = 1; seed <= each; seed++) {
    const test = generateTest(scenario.make(seed));
    const phase = test.truth.phases.find((p) => p.name === "incremental");
    if (phase === undefined) throw new Error("a generated test has an incremental phase");
    const prepared = preparedOf(visitOfTest(test, { without: scenario.without ?? [] }));
    if (prepared === undefined) throw new Error("a generated test can be prepared");
    const out = findThresholds(prepared.breaths, phase.fromS, phase.toS);
    count(vt1, test.truth.vt1?.vo2, given(out.vt1));
    count(vt2, test.truth.vt2?.vo2, given(out.vt2));
    for (const [readings, truth] of [
      [out.vt1Readings, test.truth.vt1],
      [out.vt2Readings, test.truth.vt2],
    ] as const)
      for (const reading of readings) {
        const tally = methods.get(reading.method) ?? fresh();
        methods.set(reading.method, tally);
        count(tally, truth?.vo2, isFound(reading) ? reading : undefined);
      }
  }
  tables.vt1?.push(row(scenario.name, vt1));
  tables.vt2?.push(row(scenario.name, vt2));
}
tables.methods = [...methods].map(([name, tally]) => row(name, tally));

for (const [name, rows] of Object.entries(tables)) {
  process.stdout.write(`\n${name}\n`);
  const widths = head.map((h, k) => Math.max(h.length, ...rows.map((r) => (r[k] ?? "").length)));
  for (const line of [head, ...rows])
    process.stdout.write(
      `${line.map((cell, k) => (k === 0 ? cell.padEnd(widths[k] ?? 0) : cell.padStart(widths[k] ?? 0))).join("  ")}\n`,
    );
}
if (only === undefined) {
  const text = Object.entries(tables)
    .map(
      ([name, rows]) =>
        `${name}:\n${rows.map((r) => `  - [${r.map((c, k) => (k === 0 ? `"${c}"` : c === "-" ? "null" : c)).join(", ")}]`).join("\n")}\n`,
    )
    .join("");
  writeFileSync(
    new URL("../../src/derive/thresholds/coverage.yaml", import.meta.url),
    `# Written by npm run study:thresholds from seeds 1 to ${each}; bias, sd and half_width in L/min VO2.\ntests_each: ${each}\ncolumns: [${head.join(", ")}]\n${text}`,
  );
}
