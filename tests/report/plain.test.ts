/**
 * The client's edition is for people who read like a twelve-year-old at least: measured by the grade of Flesch and Kincaid
 * (Kincaid JP and others 1975, Derivation of new readability formulas for Navy enlisted personnel; a grade is about the
 * age less five), and free of the trade's words unless their meaning stands beside them.
 */
import { fleschKincaid } from "flesch-kincaid";
import { syllable } from "syllable";
import { describe, expect, it } from "vitest";
import { openReporter } from "../../src/report/render.js";
import { assets, inputOf } from "./assets.js";
import { baseline, retest } from "./fixture.js";

const GRADE_AT_TWELVE = 7;
/** A sentence that says what to do in an emergency lists its signs. */
const HARDEST_SENTENCE = 14;

/** Never in a client's sentence: each has a plain word. */
const JARGON =
  /\b(?:V̇?[OCE]\w*[₂2]|VE|RER|VT[12]?|ventilatory|percentile|incremental|ergometer|spirometry|FEV1|FVC|DXA|BTPS|STPD|ATPS|typical error|standard deviation|confidence|interval|protocol|baseline|plateau|anthropometr\w+|calorimetr\w+|analyser|threshold speed|aerobic|anaerobic|respiratory exchange|densitometry|significan\w+|abnormal|poor|excellent|p\s*[=<])\b/u;
/** Words of the trade that a client meets, and what must stand in the same block to explain them. */
const EXPLAINED: Readonly<Record<string, RegExp>> = {
  threshold: /talk|whole sentences|hold|hours/,
  uptake: /oxygen your body took up/,
  systolic: /heart beats/,
  diastolic: /between beats/,
};

/** Blocks of running text: paragraphs, list items and descriptions; a key measure is one block with its meaning. */
const blocks = (html: string): string[] => {
  const body = html
    .replace(/<style>[\s\S]*?<\/style>|<svg[\s\S]*?<\/svg>|<header>[\s\S]*?<\/header>|<table[\s\S]*?<\/table>/g, "")
    .replace(/<p id="made"[\s\S]*?<\/p>/, "");
  return [...body.matchAll(/<(p|li|dd)[^>]*>([\s\S]*?)<\/\1>/g)]
    .map((match) =>
      (match[2] ?? "")
        .replace(/<[^>]+>/g, " ")
        .replace(/&#x27;/g, "'")
        .replace(/\u00a0/g, " ")
        .trim(),
    )
    .filter((text) => /[.!?]$/.test(text));
};

function grade(text: string): number {
  const plain = text.replace(/(\d)[.,](\d)/g, "$1$2");
  const words = plain.match(/[\p{L}\p{N}'’-]+/gu) ?? [];
  const sentences = plain.split(/[.!?:;]+(?:\s|$)/).filter((part) => part.trim() !== "").length;
  return fleschKincaid({
    sentence: Math.max(1, sentences),
    word: words.length,
    syllable: words.reduce((sum, word) => sum + Math.max(1, syllable(word)), 0),
  });
}

const VISITS = [
  ["retest", retest, [baseline]],
  ["baseline", baseline, []],
  [
    "visit that a physician must see",
    {
      ...retest,
      entries: retest.entries.map((entry) =>
        entry.id === "screening_decision" && entry.kind === "judgement" ? { ...entry, verdict: "refer" } : entry,
      ),
    },
    [baseline],
  ],
] as const;

describe.each(VISITS)("the client's edition of a %s", (_, results, earlier) => {
  const page = openReporter(assets).renderReport(inputOf("client", "en", results, [...earlier]));

  it("reads like a text for a twelve-year-old", async () => {
    const texts = blocks(await page);
    expect(texts.length).toBeGreaterThan(8);
    expect(grade(texts.join(" "))).toBeLessThan(GRADE_AT_TWELVE);
    for (const text of texts) expect(grade(text), text).toBeLessThan(HARDEST_SENTENCE);
  });
  it("holds no word of the trade that has a plain one", async () => {
    for (const text of blocks(await page)) expect(text).not.toMatch(JARGON);
  });
  it("explains the words of the trade it holds where it shows their number", async () => {
    const html = await page;
    for (const key of html.match(/<div class="key">[\s\S]*?<\/div>\s*<\/div>/g) ?? []) {
      const text = key
        .replace(/<svg[\s\S]*?<\/svg>/g, "")
        .replace(/<[^>]+>/g, " ")
        .toLowerCase();
      for (const [word, meaning] of Object.entries(EXPLAINED)) if (text.includes(word)) expect(text).toMatch(meaning);
    }
  });
  it("measures: a hard text fails", () => {
    const hard =
      "Physiological interpretation necessitates consideration of instrumentation variability and methodological heterogeneity.";
    expect(grade(hard)).toBeGreaterThan(GRADE_AT_TWELVE);
    expect("A plateau of VO2 was seen.").toMatch(JARGON);
  });
});
