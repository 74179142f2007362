/* Made by npm run generate from schema/client.schema.json. Do not edit. */

/**
 * Says that an unusual value is true, and why you are sure. Either a mapping of key and reason, {mass_kg: "weighed twice"}, or one sentence that covers every value of the mapping it stands in.
 */
export type Confirmed =
  | string
  | {
      /**
       * Why you are sure of the value with this key.
       */
      [k: string]: string;
    };

/**
 * Who the client is to the laboratory: a pseudonym, what reference values need, what they want to reach. No name and no contact data; those are kept elsewhere.
 */
export interface Client {
  /**
   * Format of this file. Write: client 1
   */
  waymark: "client 1";
  /**
   * Pseudonym, equal to the folder name, in quotes: "c-017". Letters, digits and hyphens; it must not hint at the person.
   */
  id: string;
  /**
   * Date of birth, year-month-day. Age at each visit follows from it. If a full date is more than your code allows you to keep, use the first of the month.
   */
  birth_date: string;
  /**
   * Sex for reference values: most published tables and equations exist for female and male only.
   */
  sex: "female" | "male";
  /**
   * What a reader should know about the choice of reference group, if anything.
   */
  reference_note?: string;
  consent?: Consent;
  /**
   * What the client came for, with a date. The first is the main one.
   *
   * @maxItems 20
   */
  goals?:
    | []
    | [Goal]
    | [Goal, Goal]
    | [Goal, Goal, Goal]
    | [Goal, Goal, Goal, Goal]
    | [Goal, Goal, Goal, Goal, Goal]
    | [Goal, Goal, Goal, Goal, Goal, Goal]
    | [Goal, Goal, Goal, Goal, Goal, Goal, Goal]
    | [Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal]
    | [Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal]
    | [Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal]
    | [Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal]
    | [Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal]
    | [Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal]
    | [Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal]
    | [Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal]
    | [Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal]
    | [Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal]
    | [Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal]
    | [Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal, Goal]
    | [
        Goal,
        Goal,
        Goal,
        Goal,
        Goal,
        Goal,
        Goal,
        Goal,
        Goal,
        Goal,
        Goal,
        Goal,
        Goal,
        Goal,
        Goal,
        Goal,
        Goal,
        Goal,
        Goal,
        Goal
      ];
  /**
   * At most five measures chosen at baseline to judge the whole undertaking by, as ids of results.yaml. Choose them before the retest: choosing afterwards finds luck.
   *
   * @maxItems 5
   */
  primary_outcomes?:
    | []
    | [string]
    | [string, string]
    | [string, string, string]
    | [string, string, string, string]
    | [string, string, string, string, string];
  /**
   * Classes of medication that change a test or its reading; classes only, no doses.
   */
  medication?: (
    | "beta blocker"
    | "calcium-channel blocker"
    | "other heart-rate lowering"
    | "diuretic"
    | "ace inhibitor or arb"
    | "nitrate"
    | "bronchodilator"
    | "inhaled corticosteroid"
    | "oral corticosteroid"
    | "thyroid hormone"
    | "stimulant"
    | "insulin"
    | "other glucose lowering"
    | "glp-1 agonist"
    | "anticoagulant"
    | "psychotropic"
    | "hormonal contraceptive"
    | "hormone therapy"
    | "acetazolamide"
    | "iron"
    | "erythropoietin-stimulating agent"
    | "anabolic agent"
    | "none"
  )[];
  /**
   * Usual activity before the undertaking.
   */
  activity?: "inactive" | "recreational" | "trained" | "highly trained";
  /**
   * Main sport or physical work.
   */
  sport?: string;
  screening?: Screening;
  choices?: Choices;
  plan?: Plan;
  /**
   * Anything a colleague should know years later. No names, no contact data.
   *
   * @maxItems 200
   */
  remarks?: string[];
  confirmed?: Confirmed;
}
/**
 * That the client agreed in writing to testing and to keeping this record.
 */
