/**
 * The first hour of a new user, step by step: a practice, a client, a session from a CSV with semicolons and decimal
 * commas, three mistakes, a build, an edit, a retest, an archive, and a colleague who verifies it elsewhere. What the
 * program says is compared whole where a person reads it.
 */
import { spawnSync } from "node:child_process";
import { cpSync, existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { afterAll, describe, expect, it } from "vitest";

const PROGRAM = resolve("dist/cli/main.js");
const desk = mkdtempSync(join(tmpdir(), "first-hour-"));
const root = join(desk, "lab");
afterAll(() => rmSync(desk, { recursive: true, force: true }));

const waymarkIn = (cwd: string, ...words: string[]) => {
  const { status, stdout, stderr } = spawnSync(process.execPath, [PROGRAM, ...words], { cwd, encoding: "utf8" });
  return { code: status, out: stdout, err: stderr };
};
const waymark = (...words: string[]) => waymarkIn(root, ...words);
const git = (cwd: string, ...words: string[]) => {
  const identity = ["-c", "user.name=physiologist", "-c", "user.email=lab@example.invalid"];
  const { status, stdout, stderr } = spawnSync("git", [...identity, ...words], { cwd, encoding: "utf8" });
  return { code: status, out: stdout, err: stderr };
};
const edit = (path: string, ...changes: [from: string | RegExp, to: string][]) => {
  let text = readFileSync(join(root, path), "utf8");
  for (const [from, to] of changes) {
    expect(typeof from === "string" ? text.includes(from) : from.test(text), `${path} has ${from}`).toBe(true);
    text = text.replace(from, to);
  }
  writeFileSync(join(root, path), text);
};

/** Invented: a ramp test on a cycle, a row every ten seconds, as a German export writes it. */
function rampCsv(gain: number): string {
  const rows = Array.from({ length: 103 }, (_, i) => {
    const t = 10 * (i + 1);
    const work = t <= 180 ? 0 : Math.min(t - 180, 720) / 3;
    const share = t > 900 ? Math.exp(-(t - 900) / 60) : 1;
    const wave = Math.sin(i * 2.1) * 0.015;
    const vo2 = (420 + work * 10.4 * gain * share) * (1 + wave);
    const rer = 0.82 + (work / 240) * 0.32;
    const vco2 = vo2 * rer;
    const ve = 9 + (vco2 / 1000) * 24 + (work > 170 ? (work - 170) * 0.16 : 0);
    const hr = 66 + (work / 240) * 112 * share;
    const clock = `0:${String(Math.floor(t / 60)).padStart(2, "0")}:${String(t % 60).padStart(2, "0")}`;
    const number = (x: number, digits: number) => x.toFixed(digits).replace(".", ",");
    const power = t <= 180 || t > 900 ? 0 : work;
    return [
      clock,
      number(vo2, 1),
      number(vco2, 1),
      number(ve, 1),
      number(12 + work / 9, 1),
      hr.toFixed(0),
      power.toFixed(0),
    ].join(";");
  });
  return [
    "Belastungstest",
    "",
    "Zeit;V'O2;V'CO2;V'E;AF;HF;Last",
    "h:mm:ss;ml/min;ml/min;l/min;1/min;S/min;W",
    ...rows,
    "",
  ].join("\r\n");
}

const FIRST = "clients/c-001/2026-03-02-baseline";
const SECOND = "clients/c-001/2026-05-11-retest";

describe("the first hour", () => {
  it("1. makes a practice and a client", () => {
    const made = waymarkIn(desk, "new", "practice", "lab");
    expect(made.err).toBe("");
    expect(made.out).toBe(
      [
        "A practice in lab:",
        "  lab.yaml",
        "  README.md",
        "  .gitattributes",
        "  .gitignore",
        "  .vscode/settings.json",
        "  .waymark-schema/   so that an editor completes and checks as you type, offline",
        "  clients/",
        "  .git/   a repository; a commit is stopped while a file holds an error",
        "",
        "Next:",
        "  cd lab",
        "  edit lab.yaml           name, altitude, instruments",
        "  waymark new client      the first client, by pseudonym",
        "",
      ].join("\n"),
    );
    edit(
      "lab.yaml",
      ["name: Our laboratory", "name: Invented laboratory"],
      ["# altitude_m: 190   ", "altitude_m: 190   "],
    );
    edit("lab.yaml", ["  cuff:", "  bike: {kind: cycle ergometer, measures: [ergometer]}\n  cuff:"]);
    expect(waymark("new", "client").out).toBe(
      [
        "clients/c-001/client.yaml",
        "",
        "Fill in birth_date and sex there.",
        "Note who c-001 is in your list of contacts, outside this folder.",
        "Then: waymark new session c-001 --date YEAR-MONTH-DAY",
        "",
      ].join("\n"),
    );
    expect(waymark("check").err).toMatch(
      /^error empty-value {3}clients\/c-001\/client\.yaml:5:1\n[\s\S]*2 errors in 1 file\. 0 visits read\.\n$/,
    );
    edit("clients/c-001/client.yaml", [/birth_date: .*/, "birth_date: 1988-07-19"], [/sex: .*/, "sex: female"]);
    expect(waymark("check")).toEqual({ code: 0, out: "", err: "No problems found. 0 visits read.\n" });
  });

  it("2. makes a session, brings in the instrument's file and is told what was understood", () => {
    expect(waymark("new", "session", "c-001", "--date", "2026-03-02").out).toBe(
      [
        `${FIRST}/session.yaml`,
        "",
        "It holds the first blocks as comments; waymark guide lists them all.",
        "Put the instruments' files beside it, fill in what you measure, then: waymark check",
        "",
      ].join("\n"),
    );
    writeFileSync(join(desk, "ramp.csv"), rampCsv(1));
    const asked = waymark("import", "../ramp.csv", "--as", "cart", "--show");
    expect(asked.out).toMatch(/Still to be said:\n {2}the gas condition of V'E: --condition ventilation_l_min=BTPS/);
    const brought = waymark(
      "import",
      "../ramp.csv",
      "--as",
      "cart",
      "--condition",
      "ventilation_l_min=BTPS",
      "--into",
      "c-001",
    );
    expect(brought.err).toBe("");
    expect(brought.out).toContain(
      "../ramp.csv: 103 rows of 7 columns, semicolons between cells, decimal comma, headers on line 3, a row of units below\n",
    );
    expect(brought.out).toMatch(/ {2}vo2_l_min {20}V'O2 {4}mL\/min {3}STPD\n/);
    expect(brought.out).toMatch(
      /Written to lab\.yaml under instruments\.cart\.\nThe file is .*\/ramp\.csv\.\nIn the block that uses it, write: {3}instrument: cart {3}and {3}series: ramp\.csv\n$/,
    );
  });

  it("3. finds three mistakes, mends two, and leaves the third to the person who knows", () => {
    const text = readFileSync(join(root, FIRST, "session.yaml"), "utf8");
    writeFileSync(
      join(root, FIRST, "session.yaml"),
      `${text.replace(/\n# screening[\s\S]*$/, "\n")}
room: {temperature_c: 21.0, humidity_pct: 45, pressure_mmhg: 743, inspired_gas: room air}

size:
  stature_cm: 1.684       # read twice
  mas_kg: 61.2

blood_pressure:
  method: oscillometric
  device: cuff
  readings:
    - {systolic_mmhg: 118, diastolic_mmhg: 76}
    - {systolic_mmhg: 116, diastolic_mmhg: 750}

incremental:
  mode: cycle
  ergometer: bike
  series: ramp.csv
  instrument: cart
  protocol: {name: ramp 20, kind: ramp, start_power_w: 0, power_rate_w_min: 20}
  phases: {rest_start_s: 0, warm_up_start_s: 60, incremental_start_s: 180, recovery_start_s: 901}
  stop: {reason: exhaustion}
`,
    );
    const found = waymark("check");
    expect(found.code).toBe(1);
    expect(found.err).toContain(["  Expected  a number from 100 to 250, in cm"].join("\n"));
    expect(found.err).toMatch(/Fix {7}1\.684 looks like metres: write 168\.4/);
    expect(found.err).toMatch(/did you mean mass_kg\?/);
    expect(found.err).toMatch(/found 750/);
    expect(found.err).toMatch(/\n3 errors in 1 file\. 1 visit read\.\n$/);
    const mended = waymark("check", "--fix", "--yes");
    expect(mended.out).toContain(
      "-  stature_cm: 1.684       # read twice\n-  mas_kg: 61.2\n+  stature_cm: 168.4       # read twice\n+  mass_kg: 61.2\n",
    );
    expect(mended.err).toMatch(
      /^\n2 repairs in 1 file written; checked again:\n\nerror [\s\S]*1 error in 1 file\. 1 visit read\.\n$/,
    );
    expect(git(root, "add", "-A").code).toBe(0);
    expect(git(root, "commit", "-qm", "Baseline of c-001").code).not.toBe(0);
    edit(`${FIRST}/session.yaml`, ["diastolic_mmhg: 750", "diastolic_mmhg: 75"]);
    expect(waymark("check")).toMatchObject({ code: 0 });
  });

  it("4. builds and commits, with the check in between", () => {
    const built = waymark("build", "--no-pdf");
    expect(built.code, built.err).toBe(0);
    expect(built.out).toMatch(
      /^clients\/c-001\/2026-03-02-baseline {2}new\n {2}results\.yaml {2}report\.html {2}report-client\.html {2}report-referral\.html\n/,
    );
    expect(built.out).toMatch(/1 of 1 visits? built\.\n$/);
    expect(readFileSync(join(root, FIRST, "results.yaml"), "utf8")).toMatch(/^vo2_peak:\n {2}value: 2\.\d+/m);
    git(root, "add", "-A");
    expect(git(root, "commit", "-qm", "Baseline of c-001")).toMatchObject({ code: 0 });
    expect(waymark("diff")).toEqual({ code: 0, out: "No finding moved.\n", err: "" });
  });

  it("5. corrects a weighing and sees everything that moved, with its cause", () => {
    edit(`${FIRST}/session.yaml`, ["mass_kg: 61.2", "mass_kg: 62.1"]);
    expect(waymark("build", "--no-pdf", "--since", "HEAD").out).toMatch(/baseline {2}\d+ findings moved\n/);
    const { out } = waymark("diff");
    expect(out).toMatch(/^clients\/c-001\/2026-03-02-baseline\n {2}session\.yaml size\.mass_kg/);
    expect(out).toMatch(/body_mass +61\.2 kg → 62\.1 kg/);
    expect(out).toMatch(/body_mass_index +21\.6 kg\/m² → 21\.9 kg\/m²/);
    git(root, "add", "-A");
    expect(git(root, "commit", "-qm", "c-001: body mass 61.2 -> 62.1, misread scale").code).toBe(0);
  });

  it("6. retests with the same protocol, and none of the old numbers", () => {
    const made = waymark("new", "session", "c-001", "--date", "2026-05-11", "--like", "last");
    expect(made.out).toContain(
      `Protocol, instruments and postures are those of ${FIRST}; no measured value was copied.\n`,
    );
    writeFileSync(join(root, SECOND, "ramp.csv"), rampCsv(1.12));
    edit(
      `${SECOND}/session.yaml`,
      [/# stature_cm:.*/, "stature_cm: 168.4"],
      [/# mass_kg:.*/, "mass_kg: 61.0"],
      [/# size:/, "size:"],
      [/# series:.*/, "series: ramp.csv"],
      [
        /( *)# phases:[^\n]*\n(?:\1 {2}# .*\n)+/,
        "$1phases: {rest_start_s: 0, warm_up_start_s: 60, incremental_start_s: 180, recovery_start_s: 901}\n",
      ],
      [
        /( *)# temperature_c:.*\n *# humidity_pct:.*\n *# pressure_mmhg:.*/,
        "$1temperature_c: 21.5\n$1humidity_pct: 43\n$1pressure_mmhg: 744",
      ],
    );
    const built = waymark("build", "--no-pdf");
    expect(built.code, built.err).toBe(0);
    expect(built.out).toMatch(/2026-05-11-retest {2}new\n/);
    expect(built.out).toMatch(/1 of 2 visits built, 1 unchanged\.\n$/);
    expect(readFileSync(join(root, SECOND, "results.yaml"), "utf8")).toMatch(/^change_vo2_peak:/m);
    git(root, "add", "-A");
    expect(git(root, "commit", "-qm", "Retest of c-001").code).toBe(0);
  });

  it("7. follows a number to its source", () => {
    const { out } = waymark("explain", "c-001/2026-05-11-retest", "body_mass_index");
    expect(out).toMatch(/^body_mass_index {2}21\.5 kg\/m²/);
    const page = waymark("explain", "c-001/2026-05-11-retest", "body_mass_index", "--html").out;
    expect(page).toMatch(/^<!DOCTYPE html>/);
    expect(page).toContain("21.5 kg/m²");
  });

  it("8. archives, and a colleague verifies archive and practice on another clone", () => {
    const { out } = waymark("archive", "c-001", "--to", desk);
    expect(out).toBe(`${join(desk, "c-001-2026-05-11.zip")}\n`);
    const clone = join(desk, "elsewhere");
    expect(git(desk, "clone", "-q", root, clone).code).toBe(0);
    cpSync(join(desk, "c-001-2026-05-11.zip"), join(clone, "c-001.zip"));
    const verified = waymarkIn(clone, "verify", "c-001.zip");
    expect(verified.err).toBe("");
    expect(verified.out).toMatch(
      /^\d+ files agree with the manifest \(waymark \d+\.\d+\.\d+\)\.\n2 of 2 visits agree with what is computed now\.\n$/,
    );
    expect(waymarkIn(clone, "verify")).toEqual({
      code: 0,
      out: "2 of 2 visits agree with what is computed now.\n",
      err: "",
    });
    const rebuilt = waymarkIn(clone, "build", "--no-pdf", "--no-cache");
    expect(rebuilt.code).toBe(0);
    expect(git(clone, "status", "--porcelain", "clients").out).toBe("");
    expect(existsSync(join(clone, "clients/c-001/2026-03-02-baseline/report.html"))).toBe(true);
  });

  it("9. says which input moved when a record was changed behind its back", () => {
    const clone = join(desk, "elsewhere");
    const path = join(clone, FIRST, "session.yaml");
    writeFileSync(path, readFileSync(path, "utf8").replace("mass_kg: 62.1", "mass_kg: 63.3"));
    const { code, out } = waymarkIn(clone, "verify", "c-001/2026-03-02-baseline");
    expect(code).toBe(1);
    expect(out).toMatch(/2026-03-02-baseline: differs\n {2}session\.yaml size\.mass_kg/);
    expect(out).toMatch(/0 of 1 visits? agrees? with what is computed now\.\n$/);
  });
});
