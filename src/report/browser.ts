/**
 * Which Chromium prints: the one a variable names, else the one that npm carries (Linux on x64), else one installed in
 * a usual place. The carried one is unpacked once to the temporary folder, next to nothing else.
 */
import { execFile } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { chmod, mkdir, readFile, rename, rm, writeFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { tmpdir, userInfo } from "node:os";
import { dirname, join } from "node:path";
import { promisify } from "node:util";
import { brotliDecompress } from "node:zlib";

export interface FoundBrowser {
  readonly path: string;
  readonly environment: Readonly<Record<string, string>>;
}

export class NoBrowser extends Error {
  constructor() {
    super(
      "no browser to print PDF with: install Chromium or Chrome, or name one in WAYMARK_BROWSER=/path/to/chromium (HTML needs none: build --no-pdf)",
    );
    this.name = "NoBrowser";
  }
}

const PLACES: Readonly<Record<string, readonly string[]>> = {
  linux: [
    "/usr/bin/chromium",
    "/usr/bin/chromium-browser",
    "/usr/bin/google-chrome",
    "/usr/bin/google-chrome-stable",
    "/snap/bin/chromium",
  ],
  darwin: [
    "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
    "/Applications/Chromium.app/Contents/MacOS/Chromium",
    "/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge",
  ],
  win32: [
    "C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe",
    "C:\\Program Files (x86)\\Google\\Chrome\\Application\\chrome.exe",
    "C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe",
  ],
};

export async function findBrowser(): Promise<FoundBrowser> {
  const named = process.env.WAYMARK_BROWSER;
  if (named !== undefined && named !== "") {
    if (!existsSync(named)) throw new NoBrowser();
    return { path: named, environment: {} };
  }
  if (process.platform === "linux" && process.arch === "x64") {
    const carried = await carriedBrowser();
    if (carried) return carried;
  }
  const installed = (PLACES[process.platform] ?? []).find((path) => existsSync(path));
  if (installed === undefined) throw new NoBrowser();
  return { path: installed, environment: {} };
}

/** The packed Chromium of npm, unpacked once. Undefined when the package is absent (an optional platform). */
async function carriedBrowser(): Promise<FoundBrowser | undefined> {
  const pack = packFolder();
  if (pack === undefined) return undefined;
  const { version } = JSON.parse(readFileSync(join(dirname(pack), "package.json"), "utf8")) as { version: string };
  const folder = join(tmpdir(), `waymark-chromium-${version}-${userInfo().uid}`);
  const path = join(folder, "chromium");
  if (!existsSync(path)) {
    await mkdir(folder, { recursive: true, mode: 0o700 });
    await place(path, await unpacked(join(pack, "chromium.br")));
  }
  return { path, environment: (await runsAlone(path)) ? {} : await carriedLibraries(pack, folder) };
}

function packFolder(): string | undefined {
  try {
    const entry = createRequire(import.meta.url).resolve("@sparticuz/chromium");
    for (let at = dirname(entry); at !== dirname(at); at = dirname(at))
      if (existsSync(join(at, "bin", "chromium.br"))) return join(at, "bin");
  } catch {
    // the package is not installed: another browser may be
  }
  return undefined;
}

/** Does it find its shared libraries? A bare system lacks a few, which the package carries too. */
async function runsAlone(path: string): Promise<boolean> {
  try {
    await promisify(execFile)(path, ["--version"], { timeout: 10_000 });
    return true;
  } catch {
    return false;
  }
}

async function carriedLibraries(pack: string, folder: string): Promise<Record<string, string>> {
  const lib = join(folder, "lib");
  if (!existsSync(join(lib, "complete"))) {
    await mkdir(lib, { recursive: true, mode: 0o700 });
    for (const [name, bytes] of tarFiles(await unpacked(join(pack, "al2023.tar.br"))))
      await place(join(lib, name.split("/").at(-1) as string), bytes);
    await writeFile(join(lib, "complete"), "");
  }
  return { LD_LIBRARY_PATH: [lib, process.env.LD_LIBRARY_PATH].filter(Boolean).join(":") };
}

const unpacked = async (file: string): Promise<Buffer> => promisify(brotliDecompress)(await readFile(file));

/** Written aside and renamed, so that two builds at once never run half a file. */
async function place(path: string, bytes: Buffer): Promise<void> {
  const aside = `${path}.${process.pid}`;
  try {
    await writeFile(aside, bytes, { mode: 0o700 });
    await chmod(aside, 0o700);
    await rename(aside, path);
  } finally {
    await rm(aside, { force: true });
  }
}

/** Regular files of a tar archive: name at 0, size in octal at 124, kind at 156, content in blocks of 512. */
function* tarFiles(tar: Buffer): Generator<readonly [name: string, bytes: Buffer]> {
  for (let at = 0; at + 512 <= tar.length; ) {
    const name = tar.toString("utf8", at, at + 100).replace(/\0.*$/s, "");
    if (name === "") return;
    const size = Number.parseInt(tar.toString("latin1", at + 124, at + 136), 8);
    const kind = tar.toString("latin1", at + 156, at + 157);
    if (kind === "0" || kind === "\0") yield [name, tar.subarray(at + 512, at + 512 + size)];
    at += 512 + 512 * Math.ceil(size / 512);
  }
}
