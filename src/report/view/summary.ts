/** The sentences a report opens with: what the client came for, what was found, what comes next. */

import { judgementOf, sinceBaseline } from "../../kernel/entries.js";
import { type Change, isClaim, type Judgement } from "../../kernel/measure.js";
import { measureInfo } from "../../kernel/measures.js";
import { signedWithUnit } from "../../kernel/names.js";
import { lowerOf } from "../../kernel/norm-place.js";
import {
  type Context,
  entriesOf,
  nameOf,
  plainNameOf,
  quantityOf,
  sentence,
  told,
  toldSentence,
  valueWithUnit,
  withinSentence,
} from "./context.js";

/** Verdicts that stop or defer: they lead whatever else was found. */
const NEEDS_A_PERSON: Readonly<Record<string, RegExp>> = {
  screening_decision: /stop|refer/,
  blood_pressure_referral: /emergency|referral/,
  ascent_judgement: /beyond|outside/,
};

export const leading = (context: Context): Judgement[] =>
  entriesOf(context, "judgement").filter((judgement) => NEEDS_A_PERSON[judgement.id]?.test(judgement.verdict));

export function threeSentences(context: Context): string[] {
  const { speech, client, results } = context;
  const goal = client.goals?.[0]?.goal;
  const came = goal === undefined ? speech.say("client.came_without_goal") : speech.say("client.came", { goal });
  const first = leading(context).map((judgement) => toldSentence(context, judgement.because));
  return [...first, sentence(came), sentence(found(context)), sentence(next(context, results.purpose === "retest"))];
}

function found(context: Context): string {
  const { speech } = context;
  const changes = sinceBaseline(context.results).filter((change) => change.primary);
  const certain = changes.filter(isClaim);
  if (certain.length > 0)
    return speech.say("client.found_change", { changes: speech.list(certain.map((c) => moved(context, c))) });
  if (changes.length > 0) return speech.say("client.found_no_change");
  const primary = context.client.primary_outcomes ?? [];
  const rank = (id: string): number => {
    const place = (primary as readonly string[]).indexOf(id);
    return place < 0 ? primary.length : place;
  };
  const placed = entriesOf(context, "quantity")
    .filter((q) => measureInfo(q.id)?.plain !== undefined && q.norms?.some((norm) => norm.percentile !== undefined))
    .sort((q, other) => rank(q.id) - rank(other.id))[0];
  const norm = placed?.norms?.find((position) => position.percentile !== undefined);
  if (placed && norm?.percentile !== undefined)
    return speech.say("client.found_place", {
      measure:
        speech.language === "en"
          ? plainNameOf(context, placed.id).toLocaleLowerCase("en")
          : plainNameOf(context, placed.id),
      lower: lowerOf(norm.percentile),
      group: told(context, norm.group ?? norm.table),
    });
  return speech.say("client.found_baseline");
}

const moved = (context: Context, change: Change): string =>
  context.speech.say(change.change > 0 ? "client.rose" : "client.fell", {
    measure: withinSentence(context, plainNameOf(context, change.measure)),
  });

/** Whether a plan may go to the client: laid out, reviewed and signed for this visit. */
export const planIsReady = ({ results }: Context): boolean =>
  results.entries.some(
    (entry) => entry.id === "programme_state" && entry.kind === "judgement" && entry.verdict === "ready",
  );

function next(context: Context, again: boolean): string {
  const { speech } = context;
  if (leading(context).length > 0) return speech.say("client.next_doctor");
  if (planIsReady(context)) return speech.say("client.next_plan");
  return speech.say(again ? "client.next_again" : "client.next_talk");
}

/** The practitioner's summary: what leads, what was found at the peak and the thresholds, what weakens it. */
export function practitionerSummary(context: Context): string[] {
  const { speech } = context;
  const lead = leading(context).map((judgement) => toldSentence(context, judgement.because));
  const peak = quantityOf(context, "vo2_peak_per_mass") ?? quantityOf(context, "vo2_peak");
  const maximality = judgementOf(context.results, "maximality");
  const facts: string[] = [];
  if (peak)
    facts.push(
      speech.say("summary.peak", {
        kind: told(context, maximality?.verdict ?? "VO2peak"),
        peak: valueWithUnit(context, peak),
        because: maximality === undefined ? "" : told(context, maximality.because),
      }),
    );
  const thresholds = (["vt1", "vt2"] as const).flatMap((id) => {
    const at = quantityOf(context, `${id}_vo2`);
    return at
      ? [`${speech.say(`thresholds.${id}`)} ${speech.say("summary.at", { value: valueWithUnit(context, at) })}`]
      : [];
  });
  if (thresholds.length > 0) facts.push(speech.say("summary.thresholds", { thresholds: speech.list(thresholds) }));
  const primary = sinceBaseline(context.results).filter((change) => change.primary);
  const certain = primary.filter(isClaim).map((change) => changeText(context, change));
  if (primary.length > 0)
    facts.push(
      certain.length === 0
        ? speech.say("summary.none_beyond", { count: primary.length })
        : speech.say("summary.beyond", { count: primary.length, changes: speech.list(certain) }),
    );
  const weak = entriesOf(context, "remark").filter((remark) => remark.severity !== "record");
  facts.push(weak.length === 0 ? speech.say("summary.sound") : speech.say("summary.weakened", { count: weak.length }));
  return [...lead, ...facts.map(sentence)];
}

const changeText = (context: Context, change: Change): string => {
  const size = signedWithUnit(context.speech, change);
  return `${withinSentence(context, nameOf(context, change.measure))} ${size}`;
};
