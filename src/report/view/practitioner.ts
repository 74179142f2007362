/** The complete edition. */
import type { Cell, Change } from "../../kernel/measure.js";
import { missingItems } from "./checklist.js";
import { type Context, entriesOf, entryOf, nameOf, opening, sectionOf, sentence, unitText } from "./context.js";
import { keyMeasures } from "./keys.js";
import { isData, isTrend, judgementsOf, remarkTitle, sections, verdictText } from "./sections.js";
import { sources } from "./sources.js";
import { practitionerSummary, sinceBaseline } from "./summary.js";
import { entryTable, tableView } from "./tables.js";
import type { ChangesView, Fact, Frame, PractitionerView, RemarkView, TableView } from "./types.js";

/** Blocks a laboratory visit may have; those without an entry are listed as not recorded. */
const BLOCKS = [
  "screening",
  "preparation",
  "size",
  "blood_pressure",
  "rest",
  "heart_rate_variability",
  "composition",
  "lungs",
  "strength",
  "mobility",
  "field",
  "submaximal",
  "incremental",
  "thresholds",
  "lactate",
  "economy",
  "hypoxia",
] as const;

export function practitioner(context: Context, shared: Frame): PractitionerView {
  const { speech } = context;
  const parts = sections(context);
  const remarks = remarksView(context);
  const changes = changesView(context);
  const cited = sources(context);
  const data = dataTables(context);
  const missing = missingView(context);
  const keys = keyMeasures(context);
  const contents = [
    { href: "#summary", title: speech.say("report.summary") },
    ...(remarks.length > 0 ? [{ href: "#validity", title: speech.say("sections.validity") }] : []),
    ...(changes.rows.length > 0 ? [{ href: "#change", title: speech.say("sections.change") }] : []),
    ...parts.map(({ id, title }) => ({ href: `#${id}`, title })),
    ...(missing.length > 0 ? [{ href: "#missing", title: speech.say("report.not_recorded") }] : []),
    { href: "#cautions", title: speech.say("report.cautions") },
    { href: "#methods", title: speech.say("report.methods") },
    ...(data.length > 0 ? [{ href: "#data", title: speech.say("report.data") }] : []),
  ];
  return {
    ...shared,
    contents,
    sentences: practitionerSummary(context),
    hasKeys: keys.length > 0,
    keys,
    hasRemarks: remarks.length > 0,
    remarks,
    sections: parts,
    hasChanges: changes.rows.length > 0,
    changes,
    hasMissing: missing.length > 0,
    missing,
    sources: cited,
    hasSources: cited.length > 0,
    data,
    hasData: data.length > 0,
  };
}

/** The trend tables of all measures as one: measure, visit, value, interval, change. */
function course(context: Context): TableView[] {
  const trends = context.results.entries.filter((entry) => entry.kind === "table").filter(isTrend);
  const rows = trends.flatMap((trend) =>
    trend.rows.map((row): Cell[] => {
      const cell = (key: string) => row[trend.columns.findIndex((column) => column.key === key)] ?? null;
      const value = trend.columns.find((column) => column.key === "value");
      const printed = (key: string): Cell => {
        const found = cell(key);
        return typeof found === "number" ? context.speech.number(found, value?.decimals ?? 1) : found;
      };
      const named = nameOf(context, trend.id.replace(/^trend_/, ""));
      return [
        named,
        unitText(context, value?.unit ?? ""),
        cell("date"),
        printed("value"),
        printed("low"),
        printed("high"),
        printed("from_baseline"),
      ];
    }),
  );
  if (rows.length === 0) return [];
  const { speech } = context;
  const columns = ["measure", "unit", "date", "value", "low", "high", "change"].map((key) => ({
    key,
    title: speech.say(`columns.${key}`),
  }));
  return [tableView(context, "table-course", speech.say("report.course"), { columns, rows })];
}

/** Long tables of the results, and the tables of figures that stand in no table of the results. */
function dataTables(context: Context): TableView[] {
  const { results, figures } = context;
  const long = results.entries.flatMap((entry) =>
    entry.kind === "table" && isData(entry) ? [entryTable(context, entry)] : [],
  );
  const known = new Set(results.entries.map((entry) => entry.id));
  const own = figures.filter(
    (figure) =>
      figure.size !== "strip" && !/^(?:change-figure|trend-)/.test(figure.name) && !known.has(figure.entry ?? ""),
  );
  const tables = own.map((figure) => tableView(context, `data-${figure.name}`, figure.title, figure.table));
  return [...long, ...course(context), ...tables];
}

