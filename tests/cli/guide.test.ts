/** The guide, over every block: nothing of the schema is left out, and no line is too wide. */
import { spawnSync } from "node:child_process";
import { describe, expect, it } from "vitest";
import { type GuideNode, guideBlocks, guideList, guidePage, type SchemaOf } from "../../src/cli/guide.js";
import { loadSchemas } from "../../src/cli/reference.js";

const schemas = new Map(
  loadSchemas().map((schema) => [String(schema.$id).replace("https://waymark.invalid/schema/", ""), schema]),
);
const schemaOf: SchemaOf = (name) => schemas.get(name) as GuideNode | undefined;
const blocks = guideBlocks(schemaOf);
const page = (name: string, ...path: string[]) => {
  const block = blocks.find((b) => b.name === name);
  return block ? guidePage(block, path, schemaOf) : undefined;
};

describe("the guide", () => {
  it("says nothing to a reader who has seen enough", () => {
    // `true` has gone, and the pipe with it, long before the program writes.
    const seen = spawnSync("bash", ["-c", '"$0" dist/cli/main.js guide instrument | true', process.execPath], {
      encoding: "utf8",
    });
    expect(seen).toMatchObject({ stdout: "", stderr: "" });
  });

  it("has a page for every block of a session, with every key and a sentence for each", () => {
    expect(blocks.length).toBeGreaterThan(20);
    for (const block of blocks) {
      const text = guidePage(block, [], schemaOf) ?? "";
      const keys = Object.keys(block.node.properties ?? block.node.items?.properties ?? {});
      for (const key of keys)
        if (key !== "confirmed") expect(text, `${block.name}.${key}`).toMatch(new RegExp(`^ +${key}\\b`, "m"));
      expect(text.split("\n").filter((line) => line.length > 96)).toEqual([]);
      expect(text).not.toMatch(/undefined|\[object/);
    }
    expect(guideList(blocks).split("\n")).toHaveLength(blocks.length);
  });

  it("says how to measure, the ranges and the source", () => {
    const text = page("blood_pressure") ?? "";
    expect(text).toMatch(/How to measure\n {2}- No caffeine, exercise or smoking for 30 minutes/);
    expect(text).toMatch(/Source\n {2}- Pickering TG et al\. \(2005\)/);
    expect(text).toMatch(/systolic_mmhg {3}mmHg, possible 50 to 300, usually 85 to 180; required/);
    expect(page("size")).toMatch(/stature_cm {3}cm, possible 100 to 250, usually 140 to 210; one value or a list/);
    expect(page("dxa")).toMatch(/left_arm[\s\S]*fat_g {3}g/);
  });

  it("gives a source wherever it says how to measure", () => {
    const told = blocks.filter((block) => block.node.howto !== undefined);
    expect(told.length).toBeGreaterThan(12);
    for (const { name, node } of told) expect(node.source, name).toBeDefined();
  });

  it("shows one key, and knows when there is none", () => {
    expect(page("incremental", "protocol")).toMatch(/^incremental\.protocol\n\nHow the work rose\./);
    expect(page("lactate", "steps", "rpe")).toMatch(/possible 6 to 20/);
    expect(page("lactate", "stepz")).toBeUndefined();
  });
});
