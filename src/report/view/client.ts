/** The client's edition: plain words, few numbers, what to do next. */
import { measureInfo } from "../../kernel/measures.js";
import { type Context, entriesOf, entryOf, nameOf, quantityOf, valueWithUnit, withinSentence } from "./context.js";
import { customaryBeside } from "./customary.js";
import { keyMeasures, NO_FIGURE } from "./keys.js";
import { remarkTitle } from "./sections.js";
import { leading, planIsReady, threeSentences } from "./summary.js";
import { tableView } from "./tables.js";
import type { ClientView, Fact, Frame, KeyMeasure, TableView } from "./types.js";

export function clientEdition(context: Context, shared: Frame): ClientView {
  const { speech } = context;
  const keys = keyMeasures(context);
  const retest = entriesOf(context, "change").length > 0;
  const training =
    planIsReady(context) && leading(context).length === 0 ? TRAINING.flatMap((id) => trainingTable(context, id)) : [];
  const drawn = context.drawn.get("weekly-load")?.view;
  // Its table stands right below it, so it needs no link.
  const weeks = drawn && { ...drawn, hasData: false };
  const intensities = mayTrain(context) && training.length === 0 ? intensityFacts(context) : [];
  const text =
    context.laboratory.units_beside === "customary"
      ? (metric: string) => customaryBeside(speech, metric)
      : (metric: string) => metric;
  return {
    ...shared,
    sentences: threeSentences(context),
    keysTitle: speech.say(retest ? "client.what_changed" : "client.where_you_are"),
    hasKeys: keys.length > 0,
    keys: keys.map((key) => ({ ...key, value: text(key.value), sentence: text(key.sentence) })),
    sure: howSure(context, keys),
    hasTraining: training.length > 0 || intensities.length > 0,
    training: training.map((table) => ({
      ...table,
      rows: table.rows.map((row) => ({ ...row, cells: row.cells.map((cell) => ({ ...cell, text: text(cell.text) })) })),
    })),
    hasWeeks: weeks !== undefined && training.length > 0,
    weeks: weeks ?? NO_FIGURE,
    intensities: intensities.map(({ name, value }) => ({ name, value: text(value) })),
    hasIntensities: intensities.length > 0,
  };
}

/** What went well in the measuring, what did not, and what could not be told. */
function howSure(context: Context, keys: readonly KeyMeasure[]): string[] {
  const { speech } = context;
  const weak = entriesOf(context, "remark").filter((remark) => remark.severity !== "record");
  const troubled = weak.map((remark) => {
    const concerns = remark.affects.flatMap((id) => clientName(context, id) ?? []);
    const title = remarkTitle(context, remark);
    return concerns.length === 0
      ? speech.say("client.weak_all", { title })
      : speech.say("client.weak", { title, measures: speech.list([...new Set(concerns)]) });
  });
  // Several values of one threshold have one name; the reason is said once, the first and plainest of them.
  const withheld = new Map<string, string>();
  for (const entry of entriesOf(context, "not given")) {
    const name = clientName(context, entry.id);
    if (name !== undefined && !withheld.has(name)) withheld.set(name, plainReason(context, entry.because));
  }
  return [
    speech.say(weak.length === 0 ? "client.all_well" : "client.mostly_well"),
    ...new Set(troubled),
    ...[...withheld].map(([measure, because]) => speech.say("client.could_not_tell", { measure, because })),
    [speech.say("client.every_test_varies"), ...(hasBars(context, keys) ? [speech.say("client.bars_show")] : [])].join(
      " ",
    ),
  ];
}

/** Whether any of the small drawings beside the key measures shows the error of a test. */
function hasBars({ figures }: Context, keys: readonly KeyMeasure[]): boolean {
  const shown = new Set(keys.map((key) => key.figure.id));
  return figures.some(
    ({ name, data }) => shown.has(`figure-${name}`) && [data.nowError, data.error].some((bars) => bars?.length),
  );
}

