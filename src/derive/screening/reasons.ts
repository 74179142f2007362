/**
 * Everything that speaks against exercise at a visit, each with its own verdict. The worst verdict is the decision;
 * without a reason it is "proceed".
 */
import type { Screening } from "../../kernel/generated/session.js";
import type { Notebook } from "../../kernel/notebook.js";
import { toDecimals } from "../../kernel/rounding.js";
import { type Intensity, whyNotCleared } from "./clearance.js";
import { ABSOLUTE, anyOf, DISEASE, EMERGENCY, EVENTS, RELATIVE, SYMPTOMS } from "./lists.js";
import { preParticipation } from "./pre-participation.js";
import { testDeferral } from "./test-deferral.js";

export interface Reason {
  readonly verdict: "stop" | "refer";
  readonly because: string;
  readonly source: string;
}

/** Stops that follow from resting pressure, screened or not. */
export function pressureReasons(book: Notebook): Reason[] {
  const systolic = book.value("systolic_pressure");
  const diastolic = book.value("diastolic_pressure");
  const referral = book.entry("blood_pressure_referral");
  if (systolic === undefined || diastolic === undefined || referral?.kind !== "judgement") return [];
  if (referral.verdict !== "emergency" && referral.verdict !== "urgent referral") return [];
  const deferred = testDeferral(systolic, diastolic);
  const noTest = deferred ? ", and above 200 systolic or 110 diastolic no exercise test is made" : "";
  return [
    {
      verdict: "stop",
      because: `resting pressure of ${toDecimals(systolic, 0)}/${toDecimals(diastolic, 0)} mmHg needs medical assessment before any exercise${noTest}`,
      source: deferred ? "ESC 2024; ACC/AHA 2002" : "ESC 2024",
    },
  ];
}

/** Reasons from the answers. `maximal` says that a maximal test belongs to the visit. */
export function answerReasons(screening: Screening, maximal: boolean, date: string): Reason[] {
  const reasons: Reason[] = [];
  const add = (verdict: Reason["verdict"], because: string, source: string) =>
    reasons.push({ verdict, because, source });
  const emergency = anyOf(screening.emergency_signs, EMERGENCY);
  if (emergency.answer)
    add("stop", `${list(emergency.yes)}: call for medical help now`, "practice synthesis, from memory");

  const absolute = anyOf(screening.absolute_contraindications, ABSOLUTE);
  if (absolute.answer) add("stop", `${list(absolute.yes)}: no exercise test is made`, "ACC/AHA 2002");

  const planned: Intensity | undefined = maximal ? "maximal" : screening.intended_intensity;
  const uncleared = whyNotCleared(screening.clearance, planned ?? "maximal", date);
  if (uncleared !== undefined) {
    const relative = anyOf(screening.relative_contraindications, RELATIVE);
    if (relative.answer)
      add("refer", `${list(relative.yes)}: a physician decides on exercise; ${uncleared}`, "ACC/AHA 2002");
    reasons.push(...participationReasons(screening, planned, uncleared));
  }
  if (planned === undefined) add("refer", "intended_intensity was not recorded", MISSING);
  const needed = planned === "maximal";
  const gaps = [
    ...(emergency.answer === undefined ? [["signs that need help now", emergency.missing] as const] : []),
    ...(needed && absolute.answer === undefined ? [["absolute contraindications", absolute.missing] as const] : []),
    ...(needed ? relativeGaps(screening) : []),
    ...(uncleared === undefined ? participationGaps(screening) : []), // a clearance does not stand in for an answer
  ];
  for (const [name, missing] of gaps)
    add(
      "refer",
      `${name}: ${missing.length} of the questions not answered (${list(missing.slice(0, 3))}${missing.length > 3 ? " and more" : ""})`,
      MISSING,
    );

  for (const event of screening.events ?? []) {
    const [words, after] = EVENTS[event];
    if (after !== "none") add(after, `${words} during the test`, "AHA 2013 and predecessors");
  }
  return reasons;
}

const MISSING = "a missing answer refers";
const list = (words: readonly string[]): string => words.join(", ");

function relativeGaps(screening: Screening): (readonly [string, readonly string[]])[] {
  const { answer, missing } = anyOf(screening.relative_contraindications, RELATIVE);
  return answer === undefined ? [["relative contraindications", missing]] : [];
}

function participationGaps(screening: Screening): (readonly [string, readonly string[]])[] {
  const symptoms = anyOf(screening.symptoms, SYMPTOMS);
  const disease = anyOf(screening.known_disease, DISEASE);
  return [
    ...(symptoms.answer === undefined ? [["symptoms", symptoms.missing] as const] : []),
    ...(disease.answer === undefined ? [["known disease", disease.missing] as const] : []),
  ];
}

function participationReasons(screening: Screening, planned: Intensity | undefined, uncleared: string): Reason[] {
  const symptoms = anyOf(screening.symptoms, SYMPTOMS);
  const disease = anyOf(screening.known_disease, DISEASE);
  const active = screening.regularly_active;
  const vigorous = planned === undefined || planned === "vigorous" || planned === "maximal";
  const decision = preParticipation(active, symptoms.answer, disease.answer, vigorous);
  if (decision === "proceed") return [];
  const source = "Riebe 2015";
  if (decision === "stop and clear")
    return [
      { verdict: "stop", because: `${list(symptoms.yes)}: stop exercise and seek clearance; ${uncleared}`, source },
    ];
  if (symptoms.answer === true)
    return [{ verdict: "refer", because: `${list(symptoms.yes)}: clearance first; ${uncleared}`, source }];
  if (disease.answer === true)
    return [{ verdict: "refer", because: `known ${list(disease.yes)}: ${decision}; ${uncleared}`, source }];
  const gaps = [
    ...(active === undefined ? ["regularly_active"] : []),
    ...(symptoms.answer === undefined ? [`symptoms (${list(symptoms.missing.slice(0, 3))})`] : []),
    ...(disease.answer === undefined ? [`known disease (${list(disease.missing)})`] : []),
  ];
  return [{ verdict: "refer", because: `not answered: ${list(gaps)}`, source: MISSING }];
}
