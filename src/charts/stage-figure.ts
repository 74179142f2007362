import { quantityOf } from "../kernel/entries.js";
import type { Chart, Datum } from "../kernel/figure.js";
import type { Table } from "../kernel/measure.js";
import { withUnit } from "../kernel/names.js";
import { has, numberOf, records, table, visitKey } from "./entries.js";
import { framed, layer, x, y } from "./parts.js";

const LOADS = [
  { key: "power_w", work: "power", unit: "W", decimals: 0 },
  { key: "speed_km_h", work: "speed", unit: "km/h", decimals: 1 },
  { key: "grade_pct", work: "grade", unit: "%", decimals: 1 },
] as const;

const stagesOnly = (stages: Table) => records(stages).filter((row) => !/^[a-z]/i.test(String(row.stage ?? "")));

/** The load that was raised from stage to stage: the one with most different values. */
function loadOf(stages: Table): (typeof LOADS)[number] | undefined {
  const rows = stagesOnly(stages);
  const steps = (key: string) => new Set(rows.flatMap((row) => numberOf(row[key]) ?? [])).size;
  const most = Math.max(...LOADS.map(({ key }) => steps(key)));
  return most < 2 ? undefined : LOADS.find(({ key }) => steps(key) === most);
}

/** Heart rate against work with the intensity domains as bands named in words, earlier visits dashed. */
export const stageFigure: Chart = ({ results, earlier, speech }) => {
  const stages = table(results, "incremental_stages");
  const load = stages && loadOf(stages);
  if (stages === undefined || load === undefined || !has(stages, "heart_rate_bpm")) return [];
  const { key, work, unit, decimals } = load;
  const pointsOf = (from: typeof stages): Datum[] =>
    stagesOnly(from).flatMap((row): Datum[] => {
      const [wx, wy] = [numberOf(row[key]), numberOf(row.heart_rate_bpm)];
      return wx === undefined || wy === undefined ? [] : [{ x: wx, y: wy }];
    });
  const now = pointsOf(stages);
  const first = now[0];
  const last = now[now.length - 1];
  if (now.length < 2 || first === undefined || last === undefined) return [];
  const previous = earlier[earlier.length - 1];
  const before = previous ? table(previous, "incremental_stages") : undefined;
  const then = before && has(before, key, "heart_rate_bpm") ? pointsOf(before) : [];

  const limits = (["vt1", "vt2"] as const).map((id) => quantityOf(results, `${id}_${work}`)?.value);
  const ends = [Number(first.x), ...limits.filter((v): v is number => v !== undefined), Number(last.x)];
  const known = limits.filter((v) => v !== undefined).length;
  const domains = ends.slice(0, -1).map(
    (low, i): Datum => ({
      low,
      high: ends[i + 1] as number,
      middle: low,
      rank: i,
      name:
        known === 2 || i === 0
          ? speech.say(`domains.${["moderate", "heavy", "severe"][i]}`)
          : speech.say("domains.above"),
    }),
  );
  const shown = known === 0 ? [] : domains.filter((d) => Number(d.high) > Number(d.low));
  const vt1 = quantityOf(results, `vt1_${work}`);
  const title = speech.say(`axes.${work}`, { unit });
  const sx = (name: string | null) => x("x", name);
  const band = (rank: number, style: string) =>
    layer(`domain${rank}`, "rect", style, { x: x("low", null), x2: { field: "high" } });
  return [
    {
      name: "stage-figure",
      section: "incremental",
      size: "wide",
      entry: "incremental_stages",
      title: vt1
        ? speech.say(work === "grade" ? "charts.stages.title_grade" : "charts.stages.title", {
            vt1: withUnit(speech, vt1),
          })
        : speech.say("charts.stages.title_without_vt1"),
      alt: speech.say("charts.stages.alt", {
        first: speech.number(Number(first.y), 0),
        at: `${speech.number(Number(first.x), decimals)} ${unit}`,
        last: speech.number(Number(last.y), 0),
        to: `${speech.number(Number(last.x), decimals)} ${unit}`,
      }),
      ...framed("wide", [
        band(0, "domain-light"),
        band(1, "domain-middle"),
        band(2, "domain-high"),
        layer("names", "text", "name-left-top", {
          x: x("middle", null),
          y: { value: -4 },
          text: { field: "name", type: "nominal" },
        }),
        layer("then", "line", "earlier", { x: sx(null), y: y("y", null) }),
        layer("then", "point", "earlier-bins", { x: sx(null), y: y("y", null) }),
        layer("now", "line", "this-visit", { x: sx(null), y: y("y", null) }),
        layer("now", "point", "mark", {
          x: sx(title),
          y: y("y", visitKey(speech.say("axes.heart_rate"), results, then.length > 0 ? previous : undefined, speech), {
            axis: { titleY: -18 },
          }),
        }),
      ]),
      data: {
        domain0: shown.filter((d) => d.rank === 0),
        domain1: shown.filter((d) => d.rank === 1),
        domain2: shown.filter((d) => d.rank === 2),
        names: shown,
        now,
        then,
      },
      table: { columns: stages.columns, rows: stages.rows },
    },
  ];
};
