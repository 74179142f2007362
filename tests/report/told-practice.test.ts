/** What the example practice records is told in German, but for citations and what somebody typed. */
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { speechOf } from "../../src/kernel/speech.js";
import { readResults } from "../../src/results/read.js";
import { wordsOf } from "./assets.js";
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
});
