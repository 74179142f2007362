/**
 * An invented practice of any size for benchmarks and fault tests: seeded, clients with 2 to 10 visits, full blocks, and an
 * exercise test of about 470 breaths each. The sessions are those of the example practice with other numbers.
 */
import { cpSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { generateTest } from "../generator/breaths.js";
import { csvText, LITRES, PLAIN } from "../generator/csv.js";
import { chance } from "../generator/random.js";
import { recipe, USUAL_FAULTS } from "../generator/recipe.js";

const EXAMPLE = resolve("examples/skarn-point");
const VISIT = join(EXAMPLE, "clients/c-017/2026-03-02-baseline");
/** Distinct raw tests; visits share them in turn, as making ten thousand would measure the generator. */
const TESTS = 40;

export interface MadePractice {
  readonly visits: number;
  readonly clients: number;
}

export function makePractice(folder: string, visits: number, seed: number): MadePractice {
  const c = chance(seed);
  mkdirSync(folder, { recursive: true });
  cpSync(join(EXAMPLE, "lab.yaml"), join(folder, "lab.yaml"));
  cpSync(join(EXAMPLE, "retests"), join(folder, "retests"), { recursive: true });
  const session = readFileSync(join(VISIT, "session.yaml"), "utf8");
  const client = readFileSync(join(EXAMPLE, "clients/c-017/client.yaml"), "utf8");
  const rest = readFileSync(join(VISIT, "rest.csv"), "utf8");
  const beats = readFileSync(join(VISIT, "beats.txt"), "utf8");
  const tests = Array.from({ length: Math.min(TESTS, visits) }, (_, i) => rawTest(seed + i));
  let made = 0;
  let clients = 0;
  while (made < visits) {
    clients++;
    const id = `c-${String(clients).padStart(5, "0")}`;
    const home = join(folder, "clients", id);
    mkdirSync(home, { recursive: true });
    writeFileSync(
      join(home, "client.yaml"),
      client.replace('"c-017"', `"${id}"`).replace("date: 2026-02-20", "date: 2024-01-02"),
    );
    const count = Math.min(visits - made, 2 + Math.floor(c.between(0, 9)));
    for (let k = 0; k < count; k++, made++) {
      const date = new Date(Date.UTC(2024, 0, 8) + (k * 70 + Math.floor(c.between(0, 7))) * 86_400_000)
        .toISOString()
        .slice(0, 10);
      const label = k === 0 ? "baseline" : "retest";
      const visit = join(home, `${date}-${label}`);
      mkdirSync(visit);
      const test = tests[made % tests.length] as { csv: string; phases: string };
      const mass = (66 + c.between(-2, 2)).toFixed(1);
      const text = session
        .replaceAll("2026-03-02", date)
        .replaceAll('"c-017"', `"${id}"`)
        .replace("label: baseline\npurpose: baseline", `label: ${label}\npurpose: ${label}`)
        .replace(/mass_kg: \[.*\]/, `mass_kg: [${mass}, ${mass}]`)
        .replace(/ {2}phases:\n(?: {4}.*\n)+/, test.phases)
        .replace(/ {2}verification: .*\n/, "");
      writeFileSync(join(visit, "session.yaml"), text);
      writeFileSync(join(visit, "treadmill.csv"), test.csv);
      writeFileSync(join(visit, "rest.csv"), rest);
      writeFileSync(join(visit, "beats.txt"), beats);
    }
  }
  return { visits: made, clients };
}

function rawTest(seed: number): { csv: string; phases: string } {
  const r = recipe(seed, {
    mode: "treadmill",
    massKg: 66,
    vo2Peak: 2.7,
    vt1: 1.75,
    vt2: 2.25,
    protocol: { kind: "ramp", start: 6, rise: 0.6, stageS: 0, gradePct: 1, raises: "speed" },
    restS: 60,
    warmUpS: 120,
    warmUpLoad: 5,
    recoveryS: 60,
    faults: USUAL_FAULTS,
  });
  const test = generateTest(r);
  const at = (name: string) => Math.round(test.truth.phases.find((phase) => phase.name === name)?.fromS ?? 0);
  const phases = `  phases:\n    rest_start_s: 0\n    warm_up_start_s: ${at("warm-up")}\n    incremental_start_s: ${at("incremental")}\n    recovery_start_s: ${at("recovery")}\n`;
  return { csv: csvText(test, LITRES, PLAIN), phases };
}
