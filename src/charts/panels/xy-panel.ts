/** A panel of one gas-exchange measure against another, over the exercise phase. Shared by the panels. */
import type { Datum, Figure, Spec } from "../../kernel/figure.js";
import type { Channel } from "../../kernel/series.js";
import { numberOf } from "../entries.js";
import { cloud, framed, layer, x, y } from "../parts.js";
import { breathCloud, exercisePhase, minutes, readerTable, type TestData } from "../test-data.js";

export interface XyPanel {
  readonly name: string;
  readonly title: string;
  readonly alt: string;
  readonly xKey: string;
  readonly yKey: string;
  readonly xTitle: string;
  readonly yTitle: string;
  readonly cloud?: readonly [Channel, Channel];
  readonly zero?: boolean;
  readonly more?: readonly Spec[];
  /** Drawn over the means. */
  readonly over?: readonly Spec[];
  readonly data?: Readonly<Record<string, readonly Datum[]>>;
}

export function xyPanel(data: TestData, panel: XyPanel): Figure | undefined {
  const { from, to } = exercisePhase(data.results);
  const bins = data.rows.flatMap((row): Datum[] => {
    const [time, bx, by] = [numberOf(row.time_s), numberOf(row[panel.xKey]), numberOf(row[panel.yKey])];
    return time === undefined || bx === undefined || by === undefined || time < from || time > to
      ? []
      : [{ x: bx, y: by, t: minutes(time) }];
  });
  if (bins.length < 3) return undefined;
  const breaths = panel.cloud ? breathCloud(data, ...panel.cloud, { from, to }) : { cloud: [], excluded: [] };
  const zero = { scale: { zero: panel.zero === true } };
  const structure = framed("panel", [
    ...(panel.cloud
      ? [
          cloud("breaths", x("x", null, zero), y("y", null, zero)),
          layer("excluded", "point", "excluded", { x: x("x", null, zero), y: y("y", null, zero) }),
        ]
      : []),
    ...(panel.more ?? []),
    layer("bins", "point", "bins", { x: x("x", panel.xTitle, zero), y: y("y", panel.yTitle, zero) }),
    ...(panel.over ?? []),
  ]);
  return {
    name: panel.name,
    section: "incremental",
    size: "panel",
    entry: "incremental_bins",
    title: panel.title,
    alt: panel.alt,
    ...structure,
    data: {
      bins,
      ...(panel.cloud ? { breaths: breaths.cloud, excluded: breaths.excluded } : {}),
      ...panel.data,
    },
    table: readerTable(data, ["time_s", panel.xKey, panel.yKey]),
  };
}
