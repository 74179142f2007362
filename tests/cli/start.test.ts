/** The built program starts from kept code, never from code of another source, and without it where it cannot be used. */
import { spawnSync } from "node:child_process";
import { cpSync, existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { afterEach, describe, expect, it } from "vitest";
import { sha256 } from "../../src/cli/files.js";

const copies: string[] = [];
afterEach(() => {
  for (const folder of copies.splice(0)) rmSync(folder, { recursive: true });
});
/** The parts of the program once more, to be spoilt; enough for `--help`. */
function copyOfDist(): string {
  const folder = mkdtempSync(join(tmpdir(), "start-"));
  copies.push(folder);
  cpSync("dist", join(folder, "dist"), { recursive: true });
  return folder;
}
const help = (folder: string, ...words: string[]) =>
  spawnSync(process.execPath, [...words, join(folder, "dist/cli/main.js"), "--help"], { encoding: "utf8" });
const MAIN = "dist/parts/main.js";
const usual = help(resolve("."));

describe("the code kept with the program", () => {
  it("is there for the parts of a build, and V8 takes it", () => {
    const parts = readdirSync("dist/parts").filter((name) => name.endsWith(".code"));
    expect(parts).toEqual(expect.arrayContaining(["main.js.code", "pipeline.js.code", "press.js.code"]));
    const watch = `const vm = require("node:vm");
      vm.Script = class extends vm.Script {
        constructor(source, options) {
          super(source, options);
          process.stderr.write(String(options.cachedData !== undefined && this.cachedDataRejected === false));
        }
      };`;
    const folder = copyOfDist();
    writeFileSync(join(folder, "watch.cjs"), watch);
    expect(help(folder, "--require", join(folder, "watch.cjs")).stderr).toMatch(/^(true)+$/);
  });

  it("is not used for a source of the same length", () => {
    const folder = copyOfDist();
    const source = readFileSync(join(folder, MAIN), "utf8");
    writeFileSync(join(folder, MAIN), source.replace("waymark: laboratory visits", "waymark: LABORATORY VISITS"));
    expect(help(folder).stdout).toBe(usual.stdout.replace("laboratory visits", "LABORATORY VISITS"));
  });

  it("is not used when it is spoilt, cut short, of another kind or absent", () => {
    const folder = copyOfDist();
    const path = join(folder, `${MAIN}.code`);
    const good = readFileSync(path);
    const spoilt = Buffer.from(good);
    for (let i = 200; i < spoilt.length; i += 7) spoilt[i] = ~(spoilt[i] as number) & 255;
    for (const bytes of [spoilt, good.subarray(0, good.length >> 1), Buffer.alloc(0), Buffer.from("no code")]) {
      writeFileSync(path, bytes);
      expect(help(folder)).toMatchObject({ status: 0, stdout: usual.stdout, stderr: "" });
    }
    rmSync(path);
    expect(help(folder)).toMatchObject({ status: 0, stdout: usual.stdout, stderr: "" });
    expect(existsSync(path)).toBe(false);
  });

  it("is refused by a V8 with other flags, which then compiles", () => {
    const folder = resolve(".");
    expect(help(folder, "--no-lazy")).toMatchObject({ status: 0, stdout: usual.stdout, stderr: "" });
  });
});

it("holds every template compiled, by the digest of its text", () => {
  const parts = readdirSync("dist/parts").filter((name) => name.endsWith(".js"));
  const program = parts.map((name) => readFileSync(join("dist/parts", name), "utf8")).join("\n");
  const templates = readdirSync("templates", { recursive: true, encoding: "utf8" }).filter((f) => f.endsWith(".hbs"));
  expect(templates.length).toBeGreaterThan(20);
  const missing = templates.filter((file) => !program.includes(sha256(readFileSync(join("templates", file)))));
  expect(missing).toEqual([]);
});

it("holds every table read, by the digest of its text", () => {
  const program = readFileSync("dist/parts/program-yaml.js", "utf8");
  const tables = readdirSync("src/norms/tables").filter((file) => file.endsWith(".yaml"));
  expect(tables.length).toBeGreaterThan(20);
  const missing = tables.filter((file) => !program.includes(sha256(readFileSync(join("src/norms/tables", file)))));
  expect(missing).toEqual([]);
});

it("names source files in a stack when asked with --debug", () => {
  const folder = copyOfDist();
  const { status, stderr } = spawnSync(
    process.execPath,
    [join(folder, "dist/cli/main.js"), "guide", "size", "--debug"],
    { encoding: "utf8" },
  );
  expect(status).toBe(3); // the copy has no schemas
  expect(stderr).toMatch(/ENOENT[\s\S]*src[/\\]cli[/\\]verbs[/\\]guide\.ts:\d+/);
});