const ORDER = { fatal: 0, weakens: 1, record: 2 } as const;
const remarksView = (context: Context): RemarkView[] =>
  entriesOf(context, "remark")
    .sort((a, b) => ORDER[a.severity] - ORDER[b.severity])
    .map((remark) => ({
      title: remarkTitle(context, remark),
      severity: context.speech.say(`severities.${remark.severity}`),
      found: remark.found,
      limit: remark.limit,
      because: sentence(remark.because),
      affects:
        remark.affects.length === 0
          ? context.speech.say("report.whole_visit")
          : remark.affects.map((id) => nameOf(context, id)).join(", "),
    }));

function changesView(context: Context): ChangesView {
  const drawn = [...context.drawn.values()].filter((figure) => figure.section === "change");
  const changes = [...sinceBaseline(context)].sort((a, b) => Number(b.primary) - Number(a.primary));
  const since = entriesOf(context, "change").filter((change) => !changes.includes(change));
  const origins = [...new Set(changes.flatMap((change) => change.errorFrom ?? []))];
  const judged = judgementsOf(
    context,
    context.results.entries.filter((entry) => sectionOf(entry) === "change"),
  );
  return {
    hasJudgements: judged.length > 0,
    judgements: judged,
    figures: drawn.filter((figure) => figure.view.size === "wide").map((figure) => figure.view),
    hasTrends: drawn.some((figure) => figure.view.size === "panel"),
    trends: drawn.filter((figure) => figure.view.size === "panel").map((figure) => figure.view),
    rows: changes.map((change) => changeRow(context, change, origins)),
    hasSince: since.length > 0,
    since: since.map((change) => changeRow(context, change, [])),
    origins: origins.map((text, i) => ({ mark: String(i + 1), text: sentence(text) })),
    hasOrigins: origins.length > 0,
  };
}

function changeRow(context: Context, change: Change, origins: readonly string[]): ChangesView["rows"][number] {
  const { speech } = context;
  const n = (value: number) => speech.number(value, change.decimals);
  const told = change.primary && change.id === `change_${change.measure}`;
  const notes = [
    ...(told ? [sentence(change.because)] : []),
    ...(change.differs.length === 0 ? [] : [speech.say("report.differs", { gates: speech.list(change.differs) })]),
    ...(told ? (change.notes ?? []).map(sentence) : []),
  ];
  const origin = change.errorFrom === undefined ? -1 : origins.indexOf(change.errorFrom);
  return {
    label: nameOf(context, change.measure),
    since: speech.shortDate(change.since),
    before: n(change.before),
    now: n(change.now),
    change: speech.signed(change.change, change.decimals),
    interval:
      change.low === undefined || change.high === undefined
        ? speech.say("report.absent")
        : speech.say("report.interval", { low: n(change.low), high: n(change.high) }),
    unit: unitText(context, change.unit),
    verdict: verdictText(context, change.verdict),
    mark: origin < 0 ? "" : String(origin + 1),
    hasMark: origin >= 0,
    note: notes.join(" "),
    hasNote: notes.length > 0,
  };
}

/** What was not measured, and what was but is not given: one list, so that an absence is never mistaken for a zero. */
function missingView(context: Context): Fact[] {
  const { speech, results } = context;
  const present = new Set(results.entries.map(sectionOf));
  const blocks = BLOCKS.filter((block) => !present.has(block)).map((block) => ({
    name: speech.say(`sections.${block}`),
    value: speech.say("report.not_measured"),
  }));
  const unrecorded = entriesOf(context, "remark")
    .filter((remark) => remark.found === "not recorded")
    .map((remark) => ({ name: remarkTitle(context, remark), value: speech.say("report.was_not_recorded") }));
  const withheld = entriesOf(context, "not given").map((entry) => ({
    name: nameOf(context, entry.id),
    value: speech.say("report.not_given_because", { because: entry.because }),
  }));
  return [...blocks, ...missingItems(context), ...unrecorded, ...withheld].map(({ name, value }) => ({
    name: opening(name),
    value,
  }));
}

export const tableOf = (context: Context, id: string): TableView[] => {
  const entry = entryOf(context, id);
  return entry?.kind === "table"
    ? [tableView(context, `table-${id.replaceAll("_", "-")}`, nameOf(context, id), entry, entry.note ?? "")]
    : [];
};
