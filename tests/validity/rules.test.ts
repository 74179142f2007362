/** All rules: each can be named, found, sourced, and is tested by name. */
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { SECTIONS } from "../../src/kernel/measure.js";
import { rules } from "../../src/rules.generated.js";

const files = readdirSync("src/validity", { recursive: true, encoding: "utf8" })
  .filter(
    (file) => /\/.*\.ts$/.test(file) && /^export const rule\b/m.test(readFileSync(`src/validity/${file}`, "utf8")),
  )
  .map((file) => file.replaceAll("\\", "/"));
const tests = readdirSync("tests/validity", { recursive: true, encoding: "utf8" })
  .filter((file) => file.endsWith(".test.ts"))
  .map((file) => readFileSync(`tests/validity/${file}`, "utf8"));

describe("rules", () => {
  it("have ids that occur once and are the names of their files", () => {
    const ids = rules.map((rule) => rule.id);
    expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([]);
    expect([...ids].sort()).toEqual(files.map((file) => file.replace(/^.*\/|\.ts$/g, "")).sort());
  });
  it.each(rules.map((rule) => [rule.id, rule] as const))("%s has a section, a revision and a source", (_, rule) => {
    expect(SECTIONS).toContain(rule.section);
    expect(rule.revision).toBeGreaterThan(0);
    expect(rule.source.where.length).toBeGreaterThan(3);
    expect(rule.title.length).toBeGreaterThan(3);
  });
  it.each(files)("%s is tested", (file) => {
    const name = `src/validity/${file.replace(/\.ts$/, ".js")}`;
    expect(tests.some((text) => text.includes(name))).toBe(true);
  });
});