export interface Consent {
  /**
   * Date of the signature. Visits before it are pointed out.
   */
  date: string;
  /**
   * What was agreed to.
   */
  to?: ("testing" | "keeping the record" | "research" | "sending results to a physician")[];
  /**
   * Date on which consent was withdrawn.
   */
  withdrawn?: string;
}
export interface Goal {
  /**
   * In a few words: a season at a high observatory, a 2000 m race.
   */
  goal: string;
  /**
   * Date on which it must be reached.
   */
  date?: string;
  /**
   * Altitude of the place, if the goal is high.
   */
  altitude_m?: number;
  /**
   * Date of arrival at altitude.
   */
  arrival?: string;
  /**
   * Measures to reach, by id as results.yaml writes it.
   *
   * @maxItems 20
   */
  targets?:
    | []
    | [Target]
    | [Target, Target]
    | [Target, Target, Target]
    | [Target, Target, Target, Target]
    | [Target, Target, Target, Target, Target]
    | [Target, Target, Target, Target, Target, Target]
    | [Target, Target, Target, Target, Target, Target, Target]
    | [Target, Target, Target, Target, Target, Target, Target, Target]
    | [Target, Target, Target, Target, Target, Target, Target, Target, Target]
    | [Target, Target, Target, Target, Target, Target, Target, Target, Target, Target]
    | [Target, Target, Target, Target, Target, Target, Target, Target, Target, Target, Target]
    | [Target, Target, Target, Target, Target, Target, Target, Target, Target, Target, Target, Target]
    | [Target, Target, Target, Target, Target, Target, Target, Target, Target, Target, Target, Target, Target]
    | [Target, Target, Target, Target, Target, Target, Target, Target, Target, Target, Target, Target, Target, Target]
    | [
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target
      ]
    | [
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target
      ]
    | [
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target
      ]
    | [
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target
      ]
    | [
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target
      ]
    | [
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target,
        Target
      ];
}
export interface Target {
  /**
   * Id of the measure (vo2_peak_per_mass).
   */
  measure: string;
  /**
   * Lower bound, in the measure's unit.
   */
  at_least?: number;
  /**
   * Upper bound, in the measure's unit.
   */
  at_most?: number;
  /**
   * Smallest change in this measure that matters to the client, in its unit: chances of a worthwhile change are given against it. Without it a fifth of the spread between people is used, where that is known.
   */
  worthwhile?: number;
  /**
   * Who set it: a selection standard, a coach, the client.
   */
  from?: string;
}
/**
 * Health screening before exercise, as answered on the day. An answer that is missing resolves to refer, never to proceed. Answers stay with the visit; names and addresses do not.
 */
export interface Screening {
  /**
   * Date of the answers, where not the date of the visit.
   */
  date?: string;
  /**
   * Planned activity of moderate intensity, 30 minutes or more on 3 or more days a week, for the last 3 months. true or false; left out means not answered, which resolves to refer.
   */
  regularly_active?: boolean;
  known_disease?: KnownDisease;
  symptoms?: Symptoms;
  emergency_signs?: EmergencySigns;
  absolute_contraindications?: AbsoluteContraindications;
  relative_contraindications?: RelativeContraindications;
  /**
   * Hardest exercise planned, tests included.
   */
  intended_intensity?: "light" | "moderate" | "vigorous" | "maximal";
  clearance?: Clearance;
  /**
   * What ended or marked an exercise test of this visit, from the published lists of reasons to stop.
   */
  events?: (
    | "systolic-fall-with-ischaemia"
    | "moderate-or-severe-angina"
    | "nervous-system-symptoms"
    | "poor-perfusion"
    | "st-elevation"
    | "sustained-ventricular-tachycardia"
    | "monitoring-failure"
    | "client-request"
    | "systolic-fall-without-ischaemia"
    | "marked-st-displacement"
    | "other-arrhythmia"
    | "bundle-branch-block"
    | "fatigue-or-breathlessness"
    | "increasing-chest-pain"
    | "hypertensive-response"
    | "low-saturation-with-symptoms"
  )[];
  /**
   * True where staff, telephone plan and defibrillator were checked before the tests.
   */
  emergency_check?: boolean;
  confirmed?: Confirmed;
}
/**
 * Known disease.
 */
export interface KnownDisease {
  /**
   * Cardiac, peripheral vascular or cerebrovascular disease. true or false; left out means not answered, which resolves to refer.
   */
  cardiovascular?: boolean;
  /**
   * Diabetes, type 1 or 2. true or false; left out means not answered, which resolves to refer.
   */
  metabolic?: boolean;
  /**
   * Renal disease. true or false; left out means not answered, which resolves to refer.
   */
  renal?: boolean;
}
/**
 * Signs and symptoms, at rest or during activity.
 */
export interface Symptoms {
  /**
   * Pain or discomfort of chest, neck, jaw or arm on exertion. true or false; left out means not answered, which resolves to refer.
   */
  chest_discomfort?: boolean;
  /**
   * Breathlessness at rest or with mild effort. true or false; left out means not answered, which resolves to refer.
   */
  breathlessness?: boolean;
  /**
   * Dizziness or syncope. true or false; left out means not answered, which resolves to refer.
   */
  dizziness_or_syncope?: boolean;
  /**
   * Breathlessness lying down or waking at night breathless. true or false; left out means not answered, which resolves to refer.
   */
  orthopnoea?: boolean;
  /**
   * Swelling of the ankles. true or false; left out means not answered, which resolves to refer.
   */
  ankle_oedema?: boolean;
  /**
   * Palpitations or tachycardia. true or false; left out means not answered, which resolves to refer.
   */
  palpitations?: boolean;
  /**
   * Leg pain on walking that passes at rest. true or false; left out means not answered, which resolves to refer.
   */
  claudication?: boolean;
  /**
   * Known heart murmur. true or false; left out means not answered, which resolves to refer.
   */
  heart_murmur?: boolean;
  /**
   * Unusual fatigue or breathlessness with usual activity. true or false; left out means not answered, which resolves to refer.
   */
  unusual_fatigue?: boolean;
}
/**
 * Signs that need help now.
 */
