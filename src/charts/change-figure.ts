import { sinceBaseline } from "../kernel/entries.js";
import type { Chart, Datum } from "../kernel/figure.js";
import { isClaim } from "../kernel/measure.js";
import { nameOf, signedWithUnit } from "../kernel/names.js";
import { layer, structured, x } from "./parts.js";

const ROW = 32;
/** Rows that fit a page; the table beside the figure has all. */
const MOST = 12;

/**
 * Every change with a known error, each in units of its own error, so that measures of different kinds stand on one
 * scale: grey is what two tests differ by when nothing has changed, the dashed line what would matter to the client.
 */
export const changeFigure: Chart = ({ results, speech }) => {
  const drawn = sinceBaseline(results)
    .filter((c) => c.typicalError !== undefined && c.typicalError > 0 && c.differs.length === 0)
    .sort((a, b) => Number(b.primary) - Number(a.primary))
    .slice(0, MOST);
  if (drawn.length === 0) return [];
  const inErrors = (value: number | undefined, error: number | undefined) =>
    (value ?? Number.NaN) / (error ?? Number.NaN);
  const rows = drawn.map(
    (c, row): Datum => ({
      row,
      at: inErrors(c.change, c.typicalError),
      measure: nameOf(speech, c.measure),
      verdict: speech.find(`verdicts.${c.verdict.replaceAll(/\W+/g, "_")}`) ?? c.verdict,
      text: signedWithUnit(speech, c),
    }),
  );
  const intervals = drawn.flatMap((c, row): Datum[] =>
    c.low === undefined || c.high === undefined
      ? []
      : [{ row, low: inErrors(c.low, c.typicalError), high: inErrors(c.high, c.typicalError) }],
  );
  const worthwhile = drawn.flatMap(({ worthwhile: least, typicalError }, row): Datum[] =>
    least === undefined ? [] : [-1, 1].map((sign) => ({ row, at: sign * inErrors(least, typicalError) })),
  );
  const noise = drawn.flatMap((c, row): Datum[] =>
    c.detectable === undefined
      ? []
      : [{ row, low: -inErrors(c.detectable, c.typicalError), high: inErrors(c.detectable, c.typicalError) }],
  );
  const beyond = drawn.filter(isClaim);
  const lane = {
    field: "row",
    type: "quantitative",
    axis: null,
    scale: { domain: [0, { signal: "rows" }], reverse: true, nice: false, zero: false },
  };
  const errors = (title: string | null) => x("at", title, { axis: { tickCount: 7 } });
  const placed = (list: Datum[]) => list.map((row) => ({ ...row, row: Number(row.row) + 0.68 }));
  const spans = (list: Datum[]) =>
    list.map((row) => ({ ...row, row: Number(row.row) + 0.5, end: Number(row.row) + 0.86 }));
  return [
    {
      name: "change-figure",
      section: "change",
      size: "wide",
      title:
        beyond.length > 0
          ? speech.say("charts.change.title", { measures: speech.list(beyond.map((c) => nameOf(speech, c.measure))) })
          : speech.say("charts.change.title_none"),
      alt: rows
        .map((row) =>
          speech.say("charts.change.alt_row", {
            measure: String(row.measure),
            change: String(row.text),
            verdict: String(row.verdict),
          }),
        )
        .join(" "),
      ...structured(
        { width: 380, height: ROW, padding: { left: 8, right: 8, top: 4, bottom: 36 } },
        [
          layer("noise", "rect", "noise", {
            x: x("low", null),
            x2: { field: "high" },
            y: lane,
            y2: { field: "end" },
          }),
          layer("zero", "rule", "zero", { x: errors(null) }),
          layer("worthwhile", "rule", "worthwhile", { x: errors(null), y: lane, y2: { field: "end" } }),
          layer("intervals", "rule", "error-thin", { x: x("low", null), x2: { field: "high" }, y: lane }),
          layer("rows", "point", "mark", { x: errors(speech.say("axes.in_errors")), y: lane }),
          layer("names", "text", "row-name", { x: { value: 0 }, y: lane, text: { field: "measure", type: "nominal" } }),
          layer("names", "text", "row-end", { x: { value: 380 }, y: lane, text: { field: "text", type: "nominal" } }),
        ],
        { rows: drawn.length, height: ROW * drawn.length },
      ),
      data: {
        rows: placed(rows),
        names: rows.map((row) => ({
          row: Number(row.row) + 0.25,
          measure: String(row.measure),
          text: `${row.text}, ${row.verdict}`,
        })),
        intervals: placed(intervals),
        noise: spans(noise),
        worthwhile: spans(worthwhile),
        zero: [{ at: 0 }],
      },
      table: {
        columns: [
          { key: "measure", title: speech.say("columns.measure") },
          { key: "unit", title: speech.say("columns.unit") },
          { key: "before", title: speech.say("columns.before"), decimals: 2 },
          { key: "now", title: speech.say("columns.now"), decimals: 2 },
          { key: "change", title: speech.say("columns.change"), decimals: 2 },
          { key: "low", title: speech.say("columns.low"), decimals: 2 },
          { key: "high", title: speech.say("columns.high"), decimals: 2 },
          { key: "error", title: speech.say("columns.typical_error"), decimals: 2 },
        ],
        rows: drawn.map((c) => [
          nameOf(speech, c.measure),
          c.unit,
          c.before,
          c.now,
          c.change,
          c.low ?? null,
          c.high ?? null,
          c.typicalError ?? null,
        ]),
      },
    },
  ];
};
