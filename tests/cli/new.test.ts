/** A new practice, client and session, as a new user makes them. */
import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { parse } from "yaml";
import { nextId } from "../../src/cli/new/new-client.js";
import { copyPractice, EXAMPLE } from "./practice-copy.js";

const PROGRAM = resolve("dist/cli/main.js");
const folder = mkdtempSync(join(tmpdir(), "new-practice-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const run = (cwd: string, ...words: string[]) => {
  const { status, stdout, stderr } = spawnSync(process.execPath, [PROGRAM, ...words], { cwd, encoding: "utf8" });
  return { code: status, out: stdout, err: stderr };
};

describe("new practice", () => {
  const root = join(folder, "lab");
  const made = run(folder, "new", "practice", "lab");

  it("makes a folder whose files all check", () => {
    expect(made).toMatchObject({ code: 0, err: "" });
    expect(made.out).toMatch(/^A practice in lab:\n {2}lab\.yaml\n/);
    expect(run(root, "check")).toMatchObject({ code: 0, err: "No problems found. 0 visits read.\n" });
  });

  it("quotes a folder with a space where it says what to type", () => {
    expect(run(folder, "new", "practice", "Labor Süd").out).toContain('\n  cd "Labor Süd"\n');
  });

  it("brings every schema, and editor settings and first lines that lead to them", () => {
    const settings = JSON.parse(readFileSync(join(root, ".vscode/settings.json"), "utf8")) as {
      "yaml.schemas": Record<string, string[]>;
    };
    for (const path of Object.keys(settings["yaml.schemas"])) expect(existsSync(join(root, path)), path).toBe(true);
    const line = /\$schema=(.*)/.exec(readFileSync(join(root, "lab.yaml"), "utf8"))?.[1] ?? "";
    expect(existsSync(join(root, line))).toBe(true);
    const own = readdirSync("schema", { recursive: true, encoding: "utf8" }).sort();
    expect(readdirSync(join(root, ".waymark-schema"), { recursive: true, encoding: "utf8" }).sort()).toEqual(own);
  });

  it("stops a commit while a file holds an error, with nothing on the path but Git", () => {
    const git = (...words: string[]) =>
      spawnSync("git", ["-c", "user.name=a", "-c", "user.email=a@example.invalid", ...words], {
        cwd: root,
        encoding: "utf8",
        env: { ...process.env, PATH: "/usr/bin:/bin" },
      });
    expect(git("add", "-A").status).toBe(0);
    expect(git("commit", "-qm", "Begin")).toMatchObject({ status: 0 });
    const lab = readFileSync(join(root, "lab.yaml"), "utf8");
    writeFileSync(join(root, "lab.yaml"), lab.replace("paper: A4 ", "paper: A44"));
    git("add", "-A");
    const refused = git("commit", "-qm", "Break it");
    expect(refused.status).not.toBe(0);
    expect(refused.stderr).toMatch(/lab\.yaml:\d+:8/);
    writeFileSync(join(root, "lab.yaml"), lab);
    git("add", "-A");
    expect(git("status", "--porcelain").stdout).toBe("");
    expect(statSync(join(root, ".git/hooks/pre-commit")).mode & 0o111).not.toBe(0);
  });

  it("touches nothing of a practice that is there but its schema copies", () => {
    writeFileSync(join(root, "lab.yaml"), "waymark: laboratory 1\nname: Kept\n");
    expect(run(folder, "new", "practice", "lab").out).toMatch(/is a practice already/);
    expect(readFileSync(join(root, "lab.yaml"), "utf8")).toContain("Kept");
  });
});

describe("new client", () => {
  it("proposes the next free pseudonym and never takes a name", () => {
    expect(nextId([])).toBe("c-001");
    expect(nextId(["c-009", "c-017", "k-003"])).toBe("c-018");
    expect(nextId(["c-999"])).toBe("c-1000");
    const copy = copyPractice(["c-044"]);
    expect(copy.run("new", "client", "anna-smith")).toMatchObject({ code: 2 });
    const made = copy.run("new", "client", "--sex", "female", "--birth-date", "1990-05-01");
    expect(made.out).toMatch(/^clients\/c-045\/client\.yaml/);
    expect(copy.run("check")).toMatchObject({ code: 0 });
    expect(copy.run("new", "client", "c-044").err).toMatch(/is taken\. The next free id is c-046/);
    copy.remove();
  });
});

/** Keys that hold what was found at a visit: written down by hand from the blocks, apart from the program's own list. */
const FOUND =
  /^(stature_cm|mass_kg|waist_cm|hip_cm|readings|systolic_mmhg|diastolic_mmhg|pulse_per_min|temperature_c|humidity_pct|pressure_mmhg|series|whole|trunk|fat_g|lean_g|bmc_g|left_kg|right_kg|repetitions|heart_rate\w*_bpm|reach_cm|left_s|right_s|phases|stop|overall|legs|steps|lactate_mmol_l|rest_lactate_mmol_l|manoeuvres|fvc_l|\w+_mm|fat_percent|spo2_pct|vo2\w*|remarks|read_l|screening|preparation|calibration|pregnancy|fasted|symptoms|adverse_signs|confirmed|time_min|distance_m|bouts)$/;

describe("new session --like", () => {
  const visits = readdirSync(join(EXAMPLE, "clients")).flatMap((client) =>
    readdirSync(join(EXAMPLE, "clients", client))
      .filter((name) => existsSync(join(EXAMPLE, "clients", client, name, "session.yaml")))
      .map((name) => ({ client, name })),
  );

  it.each(visits)("copies how $client/$name was measured and nothing that was found", ({ client, name }) => {
    const copy = copyPractice([client]);
    const made = copy.run("new", "session", client, "--date", "2027-01-11", "--like", name);
    expect(made).toMatchObject({ code: 0, err: "" });
    const path = join(copy.root, `clients/${client}/2027-01-11-retest/session.yaml`);
    const text = readFileSync(path, "utf8");
    const keys: string[] = [];
    const walk = (value: unknown): void => {
      if (Array.isArray(value)) for (const item of value) walk(item);
      else if (typeof value === "object" && value !== null)
        for (const [key, inner] of Object.entries(value)) {
          keys.push(key);
          walk(inner);
        }
    };
    walk(parse(text));
    expect(keys.filter((key) => FOUND.test(key))).toEqual([]);
    const { incremental } = parse(text) as { incremental?: { protocol: unknown; stages?: unknown } };
    const before = parse(readFileSync(join(EXAMPLE, "clients", client, name, "session.yaml"), "utf8")) as {
      incremental?: { protocol: unknown };
    };
    expect(incremental?.stages).toBeUndefined();
    expect(incremental?.protocol).toEqual(before.incremental?.protocol);
    expect(copy.run("check").code, text).toBe(0);
    copy.remove();
  });

  it("asks for a day that exists, and says which clients there are", () => {
    const copy = copyPractice(["c-044"]);
    expect(copy.run("new", "session", "c-044").err).toMatch(/needs the day of the visit: --date YEAR-MONTH-DAY/);
    expect(copy.run("new", "session", "c-044", "--date", "2026-02-30")).toMatchObject({ code: 2 });
    expect(copy.run("new", "session", "c-004", "--date", "2026-02-03").err).toMatch(/There are: c-044\./);
    expect(copy.run("new", "session", "c-044", "--date", "2026-02-03", "--like", "last").code).toBe(0);
    expect(copy.run("new", "session", "c-044", "--date", "2026-02-03").err).toMatch(/is there already/);
    copy.remove();
  });
});
