import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { generated } from "./tools/generate.js";
import { methodsPage } from "./tools/methods-page.js";

it("has fresh generated files (npm run generate)", async () => {
  for (const [file, text] of Object.entries(await generated())) expect(readFileSync(file, "utf8"), file).toBe(text);
});

it("has a fresh methods page (npm run docs)", () => {
  expect(readFileSync("src/METHODS.md", "utf8")).toBe(methodsPage());
});
