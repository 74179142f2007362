/**
 * The package as it is installed elsewhere: packed, unpacked into an empty folder, and run from there by npx. The packages
 * it depends on are linked from here instead of fetched, so that the test needs no network.
 */
import { spawnSync } from "node:child_process";
import {
  chmodSync,
  copyFileSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { EXAMPLE } from "./practice-copy.js";

const desk = mkdtempSync(join(tmpdir(), "packed-"));
const home = join(desk, "elsewhere");
const installed = join(home, "node_modules", "waymark");
afterAll(() => rmSync(desk, { recursive: true, force: true }));
const run = (cwd: string, command: string, ...words: string[]) => {
  const { status, stdout, stderr } = spawnSync(command, words, {
    cwd,
    encoding: "utf8",
    env: { ...process.env, npm_config_offline: "true", npm_config_update_notifier: "false" },
  });
  return { code: status, out: stdout, err: stderr };
};

beforeAll(() => {
  const packed = run(resolve("."), "npm", "pack", "--ignore-scripts", "--silent", "--pack-destination", desk);
  expect(packed.code, packed.err).toBe(0);
  mkdirSync(join(home, "node_modules", ".bin"), { recursive: true });
  writeFileSync(join(home, "package.json"), '{"name": "elsewhere", "private": true}\n');
  expect(run(desk, "tar", "xzf", packed.out.trim()).code).toBe(0);
  for (const name of readdirSync(resolve("node_modules")).filter((n) => !n.startsWith(".") && n !== "waymark"))
    symlinkSync(resolve("node_modules", name), join(home, "node_modules", name));
  expect(run(desk, "mv", "package", installed).code).toBe(0);
  // As npm does for every command of a package.
  chmodSync(join(installed, "dist/cli/main.js"), 0o755);
  symlinkSync("../waymark/dist/cli/main.js", join(home, "node_modules", ".bin", "waymark"));
}, 120_000);

const npx = (cwd: string, ...words: string[]) => run(cwd, "npx", "--no-install", "waymark", ...words);

describe("installed from its package", () => {
  it("brings what it needs and nothing of how it was made", () => {
    for (const path of [
      "dist/cli/main.js",
      "schema/session.schema.json",
      "templates/theme/print.css",
      "templates/words/en.yaml",
      "src/METHODS.md",
      "LICENSE",
    ])
      expect(existsSync(join(installed, path)), path).toBe(true);
    const files = readdirSync(installed, { recursive: true, encoding: "utf8" });
    expect(files.filter((name) => /^(tests|examples|node_modules)|\.map$|\.ts$/.test(name))).toEqual([]);
    for (const folder of ["src/norms/tables", "src/compare/tables", "schema", "templates"])
      expect(readdirSync(join(installed, folder), { recursive: true }).length, folder).toBe(
        readdirSync(folder, { recursive: true }).filter((name) => !/\.(ts|DS_Store)$/.test(String(name))).length,
      );
  });

  it("runs in an empty folder: help, guide, a practice, a visit, results, reports", () => {
    expect(npx(home, "--version").out).toMatch(/^\d+\.\d+\.\d+\n$/);
    expect(npx(home, "guide", "size").out).toMatch(/^size\n/);
    expect(npx(home, "new", "practice", "lab")).toMatchObject({ code: 0 });
    const lab = join(home, "lab");
    const client = "clients/c-044";
    const visit = `${client}/2026-03-30-baseline`;
    mkdirSync(join(lab, visit), { recursive: true });
    copyFileSync(join(EXAMPLE, client, "client.yaml"), join(lab, client, "client.yaml"));
    for (const name of readdirSync(join(EXAMPLE, visit)).filter((n) => /^session\.yaml$|\.(csv|txt)$/.test(n)))
      copyFileSync(join(EXAMPLE, visit, name), join(lab, visit, name));
    copyFileSync(join(EXAMPLE, "lab.yaml"), join(lab, "lab.yaml"));
    mkdirSync(join(lab, "retests"));
    for (const name of readdirSync(join(EXAMPLE, "retests")))
      copyFileSync(join(EXAMPLE, "retests", name), join(lab, "retests", name));
    const built = npx(lab, "build", "--no-pdf");
    expect(built.code, built.err).toBe(0);
    expect(built.out).toMatch(/1 of 1 visits? built\.\n$/);
    expect(readFileSync(join(lab, visit, "report.html"), "utf8")).toMatch(/<\/html>\s*$/);
    expect(npx(lab, "verify").code).toBe(0);
  });

  it("works without a browser, and says what to do when a PDF is asked for", () => {
    const lab = join(home, "lab");
    const { status, stderr, stdout } = spawnSync(
      process.execPath,
      [join(installed, "dist/cli/main.js"), "build", "--no-cache", "--edition", "referral"],
      { cwd: lab, encoding: "utf8", env: { ...process.env, WAYMARK_BROWSER: "/nowhere/chromium" } },
    );
    expect(status, stderr).not.toBe(0);
    expect(stderr + stdout).toMatch(/no browser to print PDF with: .*build --no-pdf/);
    expect(npx(lab, "build", "--no-cache", "--no-pdf").code).toBe(0);
  });
});
