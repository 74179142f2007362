/** WCAG 2.2 AA by axe-core in real Chromium, in light and dark; no page is wider than its screen, from phone to A3. */
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import puppeteer, { type Browser } from "puppeteer-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { findBrowser } from "../../src/report/browser.js";
import { openReporter } from "../../src/report/render.js";
import { assets, EDITIONS, inputOf } from "./assets.js";

const found = await findBrowser().catch(() => undefined);
const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const TAGS = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];
/** CSS pixels: small phone, phone, tablet, laptop, A3 at 96 dpi. */
const WIDTHS = [360, 390, 820, 1200, 1587];

describe.skipIf(found === undefined)("in Chromium (skipped where there is none)", () => {
  const reporter = openReporter(assets);
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

  const cases = EDITIONS.flatMap(
    (edition) =>
      [
        ["en", edition, "light"],
        ["de", edition, "dark"],
      ] as const,
  );
  it("finds a fault that was put in", async () => {
    const page = await browser.newPage();
    const html = await reporter.renderReport(inputOf("referral"));
    await page.setContent(html.replace("--quiet: #4a5157", "--quiet: #d5d5d5").replace('lang="en"', ""));
    await page.evaluate(axe);
    const ids = await page.evaluate(`axe.run(document).then((r) => r.violations.map((v) => v.id))`);
    await page.close();
    expect(ids).toEqual(expect.arrayContaining(["color-contrast", "html-has-lang"]));
  });
  it.each(cases)(
    "the report in %s, %s edition, %s, has no fault an automatic checker finds",
    async (language, edition, scheme) => {
      const page = await browser.newPage();
      await page.emulateMediaFeatures([{ name: "prefers-color-scheme", value: scheme }]);
      await page.setViewport({ width: 1200, height: 900 });
      await page.setContent(await reporter.renderReport(inputOf(edition, language)));
      await page.evaluate(axe);
      const violations = (await page.evaluate(
        `axe.run(document, { runOnly: ${JSON.stringify(TAGS)} }).then((r) => r.violations.map((v) => v.id + ": " + v.nodes.slice(0, 3).map((n) => n.html.slice(0, 160)).join(" | ")))`,
      )) as string[];
      await page.close();
      expect(violations).toEqual([]);
    },
  );
  it.each(EDITIONS)("the %s edition is never wider than its screen", async (edition) => {
    const page = await browser.newPage();
    await page.setContent(await reporter.renderReport(inputOf(edition)));
    for (const width of WIDTHS) {
      await page.setViewport({ width, height: 900 });
      expect(await page.evaluate("document.documentElement.scrollWidth"), `${width} px`).toBe(width);
    }
    // Chromium shrinks a printed page whose content is wider than the paper: A4 and Letter leave 680 and 702 px.
    await page.emulateMediaType("print");
    await page.setViewport({ width: 680, height: 900 });
    expect(await page.evaluate("document.documentElement.scrollWidth"), "paper").toBe(680);
    await page.close();
  });
});
