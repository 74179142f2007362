/** The browser behind the printer: comes back after a crash, leaves nothing behind, and says so when there is none. */
import { readdirSync } from "node:fs";
import { tmpdir } from "node:os";
import { describe, expect, it } from "vitest";
import { findBrowser } from "../../src/report/browser.js";
import { openPrinter, PrintError } from "../../src/report/printer.js";

const found = await findBrowser().catch(() => undefined);
const facts = {
  title: "t",
  client: "c-1",
  visit: "2026-01-02",
  digest: "ab".repeat(32),
  language: "en",
  laboratory: "l",
};
const page = (text: string): string =>
  `<!DOCTYPE html><html lang="en"><head><title>t</title></head><body><h1>${text}</h1></body></html>`;
const profiles = (): string[] => readdirSync(tmpdir()).filter((name) => name.startsWith("waymark-browser-"));

describe.skipIf(found === undefined)("the printer (skipped where no Chromium is to be had)", () => {
  it("prints again after its browser was killed", async () => {
    const printer = openPrinter({ pages: 1 });
    const first = await printer.print(page("one"), facts);
    const pid = printer.processId();
    expect(pid).toBeGreaterThan(1);
    process.kill(pid as number, "SIGKILL");
    const again = await printer.print(page("one"), facts);
    expect(printer.processId()).not.toBe(pid);
    await printer.close();
    expect(Buffer.compare(first, again)).toBe(0);
  });
  it("prints all pages in work again after their browser was killed, in one new browser", async () => {
    const printer = openPrinter({ pages: 2 });
    const [first] = await Promise.all([printer.print(page("one"), facts), printer.print(page("two"), facts)]);
    for (let i = 0; i < 3; i++) {
      const pid = printer.processId();
      const printed = Array.from({ length: 4 }, () => printer.print(page("one"), facts));
      process.kill(pid as number, "SIGKILL");
      for (const again of await Promise.all(printed)) expect(Buffer.compare(first as Uint8Array, again)).toBe(0);
      expect(printer.processId()).not.toBe(pid);
    }
    await printer.close();
  });
  it("removes its profile when it closes", async () => {
    const before = profiles();
    const printer = openPrinter({ pages: 1 });
    await printer.print(page("one"), facts);
    expect(profiles().length).toBeGreaterThan(before.length);
    await printer.close();
    expect(profiles().filter((name) => !before.includes(name))).toEqual([]);
  });
  it("keeps many documents asked for at once apart", async () => {
    const printer = openPrinter({ pages: 2 });
    const texts = Array.from({ length: 8 }, (_, i) => `document number ${i % 4}`);
    const printed = await Promise.all(texts.map((text) => printer.print(page(text), facts)));
    await printer.close();
    for (let i = 0; i < 4; i++) expect(Buffer.compare(printed[i] as Uint8Array, printed[i + 4] as Uint8Array)).toBe(0);
    expect(Buffer.compare(printed[0] as Uint8Array, printed[1] as Uint8Array)).not.toBe(0);
  });
  it("gives up within its limit", async () => {
    const printer = openPrinter({ pages: 1, limitMs: 1 });
    await expect(printer.print(page("one"), facts)).rejects.toThrow(PrintError);
    await printer.close();
  });
});

describe("without a browser", () => {
  it("says what to do", async () => {
    const before = process.env.WAYMARK_BROWSER;
    process.env.WAYMARK_BROWSER = "/nowhere/chromium";
    try {
      const printer = openPrinter();
      await expect(printer.print(page("one"), facts)).rejects.toThrow(/install Chromium|WAYMARK_BROWSER/);
      await printer.close();
    } finally {
      if (before === undefined) delete process.env.WAYMARK_BROWSER;
      else process.env.WAYMARK_BROWSER = before;
    }
  });
});
