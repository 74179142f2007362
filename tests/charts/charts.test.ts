/**
 * A misspelt field draws an empty chart without any warning, so every field of every structure is looked for in its
 * data, and every drawn value must be finite. The structures themselves are golden files.
 */
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { Datum, Figure } from "../../src/kernel/figure.js";
import { figuresOf } from "../report/assets.js";
import { bare, baseline, retest } from "../report/fixture.js";

const middle = { ...baseline, date: "2026-04-10" };
const figures = figuresOf(retest, [baseline, middle]);

interface Layer {
  readonly data?: { readonly name: string };
  readonly layer?: readonly Layer[];
  readonly encoding?: Readonly<Record<string, { readonly field?: string; readonly type?: string }>>;
}
const layersOf = (one: Layer): readonly Layer[] => (one.layer ? one.layer.flatMap(layersOf) : [one]);

/** Faults of one figure: fields that its data lack, numbers that are not finite. */
function faults(figure: Figure): string[] {
  return layersOf(figure.spec as Layer).flatMap((layer) => {
    const name = layer.data?.name ?? "";
    const rows: readonly Datum[] | undefined = figure.data[name];
    if (rows === undefined) return [`${figure.name}: no data set ${name}`];
    const encodings = Object.values(layer.encoding ?? {}).filter((channel) => channel.field !== undefined);
    return encodings.flatMap(({ field = "", type }) =>
      rows.flatMap((row, i) => {
        const value = row[field];
        if (!(field in row)) return [`${figure.name}: ${name} has no ${field} in row ${i}`];
        // A break of a cloud is a whole row of nulls.
        const isBreak = row.x === null && row.y === null;
        const finite = typeof value === "number" && Number.isFinite(value);
        return type !== "nominal" && !finite && !isBreak ? [`${figure.name}: ${name}.${field} is ${value}`] : [];
      }),
    );
  });
}

describe("every chart", () => {
  it("draws the figures a full visit asks for", () => {
    const names = figures.map((figure) => figure.name);
    for (const name of ["uptake-output", "heart", "v-slope", "equivalents", "ventilation", "ventilation-output"])
      expect(names).toContain(name);
    for (const name of ["stage-figure", "resting-trace", "blood-pressure-readings", "body-regions", "change-figure"])
      expect(names).toContain(name);
    expect(names).toContain("norm-vo2-peak-per-mass");
    expect(names).toContain("pair-vt1-speed");
    expect(names).toContain("trend-vo2-peak-per-mass");
    expect(new Set(names).size).toBe(names.length);
  });
  it("state no value in a title that was not given", () => {
    const without = { ...retest, entries: retest.entries.filter((entry) => entry.kind !== "quantity") };
    const titles = figuresOf(without, []).map((figure) => figure.title);
    expect(titles).toContain("Ventilation over time");
    expect(titles.filter((title) => /not given/.test(title))).toEqual([]);
  });
  it("encodes only fields its data have, all finite", () => {
    expect(figures.flatMap(faults)).toEqual([]);
  });
  it("notices a misspelt field and a value that is not finite", () => {
    const figure = figures.find((one) => one.name === "heart") as Figure;
    const misspelt = JSON.parse(JSON.stringify(figure).replace('"field":"y"', '"field":"yy"')) as Figure;
    expect(faults(misspelt)).not.toEqual([]);
    const broken = { ...figure, data: { ...figure.data, bins0: [{ x: 1, y: Number.NaN }] } };
    expect(faults(broken)).not.toEqual([]);
  });
  it("says its finding, its numbers and the table behind it", () => {
    for (const figure of figures) {
      expect(figure.title.length, figure.name).toBeGreaterThan(10);
      expect(figure.title, figure.name).not.toMatch(/[.{}]$|undefined|NaN/);
      expect(figure.alt.length, figure.name).toBeGreaterThan(20);
      expect(figure.alt, figure.name).not.toMatch(/undefined|NaN|\{/);
      expect(figure.table.rows.length, figure.name).toBeGreaterThan(0);
    }
  });
  it("draws nothing from a visit that measured nothing to draw", () => {
    expect(figuresOf(bare, [])).toEqual([]);
  });
  it("computes nothing in the drawing: no transform, aggregate or regression", () => {
    for (const { name, spec } of figures)
      expect(JSON.stringify(spec), name).not.toMatch(/"(?:transform|aggregate|bin|timeUnit|regression|calculate)":/);
  });
  it("names no colour and no font: the theme does", () => {
    for (const { name, spec } of figures) expect(JSON.stringify(spec), name).not.toMatch(/#[0-9a-f]{3,6}\b|"font/i);
  });
  it("stands in the list of charts", () => {
    const list = readFileSync("src/charts/charts.ts", "utf8");
    const files = readdirSync("src/charts", { recursive: true, encoding: "utf8" }).filter((f) => f.endsWith(".ts"));
    for (const file of files)
      for (const [, name] of readFileSync(`src/charts/${file}`, "utf8").matchAll(/^export const (\w+): Chart\b/gm))
        expect(list, file).toMatch(new RegExp(`^ {2}${name},$`, "m"));
  });
});

describe("structures", () => {
  const folder = "tests/golden/charts";
  for (const figure of figures.filter((one) => !/^(?:norm|pair|trend)-(?!vo2-peak-per-mass)/.test(one.name)))
    it(`keeps ${figure.name}`, () => {
      const path = `${folder}/${figure.name}.json`;
      const text = `${JSON.stringify(figure.spec, null, 1)}\n`;
      if (process.env.GOLDEN === "rewrite") {
        mkdirSync(folder, { recursive: true });
        writeFileSync(path, text);
      }
      expect(existsSync(path), `${path} is missing: npm run golden writes it`).toBe(true);
      expect(readFileSync(path, "utf8")).toBe(text);
    });
});
