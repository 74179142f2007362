/**
 * Screening: one decision for the visit, "proceed", "refer" or "stop", with every reason. A report leads with a stop and
 * no plan is printed for it. It reads the resting pressure, so it runs after blood pressure.
 */
import { DAYS_OF_12_MONTHS, daysBetween } from "../kernel/days.js";
import type { Screening } from "../kernel/generated/session.js";
import type { Cell } from "../kernel/measure.js";
import type { Notebook } from "../kernel/notebook.js";
import type { Visit } from "../kernel/visit.js";
import { whyNotCleared } from "./screening/clearance.js";
import { ABSOLUTE, DISEASE, EMERGENCY, EVENTS, RELATIVE, SYMPTOMS } from "./screening/lists.js";
import * as participation from "./screening/pre-participation.js";
import { answerReasons, pressureReasons, type Reason } from "./screening/reasons.js";
import { writeReferralFlags } from "./screening/referral-flags.js";

export function deriveScreening(book: Notebook, visit: Visit): void {
  const { session, client } = visit;
  const recorded = client.screening !== undefined || session.screening !== undefined;
  const screening: Screening = { ...client.screening, ...session.screening };
  const maximal = session.incremental !== undefined || session.submaximal?.cycle_maximal_power !== undefined;
  const tested = maximal || testsExercise(visit);
  const reasons = [
    ...pressureReasons(book),
    ...(recorded ? answerReasons(screening, maximal, session.date) : []),
    ...(!recorded && tested ? [UNSCREENED] : []),
    ...staleAnswers(visit),
  ];
  writeReferralFlags(book, visit);
  if (!recorded && !tested && reasons.length === 0) return;
  writeDecision(book, reasons);
  writeSignOff(book, visit);
  if (!recorded) return;
  writeClearance(book, screening, maximal, session.date);
  writeAnswers(book, screening);
  const events = screening.events ?? [];
  if (events.length > 0)
    book.table(
      "test_events",
      [
        { key: "event", title: "What occurred" },
        { key: "after", title: "What follows" },
      ],
      events.map((event): Cell[] => [EVENTS[event][0], EVENTS[event][1]]),
      participation.info,
      [],
    );
}

const UNSCREENED: Reason = {
  verdict: "refer",
  because: "exercise was tested, and no screening is recorded",
  source: "a missing answer refers",
};

/** Answers of client.yaml that are older than 12 months are as good as none; those of the session are of the day. */
function staleAnswers({ session, client }: Visit): Reason[] {
  const asked = session.screening === undefined ? client.screening?.date : session.screening.date;
  if (asked === undefined || daysBetween(asked, session.date) <= DAYS_OF_12_MONTHS) return [];
  return [{ verdict: "refer", because: `the answers of ${asked} are older than 12 months`, source: "Riebe 2015" }];
}

/** Whether the visit asks for more than grip: any test that makes the heart work. */
function testsExercise({ session }: Visit): boolean {
  const strength = Object.keys(session.strength ?? {}).filter((name) => name !== "grip" && name !== "confirmed");
  const blocks = [session.submaximal, session.field_tests, session.hypoxia];
  return strength.length > 0 || blocks.some((block) => block !== undefined);
}

function writeDecision(book: Notebook, reasons: readonly Reason[]): void {
  const verdict = reasons.some((r) => r.verdict === "stop") ? "stop" : reasons.length > 0 ? "refer" : "proceed";
  const sentence = {
    stop: "Do not exercise or test before a physician has looked at this",
    refer: "A physician should be asked before the planned exercise",
    proceed: "The answers give no reason to ask a physician before the planned exercise",
  }[verdict];
  const causes = [...reasons].sort((a, b) => Number(b.verdict === "stop") - Number(a.verdict === "stop"));
  const because = causes.length === 0 ? "" : `: ${causes.map((r) => r.because).join("; ")}`;
  book.judge("screening_decision", verdict, `${sentence}${because}.`, {
    rule: `${participation.info.id} r${participation.info.revision}`,
  });
  if (causes.length === 0) return;
  book.table(
    "screening_reasons",
    [
      { key: "verdict", title: "Verdict" },
      { key: "because", title: "Because" },
      { key: "source", title: "Source" },
    ],
    causes.map((r): Cell[] => [r.verdict, r.because, r.source]),
    participation.info,
    [],
  );
}

function writeSignOff(book: Notebook, visit: Visit): void {
  const sign = visit.laboratory.screening_sign_off;
  if (sign?.by_role === undefined || sign.date === undefined)
    book.judge(
      "physician_sign_off",
      "needed",
      "Published limits were used; they need the responsible physician's sign-off (screening_sign_off in lab.yaml).",
    );
  else book.judge("physician_sign_off", "given", `The limits were agreed by the ${sign.by_role} on ${sign.date}.`);
}

function writeClearance(book: Notebook, screening: Screening, maximal: boolean, date: string): void {
  if (screening.clearance === undefined) return;
  const { by, intensity, date: given } = screening.clearance;
  const why = whyNotCleared(
    screening.clearance,
    maximal ? "maximal" : (screening.intended_intensity ?? "maximal"),
    date,
  );
  book.judge(
    "medical_clearance",
    why === undefined ? "covers the visit" : "does not cover the visit",
    why === undefined ? `Cleared for ${intensity} exercise by ${by} on ${given}.` : `${why}.`,
  );
}

function writeAnswers(book: Notebook, screening: Screening): void {
  const word = (answer: boolean | undefined) => (answer === undefined ? "not answered" : answer ? "yes" : "no");
  const rows = (kind: string, group: object | undefined, words: Readonly<Record<string, string>>): Cell[][] =>
    Object.entries(words).map(([name, question]) => [
      kind,
      question,
      word((group as Readonly<Record<string, boolean | undefined>> | undefined)?.[name]),
    ]);
  book.table(
    "screening_answers",
    [
      { key: "kind", title: "Kind" },
      { key: "question", title: "Question" },
      { key: "answer", title: "Answer" },
    ],
    [
      ["activity", "regularly active for the last 3 months", word(screening.regularly_active)],
      ["plan", "hardest exercise planned", screening.intended_intensity ?? "not answered"],
      ...rows("now", screening.emergency_signs, EMERGENCY),
      ...rows("symptom", screening.symptoms, SYMPTOMS),
      ...rows("disease", screening.known_disease, DISEASE),
      ...rows("absolute", screening.absolute_contraindications, ABSOLUTE),
      ...rows("relative", screening.relative_contraindications, RELATIVE),
      ["readiness", "staff, telephone plan and defibrillator checked", word(screening.emergency_check)],
    ],
    participation.info,
    [],
  );
}
