import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { generated } from "./tools/generate.js";

it("has fresh generated files (npm run generate)", async () => {
  for (const [file, text] of Object.entries(await generated())) expect(readFileSync(file, "utf8"), file).toBe(text);
});
