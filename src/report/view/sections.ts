/** Every section of the practitioner edition, from its entries alone: a section nobody measured does not appear. */
import { type Entry, type Remark, SECTIONS, type Section } from "../../kernel/measure.js";
import { type Context, nameOf, opening, sectionOf, sentence, unitText, valueText } from "./context.js";
import { normNotes, normText } from "./norm-text.js";
import { entryTable } from "./tables.js";
import type { FigureView, JudgementView, MeasureRow, NoteView, SectionView } from "./types.js";

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

export const isData = (entry: Entry): boolean =>
  entry.kind === "table" && !isTrend(entry) && (DATA_ONLY.has(entry.id) || entry.rows.length > LONG);
export const isTrend = (entry: Entry): boolean => entry.kind === "table" && entry.id.startsWith("trend_");

export function sections(context: Context): SectionView[] {
  return [...SECTIONS, "other" as const]
    .filter((section) => !APART.has(section))
    .map((section) => sectionView(context, section))
    .filter((view) => view.hasMeasures || view.hasJudgements || view.tables.length > 0 || view.figures.length > 0);
}

function sectionView(context: Context, section: Section | "other"): SectionView {
  const { results, speech } = context;
  const own = results.entries.filter((entry) => sectionOf(entry) === section);
  const ids = new Set(own.map((entry) => entry.id));
  const remarks = results.entries.filter(
    (entry): entry is Remark =>
      entry.kind === "remark" && entry.severity !== "record" && entry.affects.some((id) => ids.has(id)),
  );
  const marks = new Map(remarks.map((remark, i) => [remark.id, String.fromCharCode(97 + (i % 26))]));
  const measures = own.flatMap((entry) => measureRow(context, entry, remarks, marks));
  const judgements = judgementsOf(context, own);
  const drawn = [...context.drawn.values()];
  const figures = drawn
    .filter((figure) => figure.section === section && figure.view.size !== "strip")
    .map((f) => f.view);
  const panels = figures.filter((figure) => figure.size === "panel");
  const strips = drawn.filter(
    (f) => f.view.id.startsWith("figure-norm-") && f.measure !== undefined && ids.has(f.measure),
  );
  return {
    id: `section-${section.replaceAll("_", "-")}`,
    title: speech.say(`sections.${section}`),
    hasMeasures: measures.length > 0,
    measures,
    hasNorms: measures.some((row) => row.norm !== ""),
    hasJudgements: judgements.length > 0,
    judgements,
    hasStrips: strips.length > 0,
    strips: strips.map((figure): FigureView => figure.view),
    figures: figures.filter((figure) => figure.size !== "panel"),
    hasPanels: panels.length > 0,
    panelsTitle: speech.say("report.panels", { count: panels.length }),
    panels,
    tables: own.flatMap((entry) => (entry.kind === "table" && !isData(entry) ? [entryTable(context, entry)] : [])),
    hasNotes: remarks.length > 0,
    notes: remarks.map(
      (remark): NoteView => ({
        mark: marks.get(remark.id) ?? "",
        title: remarkTitle(context, remark),
        text: sentence(remark.because),
        weakens: remark.severity !== "record",
      }),
    ),
  };
}

export const judgementsOf = (context: Context, entries: readonly Entry[]): JudgementView[] =>
  entries.flatMap((entry) =>
    entry.kind === "judgement"
      ? [
          {
            label: opening(nameOf(context, entry.id)),
            verdict: verdictText(context, entry.verdict),
            because: sentence(entry.because),
          },
        ]
      : [],
  );

export const remarkTitle = ({ rules, speech }: Context, remark: Remark): string => {
  const id = remark.rule.split(" ")[0] ?? remark.rule;
  return speech.find(`rules.${id}`) ?? rules.find((rule) => rule.id === id)?.title ?? opening(id.replaceAll("-", " "));
};
export const verdictText = ({ speech }: Context, verdict: string): string =>
  speech.find(`verdicts.${verdict.replaceAll(/\W+/g, "_")}`) ?? verdict;

function measureRow(
  context: Context,
  entry: Entry,
  remarks: readonly Remark[],
  marks: ReadonlyMap<string, string>,
): MeasureRow[] {
  const { speech } = context;
  const mark = remarks
    .filter((remark) => remark.affects.includes(entry.id))
    .map((remark) => marks.get(remark.id))
    .join(" ");
  const blank = { error: "", norm: "", mark, hasMark: mark !== "", note: "", hasNote: false, because: "" };
  if (entry.kind === "not given")
    return [
      {
        ...blank,
        label: nameOf(context, entry.id),
        value: "",
        unit: "",
        hasValue: false,
        because: speech.say("report.not_given_because", { because: entry.because }),
      },
    ];
  if (entry.kind !== "quantity") return [];
  const { error } = entry;
  const notes = [...(entry.note === undefined ? [] : [entry.note]), ...normNotes(context, entry)];
  const n = (value: number, more = 0) => speech.number(value, entry.decimals + more);
  const errorText =
    error?.low !== undefined && error.high !== undefined
      ? speech.say("report.interval", { low: n(error.low), high: n(error.high) })
      : error?.typical !== undefined
        ? `±\u00a0${n(error.typical, Number.isInteger(error.typical * 10 ** entry.decimals) ? 0 : 1)}`
        : "";
  return [
    {
      ...blank,
      label: nameOf(context, entry.id),
      value: valueText(context, entry),
      unit: unitText(context, entry.unit),
      hasValue: true,
      error: errorText,
      norm: normText(context, entry),
      note: notes.map(sentence).join(" "),
      hasNote: notes.length > 0,
    },
  ];
}
