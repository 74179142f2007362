/** A panel over time: phases named above, thresholds as lines, breaths faint, bins as dots. Shared by the panels. */
import type { Datum, Figure, Spec } from "../../kernel/figure.js";
import type { Channel } from "../../kernel/series.js";
import type { Speech } from "../../kernel/speech.js";
import { cloud, framed, layer, x, y } from "../parts.js";
import { breathCloud, phases, points, readerTable, type TestData, thresholdTimes } from "../test-data.js";

export interface Curve {
  /** Column of the bins, and the style its dots have. */
  readonly key: string;
  readonly style: "bins" | "bins-second" | "bins-third";
  /** Short name, printed with its mark in the title of its axis. */
  readonly name: string;
  /** The recorded channel drawn as a cloud behind it. */
  readonly cloud?: Channel;
  /** Drawn against a scale of its own at the right. */
  readonly right?: boolean;
}

export interface TimePanel {
  readonly name: string;
  readonly title: string;
  readonly alt: string;
  readonly unit: string;
  readonly rightUnit?: string;
  readonly curves: readonly Curve[];
  /** Steps of work drawn as a line at the right-hand scale. */
  readonly work?: string;
}

export function timePanel(data: TestData, panel: TimePanel): Figure | undefined {
  const measured = new Map(panel.curves.map((curve) => [curve, points(data, "time_s", curve.key)]));
  const curves = panel.curves.filter((curve) => measured.get(curve)?.length);
  if (curves.length === 0) return undefined;
  const rows: Record<string, readonly Datum[]> = { phases: phases(data), thresholds: thresholdTimes(data) };
  const axisX = (title: string | null) => x("x", title, { axis: { tickCount: 5 } });
  const left: Spec[] = [];
  const right: Spec[] = [];
  const key = (onRight: boolean) => axisTitle(panel, curves, onRight);
  const axisOf = (onRight: boolean) =>
    onRight ? { title: key(true), axis: { orient: "right", grid: false } } : { title: key(false) };
  curves.forEach((curve, i) => {
    const onRight = curve.right === true;
    const axis = axisOf(onRight);
    const here = onRight ? right : left;
    rows[`bins${i}`] = measured.get(curve) ?? [];
    if (curve.cloud !== undefined) {
      const { cloud: breaths, excluded } = breathCloud(data, "time_s", curve.cloud);
      rows[`breaths${i}`] = breaths;
      rows[`excluded${i}`] = excluded;
      here.push(cloud(`breaths${i}`, axisX(null), y("y", null), i === 0 ? "breaths" : "breaths-second"));
      here.push(layer(`excluded${i}`, "point", "excluded", { x: axisX(null), y: y("y", null) }));
    }
    here.push(
      layer(`bins${i}`, "point", curve.style, { x: axisX(timeTitle(data.speech)), y: { ...y("y", null), ...axis } }),
    );
  });
  const work = panel.work === undefined ? [] : points(data, "time_s", panel.work);
  if (work.length > 0) {
    rows.work = work;
    right.push(
      layer(
        "work",
        "line",
        "work",
        { x: axisX(null), y: { ...y("y", null, { scale: { zero: true } }), ...axisOf(true) } },
        { interpolate: "step" },
      ),
    );
  }
  const frame: Spec[] = [
    layer("phases", "rule", "phase-rule", { x: axisX(null) }),
    layer("phases", "text", "phase", { x: axisX(null), y: { value: -2 }, text: { field: "name", type: "nominal" } }),
    layer("thresholds", "rule", "threshold", { x: axisX(null) }),
    layer("thresholds", "text", "threshold-name", {
      x: axisX(null),
      y: { value: 8 },
      text: { field: "name", type: "nominal" },
    }),
  ];
  const structure = framed("panel", [...frame, { layer: left }, ...(right.length > 0 ? [{ layer: right }] : [])], {
    resolve: { scale: { y: "independent" } },
  });
  const keys = ["time_s", ...curves.map((curve) => curve.key), ...(panel.work === undefined ? [] : [panel.work])];
  return {
    name: panel.name,
    section: "incremental",
    size: "panel",
    entry: "incremental_bins",
    title: panel.title,
    alt: panel.alt,
    ...structure,
    data: rows,
    table: readerTable(data, keys),
  };
}

const MARKS = { bins: "●", "bins-second": "○", "bins-third": "□" } as const;

/** "● V̇O₂ ○ V̇CO₂ L/min": the key of an axis is its title. */
function axisTitle(panel: TimePanel, curves: readonly Curve[], onRight: boolean): string {
  const own = curves.filter((curve) => (curve.right === true) === onRight);
  const key = own.map((curve) => (curves.length > 1 ? `${MARKS[curve.style]} ${curve.name}` : curve.name)).join("  ");
  const unit = (onRight ? panel.rightUnit : panel.unit) ?? "";
  return own.length === 0 ? unit : `${key}  ${unit}`.trim();
}

const timeTitle = (speech: Speech): string => speech.say("axes.time_min");
