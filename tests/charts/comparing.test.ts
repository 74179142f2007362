/** Figures of retests and trends, from numbers given by hand. */
import { describe, expect, it } from "vitest";
import { differencePlot } from "../../src/charts/difference-plot.js";
import { trendFigure } from "../../src/charts/trend-figure.js";
import { speechOf } from "../../src/kernel/speech.js";
import { openSvgDrawer } from "../../src/report/svg.js";
import { assets, MARKS, wordsOf } from "../report/assets.js";

const speech = speechOf(wordsOf("en"));

describe("trendFigure", () => {
  const points = [
    { date: "2026-03-02", value: 40, differs: "" },
    { date: "2026-05-11", value: 44, differs: "averaging window (30, now 20)" },
    { date: "2026-07-20", value: 45, differs: "" },
  ];
  const figure = trendFigure({
    measure: "vo2_peak_per_mass",
    unit: "mL/kg/min",
    decimals: 1,
    points,
    error: 1.5,
    speech,
  });

  it("places visits by weeks and draws one error of a test on each side", () => {
    expect(figure.data.values?.map(({ x }) => x)).toEqual([0, 10, 20]);
    expect(figure.data.bars?.[1]).toMatchObject({ low: 42.5, high: 45.5 });
  });
  it("marks the visit whose conditions differ, and says what differs", () => {
    expect(figure.data.changed?.map(({ x }) => x)).toEqual([10]);
    expect(figure.data.same?.map(({ x }) => x)).toEqual([0, 20]);
    expect(figure.alt).toContain("11 May 2026: 44.0\u00a0mL/kg/min (differs: averaging window (30, now 20))");
    expect(figure.table.rows[1]).toContain("averaging window (30, now 20)");
  });
  it("draws no bar where the error is not known", () => {
    const bare = trendFigure({ measure: "push_ups", unit: "repetitions", decimals: 0, points, speech });
    expect(bare.data.bars).toEqual([]);
  });
  it("gives values that are all alike an axis of whole steps", async () => {
    const alike = points.map((point) => ({ ...point, value: 62 }));
    const flat = trendFigure({ measure: "resting_heart_rate", unit: "1/min", decimals: 0, points: alike, speech });
    const svg = await openSvgDrawer(assets.theme).draw(flat, MARKS);
    expect(svg).toContain(">64<");
    expect(svg).not.toMatch(/62\.0+</);
    const dots = [...svg.matchAll(/<path stroke-linecap="round"[^>]* d="([^"]*)"/g)].flatMap(
      ([, d]) => d?.match(/h\.1/g) ?? [],
    );
    // Three visits, a disc and a rim each; what gives the axis its room is not drawn.
    expect(dots).toHaveLength(6);
    expect(figure.data.room).toEqual([]);
  });
});

describe("differencePlot", () => {
  const figure = differencePlot({
    name: "pairs-1",
    measure: "body_mass",
    unit: "kg",
    decimals: 1,
    pairs: [
      [62, 67],
      [78, 76],
      [81, 87],
      [55, 55],
      [66, 63],
    ],
    meanShift: 1.2,
    limits: { low: -6.81, high: 9.21 },
    suspects: [2],
    speech,
  });

  it("sets differences against means, and draws a pair to look at apart, with its number", () => {
    expect(figure.data.points).toContainEqual({ x: 64.5, y: 5, name: "1" });
    expect(figure.data.suspects).toEqual([{ x: 84, y: 6, name: "3" }]);
    expect(figure.table.rows[4]).toEqual([5, 66, 63, 64.5, -3]);
  });
  it("names mean shift and limits of agreement in figure and words", () => {
    expect(figure.data.limits?.map(({ name }) => name)).toEqual(["\u22126.81", "+9.21"]);
    expect(figure.title).toContain("\u22126.81 to +9.21\u00a0kg");
    expect(figure.alt).toContain("Mean shift +1.20\u00a0kg");
  });
  it("encodes only fields its data have, and is drawn with its numbers", async () => {
    for (const layer of (
      figure.spec as { layer: { data: { name: string }; encoding: Record<string, { field?: string }> }[] }
    ).layer)
      for (const { field } of Object.values(layer.encoding))
        for (const row of figure.data[layer.data.name] ?? [])
          if (field !== undefined) expect(row).toHaveProperty(field);
    const svg = await openSvgDrawer(assets.theme).draw(figure, MARKS);
    expect(svg).toContain("+9.21");
    expect(svg).not.toMatch(/NaN|undefined/);
  });
});
