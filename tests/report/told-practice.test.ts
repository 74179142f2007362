/** What the example practice records is told in German, but for citations and what somebody typed. */
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { speechOf } from "../../src/kernel/speech.js";
import { readResults } from "../../src/results/read.js";
import { figuresOf, wordsOf } from "./assets.js";
import { baseline, retest } from "./fixture.js";
import { leftEnglish } from "./said.js";

const PRACTICE = "examples/skarn-point";
const files = readdirSync(PRACTICE, { recursive: true, encoding: "utf8" });
const read = (ending: string) =>
  files.filter((file) => file.endsWith(ending)).map((file) => readFileSync(`${PRACTICE}/${file}`, "utf8"));
const typed = ["session.yaml", "client.yaml", "lab.yaml"].flatMap(read).join("\n");

describe("the example practice in German", () => {
  it("leaves no sentence of ours in English", () => {
    const speech = speechOf(wordsOf("de"));
    const left = read("results.yaml").flatMap((text) => leftEnglish(readResults(text), speech));
    expect([...new Set(left)].filter((english) => !typed.includes(english))).toEqual([]);
  });
  it("leaves no word of a figure in English", () => {
    const saidIn = (language: string) =>
      figuresOf(retest, [baseline], language).map(({ title, alt, values, data }) =>
        [title, alt, ...[values, ...Object.values(data).flat()].flatMap((row) => Object.values(row))].filter(
          (said): said is string => typeof said === "string" && /[a-z]{4}/.test(said),
        ),
      );
    const english = new Set(saidIn("en").flat());
    expect(english.size).toBeGreaterThan(50);
    expect(
      saidIn("de")
        .flat()
        .filter((said) => english.has(said)),
    ).toEqual([]);
  });
});
