import { EMERGENCY, SYMPTOMS } from "../../src/derive/screening/lists.js";
import type { Screening, Session } from "../../src/kernel/generated/session.js";
import { rule as ready } from "../../src/validity/screening/emergency-readiness.js";
import { rule as age } from "../../src/validity/screening/screening-age.js";
import { rule as recorded } from "../../src/validity/screening/screening-recorded.js";
import { rule as signOff } from "../../src/validity/screening/sign-off.js";
import { rule as against } from "../../src/validity/screening/tested-against-decision.js";
import { check } from "./findings-of.js";

const no = (words: object) => Object.fromEntries(Object.keys(words).map((name) => [name, false]));
const clear: Screening = {
  regularly_active: true,
  known_disease: { cardiovascular: false, metabolic: false, renal: false },
  symptoms: no(SYMPTOMS),
  emergency_signs: no(EMERGENCY),
  intended_intensity: "vigorous",
};
const run: Partial<Session> = { field_tests: { twelve_minute_run: { distance_m: 2600 } } };
check(recorded, [
  ["nothing tested", {}, []],
  [
    "grip alone, with a pressure that stops",
    {
      strength: { grip: { left_kg: 30 } },
      blood_pressure: { readings: [{ systolic_mmhg: 190, diastolic_mmhg: 95 }] },
    },
    [],
  ],
  ["push-ups, not screened", { strength: { push_ups: { repetitions: 20 } } }, ["weakens: not recorded"]],
  ["tested, not screened", run, ["weakens: not recorded"]],
  ["tested and screened", { ...run, screening: {} }, []],
  ["screened in client.yaml", run, [], { client: { screening: {} } }],
]);
const answered = (screening: Screening) => ({ client: { screening } });
check(age, [
  ["on the day", { screening: {} }, [], answered({ date: "2020-01-01" })],
  ["no date", {}, ["record: not recorded"], answered({})],
  ["the same day", {}, [], answered({ date: "2026-03-02" })],
  ["366 days", {}, [], answered({ date: "2025-03-01" })], // to 2026-03-02
  ["367 days", {}, ["weakens"], answered({ date: "2025-02-28" })],
  ["after the visit", {}, ["weakens"], answered({ date: "2026-03-03" })],
]);
const sign = (review_by?: string) => ({
  laboratory: {
    screening_sign_off: { by_role: "sports physician", date: "2025-01-10", ...(review_by ? { review_by } : {}) },
  },
});
check(signOff, [
  ["no limits used", {}, []],
  ["nobody signed", { screening: {} }, ["record: not recorded"]],
  ["signed", { screening: {} }, [], sign()],
  ["review today", { screening: {} }, [], sign("2026-03-02")],
  ["review overdue", { screening: {} }, ["record"], sign("2026-03-01")],
]);
const incremental = {} as NonNullable<Session["incremental"]>;
check(ready, [
  ["no maximal test", { screening: {} }, []],
  ["not recorded", { incremental, screening: {} }, ["record: not recorded"]],
  ["checked", { incremental, screening: { emergency_check: true } }, []],
  ["not checked", { incremental, screening: { emergency_check: false } }, ["weakens"]],
]);
check(against, [
  ["refer and tested", { ...run, screening: {} }, ["weakens"]],
  [
    "stopped by what occurred in the test",
    { ...run, screening: { ...clear, events: ["moderate-or-severe-angina"] } },
    [],
  ],
  [
    "symptoms before the test",
    { ...run, screening: { ...clear, symptoms: { ...no(SYMPTOMS), palpitations: true } } },
    ["weakens"],
  ],
  ["nothing against it", { ...run, screening: clear }, []],
  ["refer, not tested", { screening: {} }, []],
  ["not screened: another rule says so", run, []],
]);
