/**
 * The picture of a report for the README: the page of the example's practitioner report that begins its changes, as PNG.
 *
 *     npm run report-page
 *
 * The HTML is the one that `npm run demo` writes. Chromium sets it for print at the width of the paper and takes the page
 * from the heading to the end of its sheet, so that the picture is what the PDF shows.
 */
import { readFileSync, statSync, writeFileSync } from "node:fs";
import puppeteer from "puppeteer-core";
import { findBrowser } from "../../src/report/browser.js";
import { smallPng } from "./small-png.js";

const REPORT = "examples/skarn-point/clients/c-017/2026-07-20-retest/report.html";
const OUT = "examples/report-page.png";
/** CSS pixels of A4 less its margins, and of the sheet's frame around them. */
const TEXT = { width: 680, height: 860 };
const MARGIN = 44;
const LARGEST = 200_000;

const found = await findBrowser();
const browser = await puppeteer.launch({
  executablePath: found.path,
  headless: "shell",
  env: { ...process.env, ...found.environment },
  args: ["--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage", "--font-render-hinting=none"],
});
const page = await browser.newPage();
await page.emulateMediaType("print");
await page.setViewport({ width: TEXT.width + 2 * MARGIN, height: TEXT.height + 2 * MARGIN, deviceScaleFactor: 1.5 });
const frame = `<style>body{padding:${MARGIN}px}#change>h2{margin-top:0}</style>`;
const html = readFileSync(REPORT, "utf8").replace("</head>", () => `${frame}</head>`);
await page.setContent(html);
// The section alone, as it stands at the head of its page.
await page.evaluate(
  `for (const one of [...document.querySelectorAll("header, main > *, footer")]) if (one.id !== "change") one.remove()`,
);
const clip = { x: 0, y: 0, width: TEXT.width + 2 * MARGIN, height: TEXT.height + MARGIN };
writeFileSync(OUT, smallPng(await page.screenshot({ clip })));
await browser.close();
const bytes = statSync(OUT).size;
if (bytes > LARGEST) throw new Error(`${OUT} has ${bytes} bytes; ${LARGEST} are allowed`);
console.log(`${OUT} ${bytes} bytes`);
