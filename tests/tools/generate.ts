/**
 * Writes what is derived from other files: TypeScript types from the schemas, and the lists of formulas and rules
 * from the modules. `npm run generate` writes, `npm run generate -- --check` only says whether they are fresh.
 */
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join, relative } from "node:path";
import { fileURLToPath } from "node:url";
import { compileFromFile } from "json-schema-to-typescript";

const root = join(dirname(fileURLToPath(import.meta.url)), "../..");
const inRoot = (path: string) => join(root, path);

const SCHEMAS: Record<string, string> = {
  "schema/session.schema.json": "src/kernel/generated/session.ts",
  "schema/client.schema.json": "src/kernel/generated/client.ts",
  "schema/laboratory.schema.json": "src/kernel/generated/laboratory.ts",
  "schema/blocks/choices.schema.json": "src/kernel/generated/choices.ts",
  "schema/results.schema.json": "src/kernel/generated/results.ts",
  "schema/typical-error.schema.json": "src/kernel/generated/typical-error.ts",
  "schema/reference-table.schema.json": "src/kernel/generated/reference-table.ts",
  "schema/event-profile.schema.json": "src/kernel/generated/event-profile.ts",
};

async function types(schema: string): Promise<string> {
  const text = await compileFromFile(inRoot(schema), {
    cwd: dirname(inRoot(schema)),
    bannerComment: `/* Made by npm run generate from ${schema}. Do not edit. */`,
    format: true,
    style: { printWidth: 120 },
    // House choices are complete once resolved: every key has a default.
    ...(schema.endsWith("choices.schema.json") ? { $refOptions: {} } : {}),
  });
  return schema.endsWith("choices.schema.json") ? text.replace(/\?:/g, ":") : text;
}

/** Modules below `folder` that export `name`, as one list in path order. */
function registry(folders: string[], name: "info" | "rule", variable: string, type: string, from: string): string {
  const files = folders
    .flatMap((folder) => readdirSync(inRoot(folder), { recursive: true, encoding: "utf8" }).map((f) => join(folder, f)))
    .filter(
      (file) =>
        file.endsWith(".ts") && new RegExp(`^export const ${name}\\b`, "m").test(readFileSync(inRoot(file), "utf8")),
    )
    .sort();
  const imports = files.map(
    (file, i) => `import { ${name} as ${name}${i} } from "./${relative("src", file).replace(/\.ts$/, ".js")}";`,
  );
  return [
    "/* Made by npm run generate from the modules. Do not edit. */",
    `import type { ${type} } from "${from}";`,
    ...imports,
    "",
    `export const ${variable}: readonly ${type}[] = [${files.map((_, i) => `\n  ${name}${i},`).join("")}${files.length ? "\n" : ""}];`,
    "",
  ].join("\n");
}

export async function generated(): Promise<Record<string, string>> {
  const out: Record<string, string> = {};
  for (const [schema, target] of Object.entries(SCHEMAS)) out[target] = await types(schema);
  out["src/formulas.generated.ts"] = registry(
    ["src/derive", "src/compare", "src/plan", "src/norms"],
    "info",
    "formulas",
    "AnyFormula",
    "./kernel/formula.js",
  );
  out["src/rules.generated.ts"] = registry(["src/validity"], "rule", "rules", "Rule", "./kernel/rule.js");
  return out;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const stale: string[] = [];
  for (const [file, text] of Object.entries(await generated())) {
    let now = "";
    try {
      now = readFileSync(inRoot(file), "utf8");
    } catch {}
    if (now === text) continue;
    stale.push(file);
    if (!process.argv.includes("--check")) writeFileSync(inRoot(file), text);
  }
  if (stale.length) console.error(`${process.argv.includes("--check") ? "stale" : "wrote"}: ${stale.join(", ")}`);
  process.exitCode = stale.length && process.argv.includes("--check") ? 1 : 0;
}
