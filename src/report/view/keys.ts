/** The few measures a summary leads with: the primary ones at a retest, else those a client is shown, five at most. */

import { sinceBaseline } from "../../kernel/entries.js";
import type { Change, Quantity } from "../../kernel/measure.js";
import { measureInfo } from "../../kernel/measures.js";
import { differenceUnit } from "../../kernel/names.js";
import { normPlace } from "../../kernel/norm-place.js";
import { type Context, entriesOf, opening, plainNameOf, quantityOf, toldSentence, valueWithUnit } from "./context.js";
import { normSentence } from "./norm-text.js";
import type { FigureView, KeyMeasure } from "./types.js";

const MOST = 5;

export function keyMeasures(context: Context): KeyMeasure[] {
  const changed = sinceBaseline(context.results)
    .filter((change) => change.primary)
    .slice(0, MOST);
  if (changed.length > 0) return changed.map((change) => changedMeasure(context, change));
  const chosen = (context.client.primary_outcomes ?? []).flatMap((id) => quantityOf(context, id) ?? []);
  const shown = entriesOf(context, "quantity").filter((q) => normPlace(context.results.entries, q) !== undefined);
  const plain = entriesOf(context, "quantity").filter((q) => measureInfo(q.id)?.plain !== undefined);
  const unique = [...new Map([...chosen, ...shown, ...plain].map((q) => [q.id, q])).values()];
  return unique.slice(0, MOST).map((quantity) => measuredNow(context, quantity));
}

function changedMeasure(context: Context, change: Change): KeyMeasure {
  return {
    ...named(context, change.measure),
    value: valueWithUnit(context, { value: change.now, decimals: change.decimals, unit: change.unit }),
    sentence: changeSentence(context, change),
    ...figureOf(context, `pair-${change.measure.replaceAll("_", "-")}`),
  };
}

/** Absolute difference, what the test varies by, and what that means, in the order of the evidence. */
function changeSentence(context: Context, change: Change): string {
  const { speech } = context;
  const amount = (text: string) => `${text}\u00a0${differenceUnit(speech, change.unit)}`.trim();
  const parts = [
    speech.say("client.changed", {
      change: amount(speech.signed(change.change, change.decimals)),
      since: speech.date(change.since),
    }),
  ];
  if (change.typicalError !== undefined)
    parts.push(speech.say("client.varies", { error: amount(speech.number(change.typicalError, change.decimals)) }));
  const meaning = speech.find(`client.verdicts.${change.verdict.replaceAll(/\W+/g, "_")}`);
  parts.push(meaning ?? toldSentence(context, change.because));
  if (change.verdict === "cannot tell" && change.chances !== undefined)
    parts.push(speech.say("client.chances", { higher: change.chances.higher, lower: change.chances.lower }));
  return parts.join(" ");
}

function measuredNow(context: Context, quantity: Quantity): KeyMeasure {
  const { speech } = context;
  const error = quantity.error?.typical;
  const vary =
    error === undefined
      ? ""
      : ` ${speech.say("client.varies", { error: `${speech.number(error, quantity.decimals)} ${differenceUnit(speech, quantity.unit)}`.trim() })}`;
  const norm = normSentence(context, quantity);
  return {
    ...named(context, quantity.id),
    value: valueWithUnit(context, quantity),
    sentence: `${norm ?? ""}${vary}`.trim(),
    ...figureOf(context, `norm-${quantity.id.replaceAll("_", "-")}`),
  };
}

function named(context: Context, id: string): Pick<KeyMeasure, "name" | "meaning" | "hasMeaning"> {
  const meaning = context.speech.find(`plain.${id}.meaning`) ?? measureInfo(id)?.plain?.meaning ?? "";
  return { name: opening(plainNameOf(context, id)), meaning, hasMeaning: meaning !== "" };
}

export const NO_FIGURE: FigureView = {
  id: "",
  title: "",
  alt: "",
  size: "strip",
  svg: "",
  source: "",
  hasSource: false,
  dataHref: "",
  hasData: false,
};
function figureOf(context: Context, name: string): Pick<KeyMeasure, "hasFigure" | "figure"> {
  const drawn = context.drawn.get(name);
  return { hasFigure: drawn !== undefined, figure: drawn?.view ?? NO_FIGURE };
}
