/**
 * npm run bench [-- --sizes 100,1000,10000] [--html-up-to 1000] [--pdf-up-to 100] [--json]
 *
 * Generated practices (invented, seeded), the built program as a user starts it, and what the same work costs at least
 * on this machine in this run. Judge by CPU time and ratios: wall time depends on what else the machine does.
 */
import { existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { availableParallelism, cpus, tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { parseArgs } from "node:util";
import { barePrinting, charts, parseOnly, visitsOf } from "./bench-floors.js";
import { commit, copyOfProgram, edit, measured, type Run, reviseFormula, someSession } from "./bench-runs.js";
import { type Warm, warm } from "./bench-warm.js";
import { makePractice } from "./make-practice.js";

const { values: flags } = parseArgs({
  options: {
    sizes: { type: "string", default: "100,1000" },
    "html-up-to": { type: "string", default: "1000" },
    "pdf-up-to": { type: "string", default: "100" },
    json: { type: "boolean", default: false },
  },
});
const [htmlUpTo, pdfUpTo] = [Number(flags["html-up-to"]), Number(flags["pdf-up-to"])];
const base = existsSync("/dev/shm") ? "/dev/shm" : tmpdir();
const BUILD = ["build", "--no-report"];

interface Floors {
  readonly parse: number;
  readonly charts: number;
  readonly figures: number;
  readonly page: number;
}

function runAll(practice: string, visits: number): Run[] {
  const runs: Run[] = [];
  const run = (name: string, words: readonly string[], program = resolve(".")) => {
    const one = measured(name, visits, program, practice, words);
    runs.push(one);
    process.stderr.write(
      `${visits} visits, ${name}: ${ms(one.wallMs)}, CPU ${ms(one.cpuMs)}, ${one.peakMb.toFixed(0)} MB\n`,
    );
  };
  run("check", ["check"]);
  run("results", BUILD);
  run("nothing changed", BUILD);
  const altered = copyOfProgram();
  reviseFormula(altered, "body-mass-index");
  run("one formula revised", BUILD, altered);
  edit(join(altered, "src/norms/tables/bmi-classes-who-2000.yaml"), /$/, "\n# proof-read again\n");
  run("one norm table changed", BUILD, altered);
  rmSync(altered, { recursive: true });
  run("back to the program as it is", BUILD);
  run("verify", ["verify"]);
  if (visits <= htmlUpTo) {
    run("results + HTML", ["build", "--no-pdf", "--no-cache"]);
    edit(someSession(practice), /mass_kg: \[[\d.]+/, "mass_kg: [66.05");
    run("one session edited, to HTML", ["build", "--no-pdf"]);
    commit(practice);
    edit(someSession(practice), "mass_kg: [66.05", "mass_kg: [66.15");
    run("one visit alone, to HTML", ["build", "--no-pdf", "--no-index", join(someSession(practice), "..")]);
    run("diff", ["diff"]);
  }
  if (visits <= pdfUpTo) {
    run("results + HTML + PDF", ["build", "--no-cache"]);
    edit(someSession(practice), "mass_kg: [66.15", "mass_kg: [66.25");
    run("one session edited, to PDF", ["build"]);
  }
  return runs;
}

async function floorsOf(practice: string): Promise<Floors> {
  const visit = visitsOf(practice)[1] as string;
  const pages = visitsOf(practice)
    .slice(0, 8)
    .flatMap((folder) =>
      ["report.html", "report-client.html", "report-referral.html"].map((name) => join(folder, name)),
    )
    .filter((path) => existsSync(path))
    .map((path) => readFileSync(path, "utf8"));
  const drawn = await charts(practice, visit);
  return {
    parse: (await parseOnly(practice)).cpuMs,
    charts: drawn.cpuMs,
    figures: drawn.figures,
    page: pages.length > 0 ? (await barePrinting(pages)).wallMs : Number.NaN,
  };
}

const ms = (x: number) => (x >= 10_000 ? `${(x / 1000).toFixed(1)} s` : `${x.toFixed(0)} ms`);
/** What a run is held against, per visit. */
const floorOf = (run: Run, floors: Floors): number | undefined =>
  run.name.includes("PDF") && run.visits > 1 && !run.name.startsWith("one")
    ? floors.parse + floors.charts + 3 * floors.page
    : run.name === "results + HTML"
      ? floors.parse + floors.charts
      : /^(check|results|verify|one formula|one norm)/.test(run.name)
        ? floors.parse
        : undefined;

function table(all: readonly Run[], floors: Floors): string {
  const rows = all.map((run) => {
    const floor = floorOf(run, floors);
    const smaller = all.findLast((other) => other.name === run.name && other.visits < run.visits);
    const growth = smaller && Math.log(run.cpuMs / smaller.cpuMs) / Math.log(run.visits / smaller.visits);
    return [
      run.visits,
      run.name,
      ms(run.wallMs),
      ms(run.cpuMs) + (run.childrenCpuMs > 0 ? ` + ${ms(run.childrenCpuMs)}` : ""),
      (run.cpuMs / run.visits).toFixed(1),
      floor === undefined ? "" : ((run.cpuMs + run.childrenCpuMs) / run.visits / floor).toFixed(1),
      growth === undefined ? "" : growth.toFixed(2),
      run.peakMb.toFixed(0),
      run.megabytes.toFixed(0),
    ];
  });
  const head = [
    "visits",
    "run",
    "wall",
    "CPU (+ browser)",
    "CPU ms a visit",
    "× floor",
    "growth",
    "peak MB",
    "practice MB",
  ];
  return [head, head.map(() => "---"), ...rows].map((row) => `| ${row.join(" | ")} |`).join("\n");
}

function report(all: readonly Run[], floors: Floors, test: Warm): string {
  return `${cpus()[0]?.model ?? "unknown processor"}, ${availableParallelism()} at once, Node ${process.version}, ${new Date().toISOString().slice(0, 10)}

Floors a visit, same run: reading and parsing ${floors.parse.toFixed(2)} ms; its ${floors.figures} figures refilled ${floors.charts.toFixed(1)} ms; one page set printed bare ${floors.page.toFixed(1)} ms.
One visit warm, to HTML in three editions: ${test.visitMs.toFixed(1)} ms; its results alone ${test.computeMs.toFixed(1)} ms. Its test of ${test.breaths} breaths read, cleaned and all derived, intervals included: ${test.testMs.toFixed(1)} ms (splitting its CSV alone ${test.csvMs.toFixed(2)} ms, with numbers ${test.seriesMs.toFixed(2)} ms).

${table(all, floors)}
`;
}

const all: Run[] = [];
let floors: Floors | undefined;
let test: Warm | undefined;
for (const visits of flags.sizes.split(",").map(Number)) {
  const practice = mkdtempSync(join(base, "bench-practice-"));
  try {
    makePractice(practice, visits, 7);
    all.push(...runAll(practice, visits));
    floors ??= await floorsOf(practice);
    test ??= await warm(practice);
  } finally {
    rmSync(practice, { recursive: true });
  }
}
if (floors && test)
  process.stdout.write(
    flags.json ? `${JSON.stringify({ floors, warm: test, runs: all }, null, 2)}\n` : report(all, floors, test),
  );
