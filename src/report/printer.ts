/**
 * HTML to PDF in one browser that lives as long as a build. It is offline (every request but the page's own data is
 * refused), runs no scripts, has a profile of its own that is removed, and comes back after a crash. Pages are kept and
 * refilled, one a core: documents wait for the next that is free. Tests prove the bytes equal to those of a fresh page.
 */
import { mkdtemp, readdir, rm } from "node:fs/promises";
import { availableParallelism, tmpdir } from "node:os";
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

/** Pages that are opened before anything is to be printed. */
const AT_ONCE = 2;

export interface PrinterOptions {
  /** Pages kept at once. */
  readonly pages?: number;
  /** Longest time one document may take. */
  readonly limitMs?: number;
  /** Documents after which a page is replaced, so that a browser's memory stays bounded. */
  readonly refills?: number;
}

interface Slot {
  page: Promise<Page> | undefined;
  used: number;
}

export function openPrinter(options: PrinterOptions = {}): Printer {
  const { pages = Math.max(2, availableParallelism()), limitMs = 30_000, refills = 200 } = options;
  let browser: Promise<Browser> | undefined;
  let profile: string | undefined;
  let processId: number | undefined;
  const slots: Slot[] = Array.from({ length: pages }, () => ({ page: undefined, used: 0 }));
  const idle = [...slots].reverse();
  const waiting: ((slot: Slot) => void)[] = [];
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
    for (const slot of slots.slice(0, AT_ONCE)) void newPage(launched, slot).catch(() => undefined);
    return launched;
  };
  // At once, so that it is ready by the time there is something to print; who prints hears of what went wrong.
  browser = start();
  browser.catch(() => undefined);
  const pageOf = async (slot: Slot): Promise<Page> => {
    browser ??= start();
    const running = await browser;
    const kept = await slot.page?.catch(() => undefined);
    if (kept && !kept.isClosed() && running.connected && slot.used < refills) return kept;
    if (kept && running.connected) await kept.close().catch(() => undefined);
    return newPage(running, slot);
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
  const fill = async (slot: Slot, html: string): Promise<Uint8Array> => {
    const page = await pageOf(slot);
    slot.used++;
    await page.setContent(unseen(html), { waitUntil: "load", timeout: limitMs });
    await page.evaluate(LOAD_FACES);
    return page.pdf({ ...PRINT, timeout: limitMs });
  };
  const printOnce = async (html: string): Promise<Uint8Array> => {
    const slot = idle.pop() ?? (await new Promise<Slot>((resolve) => waiting.push(resolve)));
    browser ??= start();
    const used = browser;
    try {
      return await fill(slot, html);
    } catch (error) {
      // Pages printed side by side break together: the first to notice gets a new browser, the others use it.
      if (browser === used && !isNoBrowser(error)) await drop();
      throw error;
    } finally {
      const next = waiting.shift();
      if (next) next(slot);
      else idle.push(slot);
    }
  };
  return {
    async print(html, facts) {
      try {
        return finishPdf(await printOnce(html), facts);
      } catch (first) {
        if (isNoBrowser(first)) throw first;
        try {
          return finishPdf(await printOnce(html), facts);
        } catch (second) {
          throw new PrintError(second instanceof Error ? second.message : String(second));
        }
      }
    },
    processId: () => processId,
    async close() {
      await drop();
      if (profile !== undefined) await rm(profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 50 });
      profile = undefined;
    },
  };
}

const isNoBrowser = (error: unknown): boolean => error instanceof Error && error.name === "NoBrowser";

function newPage(running: Browser, slot: Slot): Promise<Page> {
  const open = async () => {
    const page = await running.newPage();
    await page.setJavaScriptEnabled(false);
    await page.setRequestInterception(true);
    page.on("request", (request) => {
      if (/^(?:about|data):/.test(request.url())) void request.continue();
      else void request.abort("blockedbyclient");
    });
    return page;
  };
  slot.used = 0;
  slot.page = open();
  return slot.page;
}

/**
 * A document that shows nothing on a screen: nobody looks, and laying it out there before it is printed, and again after,
 * is a quarter of the work. Only a picture of a style sheet must have been shown to be printed.
 */
function unseen(html: string): string {
  if (/data:image(?<!<img[^>]*\ssrc="data:image)/.test(html)) return html;
  return html.replace("<head>", '<head><style media="screen">html{display:none!important}</style>');
}

/** What is not shown asks for no font: they are asked for here, so that they are there to print with. */
const LOAD_FACES = "Promise.allSettled([...document.fonts].map((face) => face.load())).then(() => undefined)";

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
