import { quantityOf } from "../kernel/entries.js";
import type { Chart, Datum } from "../kernel/figure.js";
import type { Cell } from "../kernel/measure.js";
import { withUnit } from "../kernel/names.js";
import { has, numberOf, records, table } from "./entries.js";
import { layer, structured, x } from "./parts.js";

const PARTS = [
  { key: "lean", style: "bar", word: "lean" },
  { key: "fat", style: "bar-light", word: "fat" },
  { key: "bmc", style: "bar-dark", word: "bone" },
] as const;

const ROW = 20;

/** The scan reports grams; the figure shows kilograms. */
const kilograms = (grams: Cell | undefined): number | undefined => {
  const found = numberOf(grams);
  return found === undefined ? undefined : found / 1000;
};

/** Fat, lean soft tissue and bone of each region of the scan, side by side in kilograms. */
export const bodyRegions: Chart = ({ results, speech }) => {
  const regions = table(results, "dxa_regions");
  if (regions === undefined || !has(regions, "region", "fat", "lean")) return [];
  const rows = records(regions).filter((row) => !/^(?:whole|total)/i.test(String(row.region)));
  const named = rows.map(
    (row, i): Datum => ({
      row: i + 0.5,
      name: speech.told(String(row.region)),
    }),
  );
  const bars: Record<string, Datum[]> = { lean: [], fat: [], bmc: [] };
  rows.forEach((row, i) => {
    let from = 0;
    for (const { key } of PARTS) {
      const mass = kilograms(row[key]);
      if (mass === undefined) continue;
      bars[key]?.push({ low: from, high: from + mass, row: i + 0.2, end: i + 0.8 });
      from += mass;
    }
  });
  const fat = quantityOf(results, "body_fat_percent");
  const lane = (field: string) => ({
    field,
    type: "quantitative",
    axis: null,
    scale: { domain: [0, { signal: "rows" }], reverse: true, nice: false },
  });
  const first = bars.lean?.find(
    (bar) => Number(bar.high) === Math.max(...(bars.lean ?? []).map((b) => Number(b.high))),
  );
  const at = rows.length > 0 && first ? Number(first.row) + 0.3 : 0;
  // Bone is too narrow for its name, which stands after the bar.
  const bone = bars.bmc?.find((one) => Number(one.row) + 0.3 === at);
  const after = bone ? [{ x: bone.high ?? null, row: at, name: speech.say("charts.regions.bone") }] : [];
  const labels = PARTS.slice(0, 2).flatMap(({ key, word }): Datum[] => {
    const bar = bars[key]?.find((one) => Number(one.row) + 0.3 === at);
    return bar
      ? [{ x: (Number(bar.low) + Number(bar.high)) / 2, row: at, name: speech.say(`charts.regions.${word}`) }]
      : [];
  });
  return [
    {
      name: "body-regions",
      section: "composition",
      size: "wide",
      entry: "dxa_regions",
      title: fat
        ? speech.say("charts.regions.title", { fat: withUnit(speech, fat) })
        : speech.say("charts.regions.title_without_fat"),
      alt: rows
        .map((row, i) =>
          speech.say("charts.regions.alt_row", {
            region: String(named[i]?.name),
            fat: speech.number(kilograms(row.fat) ?? 0, 2),
            lean: speech.number(kilograms(row.lean) ?? 0, 2),
          }),
        )
        .join(" "),
      ...structured(
        { width: 300, height: ROW, padding: { left: 96, right: 44, top: 6, bottom: 36 } },
        [
          ...PARTS.map(({ key, style }) =>
            layer(key, "rect", style, {
              x: x("low", speech.say("axes.mass"), { scale: { zero: true } }),
              x2: { field: "high" },
              y: lane("row"),
              y2: { field: "end" },
            }),
          ),
          layer("names", "text", "row-name", {
            x: { value: -92 },
            y: lane("row"),
            text: { field: "name", type: "nominal" },
          }),
          layer("labels", "text", "name-in-bar", {
            x: x("x", null),
            y: lane("row"),
            text: { field: "name", type: "nominal" },
          }),
          layer("after", "text", "name", {
            x: x("x", null),
            y: lane("row"),
            text: { field: "name", type: "nominal" },
          }),
        ],
        { rows: rows.length, height: ROW * rows.length },
      ),
      data: { ...bars, names: named, labels, after },
      table: { columns: regions.columns, rows: regions.rows },
    },
  ];
};
