/** The questions of the screening, in plain words, and what each kind of event during a test means afterwards. */
import type {
  AbsoluteContraindications,
  EmergencySigns,
  KnownDisease,
  RelativeContraindications,
  Screening,
  Symptoms,
} from "../../kernel/generated/session.js";

type Words<T> = Readonly<Record<keyof T, string>>;
export const DISEASE: Words<KnownDisease> = {
  cardiovascular: "cardiovascular disease",
  metabolic: "diabetes",
  renal: "renal disease",
};
export const SYMPTOMS: Words<Symptoms> = {
  chest_discomfort: "discomfort of chest, neck, jaw or arm on exertion",
  breathlessness: "breathlessness at rest or with mild effort",
  dizziness_or_syncope: "dizziness or syncope",
  orthopnoea: "breathlessness when lying down or at night",
  ankle_oedema: "swelling of the ankles",
  palpitations: "palpitations or a racing heart",
  claudication: "leg pain on walking that passes at rest",
  heart_murmur: "a known heart murmur",
  unusual_fatigue: "unusual fatigue or breathlessness with usual activity",
};
export const EMERGENCY: Words<EmergencySigns> = {
  ongoing_chest_pain: "chest pain now",
  syncope_today: "syncope today",
  neurological_deficit: "a new neurological deficit",
  severe_breathlessness_at_rest: "severe breathlessness at rest",
};
/** ACC/AHA 2002 as printed in ACSM's Guidelines, Box 3.5 (seen); the last three of AHA 2013 (from memory). */
export const ABSOLUTE: Words<AbsoluteContraindications> = {
  acute_coronary_event: "myocardial infarction within 2 days, another acute cardiac event or ECG change of ischaemia",
  unstable_angina: "unstable angina",
  uncontrolled_arrhythmia: "uncontrolled arrhythmia",
  symptomatic_aortic_stenosis: "symptomatic severe aortic stenosis",
  uncontrolled_heart_failure: "uncontrolled symptomatic heart failure",
  pulmonary_embolism: "acute pulmonary embolus or infarction",
  myocarditis_or_pericarditis: "acute myocarditis or pericarditis",
  aortic_dissection: "suspected or known dissecting aneurysm",
  acute_infection: "acute systemic infection",
  active_endocarditis: "active endocarditis",
  deep_vein_thrombosis: "deep vein thrombosis",
  unsafe_disability: "a disability that precludes safe testing",
};
/** ACC/AHA 2002 as printed in ACSM's Guidelines, Box 3.5 (seen); the last two of AHA 2013 (from memory). */
export const RELATIVE: Words<RelativeContraindications> = {
  left_main_stenosis: "left main coronary stenosis",
  valve_disease: "moderate stenotic valve disease",
  electrolyte_abnormality: "electrolyte abnormality",
  arrhythmia: "tachy- or bradyarrhythmia",
  outflow_obstruction: "hypertrophic cardiomyopathy or another outflow obstruction",
  disorder_worsened_by_exercise: "a disorder of nerves, muscles or joints made worse by exercise",
  high_degree_av_block: "high-degree atrioventricular block",
  ventricular_aneurysm: "ventricular aneurysm",
  uncontrolled_metabolic_disease: "uncontrolled metabolic disease",
  chronic_infection: "chronic infectious disease",
  impairment_of_effort: "an impairment that prevents adequate effort",
  recent_stroke: "recent stroke or transient ischaemic attack",
  uncorrected_anaemia: "uncorrected anaemia",
};

type Event = NonNullable<Screening["events"]>[number];
/** Fletcher GF et al. 2013 and predecessors, as printed in Am Fam Physician 96(5) and Trials 14:91, Table 6 (seen). */
export const EVENTS: Readonly<Record<Event, readonly [words: string, after: "stop" | "refer" | "none"]>> = {
  "systolic-fall-with-ischaemia": ["fall of systolic pressure with other evidence of ischaemia", "stop"],
  "moderate-or-severe-angina": ["moderate or severe angina", "stop"],
  "nervous-system-symptoms": ["ataxia, dizziness or near syncope", "stop"],
  "poor-perfusion": ["cyanosis or pallor", "stop"],
  "st-elevation": ["ST elevation as reported by the supervising clinician", "stop"],
  "sustained-ventricular-tachycardia": [
    "sustained ventricular tachycardia or another arrhythmia that impairs output",
    "stop",
  ],
  "monitoring-failure": ["failure of the monitoring", "none"],
  "client-request": ["request of the client", "none"],
  "systolic-fall-without-ischaemia": ["fall of systolic pressure without other evidence of ischaemia", "refer"],
  "marked-st-displacement": ["marked ST displacement as reported by the supervising clinician", "refer"],
  "other-arrhythmia": ["arrhythmia other than sustained ventricular tachycardia", "refer"],
  "bundle-branch-block": ["bundle branch block not distinguishable from tachycardia", "refer"],
  "fatigue-or-breathlessness": ["fatigue, breathlessness, wheeze or leg cramp", "none"],
  "increasing-chest-pain": ["increasing chest pain", "stop"],
  "hypertensive-response": ["pressure above 250 systolic or 115 diastolic", "refer"],
  "low-saturation-with-symptoms": ["saturation of 80 % or below with symptoms", "stop"],
};

/** Yes when any answer is yes, no when all are no, undefined otherwise; with the names of both kinds. */
export function anyOf<T extends object>(
  group: T | undefined,
  words: Words<T>,
): { readonly answer: boolean | undefined; readonly yes: readonly string[]; readonly missing: readonly string[] } {
  const names = Object.keys(words) as (keyof T)[];
  const yes = names.filter((name) => group?.[name] === true).map((name) => words[name]);
  const missing = names.filter((name) => group?.[name] === undefined).map((name) => words[name]);
  return { answer: yes.length > 0 ? true : missing.length > 0 ? undefined : false, yes, missing };
}