export interface EmergencySigns {
  /**
   * Chest pain now. true or false; left out means not answered, which resolves to refer.
   */
  ongoing_chest_pain?: boolean;
  /**
   * Syncope today. true or false; left out means not answered, which resolves to refer.
   */
  syncope_today?: boolean;
  /**
   * New neurological deficit. true or false; left out means not answered, which resolves to refer.
   */
  neurological_deficit?: boolean;
  /**
   * Severe breathlessness at rest. true or false; left out means not answered, which resolves to refer.
   */
  severe_breathlessness_at_rest?: boolean;
}
/**
 * Findings with which no exercise test is made. To be answered before a maximal test.
 */
export interface AbsoluteContraindications {
  /**
   * Myocardial infarction within 2 days, another acute cardiac event, or a recent ECG change suggesting ischaemia. true or false; left out means not answered, which resolves to refer.
   */
  acute_coronary_event?: boolean;
  /**
   * Unstable angina. true or false; left out means not answered, which resolves to refer.
   */
  unstable_angina?: boolean;
  /**
   * Uncontrolled arrhythmia with symptoms or haemodynamic compromise. true or false; left out means not answered, which resolves to refer.
   */
  uncontrolled_arrhythmia?: boolean;
  /**
   * Symptomatic severe aortic stenosis. true or false; left out means not answered, which resolves to refer.
   */
  symptomatic_aortic_stenosis?: boolean;
  /**
   * Uncontrolled symptomatic heart failure. true or false; left out means not answered, which resolves to refer.
   */
  uncontrolled_heart_failure?: boolean;
  /**
   * Acute pulmonary embolus or infarction. true or false; left out means not answered, which resolves to refer.
   */
  pulmonary_embolism?: boolean;
  /**
   * Acute myocarditis or pericarditis. true or false; left out means not answered, which resolves to refer.
   */
  myocarditis_or_pericarditis?: boolean;
  /**
   * Suspected or known dissecting aneurysm. true or false; left out means not answered, which resolves to refer.
   */
  aortic_dissection?: boolean;
  /**
   * Acute systemic infection with fever, aches or swollen glands. true or false; left out means not answered, which resolves to refer.
   */
  acute_infection?: boolean;
  /**
   * Active endocarditis. true or false; left out means not answered, which resolves to refer.
   */
  active_endocarditis?: boolean;
  /**
   * Deep vein thrombosis. true or false; left out means not answered, which resolves to refer.
   */
  deep_vein_thrombosis?: boolean;
  /**
   * Physical disability that precludes safe testing. true or false; left out means not answered, which resolves to refer.
   */
  unsafe_disability?: boolean;
}
/**
 * Findings with which a physician decides whether a test is made. To be answered before a maximal test.
 */
export interface RelativeContraindications {
  /**
   * Left main coronary stenosis. true or false; left out means not answered, which resolves to refer.
   */
  left_main_stenosis?: boolean;
  /**
   * Moderate stenotic valve disease. true or false; left out means not answered, which resolves to refer.
   */
  valve_disease?: boolean;
  /**
   * Electrolyte abnormality. true or false; left out means not answered, which resolves to refer.
   */
  electrolyte_abnormality?: boolean;
  /**
   * Tachy- or bradyarrhythmia. true or false; left out means not answered, which resolves to refer.
   */
  arrhythmia?: boolean;
  /**
   * Hypertrophic cardiomyopathy or other outflow obstruction. true or false; left out means not answered, which resolves to refer.
   */
  outflow_obstruction?: boolean;
  /**
   * Neuromuscular, musculoskeletal or rheumatoid disorder made worse by exercise. true or false; left out means not answered, which resolves to refer.
   */
  disorder_worsened_by_exercise?: boolean;
  /**
   * High-degree atrioventricular block. true or false; left out means not answered, which resolves to refer.
   */
  high_degree_av_block?: boolean;
  /**
   * Ventricular aneurysm. true or false; left out means not answered, which resolves to refer.
   */
  ventricular_aneurysm?: boolean;
  /**
   * Uncontrolled diabetes, thyrotoxicosis or myxoedema. true or false; left out means not answered, which resolves to refer.
   */
  uncontrolled_metabolic_disease?: boolean;
  /**
   * Chronic infectious disease. true or false; left out means not answered, which resolves to refer.
   */
  chronic_infection?: boolean;
  /**
   * Mental or physical impairment that prevents adequate effort. true or false; left out means not answered, which resolves to refer.
   */
  impairment_of_effort?: boolean;
  /**
   * Recent stroke or transient ischaemic attack. true or false; left out means not answered, which resolves to refer.
   */
  recent_stroke?: boolean;
  /**
   * Uncorrected anaemia. true or false; left out means not answered, which resolves to refer.
   */
  uncorrected_anaemia?: boolean;
}
/**
 * Medical clearance for exercise.
 */
export interface Clearance {
  /**
   * Role of the person who gave it, such as physician. No name.
   */
  by: string;
  /**
   * Date of the clearance.
   */
  date: string;
  /**
   * Hardest exercise it covers.
   */
  intensity: "light" | "moderate" | "vigorous" | "maximal";
  /**
   * True where signs, symptoms or disease changed since the clearance.
   */
  change_since?: boolean;
}
/**
 * Choices that change numbers. House default in lab.yaml; a client or a session may set its own. They are written into results.yaml and must not move between visits that are compared.
 */
