/** What stands ready and what ends a test or a session: sheets to print, not findings. */
import type { Cell } from "../../kernel/measure.js";
import type { Notebook } from "../../kernel/notebook.js";
import type { Visit } from "../../kernel/visit.js";

const AHA = "AHA 2013 and predecessors, as printed in Am Fam Physician 2017;96(5) and Trials 14:91";
const ATS = "ATS/ACCP statement, as printed in Postgrad Med J";

/** Indications for ending an exercise test. Absolute: end at once. Relative: the person in charge decides. */
const TEST: readonly (readonly [string, string, string])[] = [
  [
    "fall of systolic pressure by more than 10 mmHg despite rising work, with other signs of ischaemia",
    "absolute",
    AHA,
  ],
  ["moderate or severe angina", "absolute", AHA],
  ["ataxia, dizziness or near syncope", "absolute", AHA],
  ["cyanosis or pallor", "absolute", AHA],
  ["ST elevation above 1.0 mm in leads without earlier Q waves (other than aVR, aVL, V1)", "absolute", AHA],
  ["sustained ventricular tachycardia, or another arrhythmia that impairs output", "absolute", AHA],
  ["technical failure of ECG or pressure monitoring", "absolute", AHA],
  ["the client asks to stop", "absolute", AHA],
  ["fall of systolic pressure by more than 10 mmHg below baseline without other signs of ischaemia", "relative", AHA],
  ["fall of systolic pressure by more than 20 mmHg from its highest value in the test", "relative", ATS],
  ["marked ST displacement, horizontal or downsloping, above 2 mm", "relative", AHA],
  ["other arrhythmia; bundle branch block that cannot be told from ventricular tachycardia", "relative", AHA],
  ["fatigue, breathlessness, wheeze, leg cramp or claudication; increasing chest pain", "relative", AHA],
  ["systolic above 250 mmHg or diastolic above 115 mmHg", "relative", AHA],
  ["oxygen saturation of 80 % or less with symptoms", "relative", ATS],
  ["sudden pallor, loss of coordination, confusion, signs of respiratory failure", "absolute", ATS],
];
/** Ends any training session, wherever it takes place. */
const SESSION: readonly (readonly [string, string])[] = [
  ["pain or pressure in chest, neck, jaw or arm", "stop, sit down, call for help"],
  ["fainting, or nearly", "stop, lie down, call for help"],
  ["breathlessness that is out of proportion or does not settle", "stop, call for help"],
  ["palpitations with dizziness", "stop, call for help"],
  ["sudden weakness, confusion, trouble speaking or seeing", "stop, call for help"],
  ["fever, or an infection of the whole body", "do not start; begin again gently once well"],
  ["pain in a joint or muscle that changes how you move", "end the session; speak to the practitioner"],
];

const SHEETS = { id: "stop-criteria", revision: 1 } as const;

export function writeSheets(book: Notebook, visit: Visit): void {
  book.table(
    "stop_criteria",
    [
      { key: "where", title: "Where" },
      { key: "sign", title: "Sign" },
      { key: "action", title: "What follows" },
      { key: "source", title: "Source" },
    ],
    [
      ...SESSION.map(([sign, action]): Cell[] => ["any session", sign, action, "common practice"]),
      ...TEST.map(([sign, kind, source]): Cell[] => [
        "exercise test",
        sign,
        kind === "absolute" ? "end the test" : "the person in charge decides",
        source,
      ]),
    ],
    SHEETS,
    [],
    "The physician responsible for the laboratory agrees these limits; local rules go before them.",
  );
  writeReadiness(book, visit);
  book.judge(
    "scope_of_practice",
    "measures and explains",
    "This laboratory measures, explains and plans training. It makes no diagnosis, gives no advice on drugs, and clears nobody for altitude or surgery: that belongs to licensed practitioners. Local rules go before this page.",
  );
}

function writeReadiness(book: Notebook, visit: Visit): void {
  const readiness = visit.client.plan?.readiness;
  const checked = { ...visit.client.screening, ...visit.session.screening }.emergency_check;
  const said = (value: boolean | undefined, yes: string, no: string, missing: string) =>
    value === undefined ? missing : value ? yes : no;
  const facts = [
    readiness?.supervision === undefined
      ? "Supervision of hard sessions is not recorded"
      : `Hard sessions: ${{ supervised: "supervised", partner: "with a partner who knows what to do", alone: "alone" }[readiness.supervision]}`,
    said(
      readiness?.phone_plan,
      "whom to call is written down",
      "whom to call is not written down",
      "whether it is written down whom to call is not recorded",
    ),
    said(
      readiness?.defibrillator_known,
      "the nearest defibrillator is known",
      "the nearest defibrillator is not known",
      "whether the nearest defibrillator is known is not recorded",
    ),
    said(
      checked,
      "staff, telephone plan and defibrillator of the laboratory were checked before the tests",
      "the laboratory's emergency check was not made before the tests",
      "the laboratory's emergency check is not recorded",
    ),
  ];
  const complete =
    readiness?.supervision !== undefined &&
    readiness.phone_plan === true &&
    readiness.defibrillator_known === true &&
    checked === true;
  book.judge("programme_readiness", complete ? "recorded" : "incomplete", `${facts.join("; ")}.`);
}
