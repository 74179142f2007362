import { describe, expect, it } from "vitest";
import { dots, rectangle, tenth, through } from "../../src/report/svg-paths.js";
import { type Drawn, type Mark, svgText } from "../../src/report/svg-text.js";
import fc from "../tools/properties.js";
import { figuresOf } from "./assets.js";
import { baseline } from "./fixture.js";

const place = fc.double({ min: -50, max: 1200, noNaN: true });

/** The places a path of dots leads to. */
function placesOf(path: string): { x: number; y: number }[] {
  const places: { x: number; y: number }[] = [];
  let [px, py] = [0, 0];
  for (const [, kind, x, y] of path.matchAll(/([Mm])(-?[\d.]+),?(-?[\d.]+)h\.1/g)) {
    const [dx, dy] = [Number(x), Number(y)];
    [px, py] = kind === "M" ? [dx, dy] : [px + 0.1 + dx, py + dy];
    places.push({ x: px, y: py });
  }
  return places;
}

describe("paths", () => {
  it("write a number as its nearest tenth", () => {
    fc.assert(
      fc.property(place, (value) => {
        expect(tenth(value)).toMatch(/^-?\d+(\.\d)?$/);
        expect(Math.abs(Number(tenth(value)) - value)).toBeLessThanOrEqual(0.0500001);
      }),
    );
  });
  it("lead to every dot, but for those less than a pixel from one before", () => {
    fc.assert(
      fc.property(fc.array(fc.record({ x: place, y: place })), (points) => {
        const drawn = placesOf(dots(points));
        expect(drawn.length).toBeLessThanOrEqual(points.length);
        for (const { x, y } of points)
          expect(drawn.some((one) => Math.abs(one.x - x) < 1.1 && Math.abs(one.y - y) < 1.1)).toBe(true);
        for (const one of drawn)
          expect(points.some(({ x, y }) => Math.abs(one.x - x) < 0.06 && Math.abs(one.y - y) < 0.06)).toBe(true);
      }),
    );
  });
  it("go straight, or in steps that turn halfway", () => {
    const points = [
      { x: 0, y: 1 },
      { x: 2, y: 3.25 },
    ];
    expect(through(points, false)).toBe("M0,1L2,3.3");
    expect(through(points, true)).toBe("M0,1L1,1L1,3.3L2,3.3");
    expect(rectangle(0.5, 1, 2, 3)).toBe("M0.5,1h2v3h-2Z");
  });
});

describe("a scene as text", () => {
  const figure = figuresOf(baseline, [])[0] as ReturnType<typeof figuresOf>[number];
  const written = (mark: Mark) => {
    const drawn: Drawn = { root: mark, width: 10, height: 10, origin: [1, 2] };
    return svgText(drawn, figure, new Map()).replace(/^.*?translate\(1,2\)">|<\/g><\/svg>$/g, "");
  };
  it("leaves out groups that hold nothing, and what is see-through", () => {
    const nothing: Mark = { marktype: "group", items: [{ items: [{ marktype: "rule", items: [] }] }] };
    expect(written(nothing)).toBe("");
    const bar: Mark = { marktype: "rect", items: [{ width: 3, height: 4, fill: "#111111", stroke: "transparent" }] };
    expect(written(bar)).toBe('<path d="M0,0h3v4h-3Z" fill="#111111"/>');
  });
  it("draws bars alike as one path, those seen through apart, and no text that says nothing", () => {
    const [one, two] = [
      { width: 3, height: 4, fill: "#111111" },
      { x: 5, width: 3, height: 4, fill: "#111111" },
    ];
    expect(written({ marktype: "rect", items: [one, two] })).toBe(
      '<path d="M0,0h3v4h-3ZM5,0h3v4h-3Z" fill="#111111"/>',
    );
    const through = [one, two].map((item) => ({ ...item, fillOpacity: 0.5 }));
    expect(written({ marktype: "rect", items: through }).match(/<path/g)).toHaveLength(2);
    expect(written({ marktype: "text", items: [{ text: " " }] })).toBe("");
  });
  it("escapes words", () => {
    const words: Mark = { marktype: "text", items: [{ x: 1, y: 2, text: '<b> & "c"', fontSize: 10, baseline: "top" }] };
    expect(written(words)).toBe(
      '<text transform="translate(1,10)" font-size="10px">&lt;b&gt; &amp; &quot;c&quot;</text>',
    );
  });
  it("says once how rules and texts look that look alike, and writes no text that is unseen", () => {
    const [one, two] = [
      { x: 1, y: 2, y2: 5, stroke: "#111111" },
      { x: 3, y: 2, x2: 4, stroke: "#111111" },
    ];
    const lines = ['<line transform="translate(1,2)" y2="3"', '<line transform="translate(3,2)" x2="1"'];
    expect(written({ marktype: "rule", items: [one, two] })).toBe(`<g stroke="#111111">${lines.join("/>")}/></g>`);
    expect(written({ marktype: "rule", items: [one, { ...two, stroke: "#222222" }] })).toBe(
      `${lines[0]} stroke="#111111"/>${lines[1]} stroke="#222222"/>`,
    );
    const names = ["a", "b", "c"].map((text, x) => ({ x, text, fontSize: 9, opacity: text === "b" ? 0 : 1 }));
    expect(written({ marktype: "text", items: names })).toBe(
      '<g font-size="9px"><text transform="translate(0,0)">a</text><text transform="translate(2,0)">c</text></g>',
    );
  });
  it("refuses what it cannot write", () => {
    expect(() => written({ marktype: "arc", items: [{}] })).toThrow("the mark arc");
    expect(() => written({ marktype: "symbol", items: [{ shape: "cross" }] })).toThrow("cross");
    expect(() => written({ marktype: "text", items: [{ text: "up", angle: 90 }] })).toThrow("turned");
  });
});
