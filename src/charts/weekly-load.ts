import type { Chart, Datum } from "../kernel/figure.js";
import { has, numberOf, records, table } from "./entries.js";
import { framed, layer, x, y } from "./parts.js";

const PARTS = [
  { key: "easy", style: "bar-light" },
  { key: "steady", style: "bar-middle" },
  { key: "hard", style: "bar" },
  { key: "strength", style: "bar-dark" },
] as const;

/** One bar a week, stacked by minutes of each effort; easier weeks show by themselves, marks stand above their week. */
export const weeklyLoad: Chart = ({ results, speech }) => {
  const weeks = table(results, "programme_weeks");
  if (weeks === undefined || !has(weeks, "week", "easy")) return [];
  const rows = records(weeks).filter((row) => numberOf(row.week) !== undefined);
  if (rows.length < 2) return [];
  const bars: Record<string, Datum[]> = { easy: [], steady: [], hard: [], strength: [] };
  const tops: Datum[] = [];
  for (const row of rows) {
    const week = numberOf(row.week) ?? 0;
    let from = 0;
    for (const { key } of PARTS) {
      const minutes = numberOf(row[key]) ?? 0;
      if (minutes > 0) bars[key]?.push({ left: week - 0.36, right: week + 0.36, low: from, high: from + minutes });
      from += minutes;
    }
    const mark = typeof row.mark === "string" && row.mark !== "" ? "▼" : "";
    tops.push({ week, top: from, name: mark });
  }
  const hours = (total: number) => speech.number(total, 0);
  const marked = tops.some((week) => week.name !== "");
  const key = speech.say(marked ? "charts.weeks.key_marked" : "charts.weeks.key");
  const totals = tops.map((week) => Number(week.top));
  const count = rows.length;
  const across = (field: string, title: string | null) =>
    x(field, title, {
      scale: { domain: [0.5, { signal: "weeks + 0.5" }] },
      axis: { tickCount: { signal: "min(weeks, 12)" }, format: "d" },
    });
  return [
    {
      name: "weekly-load",
      section: "programme",
      size: "wide",
      entry: "programme_weeks",
      title: speech.say("charts.weeks.title", { weeks: count, most: hours(Math.max(...totals)) }),
      alt: speech.say("charts.weeks.alt", {
        weeks: count,
        least: hours(Math.min(...totals)),
        most: hours(Math.max(...totals)),
        last: hours(totals[totals.length - 1] ?? 0),
      }),
      ...framed(
        "wide",
        [
          ...PARTS.map(({ key: part, style }) =>
            layer(part, "rect", style, {
              x: across("left", null),
              x2: { field: "right" },
              y: y("low", null, { scale: { zero: true } }),
              y2: { field: "high" },
            }),
          ),
          layer("tops", "text", "name-above", {
            x: across("week", speech.say("axes.week")),
            y: y("top", `${speech.say("axes.minutes")}   ${key}`, { axis: { titleY: -14 } }),
            text: { field: "name", type: "nominal" },
          }),
        ],
        { height: 120 },
        { weeks: count },
      ),
      data: { ...bars, tops },
      table: { columns: weeks.columns, rows: weeks.rows },
    },
  ];
};
