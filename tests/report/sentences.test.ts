/** The pairs of sentences a language has for those of the results file. */
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { sentencesOf } from "../../src/cli/sentences.js";
import { plainYaml } from "../../src/read/yaml-plain.js";

interface Pairs {
  readonly sentences: Record<string, string>[];
}
const FOLDER = "templates/words/de";
const files = readdirSync(FOLDER);

describe("German sentences", () => {
  it("are pairs with the same places, and no English sentence stands twice", () => {
    const seen = new Map<string, string>();
    for (const file of files) {
      const { sentences } = parse(readFileSync(`${FOLDER}/${file}`, "utf8")) as Pairs;
      for (const pair of sentences) {
        const { en = "", de = "" } = pair;
        expect(Object.keys(pair), en).toEqual(["en", "de"]);
        expect(de.trim(), en).not.toBe("");
        const places = (text: string) => [...text.matchAll(/\{([=~]?\w+)\}/g)].map((match) => match[1]).sort();
        expect(new Set(places(de)), en).toEqual(new Set(places(en)));
        const key = en.charAt(0).toLowerCase() + en.slice(1).replace(/\.$/, "");
        expect(seen.get(key), `${file}: ${en}`).toBeUndefined();
        seen.set(key, file);
      }
    }
  });
  it("are of the form that is read fast, and read as any YAML", () => {
    for (const file of files) {
      const text = readFileSync(`${FOLDER}/${file}`, "utf8");
      expect(plainYaml(text), file).toEqual(parse(text));
    }
    const pairs = files.flatMap((file) => (parse(readFileSync(`${FOLDER}/${file}`, "utf8")) as Pairs).sentences);
    expect(sentencesOf("templates/words", "de")).toEqual(Object.fromEntries(pairs.map(({ en, de }) => [en, de])));
    expect(sentencesOf("templates/words", "en")).toBeUndefined();
  });
});
