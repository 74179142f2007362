/**
 * HTML to PDF in one browser that lives as long as a build. It is offline (every request but the page's own data is
 * refused), runs no scripts, has a profile of its own that is removed, and comes back after a crash. Two pages are kept
 * and refilled (45 ms a report with new pages, about 14 ms with kept ones); tests prove the bytes equal.
 */
import { mkdtemp, readdir, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser, Page } from "puppeteer-core";
import { findBrowser } from "./browser.js";
import { finishPdf, type PdfFacts } from "./pdf.js";

export interface Printer {
  /** Prints one document. Throws PrintError when the browser cannot, twice. */
  print(html: string, facts: PdfFacts): Promise<Uint8Array>;
  close(): Promise<void>;
  /** Process id of the running browser, or undefined. */
  processId(): number | undefined;
}

export class PrintError extends Error {
  constructor(reason: string) {
    super(`the PDF could not be printed: ${reason}`);
    this.name = "PrintError";
  }
}

export interface PrinterOptions {
  /** Pages kept at once. */
  readonly pages?: number;
  /** Longest time one document may take. */
  readonly limitMs?: number;
  /** Documents after which a page is replaced, so that a browser's memory stays bounded. */
  readonly refills?: number;
}

interface Slot {
  page: Page | undefined;
  used: number;
  work: Promise<unknown>;
  waiting: number;
}

export function openPrinter({ pages = 2, limitMs = 30_000, refills = 200 }: PrinterOptions = {}): Printer {
  let browser: Promise<Browser> | undefined;
  let profile: string | undefined;
  let processId: number | undefined;
  const slots: Slot[] = Array.from({ length: pages }, () => ({
    page: undefined,
    used: 0,
    work: Promise.resolve(),
    waiting: 0,
  }));

  let closing: Promise<void> = Promise.resolve();

  const start = async (): Promise<Browser> => {
    await closing; // two browsers in one profile would spoil it
    const [{ default: puppeteer }, found] = await Promise.all([import("puppeteer-core"), findBrowser()]);
    await removeLeftProfiles();
    profile ??= await mkdtemp(join(tmpdir(), `${PROFILE}${process.pid}-`));
    const launched = await puppeteer.launch({
      pipe: true, // no port is opened, and the browser ends with this process, however it ends
      executablePath: found.path,
      headless: "shell",
      userDataDir: profile,
      env: { ...process.env, ...found.environment, TZ: "UTC", LANG: "C.UTF-8" },
      args: [...ARGUMENTS],
      protocolTimeout: limitMs,
      handleSIGINT: false,
      handleSIGTERM: false,
      handleSIGHUP: false,
    });
    processId = launched.process()?.pid;
    return launched;
  };
  // At once, so that it is ready by the time there is something to print; who prints hears of what went wrong.
  browser = start();
  browser.catch(() => undefined);
  const pageOf = async (slot: Slot): Promise<Page> => {
    browser ??= start();
    const running = await browser;
    if (slot.page && !slot.page.isClosed() && running.connected && slot.used < refills) return slot.page;
    if (slot.page && running.connected) await slot.page.close().catch(() => undefined);
    const page = await running.newPage();
    await page.setJavaScriptEnabled(false);
    await page.setRequestInterception(true);
    page.on("request", (request) => {
      if (/^(?:about|data):/.test(request.url())) void request.continue();
      else void request.abort("blockedbyclient");
    });
    slot.page = page;
    slot.used = 0;
    return page;
  };
  const drop = (): Promise<void> => {
    const broken = browser;
    browser = undefined;
    processId = undefined;
    for (const slot of slots) slot.page = undefined;
    closing = closing.then(async () => {
      const running = await broken?.catch(() => undefined);
      if (running === undefined) return;
      const closed = running.close().catch(() => undefined);
      await Promise.race([closed, new Promise((done) => setTimeout(done, 2000).unref())]);
      running.process()?.kill("SIGKILL");
    });
    return closing;
  };
  const printOnce = async (slot: Slot, html: string): Promise<Uint8Array> => {
    const page = await pageOf(slot);
    slot.used++;
    await page.setContent(html, { waitUntil: "load", timeout: limitMs });
    return page.pdf({ ...PRINT, timeout: limitMs });
  };
  const printTwice = async (slot: Slot, html: string, facts: PdfFacts): Promise<Uint8Array> => {
    browser ??= start();
    const used = browser;
    try {
      return finishPdf(await printOnce(slot, html), facts);
    } catch (first) {
      if (first instanceof Error && first.name === "NoBrowser") throw first;
      // Pages printed side by side break together: the first to notice gets a new browser, the others use it.
      if (browser === used) await drop();
      try {
        return finishPdf(await printOnce(slot, html), facts);
      } catch (second) {
        throw new PrintError(second instanceof Error ? second.message : String(second));
      }
    }
  };
  return {
    print(html, facts) {
      const slot = slots.reduce((least, one) => (one.waiting < least.waiting ? one : least));
      slot.waiting++;
      const printed = slot.work.then(() => printTwice(slot, html, facts));
      slot.work = printed.then(
        () => slot.waiting--,
        () => slot.waiting--,
      );
      return printed;
    },
    processId: () => processId,
    async close() {
      await drop();
      if (profile !== undefined) await rm(profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 50 });
      profile = undefined;
    },
  };
}

const PROFILE = "waymark-browser-";

/** Profiles of builds that were killed: a folder names the process it belongs to. */
async function removeLeftProfiles(): Promise<void> {
  for (const name of await readdir(tmpdir())) {
    const owner = name.startsWith(PROFILE) ? Number.parseInt(name.slice(PROFILE.length), 10) : Number.NaN;
    if (Number.isInteger(owner) && !isRunning(owner))
      await rm(join(tmpdir(), name), { recursive: true, force: true }).catch(() => undefined);
  }
}

function isRunning(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === "EPERM";
  }
}

const PRINT = { preferCSSPageSize: true, printBackground: true, tagged: true, outline: true } as const;

const ARGUMENTS = [
  "--no-sandbox", // reports run no scripts and load nothing; the sandbox is not to be had in most containers
  "--disable-setuid-sandbox",
  "--disable-dev-shm-usage",
  "--disable-gpu",
  "--disable-extensions",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-default-apps",
  "--disable-sync",
  "--no-first-run",
  "--no-pings",
  "--host-resolver-rules=MAP * ~NOTFOUND",
  "--font-render-hinting=none",
  "--force-color-profile=srgb",
  "--lang=en-GB",
] as const;