export interface Choices {
  /**
   * Length of the averaging window for peak values. The window alone moves VO2peak by 4 to 10 %.
   */
  peak_window_s?: 10 | 15 | 20 | 30 | 60;
  /**
   * Fractions of O2 and CO2 taken for dry room air where the session states that room air was inspired and does not give its own.
   */
  room_air?: "0.2093/0.0003" | "0.2095/0.0004";
  /**
   * Equation for energy expenditure from gas exchange. weir-1949: 3.941 and 1.106 kcal/L · weir-short: 3.9 and 1.1 · brockway-1987.
   */
  energy_equation?: "weir-1949" | "weir-short" | "brockway-1987";
  /**
   * Prediction that measured resting energy expenditure is compared with.
   */
  resting_prediction?:
    | "mifflin-st-jeor"
    | "harris-benedict-revised"
    | "harris-benedict-1919"
    | "cunningham-1980"
    | "cunningham-1991"
    | "owen"
    | "schofield";
  /**
   * Classes of resting blood pressure.
   */
  blood_pressure_scheme?: "acc-aha-2017" | "esh-2023" | "esc-2024";
  /**
   * Classes of body mass index. who-2000: international · who-asian-2004: action points for Asian populations; set it only where the client chose it.
   */
  body_mass_index_classes?: "who-2000" | "who-asian-2004";
  /**
   * Equation from body density (skinfolds) to fat share.
   */
  density_to_fat?: "siri" | "brozek";
  /**
   * Prediction of maximal heart rate; used only where none was measured, and always with its standard error.
   */
  hrmax_equation?: "tanaka-2001" | "gellish-2007" | "nes-2013";
  /**
   * Reference for VO2peak. vo2peak-by-mode: US registry 2015 for the treadmill, 2022 for men on the cycle · registry-2022: US registry 2022 for the same · registry-2022-figure: women on the cycle, quartiles read from a figure of that registry · ship-2009: German population study, cycle only, women and men · or a word of the laboratory's own tables.
   */
  vo2_reference?: string;
  /**
   * Equation that measured VO2peak is given in percent of. by-mode: Myers 2017 for the treadmill, Hansen 1984 for the cycle · friend-2018: one equation for both modes · none. Always printed with its name, and with z where a standard error is published.
   */
  vo2_prediction?: "by-mode" | "friend-2018" | "jones-1985" | "hansen-1984" | "none";
  /**
   * Named classes of VO2peak shown beside its percentile.
   */
  vo2_classes?: "none" | "astrand-1960";
  /**
   * Reference table for hand grip, by the word its tables give (waymark norms lists them). germany-height: by age and stature · germany-age: by age · the table must match the dynamometer.
   */
  grip_reference?: string;
  /**
   * Reference tables for body composition by DXA. by-maker: Ofenheimer 2020 for ge-lunar, Kirk 2021 for hologic · kelly-2009: US adults, hologic, lean with bone.
   */
  dxa_reference?: string;
  /**
   * Group that some legacy tables are split by (Asian action points of the body mass index, NHANES III spirometry). State it only with the client's agreement; no default reference needs it.
   */
  population_group?: "not stated" | "asian" | "white" | "african-american" | "mexican-american";
  /**
   * Lactate threshold that is followed for the client.
   */
  lactate_definition?:
    "baseline-plus-0.5" | "baseline-plus-1.0" | "fixed-2" | "fixed-4" | "log-log" | "dmax" | "modified-dmax";
  /**
   * Minutes dropped at the start of the resting measurement, while the client settles under the hood or mask.
   */
  rest_settling_min?: 0 | 5 | 10 | 15;
  /**
   * Length of the steady window at rest, in whole minutes.
   */
  rest_window_min?: 5 | 10 | 15;
  /**
   * first-steady: the first window in which the minute values of VO2 and of VCO2 each vary by no more than 10 % · all-after-settling: the mean of everything after the settling time. A lowest window reads too low and is not offered.
   */
  rest_window_rule?: "first-steady" | "all-after-settling";
  /**
   * Edition of the pre-test conditions for resting metabolic rate that the preparation is held against.
   */
  rest_conditions?: "evidence-review-2015" | "practitioner-instructions-2006";
  /**
   * Equation for fat and carbohydrate oxidation, at rest and in steady exercise. jeukendrup-wallis-2005 is for exercise; at rest its glucose-based parent peronnet-massicotte-1991 is used instead.
   */
  substrate_equation?: "frayn-1983" | "peronnet-massicotte-1991" | "jeukendrup-wallis-2005";
  /**
   * Length of the part of an RR record that is used. 300 is the standard short record; variability from records of different length must not be compared.
   */
  hrv_window_s?: 60 | 120 | 300;
  /**
   * Part dropped at the start of an RR record.
   */
  hrv_settling_s?: 0 | 60 | 120 | 300;
  /**
   * Model for critical power and critical speed. hyperbolic fits time, where the error is; the other two are straight lines. All three are shown.
   */
  critical_power_model?: "hyperbolic" | "work-time" | "inverse-time";
  /**
   * Definition of the speed at VO2max. daniels: line through the submaximal stages · lacour: mean cost above standing · di-prampero: mean gross cost · completed-stage: highest completed stage · pro-rata: with the finished part of the last stage.
   */
  vvo2max_definition?: "daniels" | "lacour" | "di-prampero" | "completed-stage" | "pro-rata";
  /**
   * How much earlier than the moment of the threshold the speed, grade or power is read. 0: as reached. In a ramp VO2 follows the load with a delay (mean response time, about 30 to 60 s), so the load that would hold this VO2 steadily is lower than the one reached.
   */
  threshold_load_lag_s?: 0 | 30 | 45 | 60;
  /**
   * Reference equations for spirometry. gli-global-2022 is race-neutral; nhanes-1999 is split by group and needs population_group.
   */
  lung_reference?: "gli-global-2022" | "nhanes-1999";
}
/**
 * What the programme up to the goal must fit: the client's week, limits, and the demands of the goal. The build lays out the weeks; what the practitioner writes here overrides it, is kept and is checked. Nothing of it reaches the client before it is signed.
 */
