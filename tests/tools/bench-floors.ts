/**
 * What the work costs at least, measured in the same run on the same machine: reading and parsing the files of a visit,
 * drawing its figures with compiled charts that are refilled, printing pages of the same size in a bare browser.
 */
import { readdirSync, readFileSync } from "node:fs";
import { join, relative } from "node:path";
import puppeteer from "puppeteer-core";
import { parse } from "yaml";
import { drawCharts } from "../../src/charts/charts.js";
import { computeVisitOf } from "../../src/cli/build-client.js";
import { readDocument } from "../../src/cli/check-practice.js";
import { openPractice } from "../../src/cli/practice.js";
import { wordsOf } from "../../src/cli/press.js";
import { openReference } from "../../src/cli/reference.js";
import type { Figure } from "../../src/kernel/figure.js";
import { speechOf } from "../../src/kernel/speech.js";
import { splitCsv } from "../../src/read/csv.js";
import { findBrowser } from "../../src/report/browser.js";
import { openSvgDrawer, type Theme } from "../../src/report/svg.js";

export interface Floor {
  readonly cpuMs: number;
  readonly wallMs: number;
}

async function timed(times: number, work: (i: number) => unknown): Promise<Floor> {
  const cpu = process.cpuUsage();
  const start = performance.now();
  for (let i = 0; i < times; i++) await work(i);
  const { user, system } = process.cpuUsage(cpu);
  return { cpuMs: (user + system) / 1000 / times, wallMs: (performance.now() - start) / times };
}

/** Folders of visits of a practice. */
export const visitsOf = (practice: string): string[] =>
  readdirSync(join(practice, "clients"))
    .sort()
    .flatMap((client) =>
      readdirSync(join(practice, "clients", client))
        .filter((name) => /^\d{4}-/.test(name))
        .sort()
        .map((visit) => join(practice, "clients", client, visit)),
    );

/** Reads and parses session and series of a visit, and keeps nothing. */
export async function parseOnly(practice: string): Promise<Floor> {
  const visits = visitsOf(practice).slice(0, 100);
  const one = (visit: string) => {
    parse(readFileSync(join(visit, "session.yaml"), "utf8"));
    for (const name of ["treadmill.csv", "rest.csv"])
      for (const row of splitCsv(readFileSync(join(visit, name), "utf8"), ",").rows)
        for (const cell of row) Number(cell);
  };
  visits.forEach(one);
  return timed(visits.length, (i) => one(visits[i] as string));
}

/** The figures of a visit drawn again and again: charts compiled, data refilled. */
export async function charts(folder: string, path: string): Promise<Floor & { readonly figures: number }> {
  const practice = openPractice(folder);
  const lab = readDocument(folder, "lab.yaml");
  const { reference } = await openReference(practice, lab);
  const { visit, results } = computeVisitOf({ practice, lab, reference }, relative(folder, path));
  if (visit === undefined || results === undefined) throw new Error(`nothing to draw in ${path}`);
  const { series } = visit;
  const theme: Theme = {
    config: JSON.parse(readFileSync("templates/theme/vega-config.json", "utf8")),
    widths: JSON.parse(readFileSync("templates/theme/fonts/widths.json", "utf8")),
  } as Theme;
  const drawer = openSvgDrawer(theme);
  const figures: readonly Figure[] = drawCharts({ results, earlier: [], series, speech: speechOf(wordsOf("en")) });
  const marks = { decimal: ".", thousands: " " };
  const all = async () => {
    for (const figure of figures) await drawer.draw(figure, marks);
  };
  await all();
  return { ...(await timed(15, all)), figures: figures.length };
}

/** Pages of the built reports in a browser with two pages that are refilled, and nothing else. */
export async function barePrinting(pages: readonly string[]): Promise<Floor> {
  const found = await findBrowser();
  const browser = await puppeteer.launch({
    executablePath: found.path,
    headless: "shell",
    pipe: true,
    env: { ...process.env, ...found.environment },
    args: ["--no-sandbox", "--disable-gpu"],
  });
  try {
    const tabs = await Promise.all([browser.newPage(), browser.newPage()]);
    const print = async (tab: (typeof tabs)[number], html: string) => {
      await tab.setContent(html, { waitUntil: "load" });
      await tab.pdf({ preferCSSPageSize: true, printBackground: true, tagged: true });
    };
    await Promise.all(tabs.map((tab) => print(tab, pages[0] as string)));
    const start = performance.now();
    const queue = pages.values();
    await Promise.all(
      tabs.map(async (tab) => {
        for (const html of queue) await print(tab, html);
      }),
    );
    const wallMs = (performance.now() - start) / pages.length;
    return { wallMs, cpuMs: wallMs };
  } finally {
    await browser.close();
  }
}
