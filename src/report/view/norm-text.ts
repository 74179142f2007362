import type { NormPosition, Quantity } from "../../kernel/measure.js";
import { type Context, unitText } from "./context.js";

/** A norm position in a few words for a table cell: never a percentage, always the group. */
export function normText(context: Context, quantity: Quantity): string {
  return (quantity.norms ?? []).map((norm) => one(context, quantity, norm)).join(" · ");
}

function one(context: Context, quantity: Quantity, norm: NormPosition): string {
  const { speech } = context;
  const number = (value: number) =>
    `${speech.number(value, quantity.decimals)}\u00a0${unitText(context, quantity.unit)}`.trim();
  if (norm.notGiven !== undefined) return speech.say("norms.refused", { table: norm.table, because: norm.notGiven });
  const parts: string[] = [];
  if (norm.percentile !== undefined) parts.push(speech.say("norms.percentile", { lower: lowerOf(norm.percentile) }));
  if (norm.percentPredicted !== undefined)
    parts.push(speech.say("norms.percent_predicted", { percent: speech.number(norm.percentPredicted, 0) }));
  if (norm.predicted !== undefined) parts.push(speech.say("norms.predicted", { predicted: number(norm.predicted) }));
  if (norm.lowerLimit !== undefined) parts.push(speech.say("norms.lower_limit", { limit: number(norm.lowerLimit) }));
  if (norm.z !== undefined) parts.push(speech.say("norms.z", { z: speech.signed(norm.z, 2) }));
  if (norm.category !== undefined) parts.push(speech.say("norms.category", { category: norm.category }));
  const group = norm.group === undefined ? "" : ` (${norm.group})`;
  const note = norm.note === undefined ? "" : `; ${norm.note}`;
  return `${parts.join(", ")}${group}${note}`;
}

/** How many of 100 are lower, kept between 1 and 99: a table cannot tell the ends apart. */
export const lowerOf = (percentile: number): number => Math.min(99, Math.max(1, Math.round(percentile)));

/** "Of 100 women aged 40–49, about 62 had a lower value." */
export function normSentence({ speech }: Context, quantity: Quantity): string | undefined {
  const norm = quantity.norms?.find((position) => position.percentile !== undefined);
  if (norm?.percentile === undefined) return undefined;
  return speech.say("client.norm_sentence", { group: norm.group ?? norm.table, lower: lowerOf(norm.percentile) });
}
