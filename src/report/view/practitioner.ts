/** The complete edition. */
import type { Cell, Column } from "../../kernel/measure.js";
import { changesView } from "./changes.js";
import { missingItems } from "./checklist.js";
import {
  type Context,
  entriesOf,
  entryOf,
  nameOf,
  opening,
  sectionOf,
  told,
  toldSentence,
  unitText,
} from "./context.js";
import { keyMeasures } from "./keys.js";
import { isData, isTrend, remarkTitle, sections } from "./sections.js";
import { sources } from "./sources.js";
import { practitionerSummary } from "./summary.js";
import { entryTable, tableView } from "./tables.js";
import type { Fact, Frame, PractitionerView, RemarkView, TableView } from "./types.js";

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
    hasSources: cited.methods.length > 0,
    dataSmall: data.filter((table) => table.half),
    dataWide: data.filter((table) => !table.half),
    hasData: data.length > 0,
  };
}

/** The trend tables of all measures as one, a row a measure and a column a visit; changed conditions are marked. */
function course(context: Context): TableView[] {
  const { speech, results, earlier } = context;
  const dates = [...earlier, results].map((visit) => visit.date);
  const differs = new Set<string>();
  const rows = results.entries
    .filter((entry) => entry.kind === "table")
    .filter(isTrend)
    .map((trend): Cell[] => {
      const at = (key: string) => trend.columns.findIndex((column) => column.key === key);
      const value = trend.columns[at("value")];
      const byDate = new Map(trend.rows.map((row) => [row[at("date")], row]));
      const printed = dates.map((date) => {
        const row = byDate.get(date);
        const found = row?.[at("value")];
        const changed = row?.[at("differs")] ?? "";
        if (changed !== "") differs.add(`${speech.shortDate(date)}: ${told(context, String(changed))}.`);
        return typeof found === "number"
          ? `${speech.number(found, value?.decimals ?? 1)}${changed === "" ? "" : "*"}`
          : null;
      });
      return [nameOf(context, trend.id.replace(/^trend_/, "")), unitText(context, value?.unit ?? ""), ...printed];
    });
  if (rows.length === 0) return [];
  const columns: Column[] = [
    { key: "measure", title: speech.say("columns.measure") },
    { key: "unit", title: speech.say("columns.unit") },
    ...dates.map((date, i) => ({ key: `visit_${i + 1}`, title: speech.shortDate(date) })),
  ];
  const note = differs.size === 0 ? "" : speech.say("report.course_differs", { differs: [...differs].join(" ") });
  return [tableView(context, "table-course", speech.say("report.course"), { columns, rows }, note)];
}

/** Long tables of the results, and the tables of figures that stand in no table of the results. */
function dataTables(context: Context): TableView[] {
  const { results, figures } = context;
  const long = results.entries.flatMap((entry) =>
    entry.kind === "table" && isData(entry) ? [entryTable(context, entry, "data")] : [],
  );
  const known = new Set(results.entries.map((entry) => entry.id));
  const own = figures.filter(
    (figure) =>
      figure.size !== "strip" && !/^(?:change-figure|trend-)/.test(figure.name) && !known.has(figure.entry ?? ""),
  );
  const tables = own.map((figure) => tableView(context, `data-${figure.name}`, figure.title, figure.table, "", "data"));
  return [...long, ...course(context), ...tables];
}

const ORDER = { fatal: 0, weakens: 1, record: 2 } as const;
/** One failed check concerns what the next one does: thirty names are not said twice in a row. */
function remarksView(context: Context): RemarkView[] {
  const { speech } = context;
  const named = entriesOf(context, "remark")
    .sort((a, b) => ORDER[a.severity] - ORDER[b.severity])
    .map((remark) => ({ remark, names: remark.affects.map((id) => nameOf(context, id)).join(", ") }));
  return named.map(({ remark, names }, i) => ({
    title: remarkTitle(context, remark),
    severity: speech.say(`severities.${remark.severity}`),
    found: told(context, remark.found),
    limit: told(context, remark.limit),
    because: toldSentence(context, remark.because),
    language: speech.language,
    affects:
      names === ""
        ? speech.say("report.whole_visit")
        : remark.affects.length >= MANY && names === named[i - 1]?.names
          ? speech.say("report.same_measures")
          : names,
  }));
}
const MANY = 4;

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
    value: speech.say("report.not_given_because", { because: told(context, entry.because) }),
  }));
  return [...blocks, ...missingItems(context), ...unrecorded, ...withheld].map(({ name, value }) => ({
    name: opening(name),
    value,
  }));
}

export const tableOf = (context: Context, id: string): TableView[] => {
  const entry = entryOf(context, id);
  return entry?.kind === "table"
    ? [
        tableView(
          context,
          `table-${id.replaceAll("_", "-")}`,
          nameOf(context, id),
          entry,
          told(context, entry.note ?? ""),
        ),
      ]
    : [];
};