/** The reason in a client's words; the practitioner's edition has it in full. */
function plainReason({ speech }: Context, because: string): string {
  if (/not identified/.test(because)) return speech.say("client.reasons.not_clear");
  if (/^withheld/.test(because)) return speech.say("client.reasons.check_failed");
  return speech.say("client.reasons.missing");
}

/** What a client calls a measure, or undefined for those a client is not shown. */
function clientName(context: Context, id: string): string | undefined {
  const { speech } = context;
  const name = speech.find(`plain.${id}.name`) ?? measureInfo(id)?.plain?.name ?? speech.find(`client.names.${id}`);
  return name === undefined ? undefined : withinSentence(context, name);
}

/** What a client needs of the plan, and the columns of it. */
const TRAINING = [
  "intensity_domains",
  "programme_weeks",
  "programme_sessions",
  "strength_work",
  "stop_criteria",
] as const;
const SHOWN: Readonly<Record<(typeof TRAINING)[number], readonly string[]>> = {
  intensity_domains: ["domain", "heart_rate_from", "heart_rate_to", "power_from", "power_to", "work", "talk"],
  programme_weeks: ["week", "monday", "phase", "minutes", "easy", "steady", "hard", "strength", "mark"],
  programme_sessions: ["date", "day", "kind", "minutes", "heart_rate", "load", "prescription"],
  strength_work: ["exercise", "sets", "repetitions", "load_from", "load_to", "load"],
  stop_criteria: ["sign", "action"],
};
/** The laboratory's own reasons to end a test stay with the laboratory. */
const OWN_ROWS: Readonly<Partial<Record<(typeof TRAINING)[number], string>>> = { stop_criteria: "any session" };

function trainingTable(context: Context, id: (typeof TRAINING)[number]): TableView[] {
  const entry = entryOf(context, id);
  if (entry?.kind !== "table") return [];
  const shown = entry.columns.map((column) => SHOWN[id].includes(column.key));
  const keep = <T>(list: readonly T[]): T[] => list.filter((_, i) => shown[i]);
  const columns = keep(entry.columns);
  const own = entry.rows.filter((row) => OWN_ROWS[id] === undefined || row[0] === OWN_ROWS[id]);
  const rows = own.map((row) => keep(entry.columns.map((_, i) => row[i] ?? null)));
  return [tableView(context, `table-${id.replaceAll("_", "-")}`, nameOf(context, id), { columns, rows })];
}

/**
 * Intensities of the thresholds alone, where no plan was asked for: never beside a plan that nobody has signed, never
 * when a verdict sends the client to a physician first.
 */
const mayTrain = (context: Context): boolean =>
  leading(context).length === 0 && entryOf(context, "programme_state") === undefined;

/** Training intensities by the thresholds: how hard, how fast, how it feels. */
function intensityFacts(context: Context): Fact[] {
  const { speech } = context;
  // A speed says nothing without its grade; where the grade rose, heart rate stands alone.
  const kinds = quantityOf(context, "vt1_grade")
    ? (["heart_rate"] as const)
    : (["heart_rate", "speed", "power"] as const);
  const at = (id: "vt1" | "vt2") =>
    kinds.flatMap((kind) => {
      const value = quantityOf(context, `${id}_${kind}`);
      return value ? [valueWithUnit(context, value)] : [];
    });
  const [first, second] = [at("vt1"), at("vt2")];
  if (first.length === 0) return [];
  return [
    { name: speech.say("client.easy"), value: speech.say("client.easy_text", { limit: speech.list(first) }) },
    ...(second.length === 0
      ? [{ name: speech.say("client.steady"), value: speech.say("client.above_text", { low: speech.list(first) }) }]
      : [
          {
            name: speech.say("client.steady"),
            value: speech.say("client.steady_text", { low: speech.list(first), high: speech.list(second) }),
          },
          { name: speech.say("client.hard"), value: speech.say("client.hard_text", { limit: speech.list(second) }) },
        ]),
  ];
}
