/** Every sentence that stands in our own sources can be told in German. */
import { describe, expect, it } from "vitest";
import { speechOf } from "../../src/kernel/speech.js";
import { answers, fromYaml, literals, untoldIn } from "../tools/recorded-sentences.js";
import { wordsOf } from "./assets.js";

describe("the sentences of our sources", () => {
  const all = [...literals(), ...fromYaml(), ...answers()];
  it("are found: literals with the ways their conditions can fall, tables, answers", () => {
    expect(all.length).toBeGreaterThan(1500);
    const texts = all.map(({ text }) => text);
    expect(texts).toContain("pressure above 250 systolic or 115 diastolic");
    expect(texts.filter((text) => text.endsWith("mL/min was expected from the work: half or less."))).toHaveLength(2);
  });
  it("all have a German one", { timeout: 30_000 }, () => {
    const untold = untoldIn(speechOf(wordsOf("de")), all);
    expect(untold.map(({ at, text }) => `${at} ${text}`)).toEqual([]);
    const own = { at: "here", text: "nobody knows this sentence about {n} kites" };
    expect(untoldIn(speechOf(wordsOf("de")), [own])).toEqual([own]);
  });
});