export interface Plan {
  /**
   * Id of the event-demand profile the goal is held against: one of the built-in ones (multi-day-hut-walk, high-observatory-season, six-hour-coastal-row, loaded-stair-selection, ten-kilometre-run) or a file of the laboratory's own in profiles/.
   */
  profile?: string;
  /**
   * Days a week the client can train, strength work included.
   */
  days_per_week?: number;
  /**
   * Hours a week the client can give at most, strength work included. The weeks rise towards it and never pass it.
   */
  hours_per_week?: number;
  /**
   * Hours a week the client trains now: the first week starts there. Left out, the start is a convention by usual activity, and the plan says so.
   */
  hours_now?: number;
  /**
   * Weekdays for training; as many as days_per_week. Left out, they are spread over the week.
   *
   * @minItems 1
   * @maxItems 7
   */
  training_days?:
    | ["monday" | "tuesday" | "wednesday" | "thursday" | "friday" | "saturday" | "sunday"]
    | [
        "monday" | "tuesday" | "wednesday" | "thursday" | "friday" | "saturday" | "sunday",
        "monday" | "tuesday" | "wednesday" | "thursday" | "friday" | "saturday" | "sunday"
      ]
    | [
        "monday" | "tuesday" | "wednesday" | "thursday" | "friday" | "saturday" | "sunday",
        "monday" | "tuesday" | "wednesday" | "thursday" | "friday" | "saturday" | "sunday",
        "monday" | "tuesday" | "wednesday" | "thursday" | "friday" | "saturday" | "sunday"
      ]
    | [
        "monday" | "tuesday" | "wednesday" | "thursday" | "friday" | "saturday" | "sunday",
        "monday" | "tuesday" | "wednesday" | "thursday" | "friday" | "saturday" | "sunday",
        "monday" | "tuesday" | "wednesday" | "thursday" | "friday" | "saturday" | "sunday",
        "monday" | "tuesday" | "wednesday" | "thursday" | "friday" | "saturday" | "sunday"
      ]
    | [
        "monday" | "tuesday" | "wednesday" | "thursday" | "friday" | "saturday" | "sunday",
        "monday" | "tuesday" | "wednesday" | "thursday" | "friday" | "saturday" | "sunday",
        "monday" | "tuesday" | "wednesday" | "thursday" | "friday" | "saturday" | "sunday",
        "monday" | "tuesday" | "wednesday" | "thursday" | "friday" | "saturday" | "sunday",
        "monday" | "tuesday" | "wednesday" | "thursday" | "friday" | "saturday" | "sunday"
      ]
    | [
        "monday" | "tuesday" | "wednesday" | "thursday" | "friday" | "saturday" | "sunday",
        "monday" | "tuesday" | "wednesday" | "thursday" | "friday" | "saturday" | "sunday",
        "monday" | "tuesday" | "wednesday" | "thursday" | "friday" | "saturday" | "sunday",
        "monday" | "tuesday" | "wednesday" | "thursday" | "friday" | "saturday" | "sunday",
        "monday" | "tuesday" | "wednesday" | "thursday" | "friday" | "saturday" | "sunday",
        "monday" | "tuesday" | "wednesday" | "thursday" | "friday" | "saturday" | "sunday"
      ]
    | [
        "monday" | "tuesday" | "wednesday" | "thursday" | "friday" | "saturday" | "sunday",
        "monday" | "tuesday" | "wednesday" | "thursday" | "friday" | "saturday" | "sunday",
        "monday" | "tuesday" | "wednesday" | "thursday" | "friday" | "saturday" | "sunday",
        "monday" | "tuesday" | "wednesday" | "thursday" | "friday" | "saturday" | "sunday",
        "monday" | "tuesday" | "wednesday" | "thursday" | "friday" | "saturday" | "sunday",
        "monday" | "tuesday" | "wednesday" | "thursday" | "friday" | "saturday" | "sunday",
        "monday" | "tuesday" | "wednesday" | "thursday" | "friday" | "saturday" | "sunday"
      ];
  /**
   * Weekday of the longest session. Left out: the last training day of the week.
   */
  long_day?: "monday" | "tuesday" | "wednesday" | "thursday" | "friday" | "saturday" | "sunday";
  /**
   * Kinds of endurance training the client prefers, first choice first.
   *
   * @minItems 1
   * @maxItems 6
   */
  modes?:
    | ["walk" | "run" | "cycle" | "row" | "ski" | "swim"]
    | ["walk" | "run" | "cycle" | "row" | "ski" | "swim", "walk" | "run" | "cycle" | "row" | "ski" | "swim"]
    | [
        "walk" | "run" | "cycle" | "row" | "ski" | "swim",
        "walk" | "run" | "cycle" | "row" | "ski" | "swim",
        "walk" | "run" | "cycle" | "row" | "ski" | "swim"
      ]
    | [
        "walk" | "run" | "cycle" | "row" | "ski" | "swim",
        "walk" | "run" | "cycle" | "row" | "ski" | "swim",
        "walk" | "run" | "cycle" | "row" | "ski" | "swim",
        "walk" | "run" | "cycle" | "row" | "ski" | "swim"
      ]
    | [
        "walk" | "run" | "cycle" | "row" | "ski" | "swim",
        "walk" | "run" | "cycle" | "row" | "ski" | "swim",
        "walk" | "run" | "cycle" | "row" | "ski" | "swim",
        "walk" | "run" | "cycle" | "row" | "ski" | "swim",
        "walk" | "run" | "cycle" | "row" | "ski" | "swim"
      ]
    | [
        "walk" | "run" | "cycle" | "row" | "ski" | "swim",
        "walk" | "run" | "cycle" | "row" | "ski" | "swim",
        "walk" | "run" | "cycle" | "row" | "ski" | "swim",
        "walk" | "run" | "cycle" | "row" | "ski" | "swim",
        "walk" | "run" | "cycle" | "row" | "ski" | "swim",
        "walk" | "run" | "cycle" | "row" | "ski" | "swim"
      ];
  /**
   * What the client can use. Strength work uses only this and the body's own weight.
   */
  equipment?: (
    | "none"
    | "barbell"
    | "dumbbells"
    | "machines"
    | "kettlebell"
    | "bands"
    | "pull-up bar"
    | "step or box"
    | "rucksack"
    | "treadmill"
    | "cycle ergometer"
    | "rowing ergometer"
    | "heart-rate monitor"
    | "power meter"
  )[];
  /**
   * Experience of strength training: novice (none, or lapsed for years), intermediate (about 6 months), advanced (years). Left out: novice, and the plan says so.
   */
  strength_level?: "novice" | "intermediate" | "advanced";
  /**
   * What must be kept out of the programme, by kind of strain; no diagnosis and no names.
   *
   * @maxItems 24
   */
  injuries?: Injury[];
  /**
   * What else limits the programme: shift work, travel, weeks away. Printed, not interpreted.
   *
   * @maxItems 24
   */
  limits?: string[];
  /**
   * Largest rise of a week's minutes over the hardest week before it. A convention of the trade, not evidence; default 10.
   */
  progression_pct?: number;
  /**
   * Every how many weeks one is easier. A convention of the trade; default 4.
   */
  easier_every?: number;
  /**
   * Minutes of an easier week, of the week before. A convention of the trade; default 60.
   */
  easier_pct?: number;
  /**
   * How much less is done in the days before the goal, intensity kept. Published: 41 to 60; default 50.
   */
  taper_reduction_pct?: number;
  /**
   * Dates of the coming tests in the laboratory. Their weeks are made easier. Left out: a week is proposed about every 8 to 10 weeks.
   *
   * @maxItems 24
   */
  retests?: string[];
  readiness?: PlanReadiness;
  /**
   * What of the above changed at a retest. Each entry holds from the visit of its date on, so that earlier plans stay as they were.
   *
   * @maxItems 24
   */
  adjusted?: PlanAdjustment[];
  /**
   * Weeks the practitioner sets by hand. Kept as written, marked in the plan, and checked: a rise above the limit is pointed out, not refused.
   *
   * @maxItems 120
   */
  weeks?: WeekOverride[];
  /**
   * Sessions the practitioner sets by hand: they replace what the build laid on that day.
   *
   * @maxItems 400
   */
  sessions?: SessionOverride[];
  /**
   * Review and signature of the plan, one entry for each visit's plan. Without one for its visit a plan is not printed for the client.
   *
   * @maxItems 40
   */
  signed?: PlanSignature[];
  walk?: LoadedWalk;
  itinerary?: Itinerary;
  confirmed?: Confirmed;
}
export interface Injury {
  /**
   * Part of the body, such as left knee.
   */
  area: string;
  /**
   * Kinds of strain to leave out.
   *
   * @minItems 1
   */
  avoid: [
    (
      | "running"
      | "jumping"
      | "load carriage"
      | "deep knee bending"
      | "overhead lifting"
      | "heavy lifting"
      | "cycling"
      | "rowing"
      | "hard intervals"
    ),
    ...(
      | "running"
      | "jumping"
      | "load carriage"
      | "deep knee bending"
      | "overhead lifting"
      | "heavy lifting"
      | "cycling"
      | "rowing"
      | "hard intervals"
    )[]
  ];
  /**
   * Date up to which it holds; left out, it holds for the whole plan.
   */
  until?: string;
}
/**
 * Who watches the training, and what stands ready.
 */
