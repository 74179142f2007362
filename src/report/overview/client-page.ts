/** A client's page: what needs a person, primary outcomes and their course, goals, visits with their reports. */
import { nameOf } from "../../kernel/names.js";
import type { Speech } from "../../kernel/speech.js";
import type { Pages } from "../pages.js";
import { told } from "../view/context.js";
import type { FigureView, TableView } from "../view/types.js";
import { type Course, courseOf, knownError } from "./course.js";
import { dueAfter } from "./due.js";
import type { Link } from "./links.js";
import type { Outcome, VisitSummary } from "./visit-summary.js";
import { changeText, flagText, sectionName, textTable, valueText, verdictWord } from "./words.js";

const EDITIONS = ["practitioner", "client", "referral"] as const;

export interface ClientPageInput {
  readonly client: string;
  /** Oldest first, one or more. */
  readonly visits: readonly VisitSummary[];
  /** Reports of each visit, in the same order; addresses relative to the client's folder. */
  readonly reports: readonly (readonly Link[])[];
  readonly drawn: readonly FigureView[];
}

export function clientPage(pages: Pages, { client, visits, reports, drawn }: ClientPageInput): string {
  const { speech } = pages;
  const say = (path: string, fill = {}) => speech.say(`overview.${path}`, fill);
  const [first, last] = [visits[0] as VisitSummary, visits[visits.length - 1] as VisitSummary];
  const courses = courseOf(visits);
  const aim = last.aims[0];
  const due = dueAfter(last);
  const fact = (name: string, value: string | undefined) => (value === undefined ? [] : [{ name, value }]);
  return pages.render(
    "client-page",
    {
      title: say("client", { client }),
      subtitle:
        visits.length === 1
          ? say("client_subtitle_one", { first: speech.date(first.date) })
          : say("client_subtitle", {
              visits: visits.length,
              first: speech.date(first.date),
              last: speech.date(last.date),
            }),
      facts: [
        ...fact(say("aim"), aim?.goal),
        ...fact(say("aim_date"), aim?.date === undefined ? undefined : speech.date(aim.date)),
        ...fact(say("due"), `${dueText(speech, due)} (${say(`due_why.${due.why}`)})`),
      ],
    },
    {
      back: say("back"),
      flags: last.flags.map((flag) => ({ kind: say(`flag.${flag.kind}`), text: flagText(speech, flag) })),
      hasFlags: last.flags.length > 0,
      noFlags: say("no_flags"),
      outcomes: outcomeTable(speech, courses),
      hasOutcomes: courses.length > 0,
      noOutcomes: say("no_outcomes"),
      figures: drawn,
      hasFigures: drawn.length > 0,
      course: courseTable(speech, visits, courses),
      goals: goalTable(speech, last),
      hasGoals: last.goals.length > 0,
      visits: visits.map((visit, i) => visitRow(speech, visit, reports[i] ?? [])),
      visitColumns: ["visit", "measured", "reports"].map((key) => say(`column.${key}`)),
    },
  );
}

export const dueText = (speech: Speech, due: { readonly from: string; readonly to?: string }): string =>
  due.to === undefined
    ? speech.date(due.from)
    : speech.say("overview.due_between", { from: speech.date(due.from), to: speech.date(due.to) });

/** A table that stacks on a phone: each cell then carries the name of its column. */
const stacked = (columns: readonly string[], rows: readonly (readonly string[])[]) => ({
  columns,
  rows: rows.map(([head = "", ...cells]) => ({
    head,
    cells: cells.map((text, i) => ({ text, column: columns[i + 1] ?? "" })),
  })),
});

function outcomeTable(speech: Speech, courses: readonly Course[]) {
  const rows = courses.map(({ measure, points }) => {
    const [first, last] = [points[0] as Outcome, points[points.length - 1] as Outcome];
    return [
      nameOf(speech, measure),
      valueText(speech, first, first.value),
      valueText(speech, last, last.value),
      changeText(speech, last),
      last.verdict === undefined ? speech.say("report.absent") : verdictWord(speech, last.verdict),
    ];
  });
  const columns = ["measure", "first", "latest", "change", "verdict"].map((key) =>
    speech.say(`overview.column.${key}`),
  );
  return stacked(columns, rows);
}

/** Every value of the primary outcomes, one row a visit; what differs from the visit before stands beside it. */
function courseTable(speech: Speech, visits: readonly VisitSummary[], courses: readonly Course[]): TableView {
  const names = courses.map(({ measure }) => nameOf(speech, measure));
  const rows = visits.map((visit) => [
    speech.shortDate(visit.date),
    ...courses.map(({ measure }) => {
      const at = visit.outcomes.find((outcome) => outcome.measure === measure);
      if (at === undefined) return speech.say("report.absent");
      const mark = at.differs === undefined ? "" : ` (${told({ speech }, at.differs)})`;
      return `${valueText(speech, at, at.value)}${mark}`;
    }),
  ]);
  const errors = courses.flatMap((course) => {
    const { measure } = course;
    const from = knownError(course)?.errorFrom;
    return from === undefined
      ? []
      : [
          speech.say("overview.error_from", {
            measure: nameOf(speech, measure),
            from: told({ speech }, from.replace(/\.$/, "")),
          }),
        ];
  });
  const caption = speech.say("overview.course");
  const note = errors.map((text) => `${text}.`).join(" ");
  return textTable("course", caption, [speech.say("overview.column.visit"), ...names], rows, note);
}

function goalTable(speech: Speech, last: VisitSummary) {
  const columns = ["measure", "verdict", "because"].map((key) => speech.say(`overview.column.${key}`));
  const rows = last.goals.map(({ measure, verdict, because }) => [
    nameOf(speech, measure),
    verdictWord(speech, verdict),
    told({ speech }, because),
  ]);
  return stacked(columns, rows);
}

function visitRow(speech: Speech, visit: VisitSummary, links: readonly Link[]) {
  return {
    date: speech.date(visit.date),
    purpose: speech.say(`purposes.${visit.purpose}`),
    measured: visit.sections.map((section) => sectionName(speech, section)).join(", "),
    editions: EDITIONS.flatMap((edition) => {
      const [html, pdf] = (["html", "pdf"] as const).map((format) =>
        links.find((link) => link.edition === edition && link.format === format),
      );
      const text = speech.say(`overview.edition.${edition}`);
      if (html === undefined && pdf === undefined) return [];
      return [
        { text, hasHtml: html !== undefined, html: html?.href ?? "", hasPdf: pdf !== undefined, pdf: pdf?.href ?? "" },
      ];
    }),
    flags: visit.flags.map(({ kind }) => speech.say(`overview.flag.${kind}`)).join(", "),
    hasFlags: visit.flags.length > 0,
  };
}
