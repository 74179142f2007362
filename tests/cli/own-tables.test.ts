/** A practice with tables of its own: a sound one is used, a faulty one is reported and left out. */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { filesNotNamed } from "../../src/cli/files-not-named.js";
import { laboratoryTables } from "../../src/cli/own-tables.js";
import { loadChecker } from "../../src/cli/reference.js";
import type { Laboratory } from "../../src/kernel/generated/laboratory.js";
import { builtInTables } from "../norms/built-in-tables.js";
import { ownTable } from "../norms/own-table-text.js";

const root = mkdtempSync(join(tmpdir(), "own-tables-"));
afterAll(() => rmSync(root, { recursive: true }));
const practice = async (files: Readonly<Record<string, string>>) => {
  mkdirSync(join(root, "norms"), { recursive: true });
  for (const [name, text] of Object.entries(files)) writeFileSync(join(root, name), text);
  const laboratory: Laboratory = { waymark: "laboratory 1", name: "Invented laboratory", norms: Object.keys(files) };
  return laboratoryTables(root, laboratory, await loadChecker(), builtInTables());
};

describe("laboratoryTables", () => {
  it("uses a sound table", async () => {
    const { tables, diagnostics } = await practice({ "norms/rowers.yaml": ownTable });
    expect(diagnostics).toEqual([]);
    expect(tables.map((t) => t.id)).toEqual(["rowers"]);
  });
  it("reports a slip of a digit with its place, and leaves the table out", async () => {
    const slip = ownTable.replace("[20, 29, 40, 48, 57]", "[20, 29, 40, 84, 57]");
    const { tables, diagnostics } = await practice({ "norms/rowers.yaml": slip });
    expect(tables).toEqual([]);
    expect(diagnostics[0]?.found).toContain("57 stands after 84");
    expect(diagnostics[0]?.at.file).toBe("norms/rowers.yaml");
  });
  it("reports what the schema finds, with the key that was meant", async () => {
    const { tables, diagnostics } = await practice({ "norms/rowers.yaml": ownTable.replace("columns:", "colums:") });
    expect(tables).toEqual([]);
    expect(diagnostics[0]?.fix).toContain("columns");
  });
  it("takes an id once", async () => {
    const { tables, diagnostics } = await practice({
      "norms/bmi-classes-who-2000.yaml": ownTable.replace("id: rowers", "id: bmi-classes-who-2000"),
    });
    expect(tables).toEqual([]);
    expect(diagnostics[0]?.expected).toContain("no built-in table");
  });
});

describe("filesNotNamed", () => {
  it("tells of a table, a profile and pairs that lie there and are not used", () => {
    for (const file of ["norms/a.yaml", "norms/b.yml", "norms/read.me", "profiles/ferry.yaml", "retests/peak.csv"]) {
      mkdirSync(join(root, "apart", file, ".."), { recursive: true });
      writeFileSync(join(root, "apart", file), "x\n");
    }
    const laboratory: Laboratory = { waymark: "laboratory 1", name: "Invented laboratory", norms: ["./norms/a.yaml"] };
    const found = filesNotNamed(join(root, "apart"), laboratory);
    expect(found.map(({ at }) => at.file)).toEqual(["norms/b.yml", "profiles/ferry.yaml", "retests/peak.csv"]);
    expect(found[0]).toMatchObject({
      code: "file-not-named",
      severity: "warning",
      expected: "norms/b.yml under norms: in lab.yaml",
    });
    const all = { ...laboratory, norms: ["norms/a.yaml", "norms/b.yml"], profiles: ["profiles/ferry.yaml"] };
    const retests = [{ measure: "vo2_peak", file: "retests/peak.csv" }];
    expect(filesNotNamed(join(root, "apart"), { ...all, retests })).toEqual([]);
    expect(filesNotNamed(join(root, "nowhere"), laboratory)).toEqual([]);
  });
});
