/**
 * From recorded results to a programme up to the goal. Works on the printed digits of this and earlier visits, so that a
 * reader can repeat each step; nothing here looks at a clock.
 *
 *     may there be a plan? → demands → intensities → weeks → sessions → strength → what changed → signature
 *
 * Nothing of it reaches the client before it is signed for this visit: the report asks `programme_state`.
 */
import type { Plan } from "../kernel/generated/client.js";
import type { EventProfile } from "../kernel/generated/event-profile.js";
import type { Entry } from "../kernel/measure.js";
import { type Notebook, openNotebook } from "../kernel/notebook.js";
import type { Results } from "../kernel/results.js";
import type { Visit } from "../kernel/visit.js";
import { writeAltitudeNotes } from "./goal/altitude-notes.js";
import { writeShortfall } from "./goal/shortfall.js";
import { intensitiesOf } from "./intensity/domains.js";
import { writeDomains, writeEquivalents } from "./intensity/write-domains.js";
import { writeOverrides } from "./overrides.js";
import { before, numberOf } from "./recorded.js";
import { writeChanges } from "./retest/changes.js";
import { writeDone } from "./retest/done.js";
import { startOf } from "./retest/start.js";
import { type Permit, permitOf } from "./safety/permit.js";
import { writeSheets } from "./safety/sheets.js";
import { whyNoIntervals } from "./safety/symptom-free.js";
import { setByHand, weekSessions } from "./sessions/week-sessions.js";
import { goalOf, settingsOf } from "./settings.js";
import { writeState } from "./state.js";
import { writeStrength } from "./strength/write-strength.js";
import { layOut } from "./weeks/lay-out.js";
import { writeRules } from "./weeks/write-rules.js";
import { writeSessions, writeWeeks } from "./weeks/write-weeks.js";

/** Terrain factors of the load-carriage equation. */
const TERRAIN = { road: 1, "rough path": 1.2, loose: 2.1 } as const;

/** Entries of the sections programme and altitude. Empty where the client's file has no plan block. */
export function plan(
  results: Results,
  visit: Visit,
  earlier: readonly Results[],
  profiles: readonly EventProfile[],
): readonly Entry[] {
  const asked = visit.client.plan;
  if (asked === undefined) return [];
  const book = openNotebook();
  const profile = profiles.find((one) => one.id === asked.profile);
  const visits = [results, ...before(results, earlier)];
  const previous = visits[1];
  const goal = goalOf(visit);
  const told = goal ?? visit.client.goals?.[0];
  writeAltitudeNotes(book, told?.altitude_m ?? profile?.altitude_m);
  writeShortfall(book, results, told?.targets ?? [], profile, profile ? undefined : asked.profile);
  writeSheets(book, visit);
  const done = writeDone(book, results, previous, visit.trainingLog);
  const permit = permitOf(results, visit);
  const noIntervals = whyNoIntervals(visits);
  if (!permit.plan || goal === undefined) {
    const because = permit.plan
      ? "no goal with a date after this visit is stated (goals in client.yaml)."
      : permit.because;
    book.judge("programme_state", "not printed", `No plan is made: ${because}`);
    return book.entries();
  }
  const intensities = intensitiesOf(results, visit);
  const start = startOf(results, previous, done);
  const settings = settingsOf(visit, asked, goal, profile, start?.minutes);
  const forVisit = <T extends { readonly for_visit?: string }>(one: T) =>
    (one.for_visit ?? results.date) === results.date;
  const means = {
    vigorous: permit.vigorous,
    intervals: noIntervals === undefined,
    easyWeeks: permit.easyWeeks,
    heartRate: intensities.heartRateOff === undefined,
    steady: intensities.domains.some((domain) => domain.word === "steady"),
    ...(asked.walk ? { walk: asked.walk } : {}),
    ...(numberOf(results, "body_mass") === undefined ? {} : { massKg: numberOf(results, "body_mass") as number }),
  };
  const own = setByHand((asked.sessions ?? []).filter(forVisit), means);
  const laid = layOut(settings, (asked.weeks ?? []).filter(forVisit), (week) =>
    weekSessions(week, settings, means, own),
  );
  writeVigorous(book, permit, noIntervals);
  writeDomains(book, results, intensities, settings.modes);
  writeEquivalents(book, results, intensities, asked.walk, TERRAIN[asked.walk?.terrain ?? "road"]);
  writeWeeks(book, laid, settings);
  writeSessions(book, laid, intensities);
  writeRules(book, laid, settings);
  writeStrength(book, results, settings);
  writeOverrides(book, asked, laid, settings, means);
  writeGain(book, visit, permit.vigorous);
  if (previous)
    writeChanges(book, results, previous, asked, settings, laid, start?.because ?? "no log, no earlier plan");
  writeState(book, asked as Plan, results.date, laid);
  return book.entries();
}

function writeVigorous(book: Notebook, permit: Permit, noIntervals: string | undefined): void {
  const first =
    permit.easyWeeks > 0
      ? ` The first ${permit.easyWeeks} weeks hold easy sessions only, because regular activity is not recorded: start light to moderate and go on gradually (Riebe 2015).`
      : "";
  const intervals =
    noIntervals === undefined
      ? ""
      : ` Hard intervals are left out: ${noIntervals}. Steady sessions stand in their place.`;
  book.judge(
    "vigorous_sessions",
    !permit.vigorous ? "withheld" : noIntervals === undefined ? "allowed" : "steady only",
    permit.vigorous
      ? `Steady and hard sessions may stand in the plan: ${permit.because}.${first}${intervals}`
      : `Only easy sessions stand in the plan: ${permit.because.replace(/\.$/, "")}. Steady and hard ones follow once clearance is recorded.`,
  );
}

function writeGain(book: Notebook, visit: Visit, vigorous: boolean): void {
  const inside = visit.ageYears >= 18 && visit.ageYears <= 45;
  book.judge(
    "expected_gain",
    "group means only",
    `In 28 controlled trials (723 healthy adults of 18 to 45 years) endurance training raised peak uptake by 4.9 mL/kg/min over no training (95 % limits ±1.4; Milanović 2015, Sports Med 45:1469–1481). People scatter widely about such means, and the lower the start the larger the gain${inside ? "" : "; this client's age lies outside those trials"}. ${vigorous ? "Intervals and continuous work differ little once the dose is alike (Crowley 2022). " : ""}A typical gain is smaller than what one pair of tests can show for sure.`,
    { rule: "expected-gain r1" },
  );
}
