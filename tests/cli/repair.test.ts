/** Repairs and the diff that shows them: only the marked characters change. */
import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { unifiedDiff } from "../../src/cli/line-diff.js";
import { repairedFiles } from "../../src/cli/repair.js";
import type { Diagnostic } from "../../src/kernel/diagnostic.js";
import fc from "../tools/properties.js";
import { copyPractice } from "./practice-copy.js";

const diagnostic = (file: string, start: number, end: number, text: string): Diagnostic => ({
  code: "misspelt-key",
  severity: "error",
  at: { file },
  found: "",
  expected: "",
  why: "",
  repair: { start, end, text },
});

describe("repairedFiles", () => {
  const text = "# a note\nsize:\n  mas_kg: 70,5   # weighed twice\n";
  it("changes the marked characters only", () => {
    const key = text.indexOf("mas_kg");
    const value = text.indexOf("70,5");
    const found = repairedFiles(
      [diagnostic("a.yaml", value, value + 4, "70.5"), diagnostic("a.yaml", key, key + 6, "mass_kg")],
      () => text,
    );
    expect(found).toEqual([
      { file: "a.yaml", before: text, after: "# a note\nsize:\n  mass_kg: 70.5   # weighed twice\n", repairs: 2 },
    ]);
  });
  it("takes the first of two that overlap, and none that breaks the file or is not YAML", () => {
    expect(
      repairedFiles([diagnostic("a.yaml", 9, 13, "size"), diagnostic("a.yaml", 10, 12, "xx")], () => text),
    ).toEqual([]);
    expect(repairedFiles([diagnostic("a.yaml", 13, 14, " [")], () => text)).toEqual([]);
    expect(repairedFiles([diagnostic("a.csv", 0, 1, "x")], () => text)).toEqual([]);
  });
});

describe("unifiedDiff", () => {
  const folder = mkdtempSync(join(tmpdir(), "line-diff-"));
  afterAll(() => rmSync(folder, { recursive: true }));

  it("is a patch that git applies to give the new text (any lines, changed, added or removed)", () => {
    const line = fc.constantFrom("a", "b", "", "c: 1", "  - d");
    fc.assert(
      fc.property(fc.array(line, { maxLength: 30 }), fc.array(line, { maxLength: 30 }), (a, b) => {
        const [before, after] = [`first\n${a.join("\n")}\n`, `first\n${b.join("\n")}\n`];
        const patch = unifiedDiff("file", before, after);
        if (before === after) return patch === "";
        writeFileSync(join(folder, "file"), before);
        const { status, stderr } = spawnSync("git", ["apply", "-p0", "--whitespace=nowarn", "-"], {
          cwd: folder,
          input: `${patch}\n`,
          encoding: "utf8",
          env: { ...process.env, GIT_CEILING_DIRECTORIES: tmpdir() },
        });
        expect(stderr).toBe("");
        return status === 0 && readFileSync(join(folder, "file"), "utf8") === after;
      }),
      { numRuns: 60 },
    );
  });
});

describe("waymark check --fix", () => {
  it("shows a diff, writes only when told to, keeps comments, and checks again", () => {
    const copy = copyPractice(["c-044"]);
    const path = join(copy.root, "clients/c-044/2026-06-08-retest/session.yaml");
    const sound = readFileSync(path, "utf8");
    const broken = sound
      .replace("strength:", "strenght:   # with the new dynamometer")
      .replace("blood_pressure:", "blod_pressure:");
    writeFileSync(path, broken);
    const shown = copy.run("check", "--fix");
    expect(shown.code).toBe(1);
    expect(shown.out).toMatch(/-strenght: {3}# with the new dynamometer\n\+strength: {3}# with the new dynamometer/);
    expect(shown.err).toMatch(/2 repairs in 1 file shown, nothing written\. To write: waymark check --fix --yes/);
    expect(readFileSync(path, "utf8")).toBe(broken);
    const written = copy.run("check", "--fix", "--yes");
    expect(written.code).toBe(0);
    expect(written.err).toMatch(/2 repairs in 1 file written; checked again:/);
    expect(readFileSync(path, "utf8")).toBe(sound.replace("strength:", "strength:   # with the new dynamometer"));
    copy.remove();
  });

  it("goes on to what a misspelt block has hidden", () => {
    const copy = copyPractice(["c-044"]);
    const path = join(copy.root, "clients/c-044/2026-06-08-retest/session.yaml");
    const sound = readFileSync(path, "utf8");
    writeFileSync(
      path,
      sound.replace("blood_pressure:", "blod_pressure:").replace("  posture: seated", "  postur: seated"),
    );
    const { code, err } = copy.run("check", "--fix", "--yes");
    expect(code).toBe(0);
    expect(err.match(/1 repair in 1 file written; checked again:/g)).toHaveLength(2);
    expect(readFileSync(path, "utf8")).toBe(sound);
    copy.remove();
  });
});
