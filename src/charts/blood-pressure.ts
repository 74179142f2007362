import { quantityOf } from "../kernel/entries.js";
import type { Chart, Datum } from "../kernel/figure.js";
import { has, numberOf, records, table } from "./entries.js";
import { framed, layer, x, y } from "./parts.js";

/** Each reading as a bar from the lower to the upper pressure; the mean of the readings used as lines. */
export const bloodPressure: Chart = ({ results, speech }) => {
  const readings = table(results, "blood_pressure_readings");
  if (readings === undefined || !has(readings, "systolic", "diastolic")) return [];
  const rows = records(readings).flatMap((row, i): Datum[] => {
    const [high, low] = [numberOf(row.systolic), numberOf(row.diastolic)];
    return high === undefined || low === undefined
      ? []
      : [{ reading: i + 1, high, low, used: !/^(no|false|discarded)/.test(String(row.counts ?? "yes")) }];
  });
  if (rows.length === 0) return [];
  const means = (["systolic_pressure", "diastolic_pressure"] as const).flatMap((id): Datum[] => {
    const mean = quantityOf(results, id);
    return mean
      ? [
          {
            y: mean.value,
            x: rows.length + 0.5,
            name: speech.say("charts.pressure.mean", { mean: speech.number(mean.value, 0) }),
          },
        ]
      : [];
  });
  const [upper, lower] = means;
  const at = (title: string | null) =>
    x("reading", title, {
      scale: { domain: [0.5, { signal: "readings.length + 0.5" }] },
      axis: { values: { signal: "readings" }, format: "d" },
    });
  const bar = (data: string, style: string) =>
    layer(data, "rule", style, { x: at(null), y: y("low", null), y2: { field: "high" } });
  return [
    {
      name: "blood-pressure-readings",
      section: "blood_pressure",
      size: "wide",
      entry: "blood_pressure_readings",
      title:
        upper && lower
          ? speech.say("charts.pressure.title", {
              systolic: speech.number(Number(upper.y), 0),
              diastolic: speech.number(Number(lower.y), 0),
            })
          : speech.say("charts.pressure.title_without_mean"),
      alt: rows
        .map((row) =>
          speech.say("charts.pressure.alt_row", {
            n: Number(row.reading),
            systolic: Number(row.high),
            diastolic: Number(row.low),
          }),
        )
        .join(" "),
      ...framed(
        "wide",
        [
          layer("means", "rule", "guide", { y: y("y", null) }),
          layer("means", "text", "name", {
            x: { value: 312 },
            y: y("y", null),
            text: { field: "name", type: "nominal" },
          }),
          bar("left", "earlier"),
          bar("used", "error"),
          layer("left", "point", "mark-earlier", { x: at(null), y: y("high", null) }),
          layer("left", "point", "mark-earlier", { x: at(null), y: y("low", null) }),
          layer("used", "point", "mark", { x: at(speech.say("axes.reading")), y: y("high", "mmHg") }),
          layer("used", "point", "mark", { x: at(null), y: y("low", null) }),
        ],
        { height: 110 },
        { readings: rows.map((row) => row.reading as number) },
      ),
      data: { used: rows.filter((row) => row.used), left: rows.filter((row) => !row.used), means },
      table: { columns: readings.columns, rows: readings.rows },
    },
  ];
};
