/** The page of a practice: what is open, who is due, what was not measured again, and every client with all visits. */
import { nameOf } from "../../kernel/names.js";
import type { Speech } from "../../kernel/speech.js";
import type { Pages } from "../pages.js";
import { dueText } from "./client-page.js";
import { type Due, dueAfter, missingSince } from "./due.js";
import type { VisitSummary } from "./visit-summary.js";
import { changeText, flagText, sectionName, verdictWord } from "./words.js";

/** What the practice's page keeps of a client: a few lines, so that memory follows the number of clients, not of numbers. */
export interface ClientLine {
  readonly client: string;
  readonly visits: readonly { readonly date: string; readonly purpose: string; readonly href: string }[];
  readonly last: VisitSummary;
  readonly due: Due;
  readonly missing: readonly string[];
}

/** `hrefs`: the address of each visit's report, or of its folder where it has none. */
export const clientLine = (client: string, visits: readonly VisitSummary[], hrefs: readonly string[]): ClientLine => {
  const last = visits[visits.length - 1] as VisitSummary;
  return {
    client,
    visits: visits.map(({ date, purpose }, i) => ({ date, purpose, href: hrefs[i] ?? "" })),
    last,
    due: dueAfter(last),
    missing: missingSince(visits),
  };
};

const GROUP = 50;

export function practicePage(pages: Pages, lines: readonly ClientLine[]): string {
  const { speech } = pages;
  const say = (path: string, fill = {}) => speech.say(`overview.${path}`, fill);
  const heads = (...keys: string[]) => keys.map((key) => say(`column.${key}`));
  const dates = lines.map((line) => line.last.date).sort();
  const visits = lines.reduce((sum, line) => sum + line.visits.length, 0);
  const flags = lines.flatMap((line) =>
    line.last.flags.map((flag) => ({
      ...named(line),
      kind: say(`flag.${flag.kind}`),
      text: flagText(speech, flag),
      visit: speech.shortDate(line.last.date),
    })),
  );
  const missing = lines
    .filter((line) => line.missing.length > 0)
    .map((line) => ({
      ...named(line),
      visit: speech.shortDate(line.last.date),
      text: line.missing.map((section) => sectionName(speech, section)).join(", "),
    }));
  return pages.render(
    "practice",
    {
      title: say("practice"),
      subtitle:
        lines.length === 0
          ? say("practice_empty")
          : say("practice_subtitle", {
              clients: lines.length,
              visits,
              last: speech.date(dates[dates.length - 1] as string),
            }),
    },
    {
      contents: [
        { href: "#flags", title: `${say("flags")} (${flags.length})` },
        { href: "#due", title: say("due") },
        { href: "#missing", title: `${say("missing")} (${missing.length})` },
        { href: "#clients", title: say("clients") },
      ],
      flagHeads: heads("client", "visit", "kind", "text"),
      flags,
      hasFlags: flags.length > 0,
      dueHeads: heads("client", "due", "why", "last"),
      months: monthsOf(speech, lines),
      missingHeads: heads("client", "visit", "missing"),
      missing,
      hasMissing: missing.length > 0,
      clientHeads: heads("client", "visits", "aim", "outcomes"),
      groups: groupsOf(speech, lines),
      hasGroups: lines.length > GROUP,
    },
  );
}

const named = ({ client }: ClientLine) => ({ client, href: `clients/${encodeURIComponent(client)}/index.html` });

/** Clients by the month in which they are due, earliest first. */
function monthsOf(speech: Speech, lines: readonly ClientLine[]) {
  const sorted = [...lines].sort((a, b) => compare(a.due.from, b.due.from) || compare(a.client, b.client));
  const months = new Map<string, object[]>();
  for (const line of sorted) {
    const month = line.due.from.slice(0, 7);
    const rows = months.get(month) ?? [];
    months.set(month, rows);
    rows.push({
      ...named(line),
      due: dueText(speech, line.due),
      why: speech.say(`overview.due_why.${line.due.why}`),
      last: speech.shortDate(line.last.date),
      lastHead: speech.say("overview.column.last"),
    });
  }
  return [...months].map(([month, rows]) => ({
    id: `due-${month}`,
    title: monthText(speech, month),
    rows,
  }));
}

function monthText(speech: Speech, month: string): string {
  const [year = "", number = ""] = month.split("-");
  return `${speech.say("language.months").split(" ")[Number(number) - 1] ?? number} ${year}`;
}

/** Clients in groups with an anchor each, so that a long list can be reached by its parts. */
function groupsOf(speech: Speech, lines: readonly ClientLine[]) {
  return Array.from({ length: Math.ceil(lines.length / GROUP) }, (_, g) => {
    const part = lines.slice(g * GROUP, (g + 1) * GROUP);
    const [first, last] = [part[0]?.client ?? "", part[part.length - 1]?.client ?? ""];
    return {
      id: `clients-${g + 1}`,
      title: first === last ? first : speech.say("overview.group", { first, last }),
      rows: part.map((line) => ({
        ...named(line),
        aim: aimText(speech, line.last),
        visits: line.visits.map((visit) => ({
          href: visit.href,
          text: speech.shortDate(visit.date),
          purpose: speech.say(`purposes.${visit.purpose}`),
        })),
        outcomes: line.last.outcomes
          .filter((outcome) => outcome.change !== undefined)
          .map((outcome) => ({
            name: nameOf(speech, outcome.measure),
            change: changeText(speech, outcome),
            verdict: outcome.verdict === undefined ? "" : verdictWord(speech, outcome.verdict),
          })),
      })),
    };
  });
}

function aimText(speech: Speech, { aims }: VisitSummary): string {
  const aim = aims[0];
  if (aim === undefined) return "";
  return aim.date === undefined ? aim.goal : `${aim.goal}, ${speech.shortDate(aim.date)}`;
}

const compare = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);
