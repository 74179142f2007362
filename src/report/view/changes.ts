/** The page of changes: figure, the primary outcomes in words, every change as number, bar and verdict. */
import { sinceBaseline } from "../../kernel/entries.js";
import type { Change } from "../../kernel/measure.js";
import { changeBar } from "./bar.js";
import { type Context, entriesOf, nameOf, sectionOf, told, toldSentence, unitText, valueWithUnit } from "./context.js";
import { judgementsOf, verdictText } from "./sections.js";
import type { ChangesView } from "./types.js";

export function changesView(context: Context): ChangesView {
  const drawn = [...context.drawn.values()].filter((figure) => figure.section === "change");
  const changes = [...sinceBaseline(context.results)].sort((a, b) => Number(b.primary) - Number(a.primary));
  const since = entriesOf(context, "change").filter((change) => !changes.includes(change));
  const origins = [...new Set(changes.flatMap((change) => change.errorFrom ?? []))];
  const told = changes.filter((change) => change.primary).map((change) => toldOf(context, change));
  const judged = judgementsOf(
    context,
    context.results.entries.filter((entry) => sectionOf(entry) === "change"),
  );
  return {
    language: context.speech.language,
    hasJudgements: judged.length > 0,
    judgements: judged,
    figures: drawn.filter((figure) => figure.view.size === "wide").map((figure) => figure.view),
    hasTrends: drawn.some((figure) => figure.view.size === "panel"),
    trends: drawn.filter((figure) => figure.view.size === "panel").map((figure) => figure.view),
    hasTold: told.length > 0,
    told,
    rows: changes.map((change) => changeRow(context, change, origins)),
    hasSince: since.length > 0,
    sinceCaption: context.speech.say("report.since_other", {
      dates: context.speech.list([...new Set(since.map((change) => context.speech.date(change.since)))]),
    }),
    since: since.map((change) => changeRow(context, change, [])),
    origins: origins.map((text, i) => ({ mark: String(i + 1), text: toldSentence(context, text) })),
    hasOrigins: origins.length > 0,
  };
}

/** A primary outcome in full: what changed, against which error, what differs, what is to be noted. */
function toldOf(context: Context, change: Change): ChangesView["told"][number] {
  const { speech } = context;
  const parts = [
    toldSentence(context, change.because),
    // A pair that is not comparable says in its own sentence what differs.
    ...(change.differs.length === 0 || change.verdict === "not comparable"
      ? []
      : [speech.say("report.differs", { gates: speech.list(change.differs.map((gate) => told(context, gate))) })]),
    ...(change.worthwhile === undefined || change.worthwhileFrom === undefined
      ? []
      : [
          speech.say("report.worthwhile_from", {
            value: valueWithUnit(context, { ...change, value: change.worthwhile, decimals: change.decimals + 1 }),
            from: told(context, change.worthwhileFrom),
          }),
        ]),
    ...(change.notes ?? []).map((note) => toldSentence(context, note)),
  ];
  // A sentence that begins with the measure goes on from its name; another follows it.
  const name = nameOf(context, change.measure);
  const text = parts.join(" ");
  return { name, value: goesOn(text, name, speech.language) ? text.slice(name.length) : `. ${text}` };
}

const goesOn = (text: string, name: string, language: string): boolean =>
  text.startsWith(`${name} `) || (language !== "en" && text.startsWith(`${name}: `));

function changeRow(context: Context, change: Change, origins: readonly string[]): ChangesView["rows"][number] {
  const { speech } = context;
  const n = (value: number) => speech.number(value, change.decimals);
  const origin = change.errorFrom === undefined ? -1 : origins.indexOf(change.errorFrom);
  const bar = changeBar(change);
  return {
    label: nameOf(context, change.measure),
    before: n(change.before),
    now: n(change.now),
    change: speech.signed(change.change, change.decimals),
    interval:
      change.low === undefined || change.high === undefined
        ? speech.say("report.absent")
        : speech.say("report.interval", { low: n(change.low), high: n(change.high) }),
    bar,
    hasBar: bar !== "",
    unit: unitText(context, change.unit),
    verdict: verdictText(context, change.verdict),
    mark: origin < 0 ? "" : String(origin + 1),
    hasMark: origin >= 0,
  };
}
