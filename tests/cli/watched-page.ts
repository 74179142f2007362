/** A practice under `waymark watch`, and its page in a real Chromium. */
import { type ChildProcess, spawn } from "node:child_process";
import { resolve } from "node:path";
import { type Browser, launch, type Page } from "puppeteer-core";
import { findBrowser } from "../../src/report/browser.js";

export interface Watched {
  readonly page: Page;
  readonly address: string;
  /** The page shows the state after the n-th change, painted. */
  painted(change: number): Promise<void>;
  close(): Promise<number | null>;
}

export async function watchPage(root: string, ...words: string[]): Promise<Watched> {
  const program = spawn(process.execPath, [resolve("dist/cli/main.js"), "watch", ...words], { cwd: root });
  const address = await firstLine(program);
  const found = await findBrowser();
  const browser: Browser = await launch({
    executablePath: found.path,
    env: { ...process.env, ...found.environment },
    args: ["--no-sandbox", "--disable-dev-shm-usage"],
  });
  const page = await browser.newPage();
  await page.setViewport({ width: 1100, height: 800 });
  await page.goto(address, { waitUntil: "load", timeout: 60_000 });
  const painted = async (change: number) => {
    // As text: the types of this project know no page, only Node.
    await page.waitForFunction(`Number(document.documentElement.dataset.version) >= ${change}`, {
      polling: "raf",
      timeout: 60_000,
    });
    await page.evaluate("new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)))");
  };
  await painted(0);
  return {
    page,
    address,
    painted,
    async close() {
      await browser.close();
      program.kill("SIGINT");
      return new Promise((done) => program.once("exit", done));
    },
  };
}

function firstLine(program: ChildProcess): Promise<string> {
  return new Promise((done, fail) => {
    let text = "";
    let talk = "";
    program.stdout?.on("data", (chunk: Buffer) => {
      text += chunk.toString();
      if (text.includes("\n")) done(text.split("\n")[0] ?? "");
    });
    program.stderr?.on("data", (chunk: Buffer) => {
      talk += chunk.toString();
    });
    program.once("exit", (code) => fail(new Error(`watch ended with ${code}: ${talk}`)));
  });
}
