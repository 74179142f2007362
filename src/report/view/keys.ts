/** The few measures a summary leads with: the primary ones at a retest, else those a client is shown, five at most. */
import type { Change, Quantity } from "../../kernel/measure.js";
import { measureInfo } from "../../kernel/measures.js";
import {
  type Context,
  entriesOf,
  opening,
  plainNameOf,
  quantityOf,
  sentence,
  unitText,
  valueWithUnit,
} from "./context.js";
import { normSentence } from "./norm-text.js";
import { verdictText } from "./sections.js";
import type { FigureView, KeyMeasure } from "./types.js";

const MOST = 5;

export function keyMeasures(context: Context): KeyMeasure[] {
  const changed = entriesOf(context, "change")
    .filter((change) => change.primary)
    .slice(0, MOST);
  if (changed.length > 0) return changed.map((change) => changedMeasure(context, change));
  const chosen = (context.client.primary_outcomes ?? []).flatMap((id) => quantityOf(context, id) ?? []);
  const shown = entriesOf(context, "quantity").filter((q) => q.norms?.some((norm) => norm.percentile !== undefined));
  const plain = entriesOf(context, "quantity").filter((q) => measureInfo(q.id)?.plain !== undefined);
  const unique = [...new Map([...chosen, ...shown, ...plain].map((q) => [q.id, q])).values()];
  return unique.slice(0, MOST).map((quantity) => measuredNow(context, quantity));
}

function changedMeasure(context: Context, change: Change): KeyMeasure {
  const { speech } = context;
  const value = valueWithUnit(context, { value: change.now, decimals: change.decimals, unit: change.unit });
  return {
    ...named(context, change.measure),
    value,
    sentence: `${speech.say("client.changed", {
      change: `${speech.signed(change.change, change.decimals)} ${unitText(context, change.unit)}`.trim(),
      since: speech.date(change.since),
      verdict: verdictText(context, change.verdict),
    })} ${sentence(change.because)}`,
    ...figureOf(context, `pair-${change.measure.replaceAll("_", "-")}`),
  };
}

function measuredNow(context: Context, quantity: Quantity): KeyMeasure {
  const { speech } = context;
  const error = quantity.error?.typical;
  const vary =
    error === undefined
      ? ""
      : ` ${speech.say("client.varies", { error: `${speech.number(error, quantity.decimals)} ${unitText(context, quantity.unit)}`.trim() })}`;
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
