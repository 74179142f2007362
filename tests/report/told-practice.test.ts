/** What the example practice records is told in German, but for citations and what somebody typed. */
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { Entry } from "../../src/kernel/measure.js";
import { speechOf } from "../../src/kernel/speech.js";
import { readResults } from "../../src/results/read.js";
import { wordsOf } from "./assets.js";

const PRACTICE = "examples/skarn-point";
const files = readdirSync(PRACTICE, { recursive: true, encoding: "utf8" });
const read = (ending: string) =>
  files.filter((file) => file.endsWith(ending)).map((file) => readFileSync(`${PRACTICE}/${file}`, "utf8"));
const typed = ["session.yaml", "client.yaml", "lab.yaml"].flatMap(read).join("\n");

/** Works: a year, pages or a volume, "and others", names after each other; names of equations; ids of tables. */
const CITED =
  /\b(?:19|20)\d{2}\b|\d+:[a-z]?\d+|and others|authors not seen|^[A-Z][a-z]+ [A-Z]{1,3},|^(?:[A-Z][\w']+ ?)+$|^[a-z0-9]+(?:-[a-z0-9]+){2,}/;
/** Ids that a table of the results names. */
const IDS = /^(?:fev1|fvc|other)$/;

const said = (entry: Entry): string[] => {
  const shared = "because" in entry ? [entry.because] : [];
  if (entry.kind === "quantity")
    return [entry.note, ...(entry.norms ?? []).flatMap((n) => [n.group, n.category, n.note, n.notGiven])].flatMap(
      (text) => text ?? [],
    );
  if (entry.kind === "table") {
    const source = entry.columns.findIndex((column) => column.key === "source");
    const cells = entry.rows.flatMap((row) => row.filter((cell, i) => typeof cell === "string" && i !== source));
    return [...(entry.note === undefined ? [] : [entry.note]), ...(cells as string[])];
  }
  if (entry.kind === "remark") return [...shared, entry.found, entry.limit];
  if (entry.kind === "change") return [...shared, ...entry.differs, ...(entry.notes ?? [])];
  return shared;
};

describe("the example practice in German", () => {
  it("leaves no sentence of ours in English", () => {
    const speech = speechOf(wordsOf("de"));
    const left = new Set<string>();
    for (const results of read("results.yaml").map(readResults))
      for (const text of [...results.entries.flatMap(said), ...Object.values(results.conditions)])
        speech.told(text, (english) => {
          if (!CITED.test(english) && !IDS.test(english) && !typed.includes(english)) left.add(english);
          return english;
        });
    expect([...left]).toEqual([]);
  });
});
