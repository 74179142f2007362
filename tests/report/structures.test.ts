/** Structures compiled when the program is built: the same as compiled now, and the same drawings. */
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { type Compiled, openStructures, structureKey } from "../../src/report/structures.js";
import { openSvgDrawer } from "../../src/report/svg.js";
import { compiledStructures, exampleStructures } from "../tools/compile-structures.js";
import { assets, figuresOf, MARKS } from "./assets.js";
import { baseline, retest } from "./fixture.js";

const built = JSON.parse(readFileSync("dist/structures.json", "utf8")) as Compiled;

describe("structures compiled before", () => {
  it("are what compiling them now gives (npm run build)", async () => {
    const now = await compiledStructures();
    expect(Object.keys(now.dataflows).length).toBeGreaterThan(15);
    expect(built).toEqual(now);
  });
  it("hold every structure the example practice draws, few enough to be kept", () => {
    const structures = [...exampleStructures().keys()];
    expect(structures.filter((key) => built.dataflows[key] === undefined)).toEqual([]);
    expect(structures.length).toBeLessThan(40);
  });
  it("draw the same as those compiled when drawn", async () => {
    const drawers = [openSvgDrawer(assets.theme), openSvgDrawer({ ...assets.theme, compiled: built })];
    for (const figure of figuresOf(retest, [baseline])) {
      const [fresh, kept] = await Promise.all(drawers.map((drawer) => drawer.draw(figure, MARKS)));
      expect(kept === fresh, figure.name).toBe(true);
    }
  });
  it("are of no use with another look", async () => {
    const [key, spec] = [...exampleStructures()][0] as [string, never];
    const mine = { ...assets.theme.config, background: "#eeeeee" };
    expect(await openStructures(mine, built)(key, spec)).not.toEqual(built.dataflows[key]);
    expect(await openStructures(assets.theme.config, built)(key, spec)).toBe(built.dataflows[key]);
    expect(structureKey(spec)).toBe(key);
  });
});
