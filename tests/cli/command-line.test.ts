/** The program as its user meets it: exit codes, messages, files written and left alone. */
import { readdirSync, readFileSync, statSync, symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { type Copy, copyPractice } from "./practice-copy.js";

const copies: Copy[] = [];
const practice = (...only: string[]) => {
  const copy = copyPractice(only);
  copies.push(copy);
  return copy;
};
afterAll(() => {
  for (const copy of copies) copy.remove();
});

const SHORT = "clients/c-044/2026-06-08-retest";
const edit = (copy: Copy, path: string, from: string, to: string) => {
  const text = readFileSync(join(copy.root, path), "utf8");
  expect(text).toContain(from);
  writeFileSync(join(copy.root, path), text.replace(from, to));
};

describe("the command line", () => {
  it("prints help and its version, and answers a wrong verb with exit code 2", () => {
    const copy = practice("c-044");
    expect(copy.run("--help")).toMatchObject({ code: 0 });
    expect(copy.run("build", "--help").out).toMatch(/^waymark build \[PATH …\]/);
    expect(copy.run("--version").out).toMatch(/^\d+\.\d+\.\d+\n$/);
    expect(copy.run("biuld")).toMatchObject({ code: 2 });
    expect(copy.run("build", "--fast").err).toBe("waymark: there is no option --fast\nTry: waymark build --help\n");
    expect(copy.run("build", "--edtion", "client").err).toMatch(/no option --edtion; did you mean --edition\?/);
    expect(copy.run("check", "clients/c-999").err).toMatch(/clients\/c-999: does not exist in this practice/);
  });

  it("says what is wrong with file, line and fix, exits 1, and writes nothing for that client", () => {
    const copy = practice("c-044");
    edit(copy, `${SHORT}/session.yaml`, "systolic_mmhg: 146", "systolic_mmhg: 14");
    const { code, err } = copy.run("build", "--no-report");
    expect(code).toBe(1);
    expect(err).toMatch(/error [a-z-]+ {3}clients\/c-044\/2026-06-08-retest\/session\.yaml:\d+:\d+/);
    expect(err).toMatch(/Fix {7}/);
    expect(readdirSync(join(copy.root, SHORT))).toEqual(["session.yaml"]);
    const listed = JSON.parse(copy.run("check", "--json").out) as { file: string; line: number; severity: string }[];
    expect(listed).toHaveLength(1);
    expect(listed[0]).toMatchObject({ file: `${SHORT}/session.yaml`, severity: "error" });
  });

  it("builds, then has nothing to do; builds what an edit touches and says what moved", () => {
    const copy = practice("c-044");
    expect(copy.run("build", "--no-report").out).toMatch(/2 of 2 visits built\.\n$/);
    expect(copy.run("build", "--no-report").out).toBe("0 of 2 visits built, 2 unchanged.\n");
    edit(copy, `${SHORT}/session.yaml`, "right_kg: [40, 41, 40]", "right_kg: [40, 44, 40]");
    const { out } = copy.run("build", "--no-report");
    expect(out).toMatch(/2026-06-08-retest {2}\d+ findings? moved/);
    expect(out).toMatch(/1 of 2 visits built, 1 unchanged\.\n$/);
  });

  it("gives the same bytes without its cache, in another time zone, locale and folder", () => {
    const copy = practice("c-044");
    copy.run("build", "--no-report");
    const text = readFileSync(join(copy.root, SHORT, "results.yaml"), "utf8");
    process.env.TZ = "Pacific/Auckland";
    process.env.LC_ALL = "de_DE.UTF-8";
    expect(copy.run("build", "--no-report", "--no-cache").code).toBe(0);
    delete process.env.TZ;
    delete process.env.LC_ALL;
    expect(readFileSync(join(copy.root, SHORT, "results.yaml"), "utf8")).toBe(text);
  });

  it("follows a number back to the session file", () => {
    const copy = practice("c-044");
    copy.run("build", "--no-report");
    const { code, out } = copy.run("explain", "c-044/2026-03-30-baseline", "body_mass_index");
    expect(code).toBe(0);
    expect(out).toMatch(/^body_mass_index {2}28\.6 kg\/m²/);
    expect(out).toMatch(/formula {2}body-mass-index r1: BMI = mass \/ stature²/);
    expect(out).toMatch(/body_mass {2}88\.9 kg[\s\S]*session\.yaml size\.mass_kg: 88\.9, 88\.9 kg/);
    expect(copy.run("explain", "c-044/2026-03-30-baseline", "body_mass_indx").err).toMatch(
      /Did you mean body_mass_index\?/,
    );
    expect(copy.run("explain", "c-044", "body_mass").code).toBe(2);
  });

  it("refuses a second build while one runs, and takes over the lock of a dead one", () => {
    const copy = practice("c-044");
    copy.run("build", "--no-report");
    writeFileSync(join(copy.root, ".waymark/lock"), String(process.pid));
    expect(copy.run("build", "--no-report")).toMatchObject({ code: 1 });
    writeFileSync(join(copy.root, ".waymark/lock"), "999999999");
    expect(copy.run("build", "--no-report")).toMatchObject({ code: 0 });
  });

  it("follows no link out of the practice", () => {
    const copy = practice("c-044");
    const target = join(copy.root, "..", "outside.csv");
    writeFileSync(target, "secret\n");
    symlinkSync(target, join(copy.root, SHORT, "outside.csv"));
    const { code, err } = copy.run("check");
    expect(code).toBe(1);
    expect(err).toMatch(/outside\.csv: leads out of the practice folder/);
    expect(err).not.toContain("secret");
  });

  it("leaves the old results whole and says so when a file cannot be written", () => {
    const copy = practice("c-044");
    copy.run("build", "--no-report");
    const before = statSync(join(copy.root, SHORT, "results.yaml")).mtimeMs;
    edit(copy, `${SHORT}/session.yaml`, "right_kg: [40, 41, 40]", "right_kg: forty");
    expect(copy.run("build", "--no-report").code).toBe(1);
    expect(statSync(join(copy.root, SHORT, "results.yaml")).mtimeMs).toBe(before);
  });
});
