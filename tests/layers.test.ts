/** The layer rule: stages import only the kernel, never each other; pure stages import no package and no node module. */
import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, normalize } from "node:path";
import { expect, it } from "vitest";

const STAGES = ["read", "validate", "derive", "norms", "validity", "compare", "plan", "results", "charts", "report"];
const PURE = ["kernel", "derive", "norms", "validity", "compare", "plan", "charts"];
const FREE = ["cli", "pipeline.ts", "pipeline-parts.ts"];

function breaches(file: string): string[] {
  const layer = file.split("/")[0] as string;
  const text = readFileSync(join("src", file), "utf8");
  const found: string[] = [];
  for (const match of text.matchAll(/^(?:import|export)\s([^;]*?)from\s+"([^"]+)"|\bimport\("([^"]+)"\)/gm)) {
    const to = (match[2] ?? match[3]) as string;
    const typeOnly = match[1]?.startsWith("type ") ?? false;
    if (!to.startsWith(".")) {
      if (PURE.includes(layer) && !typeOnly) found.push(`${file} imports ${to}, but ${layer}/ is pure`);
      continue;
    }
    const target = normalize(join(dirname(file), to)).split("/")[0] as string;
    if (STAGES.includes(target) && target !== layer && !FREE.includes(layer) && !layer.endsWith(".generated.ts"))
      found.push(`${file} imports ${target}/: stages meet only in pipeline.ts and cli/`);
    if (layer === "kernel" && target !== "kernel") found.push(`${file} imports ${target}: the kernel stands alone`);
    if (PURE.includes(layer) && target.endsWith(".generated.js"))
      found.push(`${file} imports a registry: ask for it as an argument`);
  }
  if (PURE.includes(layer) && /\bnew Date\(\)|Date\.now\(|Math\.random\(|\bprocess\.\w/.test(text))
    found.push(`${file} reads the clock, chance or the process`);
  return found;
}

it("keeps the layers apart", () => {
  const files = readdirSync("src", { recursive: true, encoding: "utf8" }).filter((f) => f.endsWith(".ts"));
  expect(files.length).toBeGreaterThan(10);
  expect(files.map((f) => f.replaceAll("\\", "/")).flatMap(breaches)).toEqual([]);
});

it("keeps properties to one seed: tests take fast-check from tests/tools/properties.ts", () => {
  const own = readdirSync("tests", { recursive: true, encoding: "utf8" }).filter(
    (f) => f.endsWith(".ts") && /from "fast-check"/.test(readFileSync(join("tests", f), "utf8")),
  );
  expect(own.map((f) => f.replaceAll("\\", "/"))).toEqual(["layers.test.ts", "tools/properties.ts"]);
});
