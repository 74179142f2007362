/** Every section of the practitioner edition, from its entries alone: a section nobody measured does not appear. */
import { type Entry, type Remark, SECTIONS, type Section } from "../../kernel/measure.js";
import {
  type Context,
  entriesOf,
  nameOf,
  opening,
  sectionOf,
  sentence,
  told,
  toldSentence,
  unitText,
  valueText,
} from "./context.js";
import { normNotes, normText } from "./norm-text.js";
import { type Note, type Notes, openNotes } from "./notes.js";
import { entryTable } from "./tables.js";
import type { FigureView, JudgementView, MeasureRow, SectionView } from "./types.js";

/** Too long for the text: these stand among the data at the end. */
const DATA_ONLY: ReadonlySet<string> = new Set([
  "incremental_bins",
  "incremental_excluded",
  "rest_trace",
  "reference_percentiles",
  "screening_answers",
]);
/** Shown in places of their own. */
const APART: ReadonlySet<string> = new Set(["visit", "validity", "change"]);
/** A table with more rows than this goes to the data at the end. */
const LONG = 40;
/** References of fewer than one value in this many stand in the margin, not in a column of their own. */
const FEW = 5;

export const isData = (entry: Entry): boolean =>
  entry.kind === "table" && !isTrend(entry) && (DATA_ONLY.has(entry.id) || entry.rows.length > LONG);
export const isTrend = (entry: Entry): boolean => entry.kind === "table" && entry.id.startsWith("trend_");

export function sections(context: Context): SectionView[] {
  const bySection = new Map<Section | "other", Entry[]>();
  for (const entry of context.results.entries) {
    const section = sectionOf(entry);
    const own = bySection.get(section);
    if (own === undefined) bySection.set(section, [entry]);
    else own.push(entry);
  }
  const weakening = entriesOf(context, "remark").filter((remark) => remark.severity !== "record");
  return [...SECTIONS, "other" as const]
    .filter((section) => !APART.has(section))
    .map((section) => sectionView(context, section, bySection.get(section) ?? [], weakening))
    .filter((view) => view.hasMeasures || view.hasJudgements || view.tables.length > 0 || view.hasPieces);
}

function sectionView(
  context: Context,
  section: Section | "other",
  own: readonly Entry[],
  weakening: readonly Remark[],
): SectionView {
  const { speech } = context;
  const ids = new Set(own.map((entry) => entry.id));
  const remarks = weakening
    .filter((remark) => remark.affects.some((id) => ids.has(id)))
    .map((remark) => ({ affects: remark.affects, note: noteOf(context, remark) }));
  const notes = openNotes(speech.language);
  const quantities = own.filter((entry) => entry.kind === "quantity");
  const placed = quantities.filter((quantity) => normText(context, quantity) !== "").length;
  const inColumn = placed > quantities.length / FEW;
  const measures = own.flatMap((entry) => measureRow(context, entry, remarks, notes, inColumn));
  // A remark on a table or a judgement has no row to stand beside.
  for (const { note } of remarks) notes.mark(note);
  const judgements = judgementsOf(context, own);
  const drawn = [...context.drawn.values()];
  const figures = drawn
    .filter((figure) => figure.section === section && figure.view.size !== "strip")
    .map((f) => f.view);
  const panels = figures.filter((figure) => figure.size === "panel");
  const strips = drawn.filter(
    (f) => f.view.id.startsWith("figure-norm-") && f.measure !== undefined && ids.has(f.measure),
  );
  const tables = own.flatMap((entry) => (entry.kind === "table" && !isData(entry) ? [entryTable(context, entry)] : []));
  const hasErrors = measures.some((row) => row.error !== "");
  const hasNorms = measures.some((row) => row.norm !== "");
  return {
    id: `section-${section.replaceAll("_", "-")}`,
    title: speech.say(`sections.${section}`),
    hasMeasures: measures.length > 0,
    measures,
    hasErrors,
    hasNorms,
    span: 2 + Number(hasErrors) + Number(hasNorms),
    hasJudgements: judgements.length > 0,
    judgements,
    hasStrips: strips.length > 0,
    strips: strips.map((figure): FigureView => figure.view),
    hasPieces: figures.length > panels.length || tables.some((table) => table.half),
    figures: figures.filter((figure) => figure.size !== "panel"),
    hasPanels: panels.length > 0,
    panelsTitle: speech.say("report.panels", { count: panels.length }),
    panels,
    small: tables.filter((table) => table.half),
    tables: tables.filter((table) => !table.half),
    hasNotes: notes.list().length > 0,
    notes: notes.list(),
  };
}

const noteOf = (context: Context, remark: Remark): Note => ({
  title: remarkTitle(context, remark),
  text: toldSentence(context, remark.because),
  weakens: remark.severity !== "record",
});

export const judgementsOf = (context: Context, entries: readonly Entry[]): JudgementView[] =>
  entries.flatMap((entry) =>
    entry.kind === "judgement"
      ? [
          {
            label: opening(nameOf(context, entry.id)),
            verdict: verdictText(context, entry.verdict),
            because: toldSentence(context, entry.because),
            language: context.speech.language,
          },
        ]
      : [],
  );

export const remarkTitle = (context: Context, remark: Remark): string => {
  const { rules, speech } = context;
  const id = remark.rule.split(" ")[0] ?? remark.rule;
  return (
    speech.find(`rules.${id}`) ??
    told(context, rules.find((rule) => rule.id === id)?.title ?? opening(id.replaceAll("-", " ")))
  );
};
export const verdictText = (context: Context, verdict: string): string =>
  context.speech.find(`verdicts.${verdict.replaceAll(/\W+/g, "_")}`) ?? told(context, verdict);

function measureRow(
  context: Context,
  entry: Entry,
  remarks: readonly { readonly affects: readonly string[]; readonly note: Note }[],
  notes: Notes,
  inColumn: boolean,
): MeasureRow[] {
  const { speech } = context;
  if (entry.kind !== "not given" && entry.kind !== "quantity") return [];
  const norm = entry.kind === "quantity" ? normText(context, entry) : "";
  const said =
    entry.kind === "quantity"
      ? [told(context, entry.note ?? ""), inColumn ? "" : norm, ...normNotes(context, entry)].filter(
          (text) => text !== "",
        )
      : [];
  const mark = [
    ...remarks.filter(({ affects }) => affects.includes(entry.id)).map(({ note }) => note),
    ...said.map((text) => ({ text: sentence(text) })),
  ]
    .map((note) => notes.mark(note))
    .join("\u2009");
  const label = nameOf(context, entry.id);
  const hasMark = mark !== "";
  if (entry.kind === "not given") {
    const because = speech.say("report.not_given_because", { because: told(context, entry.because) });
    return [{ label, value: "", unit: "", hasValue: false, because, error: "", norm: "", mark, hasMark }];
  }
  const { error } = entry;
  const n = (value: number, more = 0) => speech.number(value, entry.decimals + more);
  const errorText =
    error?.low !== undefined && error.high !== undefined
      ? speech.say("report.interval", { low: n(error.low), high: n(error.high) })
      : error?.typical !== undefined
        ? `±\u00a0${n(error.typical, Number.isInteger(error.typical * 10 ** entry.decimals) ? 0 : 1)}`
        : "";
  return [
    {
      label,
      value: valueText(context, entry),
      unit: unitText(context, entry.unit),
      hasValue: true,
      because: "",
      error: errorText,
      norm: inColumn ? norm : "",
      mark,
      hasMark,
    },
  ];
}