export interface PlanReadiness {
  /**
   * Who is there in hard sessions.
   */
  supervision?: "supervised" | "partner" | "alone";
  /**
   * True where it is written down whom to call, and where telephones have no reach.
   */
  phone_plan?: boolean;
  /**
   * True where the nearest defibrillator is known.
   */
  defibrillator_known?: boolean;
  confirmed?: Confirmed;
}
export interface PlanAdjustment {
  /**
   * Date of the first visit it holds for.
   */
  from_visit: string;
  /**
   * Why it changed.
   */
  because: string;
  /**
   * Days a week the client can train, strength work included.
   */
  days_per_week?: number;
  /**
   * Hours a week the client can give at most, strength work included. The weeks rise towards it and never pass it.
   */
  hours_per_week?: number;
  /**
   * Hours a week the client trains now: the first week starts there. Left out, the start is a convention by usual activity, and the plan says so.
   */
  hours_now?: number;
  /**
   * Weekdays for training; as many as days_per_week. Left out, they are spread over the week.
   *
   * @minItems 1
   * @maxItems 7
   */
  training_days?:
    | ["monday" | "tuesday" | "wednesday" | "thursday" | "friday" | "saturday" | "sunday"]
    | [
        "monday" | "tuesday" | "wednesday" | "thursday" | "friday" | "saturday" | "sunday",
        "monday" | "tuesday" | "wednesday" | "thursday" | "friday" | "saturday" | "sunday"
      ]
    | [
        "monday" | "tuesday" | "wednesday" | "thursday" | "friday" | "saturday" | "sunday",
        "monday" | "tuesday" | "wednesday" | "thursday" | "friday" | "saturday" | "sunday",
        "monday" | "tuesday" | "wednesday" | "thursday" | "friday" | "saturday" | "sunday"
      ]
    | [
        "monday" | "tuesday" | "wednesday" | "thursday" | "friday" | "saturday" | "sunday",
        "monday" | "tuesday" | "wednesday" | "thursday" | "friday" | "saturday" | "sunday",
        "monday" | "tuesday" | "wednesday" | "thursday" | "friday" | "saturday" | "sunday",
        "monday" | "tuesday" | "wednesday" | "thursday" | "friday" | "saturday" | "sunday"
      ]
    | [
        "monday" | "tuesday" | "wednesday" | "thursday" | "friday" | "saturday" | "sunday",
        "monday" | "tuesday" | "wednesday" | "thursday" | "friday" | "saturday" | "sunday",
        "monday" | "tuesday" | "wednesday" | "thursday" | "friday" | "saturday" | "sunday",
        "monday" | "tuesday" | "wednesday" | "thursday" | "friday" | "saturday" | "sunday",
        "monday" | "tuesday" | "wednesday" | "thursday" | "friday" | "saturday" | "sunday"
      ]
    | [
        "monday" | "tuesday" | "wednesday" | "thursday" | "friday" | "saturday" | "sunday",
        "monday" | "tuesday" | "wednesday" | "thursday" | "friday" | "saturday" | "sunday",
        "monday" | "tuesday" | "wednesday" | "thursday" | "friday" | "saturday" | "sunday",
        "monday" | "tuesday" | "wednesday" | "thursday" | "friday" | "saturday" | "sunday",
        "monday" | "tuesday" | "wednesday" | "thursday" | "friday" | "saturday" | "sunday",
        "monday" | "tuesday" | "wednesday" | "thursday" | "friday" | "saturday" | "sunday"
      ]
    | [
        "monday" | "tuesday" | "wednesday" | "thursday" | "friday" | "saturday" | "sunday",
        "monday" | "tuesday" | "wednesday" | "thursday" | "friday" | "saturday" | "sunday",
        "monday" | "tuesday" | "wednesday" | "thursday" | "friday" | "saturday" | "sunday",
        "monday" | "tuesday" | "wednesday" | "thursday" | "friday" | "saturday" | "sunday",
        "monday" | "tuesday" | "wednesday" | "thursday" | "friday" | "saturday" | "sunday",
        "monday" | "tuesday" | "wednesday" | "thursday" | "friday" | "saturday" | "sunday",
        "monday" | "tuesday" | "wednesday" | "thursday" | "friday" | "saturday" | "sunday"
      ];
  /**
   * Weekday of the longest session. Left out: the last training day of the week.
   */
  long_day?: "monday" | "tuesday" | "wednesday" | "thursday" | "friday" | "saturday" | "sunday";
  /**
   * Kinds of endurance training the client prefers, first choice first.
   *
   * @minItems 1
   * @maxItems 6
   */
  modes?:
    | ["walk" | "run" | "cycle" | "row" | "ski" | "swim"]
    | ["walk" | "run" | "cycle" | "row" | "ski" | "swim", "walk" | "run" | "cycle" | "row" | "ski" | "swim"]
    | [
        "walk" | "run" | "cycle" | "row" | "ski" | "swim",
        "walk" | "run" | "cycle" | "row" | "ski" | "swim",
        "walk" | "run" | "cycle" | "row" | "ski" | "swim"
      ]
    | [
        "walk" | "run" | "cycle" | "row" | "ski" | "swim",
        "walk" | "run" | "cycle" | "row" | "ski" | "swim",
        "walk" | "run" | "cycle" | "row" | "ski" | "swim",
        "walk" | "run" | "cycle" | "row" | "ski" | "swim"
      ]
    | [
        "walk" | "run" | "cycle" | "row" | "ski" | "swim",
        "walk" | "run" | "cycle" | "row" | "ski" | "swim",
        "walk" | "run" | "cycle" | "row" | "ski" | "swim",
        "walk" | "run" | "cycle" | "row" | "ski" | "swim",
        "walk" | "run" | "cycle" | "row" | "ski" | "swim"
      ]
    | [
        "walk" | "run" | "cycle" | "row" | "ski" | "swim",
        "walk" | "run" | "cycle" | "row" | "ski" | "swim",
        "walk" | "run" | "cycle" | "row" | "ski" | "swim",
        "walk" | "run" | "cycle" | "row" | "ski" | "swim",
        "walk" | "run" | "cycle" | "row" | "ski" | "swim",
        "walk" | "run" | "cycle" | "row" | "ski" | "swim"
      ];
  /**
   * What the client can use. Strength work uses only this and the body's own weight.
   */
  equipment?: (
    | "none"
    | "barbell"
    | "dumbbells"
    | "machines"
    | "kettlebell"
    | "bands"
    | "pull-up bar"
    | "step or box"
    | "rucksack"
    | "treadmill"
    | "cycle ergometer"
    | "rowing ergometer"
    | "heart-rate monitor"
    | "power meter"
  )[];
  /**
   * Experience of strength training: novice (none, or lapsed for years), intermediate (about 6 months), advanced (years). Left out: novice, and the plan says so.
   */
  strength_level?: "novice" | "intermediate" | "advanced";
  /**
   * What must be kept out of the programme, by kind of strain; no diagnosis and no names.
   *
   * @maxItems 24
   */
  injuries?: Injury1[];
  confirmed?: Confirmed;
}
export interface Injury1 {
  /**
   * Part of the body, such as left knee.
   */
  area: string;
  /**
   * Kinds of strain to leave out.
   *
   * @minItems 1
   */
  avoid: [
    (
      | "running"
      | "jumping"
      | "load carriage"
      | "deep knee bending"
      | "overhead lifting"
      | "heavy lifting"
      | "cycling"
      | "rowing"
      | "hard intervals"
    ),
    ...(
      | "running"
      | "jumping"
      | "load carriage"
      | "deep knee bending"
      | "overhead lifting"
      | "heavy lifting"
      | "cycling"
      | "rowing"
      | "hard intervals"
    )[]
  ];
  /**
   * Date up to which it holds; left out, it holds for the whole plan.
   */
  until?: string;
}
export interface WeekOverride {
  /**
   * Monday of the week.
   */
  monday: string;
  /**
   * Minutes of the week, strength work included.
   */
  minutes?: number;
  /**
   * True for an easier week, false for none.
   */
  easier?: boolean;
  /**
   * Why it is set by hand.
   */
  because: string;
  /**
   * Date of the visit whose plan it changes; left out, every plan that holds the week.
   */
  for_visit?: string;
  confirmed?: Confirmed;
}
export interface SessionOverride {
  /**
   * Day of the session.
   */
  date: string;
  /**
   * Kind of session; rest clears the day.
   */
  kind: "easy" | "long" | "steady" | "intervals" | "loaded walk" | "strength" | "rest";
  /**
   * Duration.
   */
  minutes: number;
  /**
   * What is done, in words.
   */
  what?: string;
  /**
   * Why it is set by hand.
   */
  because: string;
  /**
   * Date of the visit whose plan it changes; left out, every plan that holds the day.
   */
  for_visit?: string;
  confirmed?: Confirmed;
}
export interface PlanSignature {
  /**
   * Role of the person who reviewed it, such as physiologist. No name.
   */
  by_role: string;
  /**
   * Date of the review.
   */
  date: string;
  /**
   * Date of the visit whose plan was reviewed.
   */
  for_visit: string;
}
/**
 * The hardest steady walk the goal asks for, e.g. the daily climb to the instruments.
 */
export interface LoadedWalk {
  /**
   * Walking speed.
   */
  speed_km_h: number;
  /**
   * Mean grade uphill; 0 for level.
   */
  grade_pct?: number;
  /**
   * Load carried, clothing and boots included.
   */
  load_kg?: number;
  /**
   * Surface: treadmill or road, light brush or rough path, loose sand or soft snow.
   */
  terrain?: "road" | "rough path" | "loose";
  confirmed?: Confirmed;
}
/**
 * Sleeping altitudes night by night, for the check of the ascent schedule against published limits.
 */
export interface Itinerary {
  /**
   * Altitude of the last night before the ascent.
   */
  start_m: number;
  /**
   * Sleeping altitude of each night of the ascent, first night first.
   *
   * @minItems 1
   * @maxItems 200
   */
  nights_m: [number, ...number[]];
  /**
   * Earlier altitude illness of the client, as stated.
   */
  earlier_altitude_illness?:
    "none or mild" | "moderate or severe mountain sickness" | "lung or brain oedema" | "not asked";
}
