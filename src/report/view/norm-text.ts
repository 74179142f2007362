import type { NormPosition, Quantity } from "../../kernel/measure.js";
import { lowerOf, normPlace } from "../../kernel/norm-place.js";
import { type Context, sentence, told, valueWithUnit } from "./context.js";
import { shortCitation } from "./sources.js";

/** A norm position in a few words for a table cell: never a percentage of people, always counted of 100. */
export function normText(context: Context, quantity: Quantity): string {
  const given = (quantity.norms ?? []).filter((norm) => norm.notGiven === undefined);
  return given
    .map((norm) => positionText(context, quantity, norm))
    .filter((text) => text !== "")
    .join(" · ");
}

/** What must be known of the references: the group, a note, and why a table that could apply was refused. */
export function normNotes(context: Context, quantity: Quantity): string[] {
  return (quantity.norms ?? []).map((norm) => {
    const table = shortCitation(context, norm.table);
    if (norm.notGiven !== undefined)
      return context.speech.say("norms.refused", { table, because: told(context, norm.notGiven.replace(/\.$/, "")) });
    const about = norm.group === undefined ? table : `${table}: ${told(context, norm.group)}`;
    return [about, told(context, norm.note ?? "")]
      .filter((text) => text !== "")
      .map(sentence)
      .join(" ");
  });
}

function positionText(context: Context, quantity: Quantity, norm: NormPosition): string {
  const { speech } = context;
  const number = (value: number) => valueWithUnit(context, { ...quantity, value });
  const parts: string[] = [];
  if (norm.percentile !== undefined) parts.push(speech.say("norms.percentile", { lower: lowerOf(norm.percentile) }));
  if (norm.percentPredicted !== undefined)
    parts.push(speech.say("norms.percent_predicted", { percent: speech.number(norm.percentPredicted, 0) }));
  if (norm.predicted !== undefined) parts.push(speech.say("norms.predicted", { predicted: number(norm.predicted) }));
  if (norm.lowerLimit !== undefined) parts.push(speech.say("norms.lower_limit", { limit: number(norm.lowerLimit) }));
  if (norm.z !== undefined) parts.push(speech.say("norms.z", { z: speech.signed(norm.z, 2) }));
  if (norm.category !== undefined) parts.push(speech.say("norms.category", { category: told(context, norm.category) }));
  return parts.join(", ");
}

/** "Of 100 women aged 40–49, about 62 had a lower value." */
export function normSentence(context: Context, quantity: Quantity): string | undefined {
  const { speech, results } = context;
  const place = normPlace(results.entries, quantity);
  if (place === undefined) return undefined;
  const group = place.norm.group ?? place.norm.table;
  return speech.say(place.kind === "about" ? "client.norm_sentence" : `client.norm_sentence_${place.kind}`, {
    group: spokenGroup(context, group),
    lower: place.lower,
  });
}

/** "women 40 to 49 years, treadmill" as one says it: "women aged 40 to 49 (treadmill)". */
function spokenGroup(context: Context, group: string): string {
  const parts = /^(\w+) (?:of )?(\d+(?: to \d+)?) years(?:, (.*))?$/.exec(group);
  if (!parts) return told(context, group);
  const [, who = "", ages = "", rest] = parts;
  const aged = context.speech.say("client.aged", { who: told(context, who), ages: told(context, ages) });
  return rest === undefined ? aged : `${aged} (${told(context, rest)})`;
}
