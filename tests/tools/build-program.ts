/**
 * npm run build: src/ bundled into dist/.
 *
 *     dist/parts/*.js      the program, in parts that are loaded when first needed; packages it uses are inside, except
 *                          the one that carries a browser; beside each its source map
 *     dist/parts/*.code    what V8 compiled each part to, so that a run starts at once (see src/cli/start.ts)
 *     dist/structures.json figures compiled to what Vega runs
 *     dist/cli/main.js, dist/cli/crew-worker.js     where the program and its threads start
 *
 * Types are not looked at: `npm run check` does that.
 */
import { deepStrictEqual } from "node:assert/strict";
import { spawnSync } from "node:child_process";
import { chmodSync, cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import Handlebars from "handlebars";
import { rolldown } from "rolldown";
import { sha256 } from "../../src/cli/files.js";
import { programYaml } from "../../src/cli/program-yaml.js";
import { OPTIONS } from "../../src/report/templates.js";
import { compiledStructures } from "./compile-structures.js";

const DIST = resolve("dist");
const TEMPLATES = resolve("src/report/compiled-templates.ts");
const YAML = resolve("src/cli/parsed-yaml.ts");
/** What every build reads. */
const YAML_FOLDERS = ["src/norms/tables", "src/plan/profiles", "src/compare/tables", "templates/words"];
const NEVER_CALLED = "proxy-agent";
const STARTS = ["main", "crew-worker"];

async function bundle(input: Readonly<Record<string, string>>, folder: string): Promise<void> {
  const made = await rolldown({
    input: { ...input },
    platform: "node",
    tsconfig: false,
    plugins: [
      { name: "compiled templates", load: (id) => (id === TEMPLATES ? compiledTemplates() : null) },
      { name: "parsed YAML", load: (id) => (id === YAML ? parsedYaml() : null) },
      {
        // What drives the browser can also download one through proxies: never done here, and as long as the rest of it.
        name: "no downloads",
        resolveId: (id) => (id === NEVER_CALLED ? `\0${id}` : null),
        load: (id) => (id === `\0${NEVER_CALLED}` ? "export const ProxyAgent = undefined;" : null),
      },
    ],
    external: [/^@sparticuz\//],
    resolve: {
      extensionAlias: { ".js": [".ts", ".js"] },
      // Of two makes the one that asks for no canvas package: figures never depend on what else is installed.
      alias: { "vega-canvas": resolve("node_modules/vega-canvas/build/vega-canvas.browser.js") },
    },
  });
  const names = "[name].js";
  await made.write({
    dir: join(DIST, folder),
    format: "cjs",
    dynamicImportInCjs: false,
    entryFileNames: names,
    chunkFileNames: names,
    sourcemap: true,
    minify: { compress: false, mangle: false, codegen: { removeWhitespace: true } },
  });
  await made.close();
}

/** The module that holds the templates of the program, compiled. */
function compiledTemplates(): string {
  const texts = readdirSync("templates", { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".hbs"))
    .map((file) => readFileSync(join("templates", file), "utf8"));
  const entries = texts.map((text) => `"${sha256(text)}": ${Handlebars.precompile(text, OPTIONS)}`);
  return `export const compiledTemplates = {${entries.join(",\n")}};`;
}

/** The module that holds YAML of the program, read. */
function parsedYaml(): string {
  const files = YAML_FOLDERS.flatMap((folder) => readdirSync(folder).map((file) => join(folder, file)));
  const entries = files
    .filter((file) => file.endsWith(".yaml") && !file.endsWith("words/de.yaml"))
    .map((file) => {
      const value = programYaml(file);
      const json = JSON.stringify(value);
      deepStrictEqual(JSON.parse(json), value, file);
      return `"${sha256(readFileSync(file))}": ${JSON.stringify(json)}`;
    });
  return `export const parsedYaml = {${entries.join(",\n")}};`;
}

/** Builds reports of a client of the example in a throw-away place, and keeps the code that V8 compiled for it. */
function keepCode(): void {
  const folder = mkdtempSync(join(tmpdir(), "waymark-build-"));
  const CLIENT = "clients/c-017";
  try {
    for (const part of ["lab.yaml", "retests", CLIENT])
      cpSync(join("examples/skarn-point", part), join(folder, part), { recursive: true });
    for (const words of [["build", "--no-pdf"], ["build"], ["check"]]) {
      const keeper = resolve("tests/tools/keep-code.cjs");
      const { status, stderr } = spawnSync(
        process.execPath,
        ["--require", keeper, join(DIST, "cli/main.js"), ...words],
        { cwd: folder, encoding: "utf8" },
      );
      if (status !== 0) process.stderr.write(`no compiled code kept of ${words.join(" ")}: ${stderr}`);
    }
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

rmSync(DIST, { recursive: true, force: true });
await bundle(Object.fromEntries(STARTS.map((name) => [name, `src/cli/${name}.ts`])), "parts");
await bundle({ start: "src/cli/start.ts" }, "start");
mkdirSync(join(DIST, "cli"));
const start = readFileSync(join(DIST, "start/start.js"), "utf8").replace(/\/\/# sourceMappingURL.*\s*$/, "");
for (const name of STARTS) writeFileSync(join(DIST, `cli/${name}.js`), start);
rmSync(join(DIST, "start"), { recursive: true });
chmodSync(join(DIST, "cli/main.js"), 0o755);
writeFileSync(join(DIST, "package.json"), '{ "type": "commonjs" }\n');
writeFileSync(join(DIST, "structures.json"), JSON.stringify(await compiledStructures()));
keepCode();
