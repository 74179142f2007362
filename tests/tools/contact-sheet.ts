/**
 * Pictures to look at after a change of templates, theme or charts: every edition on a phone, on a screen, in the dark
 * and as it prints, in each language, and one sheet of all figures. They go to tests/output/, which is not committed.
 *
 *     npm run contact-sheet
 */
import { mkdirSync, writeFileSync } from "node:fs";
import puppeteer from "puppeteer-core";
import { findBrowser } from "../../src/report/browser.js";
import { openPrinter } from "../../src/report/printer.js";
import { openReporter } from "../../src/report/render.js";
import { openSvgDrawer } from "../../src/report/svg.js";
import { assets, DIGEST, EDITIONS, figuresOf, inputOf, MARKS } from "../report/assets.js";
import { baseline, retest } from "../report/fixture.js";

const OUT = "tests/output";
const VIEWS = [
  { name: "390", width: 390, media: "screen", scheme: "light" },
  { name: "1200", width: 1200, media: "screen", scheme: "light" },
  { name: "1200-dark", width: 1200, media: "screen", scheme: "dark" },
  { name: "print", width: 658, media: "print", scheme: "light" }, // the text width of A4 with its margins
] as const;

mkdirSync(OUT, { recursive: true });
const reporter = openReporter(assets);
const printer = openPrinter();
const found = await findBrowser();
const browser = await puppeteer.launch({
  executablePath: found.path,
  headless: "shell",
  env: { ...process.env, ...found.environment },
  args: ["--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage"],
});
const page = await browser.newPage();
const shoot = async (html: string, name: string, width: number): Promise<void> => {
  await page.setViewport({ width, height: 900 });
  await page.setContent(html);
  writeFileSync(`${OUT}/${name}.png`, await page.screenshot({ fullPage: true }));
  console.log(`${OUT}/${name}.png`);
};

for (const language of ["en", "de"])
  for (const edition of EDITIONS) {
    const html = await reporter.renderReport(inputOf(edition, language));
    for (const { name, width, media, scheme } of VIEWS) {
      await page.emulateMediaType(media);
      await page.emulateMediaFeatures([{ name: "prefers-color-scheme", value: scheme }]);
      await shoot(html, `${edition}-${language}-${name}`, width);
    }
    const facts = { title: edition, client: "c-017", visit: retest.date, digest: DIGEST, language, laboratory: "" };
    writeFileSync(`${OUT}/${edition}-${language}.pdf`, await printer.print(html, facts));
    console.log(`${OUT}/${edition}-${language}.pdf`);
  }

await page.emulateMediaType("screen");
await page.emulateMediaFeatures([{ name: "prefers-color-scheme", value: "light" }]);
const drawer = openSvgDrawer(assets.theme);
const style = /<style>[\s\S]*?<\/style>/.exec(await reporter.renderReport(inputOf("referral")))?.[0] ?? "";
const figures: string[] = [];
for (const figure of figuresOf(retest, [baseline, { ...baseline, date: "2026-04-10" }])) {
  const svg = (await drawer.draw(figure, MARKS)).replace("<svg", '<svg style="width:auto;max-width:none"');
  figures.push(
    `<figure style="display:inline-block;margin:0 1rem 1rem 0;vertical-align:top"><figcaption>${figure.name}: ${figure.title}</figcaption>${svg}</figure>`,
  );
}
await shoot(
  `<!DOCTYPE html><html lang="en">${style}<body style="max-width:none">${figures.join("")}</body></html>`,
  "figures",
  1500,
);

await browser.close();
await printer.close();
