/**
 * The example practice rebuilds to the committed bytes, and to the same bytes in another time zone, locale and folder,
 * PDF included. `npm run demo` rewrites what is committed; the commit says why it moved.
 */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { findBrowser } from "../src/report/browser.js";
import { type Copy, copyPractice, EXAMPLE } from "./cli/practice-copy.js";

const outputs = (root: string, ending: RegExp): Map<string, Buffer> =>
  new Map(
    readdirSync(root, { recursive: true, encoding: "utf8" })
      .filter((file) => ending.test(file))
      .sort()
      .map((file) => [file.replaceAll("\\", "/"), readFileSync(join(root, file))]),
  );
const BUILT = /(results\.yaml|report[^/\\]*\.html|index\.html)$/;
const browser = await findBrowser().then(
  () => true,
  () => false,
);

describe("the example practice", () => {
  let here: Copy;
  let elsewhere: Copy;
  beforeAll(() => {
    here = copyPractice();
    elsewhere = copyPractice();
    expect(here.run("build", ...(browser ? [] : ["--no-pdf"])).err).toBe("");
    process.env.TZ = "Pacific/Auckland";
    process.env.LC_ALL = "de_DE.UTF-8";
    expect(elsewhere.run("build", ...(browser ? [] : ["--no-pdf"])).code).toBe(0);
    delete process.env.TZ;
    delete process.env.LC_ALL;
  }, 240_000);
  afterAll(() => {
    here.remove();
    elsewhere.remove();
  });

  it("rebuilds to the committed results and pages", () => {
    const committed = outputs(EXAMPLE, BUILT);
    const built = outputs(here.root, BUILT);
    expect([...built.keys()]).toEqual([...committed.keys()]);
    expect(
      [...built].filter(([file, bytes]) => !bytes.equals(committed.get(file) as Buffer)).map(([file]) => file),
    ).toEqual([]);
  });

  it("gives the same bytes in another time zone, locale and folder", () => {
    const a = outputs(here.root, BUILT);
    const b = outputs(elsewhere.root, BUILT);
    expect([...a].filter(([file, bytes]) => !bytes.equals(b.get(file) as Buffer)).map(([file]) => file)).toEqual([]);
  });

  it.skipIf(!browser)("prints the same PDF there (skipped where no Chromium is to be had)", () => {
    const a = outputs(here.root, /\.pdf$/);
    const b = outputs(elsewhere.root, /\.pdf$/);
    expect(a.size).toBe(27);
    expect([...a].filter(([file, bytes]) => !bytes.equals(b.get(file) as Buffer)).map(([file]) => file)).toEqual([]);
  });

  it("verifies: computing again agrees with what is recorded", () => {
    expect(here.run("verify").out).toMatch(/^9 of 9 visits agree/m);
  });

  it("calls the test that was broken off no maximum, and withholds what a failed calibration touched", () => {
    const results = (path: string) => readFileSync(join(here.root, "clients", path, "results.yaml"), "utf8");
    expect(results("c-023/2026-02-16-baseline")).toMatch(/\nmaximality:\n {2}verdict: VO2peak\n/);
    expect(results("c-023/2026-04-27-retest")).toMatch(
      /\nchange_vo2_peak:\n(?: {2}.*\n)* {2}verdict: not comparable\n/,
    );
    const failed = results("c-031/2026-06-01-retest");
    expect(failed).toMatch(/\nvo2_peak:\n {2}not_given: /);
    expect(failed).toMatch(/\nremark_gas_calibration:\n {2}severity: fatal\n/);
  });
});
