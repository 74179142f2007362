/** Drawings: small, the same whatever was drawn before, with every word inside the frame. */
import { describe, expect, it } from "vitest";
import type { Figure } from "../../src/kernel/figure.js";
import { openSvgDrawer } from "../../src/report/svg.js";
import { assets, figuresOf, MARKS } from "./assets.js";
import { baseline, retest } from "./fixture.js";

const figures = figuresOf(retest, [baseline]);
const draw = async (list: readonly Figure[]): Promise<Map<string, string>> => {
  const drawer = openSvgDrawer(assets.theme);
  const out = new Map<string, string>();
  for (const figure of list) out.set(figure.name, await drawer.draw(figure, MARKS));
  return out;
};

describe("drawings", () => {
  it("keep to 40 kB and hold no NaN, no script and no outside address", async () => {
    for (const [name, svg] of await draw(figures)) {
      expect(svg.length, name).toBeLessThan(40_000);
      expect(svg, name).not.toMatch(/NaN|Infinity|undefined|<script|href=|http|font-family/);
      expect(svg, name).toMatch(/^<svg role="img" aria-label="[^"]{20,}"/);
    }
  });
  it("are the same bytes in another order, in a second drawer, and on kept views", async () => {
    const first = await draw(figures);
    const backwards = await draw([...figures].reverse());
    const drawer = openSvgDrawer(assets.theme);
    const others = figuresOf(baseline, []);
    for (const figure of others) await drawer.draw(figure, MARKS);
    for (const figure of figures) {
      expect(backwards.get(figure.name) === first.get(figure.name), figure.name).toBe(true);
      expect((await drawer.draw(figure, MARKS)) === first.get(figure.name), figure.name).toBe(true);
    }
    // Asked for all at once, each still gets its own data.
    const together = await Promise.all(figures.map((figure) => drawer.draw(figure, MARKS)));
    expect(together).toEqual(figures.map((figure) => first.get(figure.name)));
  });
  it("are the same after fewer rows, none, and more", async () => {
    const first = await draw(figures);
    const drawer = openSvgDrawer(assets.theme);
    const cut = (figure: Figure, share: number): Figure => ({
      ...figure,
      data: Object.fromEntries(
        Object.entries(figure.data).map(([name, rows]) => [name, rows.slice(0, Math.floor(rows.length * share))]),
      ),
    });
    for (const figure of figures) {
      const parts: string[] = [];
      for (const share of [0.5, 1, 0, 1]) parts.push(await drawer.draw(cut(figure, share), MARKS));
      expect(parts[1] === first.get(figure.name), figure.name).toBe(true);
      expect(parts[3] === first.get(figure.name), figure.name).toBe(true);
      expect(parts[0] === parts[1], figure.name).toBe(false);
    }
  });
  it("draw no row that lacks a number", async () => {
    const heart = figures.find((one) => one.name === "heart") as Figure;
    const lacking = {
      ...heart,
      data: { ...heart.data, bins0: [...(heart.data.bins0 ?? []), { x: 1, y: null }, { x: Number.NaN, y: 1 }] },
    };
    expect([...(await draw([lacking])).values()]).toEqual([...(await draw([heart])).values()]);
  });
  it("draw as many points as they were given, those less than a pixel apart as one", async () => {
    const svgs = await draw(figures);
    const data = figures.find((one) => one.name === "ventilation")?.data ?? {};
    const breaths = (data.breaths0 ?? []).filter((row) => row.x !== null).length;
    const means = data.bins0?.length ?? 0;
    expect(breaths).toBeGreaterThan(200);
    expect(means).toBeGreaterThan(50);
    const longest = [...(svgs.get("ventilation") ?? "").matchAll(/d="([^"]*)"/g)].map(
      (m) => m[1]?.split("h.1").length ?? 0,
    );
    expect(longest).toContain(means + 1);
    expect(Math.max(...longest)).toBeGreaterThan(0.7 * breaths);
    expect(Math.max(...longest)).toBeLessThanOrEqual(breaths + 1);
  });
  it("keep every word inside the frame", async () => {
    const outside: string[] = [];
    for (const [name, svg] of await draw(figures)) outside.push(...clipped(name, svg));
    expect(outside).toEqual([]);
  });
});

/** Words that reach over the edge of the drawing, measured by the widths of the theme's sans. */
function clipped(name: string, svg: string): string[] {
  const [, , width = 0, height = 0] = (/viewBox="([^"]*)"/.exec(svg)?.[1] ?? "").split(" ").map(Number);
  const faults: string[] = [];
  const groups = [{ px: 0, py: 0, look: "" }];
  for (const [, closing, tag, attributes = "", empty, text = ""] of svg.matchAll(/<(\/?)(\w+)([^>]*?)(\/?)>([^<]*)/g)) {
    if (closing === "/") {
      groups.pop();
      continue;
    }
    const [dx = 0, dy = 0] = (/translate\(([^)]*)\)/.exec(attributes)?.[1] ?? "0,0").split(",").map(Number);
    const { px, py, look: inherited } = groups[groups.length - 1] as (typeof groups)[number];
    const [x, y] = [px + dx, py + dy];
    // Its own attributes first: those of the groups around it come after.
    const look = `${attributes} ${inherited}`;
    if (tag === "text" && text !== "") {
      const size = Number(/font-size="([\d.]+)px"/.exec(look)?.[1]);
      const face = assets.theme.widths["sans-regular"] ?? {};
      const decoded = text.replace(/&amp;/g, "&").replace(/&lt;/g, "<");
      const long = ([...decoded].reduce((sum, c) => sum + (face[c] ?? 500), 0) * size) / 1000;
      const anchor = /text-anchor="(\w+)"/.exec(look)?.[1] ?? "start";
      const left = anchor === "end" ? x - long : anchor === "middle" ? x - long / 2 : x;
      if (left < -1 || left + long > width + 1 || y < size - 3 || y > height + 1)
        faults.push(`${name}: "${decoded}" from ${left.toFixed(0)} to ${(left + long).toFixed(0)} of ${width}, y ${y}`);
    }
    if (empty !== "/") groups.push({ px: x, py: y, look });
  }
  return faults;
}
