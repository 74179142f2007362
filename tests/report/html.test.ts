/** The three editions as HTML: self-contained, safe with hostile remarks, complete in every language, honest in words. */
import { describe, expect, it } from "vitest";
import type { Entry, Remark } from "../../src/kernel/measure.js";
import { speechOf, type WordTree } from "../../src/kernel/speech.js";
import { openReporter } from "../../src/report/render.js";
import { compileTemplates, TemplateError } from "../../src/report/templates.js";
import { assets, EDITIONS, inputOf, wordsOf } from "./assets.js";
import { bare, baseline, laboratory, retest } from "./fixture.js";

const reporter = openReporter(assets);
const text = (html: string): string =>
  html
    .replace(/<style>[\s\S]*?<\/style>/, "")
    .replace(/<[^>]*>/g, " ")
    .replace(/&#x27;/g, "'")
    .replace(/&quot;/g, '"')
    .replace(/&lt;/g, "<")
    .replace(/&amp;/g, "&");

describe.each(EDITIONS)("the %s edition", (edition) => {
  it("is one self-contained file below 600 kB: no scripts, no outside requests", async () => {
    const html = await reporter.renderReport(inputOf(edition));
    expect(html.length).toBeLessThan(600_000);
    expect(html).not.toMatch(/<script|<link|<iframe|<object|javascript:|\son\w+=/i);
    expect(
      [...html.matchAll(/(?:src|href|url)[=(]["']?([^"')\s>]{1,9})/g)]
        .map((m) => m[1])
        .filter((to) => !/^(?:#|data:)/.test(to ?? "")),
    ).toEqual([]);
    expect(html).toMatch(/^<!DOCTYPE html>\s*<html lang="en">/);
  });
  it("has one first heading, headings without a gap, scopes in every table head", async () => {
    const html = await reporter.renderReport(inputOf(edition));
    const levels = [...html.matchAll(/<h([1-6])/g)].map((m) => Number(m[1]));
    expect(levels.filter((level) => level === 1)).toHaveLength(1);
    for (let i = 1; i < levels.length; i++) expect((levels[i] ?? 0) - (levels[i - 1] ?? 0)).toBeLessThanOrEqual(1);
    expect([...html.matchAll(/<th(?![^>]*scope=)(?=[\s>])/g)]).toEqual([]);
    expect(html.match(/<main>/g)).toHaveLength(1);
  });
  it("escapes whatever a remark or a name holds", async () => {
    const input = inputOf(edition);
    const evil = `</style><script>alert(1)</script><svg onload="x">"'&{{this}}`;
    const remark: Remark = {
      kind: "remark",
      id: "remark_evil",
      severity: "weakens",
      found: evil,
      limit: evil,
      because: evil,
      affects: ["body_mass"],
      rule: "evil r1",
    };
    const html = await reporter.renderReport({
      ...input,
      results: { ...retest, client: evil, entries: [...retest.entries, remark] },
      laboratory: { ...input.laboratory, name: evil, letterhead: evil },
    });
    expect(html).not.toContain("<script");
    expect(html).not.toContain("<svg onload");
    expect(html.match(/<\/style>/g)).toHaveLength(1);
  });
  it("never says what a report must not say, and leaves no place unfilled", async () => {
    const words = text(await reporter.renderReport(inputOf(edition)));
    expect(words).not.toMatch(/\b(?:significant|abnormal|poor|excellent|biological age|guaranteed)\b/i);
    expect(words).not.toMatch(/undefined|NaN|\[object|\{\w+\}/);
  });
  it("gives dates and units as they are spoken, never as they are recorded", async () => {
    const state: Entry = {
      kind: "judgement",
      id: "programme_state",
      verdict: "ready",
      because: "Reviewed and signed by the physiologist on 2026-05-12.",
      rule: "programme r1",
    };
    const { entries } = retest;
    const at = entries.findIndex(({ id }) => id === state.id);
    const told = { ...retest, entries: at < 0 ? [...entries, state] : entries.with(at, state) };
    const words = text(await reporter.renderReport(inputOf(edition, "en", told)));
    expect(words).not.toMatch(/(?<![\w/-])\d{4}-\d\d-\d\d(?![\w/-])|\d 1\/min/);
  });
  it("prints a visit that measured almost nothing", async () => {
    const words = text(await reporter.renderReport(inputOf(edition, "en", bare, [])));
    expect(words).toContain("c-017");
    expect(words).toMatch(/not a diagnosis/);
  });
  it("is the same bytes a second time and in a new reporter", async () => {
    const html = await reporter.renderReport(inputOf(edition));
    expect((await openReporter(assets).renderReport(inputOf(edition))) === html).toBe(true);
    expect((await reporter.renderReport(inputOf(edition))) === html).toBe(true);
  });
  it("always carries its cautions, the client, the visit and the digest", async () => {
    const words = text(await reporter.renderReport(inputOf(edition)));
    for (const part of ["c-017", "18 May 2026", "2d711642b726", "chest pain", "not done in pregnancy"])
      expect(words).toContain(part);
  });
});

describe("the practitioner edition", () => {
  it("shows every entry: values with unit, reasons, remarks beside what they concern", async () => {
    const words = text(await reporter.renderReport(inputOf("practitioner"))).replace(/\s+/g, " ");
    expect(words).toContain("Peak oxygen uptake per kilogram a b c d 43.9 mL/kg/min ± 1.3");
    // A reference that few values of a section have stands beside it in the margin, under the value's mark.
    expect(words).toContain("b About 90 of 100 have a lower value. c ");
    expect(words).toContain("The flow sensor read 3.4 % more than the syringe holds");
    const older = text(await reporter.renderReport(inputOf("practitioner", "en", baseline, []))).replace(/\s+/g, " ");
    expect(older).toContain("Not given, because ventilation kept rising in proportion until the end of the test.");
  });
  it("lists what was not recorded instead of leaving it out", async () => {
    const words = text(await reporter.renderReport(inputOf("practitioner"))).replace(/\s+/g, " ");
    expect(words).toMatch(/Lactate Not measured at this visit/);
    expect(words).toMatch(/Caffeine Not recorded/);
    // Items of the societies' list that the fixture lacks; what it has is not listed.
    expect(words).toMatch(/Slope of ventilation on carbon dioxide output Not recorded\./);
    expect(words).not.toMatch(/Peak oxygen uptake Not recorded/);
  });
  it("links each figure to a table that is there", async () => {
    const html = await reporter.renderReport(inputOf("practitioner"));
    const targets = [...html.matchAll(/class="data-link" href="#([^"]*)"/g)].map((m) => m[1]);
    expect(targets.length).toBeGreaterThan(10);
    for (const id of targets) expect(html).toContain(`id="${id}"`);
    const ids = [...html.matchAll(/\sid="([^"]*)"/g)].map((m) => m[1]);
    expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([]);
  });
});

describe("what lab.yaml asks for", () => {
  const laboratory = inputOf("client").laboratory;
  it("prints customary units beside the metric ones, in the client edition alone", async () => {
    const asked = { ...laboratory, units_beside: "customary" as const };
    const client = text(await reporter.renderReport({ ...inputOf("client"), laboratory: asked })).replace(/\s+/g, " ");
    // 11.0 km/h / 1.609344 = 6.84 (NIST SP 811).
    expect(client).toContain("11.0 km/h (6.8 mph)");
    expect(client).toContain("+0.9 km/h (+0.6 mph)");
    expect(client).not.toMatch(/mL\/kg[^/]*lb/);
    expect(text(await reporter.renderReport(inputOf("client")))).not.toMatch(/ (?:mph|lb)\b/);
    const full = text(await reporter.renderReport({ ...inputOf("practitioner"), laboratory: asked }));
    expect(full).not.toMatch(/ (?:mph|lb)\b/);
  });
  it("sets the letterhead, the logo and the paper", async () => {
    const asked = { ...laboratory, paper: "Letter" as const, letterhead: "First line\nSecond line <b>" };
    const html = await reporter.renderReport({
      ...inputOf("client"),
      laboratory: asked,
      logo: "data:image/png;base64,AAAA",
    });
    expect(html).toContain("@page{size:letter;");
    expect(html).toContain('<img src="data:image/png;base64,AAAA" alt="">');
    expect(html).toContain("<br>First line<br>Second line &lt;b&gt;");
    expect(await reporter.renderReport(inputOf("client"))).toContain("@page{size:A4;");
  });
  it("prints a character that no face of the report has as its code, never in a font of the machine", async () => {
    const entries = retest.entries.map((entry) =>
      entry.kind === "remark" ? { ...entry, because: "Measured by あ, in zażółć and 𝛂." } : entry,
    );
    const words = text(await reporter.renderReport(inputOf("practitioner", "en", { ...retest, entries })));
    expect(words).toContain("Measured by [U+3042], in zażółć and [U+1D6C2].");
    for (const edition of EDITIONS)
      for (const language of ["en", "de"])
        expect(await reporter.renderReport(inputOf(edition, language))).not.toContain("[U+");
  });
});

describe("the faces of a page", () => {
  const weighs = (html: string): number => (/<style>[\s\S]*?<\/style>/.exec(html)?.[0] ?? "").length;
  const embeds = (html: string, file: string): boolean =>
    html.includes(Buffer.from(assets.fonts[file] as Uint8Array).toString("base64"));
  const FILES = ["serif-regular", "serif-bold", "sans-regular", "sans-bold"];
  it("are those of the common signs, of half the weight", async () => {
    for (const edition of EDITIONS)
      for (const language of ["en", "de"]) {
        const html = await reporter.renderReport(inputOf(edition, language));
        for (const file of FILES) expect([embeds(html, `${file}-common`), embeds(html, file)]).toEqual([true, false]);
        expect(weighs(html)).toBeLessThan(100_000);
      }
  });
  it("are whole where a sign is not common, and beside a style of the practice's own", async () => {
    const inZazolc = { ...inputOf("referral"), laboratory: { ...laboratory, name: "Zażółć" } };
    const styled = openReporter({ ...assets, ownCss: "h1{color:teal}" });
    for (const html of [await reporter.renderReport(inZazolc), await styled.renderReport(inputOf("referral"))])
      for (const file of FILES) expect([embeds(html, `${file}-common`), embeds(html, file)]).toEqual([false, true]);
  });
});

describe("the client's plan", () => {
  const withVerdict = async (id: string, verdict: string): Promise<string> => {
    const entries = retest.entries.map((entry) =>
      entry.id === id && entry.kind === "judgement" ? { ...entry, verdict } : entry,
    );
    return text(await reporter.renderReport(inputOf("client", "en", { ...retest, entries })));
  };
  it("is printed when it is ready", async () => {
    expect(await withVerdict("programme_state", "ready")).toMatch(/Weeks up to the goal/);
  });
  it("is not printed when nobody has signed it, nor are intensities beside it", async () => {
    expect(await withVerdict("programme_state", "not printed")).not.toMatch(
      /Your training|Weeks up to the goal|per min and/,
    );
  });
  it("gives way to a physician when the screening says so", async () => {
    const words = await withVerdict("screening_decision", "stop");
    expect(words).toMatch(/see a doctor before you train hard/);
    // What leads: the reason of the screening, before what was found.
    const reason = retest.entries.find((entry) => entry.id === "screening_decision");
    const because = reason?.kind === "judgement" ? reason.because : "no reason";
    expect(words.indexOf(because)).toBeGreaterThan(0);
    expect(words.indexOf(because)).toBeLessThan(words.indexOf("You came"));
    expect(words).not.toMatch(/Follow the plan|Your training/);
  });
});

describe("the words", () => {
  const leaves = (tree: WordTree, path = ""): [string, string][] =>
    Object.entries(tree).flatMap(([key, value]) =>
      typeof value === "string" ? [[`${path}${key}`, value]] : leaves(value, `${path}${key}.`),
    );
  const OWN = /^(?:sentences|units|measures|plain|rules|conditions|choices|regions|verdicts|columns|phases)\./;
  it("say in German all that they say in English, with the same places", () => {
    const german = new Map(leaves(wordsOf("de")));
    for (const [path, english] of leaves(wordsOf("en"))) {
      expect(german.has(path), path).toBe(true);
      const places = (said: string) => [...said.matchAll(/\{(\w+)\}/g)].map((m) => m[1]).sort();
      expect(places(german.get(path) ?? ""), path).toEqual(places(english));
    }
    const english = new Set(leaves(wordsOf("en")).map(([path]) => path));
    for (const path of german.keys()) if (!OWN.test(path)) expect(english.has(path), path).toBe(true);
  });
  it("tell the sentences of the results in German, and mark what stays English", async () => {
    const unknown = {
      ...retest,
      entries: retest.entries.map((e) =>
        e.kind === "judgement" ? { ...e, because: "Nobody translated this. One visit is not a diagnosis." } : e,
      ),
    };
    const html = await reporter.renderReport(inputOf("practitioner", "de", unknown));
    expect(html).toMatch(/^<!DOCTYPE html>\s*<html lang="de">/);
    expect(html).toContain(
      '<span lang="de"><span lang="en">Nobody translated this</span>. Ein Termin ist keine Diagnose.</span>',
    );
    expect(html).not.toMatch(/[\ue000\ue001]/);
  });
  it("write German numbers and dates", async () => {
    const words = text(await reporter.renderReport(inputOf("practitioner", "de")));
    expect(words).toContain("43,9");
    expect(words).toContain("18. Mai 2026");
    expect(words).not.toMatch(/\b43\.9\b/);
  });
  it("fail with the path when a text is missing", () => {
    expect(() => speechOf({ language: { tag: "xx" } } as unknown as WordTree)).toThrow(
      /language\.decimal_sign has no text/,
    );
    expect(() => speechOf(wordsOf("en")).say("charts.heart.title")).toThrow(/place \{peak\}/);
  });
});

describe("templates", () => {
  it("name file and line of a fault", () => {
    expect(() => compileTemplates({ pages: { report: "<p>\n{{#if x}}\n" }, partials: {} })).toThrow(TemplateError);
    expect(() => compileTemplates({ pages: { report: "<p>\n{{#if x}}\n" }, partials: {} })).toThrow(/report\.hbs:\d/);
  });
  it("throw on an absent value, and know no helper but each and if", () => {
    const page = (source: string) => compileTemplates({ pages: { report: source }, partials: {} }).report;
    expect(() => page("{{absent}}")?.({})).toThrow(/absent/);
    expect(() => page("{{lookup this 'constructor'}}")?.({ a: 1 })).toThrow();
    expect(() => page("{{#with this}}{{/with}}")?.({})).toThrow();
    expect(page("[{{constructor}}]")?.({})).toBe("[]");
  });
});

describe("the remarks", () => {
  it("carry the heads of their columns to a phone, where the line of heads is out of sight", async () => {
    const html = await reporter.renderReport(inputOf("practitioner", "en", retest));
    expect(html).toMatch(/<td data-head="Found">[^<]+<\/td><td data-head="Limit">/);
    expect(html).toContain(".remarks [data-head]::before");
  });
  it("names the measures of several failed checks in a row once", async () => {
    const remark = (id: string): Remark => ({
      kind: "remark",
      id,
      severity: "fatal",
      found: "failed",
      limit: "passed",
      because: "Nothing can be built on it.",
      affects: ["pulse_pressure", "stature", "body_mass", "vo2_peak"],
      rule: "check r1",
    });
    const results = { ...retest, entries: [...retest.entries, remark("remark_one"), remark("remark_two")] };
    const words = text(await reporter.renderReport(inputOf("practitioner", "en", results)));
    expect(words.match(/Pulse pressure, Stature, Body mass, Peak oxygen uptake\./g)).toHaveLength(1);
    expect(words).toContain("the same as the remark above.");
  });
});
