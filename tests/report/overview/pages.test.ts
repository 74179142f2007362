/** The pages of practice, client and retests in real Chromium: no fault an automatic checker finds, never wider than the screen. */
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import puppeteer, { type Browser } from "puppeteer-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { drawnClientPage } from "../../../src/cli/client-overview.js";
import { reported } from "../../../src/cli/own-retests.js";
import { retestPage } from "../../../src/cli/retest-page.js";
import { findBrowser } from "../../../src/report/browser.js";
import { clientLine, practicePage } from "../../../src/report/overview/practice-page.js";
import { summaryOf } from "../../../src/report/overview/visit-summary.js";
import { openPages } from "../../../src/report/pages.js";
import { assets, wordsOf } from "../assets.js";
import { baseline, client, laboratory, retest } from "../fixture.js";

const found = await findBrowser().catch(() => undefined);
const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const TAGS = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];
const WIDTHS = [360, 390, 820, 1200, 1587];

const asked = { ...client, primary_outcomes: ["vo2_peak_per_mass", "body_fat_percent", "grip_strength"] };
const middle = { ...baseline, date: "2026-04-10", label: "middle", purpose: "retest" } as const;
const visits = [baseline, middle, retest].map((results) => summaryOf(results, asked as never));
const folder = (name: string) => ({ path: `clients/c-017/${name}`, client: "c-017", name });
const PAIRS = [62, 78, 81, 55, 66].map((test, i) => [test, test + ([5, -2, 6, 0, -3][i] ?? 0)] as const);

async function pageOf(name: string, language: string): Promise<string> {
  const pages = openPages(assets, wordsOf(language), laboratory);
  const practice = { root: "/nowhere", clients: [] };
  const home = { path: "clients/c-017", id: "c-017", visits: [] };
  if (name === "client")
    return drawnClientPage(
      pages,
      practice,
      home,
      visits.map((summary) => ({ visit: folder(summary.date), summary })),
    );
  if (name === "practice")
    return practicePage(
      pages,
      Array.from({ length: 60 }, (_, i) => clientLine(`c-${100 + i}`, visits, ["a.html", "b.html", "c.html"])),
    );
  const set = { measure: "body_mass", pairs: PAIRS, from: "invented" };
  return retestPage([reported(set), reported({ ...set, pairs: [] })], { ...laboratory, language } as never, {
    assets,
    words: wordsOf(language),
  });
}

describe("pages beside the reports", () => {
  it("say a client's course in the language of the laboratory", async () => {
    const english = await pageOf("client", "en");
    expect(english).toMatch(/3 visits, 2 March 2026 to 18 May 2026/);
    expect(english).toMatch(/Peak oxygen uptake per kilogram over 3 visits/);
    const german = await pageOf("client", "de");
    expect(german).toMatch(/<html lang="de">/);
    expect(german).toMatch(/3 Termine, 2\. März 2026 bis 18\. Mai 2026/);
    expect(german).toMatch(/noch nicht zu sagen/);
  });
  it("group a long list of clients and give each group an anchor", async () => {
    const html = await pageOf("practice", "en");
    expect(html).toMatch(/<a href="#clients-2">c-150 to c-159<\/a>/);
    expect(html).toMatch(/id="clients-2"/);
  });
});

describe.skipIf(found === undefined)("pages in Chromium (skipped where there is none)", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await puppeteer.launch({
      executablePath: found?.path ?? "",
      headless: "shell",
      env: { ...process.env, ...found?.environment },
      args: ["--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage"],
    });
  });
  afterAll(() => browser?.close());

  it.each([
    ["practice", "en", "light"],
    ["practice", "de", "dark"],
    ["client", "en", "dark"],
    ["client", "de", "light"],
    ["retests", "en", "light"],
    ["retests", "de", "dark"],
  ] as const)("the page of %s in %s, %s, is accessible and fits every screen", async (name, language, scheme) => {
    const page = await browser.newPage();
    await page.emulateMediaFeatures([{ name: "prefers-color-scheme", value: scheme }]);
    await page.setContent(await pageOf(name, language));
    await page.evaluate(axe);
    const violations = (await page.evaluate(
      `axe.run(document, { runOnly: ${JSON.stringify(TAGS)} }).then((r) => r.violations.map((v) => v.id + ": " + v.nodes.slice(0, 3).map((n) => n.html.slice(0, 160)).join(" | ")))`,
    )) as string[];
    const wider: number[] = [];
    for (const width of WIDTHS) {
      await page.setViewport({ width, height: 900 });
      if (((await page.evaluate("document.documentElement.scrollWidth")) as number) > width) wider.push(width);
    }
    await page.close();
    expect(violations).toEqual([]);
    expect(wider).toEqual([]);
  });
});
