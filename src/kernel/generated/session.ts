/* Made by npm run generate from schema/session.schema.json. Do not edit. */

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
 * Checks of instruments on the day, one entry a check. A check that failed withholds what rests on the instrument; one that is absent is said in the report.
 *
 * @maxItems 100
 */
export type Calibration = CalibrationCheck[];

/**
 * What was measured at one visit of one client. Only the header is required; every block is optional.
 */
export interface Session {
  /**
   * Format of this file. Write: session 1
   */
  waymark: "session 1";
  /**
   * The client's pseudonym, equal to the folder name, in quotes: "c-017".
   */
  client: string;
  /**
   * Date of the visit, year-month-day.
   */
  date: string;
  /**
   * Local clock time at which the visit began, hours:minutes in quotes ("08:30"). Compared between visits.
   */
  start_time?: string;
  /**
   * A short name of the visit in small letters, digits and hyphens; unique for the client on this date, and the end of the folder name (2026-03-02-baseline). The label of a repeat for the laboratory's own error holds the word reliability.
   */
  label?: string;
  /**
   * Why the client came. baseline: first measurement for a goal. retest: after a block of training. reliability: repeated without training within 14 days of another visit, to learn the laboratory's own error; its label must hold the word reliability (2026-03-05-reliability), by which such visits are found without reading the whole archive. From three pairs of a measure on they serve where nothing is published, from ten on always, for every client. other: anything else.
   */
  purpose: "baseline" | "retest" | "reliability" | "other";
  /**
   * Role or initials of who measured. Not a full name.
   */
  practitioner?: string;
  choices?: Choices;
  screening?: Screening;
  preparation?: Preparation;
  room?: Room;
  calibration?: Calibration;
  size?: Size;
  blood_pressure?: BloodPressure;
  rest?: Rest;
  heart_rate_variability?: HeartRateVariability;
  dxa?: Dxa;
  skinfolds?: Skinfolds;
  girths?: Girths;
  impedance?: Impedance;
  lungs?: Lungs;
  strength?: Strength;
  mobility?: Mobility;
  field_tests?: FieldTests;
  submaximal?: Submaximal;
  incremental?: Incremental;
  lactate?: Lactate;
  critical_power?: CriticalPower;
  hypoxia?: Hypoxia;
  training_log?: TrainingLog;
  /**
   * Anything a colleague should know years later. No names, no contact data.
   *
   * @maxItems 200
   */
  remarks?: string[];
  confirmed?: Confirmed;
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
 * The hours and days before the visit. Each key is worth a question to the client: what is not asked cannot explain a surprise later. Resting measures need 5 h without food, 4 h without caffeine, 2 h without alcohol or nicotine, and a rest after exercise.
 */
export interface Preparation {
  /**
   * Hours since the last food or caloric drink.
   */
  hours_since_food?: number;
  /**
   * Hours since the last coffee, tea, cola or other caffeine.
   */
  hours_since_caffeine?: number;
  /**
   * Hours since the last alcohol.
   */
  hours_since_alcohol?: number;
  /**
   * Hours since the last nicotine. Leave out for a client who never uses it and write nicotine: never.
   */
  hours_since_nicotine?: number;
  /**
   * Use of nicotine in any form.
   */
  nicotine?: "never" | "former" | "current";
  /**
   * Hours since the last moderate exercise.
   */
  hours_since_exercise?: number;
  /**
   * Hours since the last hard or unaccustomed exercise.
   */
  hours_since_hard_exercise?: number;
  /**
   * Sleep in the night before.
   */
  sleep_h?: number;
  /**
   * Sleep in a usual night.
   */
  usual_sleep_h?: number;
  /**
   * Time of quiet lying or sitting before the resting measurement began.
   */
  settling_min?: number;
  /**
   * Posture during resting measurements.
   */
  posture?: "supine" | "semi-recumbent" | "seated";
  /**
   * Fever or infection.
   */
  illness?: "none" | "within two weeks" | "present";
  /**
   * Highest altitude slept at in the past four weeks, if it is above the laboratory's.
   */
  recent_altitude_m?: number;
  /**
   * Days since the last night there.
   */
  days_since_altitude?: number;
  /**
   * Time zones crossed in the past week.
   */
  travel_time_zones?: number;
  /**
   * How the client describes their drinking in the past day.
   */
  hydration?: "as usual" | "less than usual" | "more than usual";
  /**
   * Urine specific gravity by refractometer.
   */
  urine_specific_gravity?: number;
  /**
   * Whether usual medication was taken today, and when, by class and clock time; no doses.
   *
   * @maxItems 20
   */
  medication_today?:
    | []
    | [string]
    | [string, string]
    | [string, string, string]
    | [string, string, string, string]
    | [string, string, string, string, string]
    | [string, string, string, string, string, string]
    | [string, string, string, string, string, string, string]
    | [string, string, string, string, string, string, string, string]
    | [string, string, string, string, string, string, string, string, string]
    | [string, string, string, string, string, string, string, string, string, string]
    | [string, string, string, string, string, string, string, string, string, string, string]
    | [string, string, string, string, string, string, string, string, string, string, string, string]
    | [string, string, string, string, string, string, string, string, string, string, string, string, string]
    | [string, string, string, string, string, string, string, string, string, string, string, string, string, string]
    | [
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string
      ]
    | [
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string
      ]
    | [
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string
      ]
    | [
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string
      ]
    | [
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string
      ]
    | [
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string
      ];
  /**
   * Optional. Phase of the cycle as the client states it, if they wish to.
   */
  menstrual_phase?:
    | "menses"
    | "follicular"
    | "ovulatory"
    | "luteal"
    | "irregular"
    | "hormonal contraception"
    | "pregnant"
    | "menopause"
    | "not stated";
  /**
   * Supplements in the past two days that can change a test: caffeine tablets, nitrate, bicarbonate, creatine.
   *
   * @maxItems 20
   */
  supplements?:
    | []
    | [string]
    | [string, string]
    | [string, string, string]
    | [string, string, string, string]
    | [string, string, string, string, string]
    | [string, string, string, string, string, string]
    | [string, string, string, string, string, string, string]
    | [string, string, string, string, string, string, string, string]
    | [string, string, string, string, string, string, string, string, string]
    | [string, string, string, string, string, string, string, string, string, string]
    | [string, string, string, string, string, string, string, string, string, string, string]
    | [string, string, string, string, string, string, string, string, string, string, string, string]
    | [string, string, string, string, string, string, string, string, string, string, string, string, string]
    | [string, string, string, string, string, string, string, string, string, string, string, string, string, string]
    | [
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string
      ]
    | [
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string
      ]
    | [
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string
      ]
    | [
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string
      ]
    | [
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string
      ]
    | [
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string,
        string
      ];
  /**
   * How ready the client feels, 1 not at all to 10 completely.
   */
  readiness?: number;
  /**
   * Anything else about the days before.
   */
  note?: string;
  confirmed?: Confirmed;
}
/**
 * The air of the laboratory. Without temperature, humidity and pressure no gas volume can be converted, and there is no default for any of them.
 */
export interface Room {
  /**
   * Air temperature near the client.
   */
  temperature_c?: number;
  /**
   * Relative humidity.
   */
  humidity_pct?: number;
  /**
   * Station pressure: what a barometer in the room reads, not reduced to sea level. A weather service reports the reduced one, about 8.8 mmHg too high for every 100 m of altitude near sea level.
   */
  pressure_mmhg?: number;
  /**
   * What the client breathed. room air: the fractions come from the house choice room_air. stated: fio2 and fico2 below. A hypoxic or hyperoxic gas is always stated.
   */
  inspired_gas?: "room air" | "stated";
  /**
   * Inspired oxygen fraction of the dry gas, measured at the mouth.
   */
  fio2?: number;
  /**
   * Inspired carbon dioxide fraction of the dry gas.
   */
  fico2?: number;
  /**
   * Carbon dioxide of the room air. Above about 1000 ppm ventilate the room.
   */
  co2_ppm?: number;
  /**
   * Whether a fan blew on the client during exercise. Keep it the same between visits.
   */
  fan?: boolean;
  /**
   * Anything unusual about the room.
   */
  note?: string;
  confirmed?: Confirmed;
}
export interface CalibrationCheck {
  /**
   * Key of the instrument in lab.yaml.
   */
  instrument: string;
  /**
   * Date of the check, if it was not the day of the visit.
   */
  date?: string;
  /**
   * Clock time of the check, in quotes: "08:10".
   */
  time?: string;
  /**
   * Before or after the client was measured. A check afterwards is what shows drift.
   */
  when?: "before" | "after" | "periodic";
  /**
   * What the instrument itself or you concluded. The limits are checked again from the numbers below.
   */
  result?: "passed" | "failed" | "passed after repetition";
  volume?: VolumeCheck;
  /**
   * Gases of known composition, as read by the analyser.
   *
   * @minItems 1
   * @maxItems 12
   */
  gas?:
    | [GasCheck]
    | [GasCheck, GasCheck]
    | [GasCheck, GasCheck, GasCheck]
    | [GasCheck, GasCheck, GasCheck, GasCheck]
    | [GasCheck, GasCheck, GasCheck, GasCheck, GasCheck]
    | [GasCheck, GasCheck, GasCheck, GasCheck, GasCheck, GasCheck]
    | [GasCheck, GasCheck, GasCheck, GasCheck, GasCheck, GasCheck, GasCheck]
    | [GasCheck, GasCheck, GasCheck, GasCheck, GasCheck, GasCheck, GasCheck, GasCheck]
    | [GasCheck, GasCheck, GasCheck, GasCheck, GasCheck, GasCheck, GasCheck, GasCheck, GasCheck]
    | [GasCheck, GasCheck, GasCheck, GasCheck, GasCheck, GasCheck, GasCheck, GasCheck, GasCheck, GasCheck]
    | [GasCheck, GasCheck, GasCheck, GasCheck, GasCheck, GasCheck, GasCheck, GasCheck, GasCheck, GasCheck, GasCheck]
    | [
        GasCheck,
        GasCheck,
        GasCheck,
        GasCheck,
        GasCheck,
        GasCheck,
        GasCheck,
        GasCheck,
        GasCheck,
        GasCheck,
        GasCheck,
        GasCheck
      ];
  reference?: ReferenceCheck;
  biological_control?: BiologicalControl;
  /**
   * What was done about it.
   */
  note?: string;
  confirmed?: Confirmed;
}
/**
 * Syringe check of the flow sensor.
 */
export interface VolumeCheck {
  /**
   * Volume of the calibration syringe.
   */
  syringe_l: number;
  /**
   * Volumes the instrument read, one a stroke, slow and fast mixed.
   *
   * @minItems 1
   * @maxItems 60
   */
  read_l: [number, ...number[]];
  confirmed?: Confirmed;
}
export interface GasCheck {
  /**
   * Name of the gas: cylinder, room air, nitrogen.
   */
  gas: string;
  /**
   * Oxygen fraction by the certificate, or of room air.
   */
  o2_true?: number;
  /**
   * Oxygen fraction the analyser read.
   */
  o2_read?: number;
  /**
   * Carbon dioxide fraction by the certificate.
   */
  co2_true?: number;
  /**
   * Carbon dioxide fraction the analyser read.
   */
  co2_read?: number;
  confirmed?: Confirmed;
}
/**
 * Any other check against something known: a test mass, a belt speed by tape and stopwatch, a control solution, a DXA phantom.
 */
export interface ReferenceCheck {
  /**
   * What was checked: mass, belt speed, control solution, phantom.
   */
  quantity: string;
  /**
   * Unit of both values.
   */
  unit: string;
  /**
   * The known value.
   */
  true_value: number;
  /**
   * What the instrument read.
   */
  read_value: number;
  /**
   * Largest accepted difference, in the same unit.
   */
  limit?: number;
}
/**
 * A healthy member of staff measured at a fixed work rate every few weeks: it finds faults that syringe and cylinder miss.
 */
export interface BiologicalControl {
  /**
   * Date of the control.
   */
  date: string;
  /**
   * What was compared: vo2 at 100 W.
   */
  measure: string;
  /**
   * Value found.
   */
  value: number;
  /**
   * Mean of the control's earlier values, in the same unit.
   */
  expected: number;
  /**
   * Largest accepted difference.
   */
  tolerance_pct: number;
  confirmed?: Confirmed;
}
/**
 * Stature, mass and girths of the trunk. Take each measure twice, going round the list before repeating; a third time where the two differ by more than 1 %. Two readings give the mean, three the median.
 */
export interface Size {
  /**
   * Stretch stature, barefoot, heels together, head in the Frankfort plane, read at the end of a deep breath, to 0.1 cm. One value, or a list of the single readings.
   *
   * @minItems 1
   */
  stature_cm?: number | [number, ...number[]];
  /**
   * Body mass in minimal clothing after voiding, to 0.1 kg. One value, or a list of the single readings.
   *
   * @minItems 1
   */
  mass_kg?: number | [number, ...number[]];
  /**
   * Waist circumference at the site named in waist_site, horizontal, at the end of a normal expiration. One value, or a list of the single readings.
   *
   * @minItems 1
   */
  waist_cm?: number | [number, ...number[]];
  /**
   * Where the waist was measured; sites differ by 1 to 3 cm and must not be mixed between visits. midpoint: halfway between lowest rib and iliac crest · iliac-crest: just above the crest · narrowest: smallest girth between rib and crest.
   */
  waist_site?: "midpoint" | "iliac-crest" | "narrowest";
  /**
   * Hip circumference at the greatest posterior protuberance of the buttocks. One value, or a list of the single readings.
   *
   * @minItems 1
   */
  hip_cm?: number | [number, ...number[]];
  /**
   * What was worn on the scales.
   */
  clothing?: "minimal" | "light" | "ordinary";
  /**
   * Clock time of the measurement; stature falls through the day. Hours:minutes in quotes ("08:42").
   */
  time?: string;
  /**
   * True where the client is pregnant: body mass index and waist then have no class.
   */
  pregnant?: boolean;
  /**
   * Key of the instrument in lab.yaml under instruments.
   */
  scales?: string;
  /**
   * Key of the instrument in lab.yaml under instruments.
   */
  stadiometer?: string;
  confirmed?: Confirmed;
}
/**
 * Resting blood pressure. Five minutes of quiet sitting, back supported, legs uncrossed, arm bare and at heart level, no talking; three readings 1 to 2 minutes apart, a fourth where the first two differ by more than 10 mmHg. What holds for all readings may stand once above them.
 */
export interface BloodPressure {
  /**
   * How pressure was read.
   */
  method?: "oscillometric" | "auscultatory";
  /**
   * Key of the instrument in lab.yaml under instruments.
   */
  device?: string;
  /**
   * Arm of the reading.
   */
  arm?: "left" | "right";
  /**
   * Cuff size by arm circumference: small-adult 22 to 26 cm · adult 27 to 34 cm · large-adult 35 to 44 cm · thigh 45 to 52 cm.
   */
  cuff?: "small-adult" | "adult" | "large-adult" | "thigh";
  /**
   * Posture during the reading; the classes hold for seated readings.
   */
  posture?: "seated" | "supine" | "standing";
  /**
   * Quiet rest before the reading.
   */
  rest_min?: number;
  /**
   * Mid-arm circumference, which decides the cuff.
   */
  arm_circumference_cm?: number;
  /**
   * Every reading in the order it was taken. Nothing is left out: the averaging rule of the scheme decides which count.
   *
   * @minItems 1
   */
  readings?: [BloodPressureReading, ...BloodPressureReading[]];
  /**
   * True where the pulse was irregular or the device said so: oscillometric readings are then unsafe; repeat by auscultation.
   */
  irregular_pulse?: boolean;
  /**
   * True where the client had symptoms with the reading, such as chest pain, severe headache, breathlessness, disturbed vision or weakness of one side.
   */
  symptoms?: boolean;
  /**
   * True where the client takes medication for blood pressure.
   */
  treated?: boolean;
  confirmed?: Confirmed;
}
/**
 * One reading.
 */
export interface BloodPressureReading {
  /**
   * Systolic pressure.
   */
  systolic_mmhg: number;
  /**
   * Diastolic pressure. A 0 from a device means it found none: leave the reading out and say so in remarks.
   */
  diastolic_mmhg: number;
  /**
   * Pulse rate shown with the reading.
   */
  pulse_per_min?: number;
  /**
   * Arm of the reading.
   */
  arm?: "left" | "right";
  /**
   * Cuff size by arm circumference: small-adult 22 to 26 cm · adult 27 to 34 cm · large-adult 35 to 44 cm · thigh 45 to 52 cm.
   */
  cuff?: "small-adult" | "adult" | "large-adult" | "thigh";
  /**
   * Posture during the reading; the classes hold for seated readings.
   */
  posture?: "seated" | "supine" | "standing";
  /**
   * Quiet rest before the reading.
   */
  rest_min?: number;
  /**
   * Clock time of the reading. Hours:minutes in quotes ("08:42").
   */
  time?: string;
  confirmed?: Confirmed;
}
/**
 * Resting gas exchange by indirect calorimetry. Name a CSV series and the settling time is dropped and the first steady window used; or type the values of a window you chose yourself under `typed`. Fasting, rest before the test, stimulants and room belong in preparation and room.
 */
export interface Rest {
  /**
   * File name of the CSV with the resting measurement, in this visit's folder. It needs time, oxygen uptake and carbon dioxide output, or ventilation with expired fractions.
   */
  series?: string;
  /**
   * Key of the instrument in lab.yaml instruments; its `columns:` mapping names the columns of the series.
   */
  instrument?: string;
  /**
   * Time in the series at which quiet rest begins, when the file holds something before it. The settling time is counted from here.
   */
  from_s?: number;
  /**
   * Time in the series at which quiet rest ends, when the file holds something after it.
   */
  to_s?: number;
  /**
   * Temperature of the gas in the meter or bag, where the series has no column for it and holds a volume that needs converting.
   */
  gas_temperature_c?: number;
  /**
   * Posture during the measurement. Resting metabolic rate is defined supine; sitting reads higher. Keep it the same at each visit.
   */
  posture?: "supine" | "semi-recumbent" | "seated";
  /**
   * How expired gas was collected. A mask or mouthpiece raises tidal volume a little; a hood does not show breaths.
   */
  collection?: "hood" | "face mask" | "mouthpiece" | "bag";
  /**
   * What the client did during the measurement. Sleep lowers and fidgeting or hyperventilation raises the reading.
   */
  behaviour?: "quiet and awake" | "asleep part of the time" | "restless" | "hyperventilated";
  /**
   * Nitrogen in urine collected over 24 hours. Only where it was measured: it allows for protein in energy expenditure and in the fuel shares.
   */
  urinary_nitrogen_g_per_day?: number;
  typed?: RestTyped;
  /**
   * Anything a colleague should know about this measurement.
   */
  remark?: string;
  confirmed?: Confirmed;
}
/**
 * Means over a steady window read elsewhere and typed by hand, used when there is no series.
 */
export interface RestTyped {
  /**
   * Oxygen uptake, STPD, in millilitres a minute.
   */
  vo2_ml_min?: number;
  /**
   * Carbon dioxide output, STPD, in millilitres a minute.
   */
  vco2_ml_min?: number;
  /**
   * Minute ventilation, BTPS.
   */
  ventilation_l_min?: number;
  /**
   * Volume of one breath, BTPS.
   */
  tidal_volume_l?: number;
  /**
   * Breaths a minute.
   */
  breathing_frequency_per_min?: number;
  /**
   * Mean heart rate over the window.
   */
  heart_rate_bpm?: number;
  /**
   * Length of the window the means were taken over.
   */
  window_min?: number;
  /**
   * Minutes at the start that were not used.
   */
  settling_dropped_min?: number;
  /**
   * Coefficient of variation of the minute values of oxygen uptake in the window.
   */
  vo2_cv_pct?: number;
  /**
   * Coefficient of variation of the minute values of carbon dioxide output in the window.
   */
  vco2_cv_pct?: number;
  confirmed?: Confirmed;
}
/**
 * Beat-to-beat (RR) intervals at rest, from a text file with one interval a row. Short records of different length, posture or time of day must not be compared.
 */
export interface HeartRateVariability {
  /**
   * File name of the text or CSV file with the RR intervals, in this visit's folder.
   */
  series?: string;
  /**
   * Key of the instrument in lab.yaml instruments; its `columns:` mapping names the column with the intervals.
   */
  instrument?: string;
  /**
   * Posture during the record. Keep it the same at each visit.
   */
  posture?: "supine" | "seated" | "standing";
  /**
   * Free, or paced at a set rate. Paced breathing changes variability.
   */
  breathing?: "free" | "paced";
  /**
   * What found the beats. An optical wrist sensor gives pulse intervals, which are not RR intervals.
   */
  recorder?: "electrocardiograph" | "chest strap" | "optical sensor";
  /**
   * Anything a colleague should know about this record.
   */
  remark?: string;
  confirmed?: Confirmed;
}
/**
 * Whole-body dual-energy X-ray absorptiometry. Uses ionising radiation: needs a justification, a licensed operator and pregnancy excluded. Same time of day, fasted or same meal state, voided, minimal clothing, no metal, no exercise that day.
 */
export interface Dxa {
  /**
   * Maker of the scanner; values and norms of different makers must not be compared.
   */
  scanner_maker?: "ge-lunar" | "hologic" | "norland" | "other";
  /**
   * Key of the instrument in lab.yaml under instruments.
   */
  scanner?: string;
  /**
   * Scan mode the scanner chose by body thickness.
   */
  mode?: "thin" | "standard" | "thick" | "other";
  /**
   * Version of the analysis software; a new version can move results.
   */
  software?: string;
  /**
   * whole: the body lay inside the field · half-mirrored: one side was scanned and mirrored · offset: limbs partly outside.
   */
  positioning?: "whole" | "half-mirrored" | "offset";
  /**
   * True after an overnight fast or in the agreed, repeated meal state.
   */
  fasted?: boolean;
  /**
   * Clock time of the scan. Hours:minutes in quotes ("08:42").
   */
  time?: string;
  /**
   * Result of the pregnancy question before the scan. Needed for clients who could be pregnant.
   */
  pregnancy?: "excluded" | "possible" | "not asked" | "not applicable";
  /**
   * True where contrast medium, barium or a nuclear medicine study was given in the days before: the scan must wait.
   */
  contrast_or_isotope_last_week?: boolean;
  /**
   * Effective dose from the scanner's own record.
   */
  dose_usv?: number;
  precision?: DxaPrecision;
  whole?: DxaWhole;
  head?: DxaRegion;
  trunk?: DxaRegion1;
  left_arm?: DxaRegion2;
  right_arm?: DxaRegion3;
  arms?: DxaRegion4;
  left_leg?: DxaRegion5;
  right_leg?: DxaRegion6;
  legs?: DxaRegion7;
  android?: DxaRegion8;
  gynoid?: DxaRegion9;
  /**
   * Visceral adipose tissue mass as the scanner estimates it.
   */
  vat_mass_g?: number;
  /**
   * Visceral adipose tissue area as the scanner estimates it.
   */
  vat_area_cm2?: number;
  confirmed?: Confirmed;
}
/**
 * Precision error from the laboratory's own study on this scanner (root-mean-square SD of repeated scans with repositioning). Without it the largest error that the official positions accept is used and named.
 */
export interface DxaPrecision {
  /**
   * Of total fat mass.
   */
  fat_g?: number;
  /**
   * Of total lean mass.
   */
  lean_g?: number;
  /**
   * Of fat share, in percentage points.
   */
  fat_percent?: number;
  /**
   * Who was scanned and how often, in one line.
   */
  from: string;
  confirmed?: Confirmed;
}
/**
 * The whole body with the head.
 */
export interface DxaWhole {
  /**
   * Fat mass.
   */
  fat_g?: number;
  /**
   * Lean soft-tissue mass WITHOUT bone mineral. Where the printout shows lean with bone, subtract the bone mineral first.
   */
  lean_g?: number;
  /**
   * Bone mineral content.
   */
  bmc_g?: number;
  /**
   * Bone mineral density.
   */
  bmd_g_cm2?: number;
  confirmed?: Confirmed;
}
/**
 * The head.
 */
export interface DxaRegion {
  /**
   * Fat mass.
   */
  fat_g?: number;
  /**
   * Lean soft-tissue mass WITHOUT bone mineral. Where the printout shows lean with bone, subtract the bone mineral first.
   */
  lean_g?: number;
  /**
   * Bone mineral content.
   */
  bmc_g?: number;
  /**
   * Bone mineral density.
   */
  bmd_g_cm2?: number;
}
/**
 * The trunk, without head and limbs.
 */
export interface DxaRegion1 {
  /**
   * Fat mass.
   */
  fat_g?: number;
  /**
   * Lean soft-tissue mass WITHOUT bone mineral. Where the printout shows lean with bone, subtract the bone mineral first.
   */
  lean_g?: number;
  /**
   * Bone mineral content.
   */
  bmc_g?: number;
  /**
   * Bone mineral density.
   */
  bmd_g_cm2?: number;
}
/**
 * The left arm.
 */
export interface DxaRegion2 {
  /**
   * Fat mass.
   */
  fat_g?: number;
  /**
   * Lean soft-tissue mass WITHOUT bone mineral. Where the printout shows lean with bone, subtract the bone mineral first.
   */
  lean_g?: number;
  /**
   * Bone mineral content.
   */
  bmc_g?: number;
  /**
   * Bone mineral density.
   */
  bmd_g_cm2?: number;
}
/**
 * The right arm.
 */
export interface DxaRegion3 {
  /**
   * Fat mass.
   */
  fat_g?: number;
  /**
   * Lean soft-tissue mass WITHOUT bone mineral. Where the printout shows lean with bone, subtract the bone mineral first.
   */
  lean_g?: number;
  /**
   * Bone mineral content.
   */
  bmc_g?: number;
  /**
   * Bone mineral density.
   */
  bmd_g_cm2?: number;
}
/**
 * Both arms, where sides are not printed.
 */
export interface DxaRegion4 {
  /**
   * Fat mass.
   */
  fat_g?: number;
  /**
   * Lean soft-tissue mass WITHOUT bone mineral. Where the printout shows lean with bone, subtract the bone mineral first.
   */
  lean_g?: number;
  /**
   * Bone mineral content.
   */
  bmc_g?: number;
  /**
   * Bone mineral density.
   */
  bmd_g_cm2?: number;
}
/**
 * The left leg.
 */
export interface DxaRegion5 {
  /**
   * Fat mass.
   */
  fat_g?: number;
  /**
   * Lean soft-tissue mass WITHOUT bone mineral. Where the printout shows lean with bone, subtract the bone mineral first.
   */
  lean_g?: number;
  /**
   * Bone mineral content.
   */
  bmc_g?: number;
  /**
   * Bone mineral density.
   */
  bmd_g_cm2?: number;
}
/**
 * The right leg.
 */
export interface DxaRegion6 {
  /**
   * Fat mass.
   */
  fat_g?: number;
  /**
   * Lean soft-tissue mass WITHOUT bone mineral. Where the printout shows lean with bone, subtract the bone mineral first.
   */
  lean_g?: number;
  /**
   * Bone mineral content.
   */
  bmc_g?: number;
  /**
   * Bone mineral density.
   */
  bmd_g_cm2?: number;
}
/**
 * Both legs, where sides are not printed.
 */
export interface DxaRegion7 {
  /**
   * Fat mass.
   */
  fat_g?: number;
  /**
   * Lean soft-tissue mass WITHOUT bone mineral. Where the printout shows lean with bone, subtract the bone mineral first.
   */
  lean_g?: number;
  /**
   * Bone mineral content.
   */
  bmc_g?: number;
  /**
   * Bone mineral density.
   */
  bmd_g_cm2?: number;
}
/**
 * The android region as the scanner places it.
 */
export interface DxaRegion8 {
  /**
   * Fat mass.
   */
  fat_g?: number;
  /**
   * Lean soft-tissue mass WITHOUT bone mineral. Where the printout shows lean with bone, subtract the bone mineral first.
   */
  lean_g?: number;
  /**
   * Bone mineral content.
   */
  bmc_g?: number;
  /**
   * Bone mineral density.
   */
  bmd_g_cm2?: number;
}
/**
 * The gynoid region as the scanner places it.
 */
export interface DxaRegion9 {
  /**
   * Fat mass.
   */
  fat_g?: number;
  /**
   * Lean soft-tissue mass WITHOUT bone mineral. Where the printout shows lean with bone, subtract the bone mineral first.
   */
  lean_g?: number;
  /**
   * Bone mineral content.
   */
  bmc_g?: number;
  /**
   * Bone mineral density.
   */
  bmd_g_cm2?: number;
}
/**
 * Skinfolds by caliper on the right side of the body. Go round all sites before repeating; a third reading where two differ by more than 5 %. Read 2 s after full pressure; not after exercise, sauna, swimming or shower.
 */
export interface Skinfolds {
  /**
   * Key of the instrument in lab.yaml under instruments.
   */
  caliper?: string;
  /**
   * Initials or role of the person who measured; the same one at each visit.
   */
  measurer?: string;
  /**
   * Side of the body.
   */
  side?: "right" | "left";
  /**
   * Chest, diagonal fold between axilla and nipple. One value, or a list of the single readings.
   *
   * @minItems 1
   */
  chest_mm?: number | [number, ...number[]];
  /**
   * Midaxillary line at the level of the xiphoid process. One value, or a list of the single readings.
   *
   * @minItems 1
   */
  midaxillary_mm?: number | [number, ...number[]];
  /**
   * Back of the upper arm, vertical, midway between acromion and elbow. One value, or a list of the single readings.
   *
   * @minItems 1
   */
  triceps_mm?: number | [number, ...number[]];
  /**
   * Front of the upper arm, vertical, at the level of the triceps fold. One value, or a list of the single readings.
   *
   * @minItems 1
   */
  biceps_mm?: number | [number, ...number[]];
  /**
   * Below the angle of the shoulder blade, diagonal. One value, or a list of the single readings.
   *
   * @minItems 1
   */
  subscapular_mm?: number | [number, ...number[]];
  /**
   * Beside the navel, vertical. One value, or a list of the single readings.
   *
   * @minItems 1
   */
  abdomen_mm?: number | [number, ...number[]];
  /**
   * Above the iliac crest. One value, or a list of the single readings.
   *
   * @minItems 1
   */
  suprailiac_mm?: number | [number, ...number[]];
  /**
   * Front of the thigh, vertical, midway between hip and kneecap. One value, or a list of the single readings.
   *
   * @minItems 1
   */
  thigh_mm?: number | [number, ...number[]];
  /**
   * Inner calf at the greatest girth. One value, or a list of the single readings.
   *
   * @minItems 1
   */
  calf_mm?: number | [number, ...number[]];
  confirmed?: Confirmed;
}
/**
 * Girths by a non-stretch tape. Twice each; a third time where two differ by more than 1 %.
 */
export interface Girths {
  /**
   * Neck below the larynx. One value, or a list of the single readings.
   *
   * @minItems 1
   */
  neck_cm?: number | [number, ...number[]];
  /**
   * Abdomen at the level of the navel. One value, or a list of the single readings.
   *
   * @minItems 1
   */
  abdomen_navel_cm?: number | [number, ...number[]];
  /**
   * Smallest girth between rib and iliac crest. One value, or a list of the single readings.
   *
   * @minItems 1
   */
  waist_narrowest_cm?: number | [number, ...number[]];
  /**
   * Greatest girth over the buttocks. One value, or a list of the single readings.
   *
   * @minItems 1
   */
  hip_cm?: number | [number, ...number[]];
  /**
   * Relaxed upper arm, midway. One value, or a list of the single readings.
   *
   * @minItems 1
   */
  arm_cm?: number | [number, ...number[]];
  /**
   * Mid-thigh. One value, or a list of the single readings.
   *
   * @minItems 1
   */
  thigh_cm?: number | [number, ...number[]];
  /**
   * Greatest girth of the calf. One value, or a list of the single readings.
   *
   * @minItems 1
   */
  calf_cm?: number | [number, ...number[]];
  confirmed?: Confirmed;
}
/**
 * Bioelectrical impedance. What the device prints is an estimate by an equation of its own; keep the device, the time and the state of the client the same.
 */
export interface Impedance {
  /**
   * Key of the instrument in lab.yaml under instruments.
   */
  device?: string;
  /**
   * Share of fat as the device printed it.
   */
  fat_percent?: number;
  /**
   * Resistance at 50 kHz, where shown.
   */
  resistance_ohm?: number;
  /**
   * Reactance at 50 kHz, where shown.
   */
  reactance_ohm?: number;
  /**
   * Posture during the measurement.
   */
  posture?: "supine" | "standing";
  /**
   * Hours since food or drink.
   */
  hours_since_food?: number;
  /**
   * Hours since hard exercise.
   */
  hours_since_exercise?: number;
  /**
   * True where alcohol was drunk in the last 24 hours.
   */
  alcohol_last_day?: boolean;
  /**
   * True where the bladder was emptied first.
   */
  voided?: boolean;
  /**
   * True where the client has a pacemaker or another implanted electronic device: impedance must not be measured.
   */
  implanted_device?: boolean;
  /**
   * True with oedema, dialysis, pregnancy or marked dehydration: the value is then unreliable.
   */
  oedema_or_dialysis?: boolean;
  confirmed?: Confirmed;
}
/**
 * Forced spirometry, every manoeuvre kept, and maximal voluntary ventilation where it was measured. All volumes and flows at body temperature and pressure, saturated (BTPS), as a calibrated spirometer prints them.
 */
export interface Lungs {
  /**
   * Key of the spirometer in lab.yaml under instruments.
   */
  spirometer?: string;
  /**
   * Gas condition of every volume and flow below. BTPS is the only one accepted: convert first, a volume at room conditions reads about 8 to 10 % low.
   */
  volumes_at?: "BTPS";
  /**
   * Posture of the manoeuvres; it must not change between visits. Sitting is usual.
   */
  posture?: "sitting" | "standing";
  /**
   * True where a nose clip was worn.
   */
  nose_clip?: boolean;
  /**
   * before: no bronchodilator was given before these manoeuvres · after: one was. Reference values hold for before.
   */
  bronchodilator?: "before" | "after";
  /**
   * Every forced expiration, in order, accepted or not. At least three acceptable ones are asked for, up to eight tries.
   *
   * @minItems 1
   * @maxItems 24
   */
  manoeuvres?: [Manoeuvre, ...Manoeuvre[]];
  /**
   * Maximal voluntary ventilation as measured over 12 s. Absent: it is estimated from FEV1 and called an estimate.
   */
  mvv_l_min?: number;
  confirmed?: Confirmed;
}
export interface Manoeuvre {
  /**
   * Forced vital capacity.
   */
  fvc_l: number;
  /**
   * Volume expired in the first second.
   */
  fev1_l: number;
  /**
   * Peak expiratory flow.
   */
  pef_l_s?: number;
  /**
   * True where the manoeuvre met the criteria: quick start, no cough in the first second, no leak, plateau or full expiration. false keeps it in the record and out of the result.
   */
  acceptable?: boolean;
  /**
   * For a manoeuvre that is not acceptable: true where its values may still be reported with grade U, if no better one exists.
   */
  usable?: boolean;
  /**
   * Back-extrapolated volume. Up to 5 % of FVC or 0.100 L, whichever is greater.
   */
  back_extrapolated_volume_l?: number;
  /**
   * What was seen: cough, late start.
   */
  remark?: string;
  confirmed?: Confirmed;
}
/**
 * Strength and power tests. Each is optional.
 */
export interface Strength {
  grip?: Grip;
  push_ups?: PushUps;
  bench_press?: BenchPress;
  leg_press?: LegPress;
  pull_ups?: PullUps;
  jump?: Jump;
  mid_thigh_pull?: MidThighPull;
  step_up?: StepUp;
  confirmed?: Confirmed;
}
/**
 * Hand grip: three trials a hand, alternating, 60 s rest. Each hand is kept apart; the sum of two hands is never entered.
 */
export interface Grip {
  /**
   * Left hand. One value, or a list of the single readings.
   *
   * @minItems 1
   */
  left_kg?: number | [number, ...number[]];
  /**
   * Right hand. One value, or a list of the single readings.
   *
   * @minItems 1
   */
  right_kg?: number | [number, ...number[]];
  /**
   * Dominant hand.
   */
  dominant?: "left" | "right" | "both";
  /**
   * Key of the instrument in lab.yaml under instruments.
   */
  device?: string;
  /**
   * Kind of dynamometer; norms hold for one kind.
   */
  device_type?: "hydraulic" | "spring" | "electronic";
  /**
   * Posture; standing with a straight arm reads higher.
   */
  posture?: "seated-elbow-bent" | "standing-arm-straight" | "standing-elbow-bent";
  /**
   * Handle position.
   */
  handle_position?: number;
  /**
   * True with pain, recent injury or surgery of hand or arm.
   */
  pain_or_surgery?: boolean;
  confirmed?: Confirmed;
}
/**
 * Consecutive push-ups without time limit until form fails.
 */
export interface PushUps {
  /**
   * Full repetitions.
   */
  repetitions: number;
  /**
   * standard: from the toes · modified: from the knees.
   */
  form?: "standard" | "modified";
  /**
   * Time limit, where one was set; the rating tables hold only without one.
   */
  time_limit_s?: number;
  confirmed?: Confirmed;
}
/**
 * Best bench press set to failure, or the heaviest single lift.
 */
export interface BenchPress {
  /**
   * Load moved, with bar or sled.
   */
  load_kg: number;
  /**
   * Full repetitions in the set. 1 means a measured one-repetition maximum; estimates hold for 2 to 10.
   */
  repetitions: number;
  /**
   * What was lifted on. The published ratio tables hold only for a seated selectorised machine.
   */
  machine?: "free-weight" | "seated-machine" | "sled-45-degrees" | "pneumatic" | "other";
  /**
   * True where the lift was spotted.
   */
  spotter?: boolean;
  confirmed?: Confirmed;
}
/**
 * Best leg press set to failure, or the heaviest single lift.
 */
export interface LegPress {
  /**
   * Load moved, with bar or sled.
   */
  load_kg: number;
  /**
   * Full repetitions in the set. 1 means a measured one-repetition maximum; estimates hold for 2 to 10.
   */
  repetitions: number;
  /**
   * What was lifted on. The published ratio tables hold only for a seated selectorised machine.
   */
  machine?: "free-weight" | "seated-machine" | "sled-45-degrees" | "pneumatic" | "other";
  /**
   * True where the lift was spotted.
   */
  spotter?: boolean;
  confirmed?: Confirmed;
}
/**
 * Pull-ups from a dead hang until the chin no longer clears the bar.
 */
export interface PullUps {
  /**
   * Full repetitions.
   */
  repetitions: number;
  /**
   * Hold of the bar.
   */
  hold?: "overhand" | "underhand" | "neutral";
  /**
   * Load carried.
   */
  added_load_kg?: number;
  confirmed?: Confirmed;
}
/**
 * Vertical jump. Methods differ by several centimetres: keep one.
 */
export interface Jump {
  /**
   * How height was found.
   */
  method?: "jump-and-reach" | "flight-time" | "force-plate";
  /**
   * Kind of jump.
   */
  type?: "squat" | "countermovement";
  /**
   * Use of the arms.
   */
  arms?: "free" | "on-hips";
  /**
   * Height of each jump. One value, or a list of the single readings.
   *
   * @minItems 1
   */
  height_cm?: number | [number, ...number[]];
  /**
   * Flight time of each jump, where the height is to be computed from it. One value, or a list of the single readings.
   *
   * @minItems 1
   */
  flight_time_s?: number | [number, ...number[]];
  /**
   * Key of the instrument in lab.yaml under instruments.
   */
  device?: string;
  confirmed?: Confirmed;
}
/**
 * Isometric mid-thigh pull on a force plate: two or more 5-s pulls within 250 N.
 */
export interface MidThighPull {
  /**
   * Peak force of each pull. One value, or a list of the single readings.
   *
   * @minItems 1
   */
  peak_force_n: number | [number, ...number[]];
  /**
   * gross: with body weight · net: without it.
   */
  force?: "gross" | "net";
  /**
   * Knee angle.
   */
  knee_degrees?: number;
  /**
   * Hip angle.
   */
  hip_degrees?: number;
  /**
   * Sampling rate.
   */
  sampling_hz?: number;
  confirmed?: Confirmed;
}
/**
 * Step-ups at a steady rhythm, with or without a load.
 */
export interface StepUp {
  /**
   * Height of the step.
   */
  step_height_cm: number;
  /**
   * Complete up-and-down cycles a minute.
   */
  cycles_per_min: number;
  /**
   * Time kept up.
   */
  duration_min?: number;
  /**
   * Load carried on the back.
   */
  load_kg?: number;
  /**
   * Heart rate at the end.
   */
  heart_rate_end_bpm?: number;
  /**
   * Rating of perceived exertion.
   */
  rpe?: number;
  confirmed?: Confirmed;
}
/**
 * Mobility and balance.
 */
export interface Mobility {
  sit_and_reach?: SitAndReach;
  single_leg_stance?: SingleLegStance;
  reach?: Reach;
  confirmed?: Confirmed;
}
/**
 * Seated forward reach after a warm-up, knees straight, held 2 s; two trials, the better counts.
 */
export interface SitAndReach {
  /**
   * Reach on the scale of the box. One value, or a list of the single readings.
   *
   * @minItems 1
   */
  reach_cm: number | [number, ...number[]];
  /**
   * What the scale shows at the soles of the feet: 26, 23 or 0. Results are given on the 26 cm scale.
   */
  zero_cm: 26 | 23 | 0;
  confirmed?: Confirmed;
}
/**
 * Standing on one bare foot, arms crossed; time until the other foot touches or the foot moves.
 */
export interface SingleLegStance {
  /**
   * Standing on the left leg. One value, or a list of the single readings.
   *
   * @minItems 1
   */
  left_s?: number | [number, ...number[]];
  /**
   * Standing on the right leg. One value, or a list of the single readings.
   *
   * @minItems 1
   */
  right_s?: number | [number, ...number[]];
  /**
   * Eyes open or closed.
   */
  eyes?: "open" | "closed";
  /**
   * Time at which a trial was stopped. The published values used 45 s.
   */
  ceiling_s?: number;
  confirmed?: Confirmed;
}
/**
 * Reach in three directions on one leg.
 */
export interface Reach {
  left?: ReachLeft;
  right?: ReachRight;
  confirmed?: Confirmed;
}
/**
 * Reach of the free leg while standing on this leg; three trials each.
 */
export interface ReachLeft {
  /**
   * Forward reach. One value, or a list of the single readings.
   *
   * @minItems 1
   */
  anterior_cm?: number | [number, ...number[]];
  /**
   * Backward and inward reach. One value, or a list of the single readings.
   *
   * @minItems 1
   */
  posteromedial_cm?: number | [number, ...number[]];
  /**
   * Backward and outward reach. One value, or a list of the single readings.
   *
   * @minItems 1
   */
  posterolateral_cm?: number | [number, ...number[]];
  /**
   * Length from hip spine to inner ankle.
   */
  limb_length_cm?: number;
  confirmed?: Confirmed;
}
/**
 * Reach of the free leg while standing on this leg; three trials each.
 */
export interface ReachRight {
  /**
   * Forward reach. One value, or a list of the single readings.
   *
   * @minItems 1
   */
  anterior_cm?: number | [number, ...number[]];
  /**
   * Backward and inward reach. One value, or a list of the single readings.
   *
   * @minItems 1
   */
  posteromedial_cm?: number | [number, ...number[]];
  /**
   * Backward and outward reach. One value, or a list of the single readings.
   *
   * @minItems 1
   */
  posterolateral_cm?: number | [number, ...number[]];
  /**
   * Length from hip spine to inner ankle.
   */
  limb_length_cm?: number;
  confirmed?: Confirmed;
}
/**
 * Tests of endurance outside the gas analysis. Each gives an estimate of peak oxygen uptake, never a measurement.
 */
export interface FieldTests {
  mile_walk?: MileWalk;
  two_km_walk?: TwoKmWalk;
  six_minute_walk?: SixMinuteWalk;
  twelve_minute_run?: TwelveMinuteRun;
  mile_and_half_run?: MileAndHalfRun;
  mile_jog?: MileJog;
  shuttle_run?: ShuttleRun;
  treadmill_time?: TreadmillTime;
  loaded_walk?: LoadedWalk;
  confirmed?: Confirmed;
}
/**
 * One mile (1609 m) walked as fast as possible on a flat course.
 */
export interface MileWalk {
  /**
   * Time. Decimal minutes: 14 min 30 s is 14.5.
   */
  time_min: number;
  /**
   * Heart rate at the end.
   */
  heart_rate_bpm?: number;
  confirmed?: Confirmed;
}
/**
 * Two kilometres walked as fast as possible.
 */
export interface TwoKmWalk {
  /**
   * Time. Decimal minutes: 14 min 30 s is 14.5.
   */
  time_min: number;
  /**
   * Heart rate at the end.
   */
  heart_rate_bpm?: number;
  confirmed?: Confirmed;
}
/**
 * Six-minute walk in a corridor.
 */
export interface SixMinuteWalk {
  /**
   * Distance.
   */
  distance_m: number;
  /**
   * Length of the corridor.
   */
  corridor_m?: number;
  /**
   * Heart rate at the end.
   */
  heart_rate_bpm?: number;
  /**
   * Breathlessness at the end, 0 to 10.
   */
  breathlessness_0_10?: number;
  /**
   * Which trial this was; distance rises with practice.
   */
  trial?: number;
  confirmed?: Confirmed;
}
/**
 * Distance run in twelve minutes.
 */
export interface TwelveMinuteRun {
  /**
   * Distance.
   */
  distance_m: number;
  confirmed?: Confirmed;
}
/**
 * One and a half miles (2414 m) run as fast as possible.
 */
export interface MileAndHalfRun {
  /**
   * Time. Decimal minutes: 14 min 30 s is 14.5.
   */
  time_min: number;
  confirmed?: Confirmed;
}
/**
 * One mile jogged at a steady submaximal pace.
 */
export interface MileJog {
  /**
   * Time. Decimal minutes: 14 min 30 s is 14.5.
   */
  time_min: number;
  /**
   * Heart rate at the end.
   */
  heart_rate_bpm: number;
  confirmed?: Confirmed;
}
/**
 * 20-m shuttle run, 1-minute stages, 8.5 km/h rising by 0.5 km/h.
 */
export interface ShuttleRun {
  /**
   * Last stage announced and completed.
   */
  last_stage?: number;
  /**
   * Last half-stage completed, in steps of 0.5.
   */
  last_half_stage?: number;
  confirmed?: Confirmed;
}
/**
 * Time to exhaustion on a published treadmill protocol, without gas analysis and without handrail support.
 */
export interface TreadmillTime {
  /**
   * Protocol.
   */
  protocol: "bruce" | "modified-bruce" | "balke";
  /**
   * Total time. Decimal minutes: 14 min 30 s is 14.5.
   */
  time_min: number;
  /**
   * True where the client held the handrail: time-based estimates do not hold.
   */
  handrail?: boolean;
  confirmed?: Confirmed;
}
/**
 * Steady walk with a load on the back.
 */
export interface LoadedWalk {
  /**
   * Load carried.
   */
  load_kg: number;
  /**
   * Speed.
   */
  speed_km_h: number;
  /**
   * Grade; level or uphill.
   */
  grade_percent?: number;
  /**
   * Ground.
   */
  terrain?: "treadmill" | "paved" | "dirt-road" | "light-brush" | "heavy-brush" | "swamp" | "loose-sand";
  confirmed?: Confirmed;
}
/**
 * Submaximal tests without gas analysis: estimates of peak oxygen uptake with their error, never a measurement. They lean on heart rate, and mean little with medicines that slow it.
 */
export interface Submaximal {
  treadmill_walk?: TreadmillWalk;
  treadmill_jog?: TreadmillJog;
  treadmill_questionnaire?: TreadmillQuestionnaire;
  cycle_stages?: CycleStages;
  cycle_single?: CycleSingle;
  cycle_maximal_power?: CycleMaximalPower;
  treadmill_peak?: TreadmillPeak;
  /**
   * True where the client takes a medicine that slows the heart: estimates from heart rate are then withheld.
   */
  beta_blocker?: boolean;
  confirmed?: Confirmed;
}
/**
 * One-stage walk: 4 min level at 50 to 70 % of predicted maximal heart rate, then 4 min at 5 %.
 */
export interface TreadmillWalk {
  /**
   * Walking speed.
   */
  speed_km_h: number;
  /**
   * Heart rate at the end.
   */
  heart_rate_bpm: number;
  confirmed?: Confirmed;
}
/**
 * One-stage jog at a steady self-chosen pace.
 */
export interface TreadmillJog {
  /**
   * Speed.
   */
  speed_km_h: number;
  /**
   * Heart rate at steady state.
   */
  heart_rate_bpm: number;
  confirmed?: Confirmed;
}
/**
 * Walk, jog or run stage with perceived functional ability and physical activity rating.
 */
export interface TreadmillQuestionnaire {
  /**
   * Speed that brought heart rate to 70 to 90 % of the predicted maximum.
   */
  speed_km_h: number;
  /**
   * Perceived functional ability, sum of two items.
   */
  functional_ability: number;
  /**
   * Physical activity rating.
   */
  activity_rating: number;
  confirmed?: Confirmed;
}
/**
 * Cycle test in 3-minute stages until two stages have a steady heart rate between 110 and 150.
 */
export interface CycleStages {
  /**
   * All stages in order.
   *
   * @minItems 1
   */
  stages: [CycleStage, ...CycleStage[]];
  /**
   * Cadence.
   */
  cadence_rpm?: number;
  confirmed?: Confirmed;
}
/**
 * A stage of the cycle test with its steady heart rate.
 */
export interface CycleStage {
  /**
   * Power.
   */
  power_w: number;
  /**
   * Mean heart rate of the last minute.
   */
  heart_rate_bpm: number;
  /**
   * Rating of perceived exertion.
   */
  rpe?: number;
  /**
   * Systolic pressure.
   */
  systolic_mmhg?: number;
  /**
   * Diastolic pressure.
   */
  diastolic_mmhg?: number;
  confirmed?: Confirmed;
}
/**
 * One 6-minute cycle load with heart rate between 130 and 170.
 */
export interface CycleSingle {
  /**
   * Power.
   */
  power_w: number;
  /**
   * Mean of minutes 5 and 6.
   */
  heart_rate_bpm: number;
  /**
   * Cadence.
   */
  cadence_rpm?: number;
  confirmed?: Confirmed;
}
/**
 * Highest power of a cycle test without gas analysis: 4 min unloaded, then 15 W each minute.
 */
export interface CycleMaximalPower {
  /**
   * Highest power completed.
   */
  power_w: number;
  confirmed?: Confirmed;
}
/**
 * Highest speed and grade of a treadmill test without gas analysis.
 */
export interface TreadmillPeak {
  /**
   * Speed.
   */
  speed_km_h: number;
  /**
   * Grade.
   */
  grade_percent: number;
  confirmed?: Confirmed;
}
/**
 * The incremental exercise test, from rest to recovery, with its verification bout if there was one. Give what the laboratory has: a raw series with measured uptake; a series with ventilation and gas fractions; Douglas bags; stage means typed by hand; or only workload and heart rate.
 */
export interface Incremental {
  /**
   * What the client did. Peak values of different modes are never compared: cycling gives about 5 to 10 % less than treadmill running in people who do not cycle.
   */
  mode: "treadmill" | "cycle" | "rowing" | "arm-crank" | "skiing" | "stepping";
  /**
   * Which ergometer: its key in lab.yaml instruments, or a few words.
   */
  ergometer?: string;
  /**
   * The CSV of the test, in the session's folder: one row a breath, a mixing-chamber interval or a bag. The mapping of its columns is in lab.yaml under the instrument.
   */
  series?: string;
  /**
   * Key in lab.yaml instruments of the gas-exchange system that wrote the series. Its columns mapping is used to read it.
   */
  instrument?: string;
  /**
   * Temperature of the expired gas in the volume meter or flow sensor, where the series or the bags state volumes as ATPS or ATPD and give no temperature of their own. Not the temperature of the room.
   */
  gas_temperature_c?: number;
  protocol?: IncrementalProtocol;
  phases?: IncrementalPhases;
  /**
   * Stage means typed by hand, in order, where there is no series. Any column may be missing; a stage with only workload and heart rate is fine.
   *
   * @minItems 1
   */
  stages?: [TypedStage, ...TypedStage[]];
  /**
   * Douglas bags, in order: the volume is as measured in the meter, saturated at the temperature of the gas in it (ATPS). Uptake is computed here; room.pressure_mmhg, room.inspired_gas and the gas temperature are needed.
   *
   * @minItems 1
   */
  bags?: [DouglasBag, ...DouglasBag[]];
  stop?: StopReason;
  rpe_at_end?: ExertionAtEnd;
  /**
   * Highest heart rate read off a monitor, where it is not in a series or in the stages.
   */
  heart_rate_peak_bpm?: number;
  /**
   * How heart rate was measured.
   */
  heart_rate_source?: "ecg" | "chest strap" | "optical" | "palpation";
  verification?: VerificationBout;
  reading?: ThresholdReading;
  /**
   * Blood pressure before, during and after the test.
   */
  pressures?: ExercisePressure[];
  /**
   * Oxygen saturation readings, where they are not in the series.
   */
  saturations?: ExerciseSaturation[];
  recovery?: ExerciseRecovery;
  /**
   * Signs and symptoms during or after the test. They are reported as recorded and lead the report; write [] when you looked and there were none.
   */
  adverse_signs?: (
    | "chest pain"
    | "dizziness"
    | "near fainting"
    | "pallor or cyanosis"
    | "confusion or ataxia"
    | "unusual breathlessness"
    | "wheeze"
    | "palpitations"
    | "ecg change"
    | "leg pain"
    | "nausea"
    | "pressure fall"
    | "saturation fall"
    | "other"
  )[];
  /**
   * What happened and what was done. No names.
   */
  adverse_detail?: string;
  /**
   * Whether the client had done this test on this ergometer before.
   */
  familiarised?: boolean;
  /**
   * Use of the handrail on a treadmill. Holding it makes a speed look harder won than it was: uptake predicted from speed and grade is then too high.
   */
  handrail?: "none" | "light" | "held";
  /**
   * Whether the client was encouraged in a standard way up to the end.
   */
  encouraged?: boolean;
  /**
   * Mask or mouthpiece with nose clip.
   */
  interface?: "mask" | "mouthpiece" | "hood";
  /**
   * Anything else about the test. No names.
   */
  remark?: string;
  confirmed?: Confirmed;
}
/**
 * How the work rose. It names the test for comparison between visits, and gives the workload where the series has no column for it.
 */
export interface IncrementalProtocol {
  /**
   * Short name of the protocol in this laboratory. Visits are compared only when it is the same.
   */
  name?: string;
  /**
   * ramp: work rises smoothly or in steps of less than a minute · step: stages of a minute or longer.
   */
  kind?: "ramp" | "step";
  /**
   * Power at the start of the incremental phase.
   */
  start_power_w?: number;
  /**
   * Rise of power, for a ramp.
   */
  power_rate_w_min?: number;
  /**
   * Rise of power from stage to stage.
   */
  power_step_w?: number;
  /**
   * Belt speed at the start of the incremental phase.
   */
  start_speed_km_h?: number;
  /**
   * Rise of speed, for a ramp.
   */
  speed_rate_km_h_min?: number;
  /**
   * Rise of speed from stage to stage.
   */
  speed_step_km_h?: number;
  /**
   * Grade at the start of the incremental phase. 1 % in running makes up for the missing air resistance.
   */
  start_grade_pct?: number;
  /**
   * Rise of grade, for a ramp.
   */
  grade_rate_pct_min?: number;
  /**
   * Rise of grade from stage to stage.
   */
  grade_step_pct?: number;
  /**
   * Length of a stage. 180 s or more where a lactate or economy is read.
   */
  stage_length_s?: number;
  /**
   * Stages one by one, where they do not rise evenly.
   *
   * @minItems 1
   */
  stages?: [PlannedStage, ...PlannedStage[]];
  /**
   * Which last part of each stage its means are taken over.
   */
  stage_mean_s?: number;
  confirmed?: Confirmed;
}
export interface PlannedStage {
  /**
   * Length of this stage.
   */
  duration_s: number;
  /**
   * Power.
   */
  power_w?: number;
  /**
   * Belt speed.
   */
  speed_km_h?: number;
  /**
   * Grade.
   */
  grade_pct?: number;
  confirmed?: Confirmed;
}
/**
 * When each part began, in seconds of the series' own clock. A phase that is not written is taken as absent. Leave the whole block out to have the phases found from the workload; they are then marked as found and wait for your confirmation here.
 */
export interface IncrementalPhases {
  /**
   * Start of quiet rest with the mask on.
   */
  rest_start_s?: number;
  /**
   * Start of the warm-up or of unloaded pedalling.
   */
  warm_up_start_s?: number;
  /**
   * Start of the first stage or of the ramp.
   */
  incremental_start_s: number;
  /**
   * The moment the client stopped.
   */
  recovery_start_s?: number;
  /**
   * Start of the verification bout, if it is in the same series.
   */
  verification_start_s?: number;
  /**
   * End of the verification bout.
   */
  verification_end_s?: number;
  confirmed?: Confirmed;
}
export interface TypedStage {
  /**
   * End of the stage, seconds from the start of the first one. May be left out when protocol.stage_length_s is given.
   */
  end_s?: number;
  /**
   * Power of the stage.
   */
  power_w?: number;
  /**
   * Belt speed of the stage.
   */
  speed_km_h?: number;
  /**
   * Grade of the stage.
   */
  grade_pct?: number;
  /**
   * Mean oxygen uptake of the stage, STPD.
   */
  vo2_l_min?: number;
  /**
   * Mean carbon dioxide output of the stage, STPD.
   */
  vco2_l_min?: number;
  /**
   * Mean ventilation of the stage, BTPS.
   */
  ventilation_l_min?: number;
  /**
   * Breaths a minute.
   */
  breathing_frequency_per_min?: number;
  /**
   * Heart rate at the end of the stage.
   */
  heart_rate_bpm?: number;
  /**
   * Oxygen saturation by pulse oximeter.
   */
  spo2_pct?: number;
  /**
   * Perceived exertion on the scale from 6 to 20.
   */
  rpe?: number;
  /**
   * false when the client stopped before the end of this stage.
   */
  completed?: boolean;
  confirmed?: Confirmed;
}
export interface DouglasBag {
  /**
   * When collecting began, seconds from the start of the test.
   */
  start_s?: number;
  /**
   * Volume of the bag as the meter showed it, plus what the analyser drew.
   */
  volume_l: number;
  /**
   * How long gas was collected, over whole breaths.
   */
  duration_s: number;
  /**
   * Oxygen in dry mixed expired gas.
   */
  o2_pct: number;
  /**
   * Carbon dioxide in dry mixed expired gas.
   */
  co2_pct: number;
  /**
   * Temperature of the gas in the meter.
   */
  gas_temperature_c?: number;
  /**
   * Power during the bag.
   */
  power_w?: number;
  /**
   * Belt speed during the bag.
   */
  speed_km_h?: number;
  /**
   * Grade during the bag.
   */
  grade_pct?: number;
  /**
   * Heart rate during the bag.
   */
  heart_rate_bpm?: number;
  /**
   * Perceived exertion on the scale from 6 to 20.
   */
  rpe?: number;
  confirmed?: Confirmed;
}
/**
 * Why and how the test ended. Without it nobody can tell a tired client from a broken cable.
 */
export interface StopReason {
  /**
   * exhaustion: the client could not go on although encouraged · legs, breathlessness: the main limit the client names · client request: stopped before exhaustion · symptom: see adverse_signs · practitioner: stopped for safety · planned: a submaximal end that was agreed · technical: equipment · cadence: could not hold cadence or belt position.
   */
  reason:
    | "exhaustion"
    | "legs"
    | "breathlessness"
    | "client request"
    | "symptom"
    | "practitioner"
    | "planned"
    | "technical"
    | "cadence";
  /**
   * In the client's or the practitioner's words. No names.
   */
  detail?: string;
}
/**
 * Perceived exertion asked in the moment of stopping.
 */
export interface ExertionAtEnd {
  /**
   * Which scale: 6-20 or 0-10.
   */
  scale: "6-20" | "0-10";
  /**
   * Overall exertion.
   */
  overall?: number;
  /**
   * Exertion of the working limbs.
   */
  legs?: number;
  /**
   * Breathlessness.
   */
  breathing?: number;
}
/**
 * A constant hard bout after the incremental phase, to confirm the peak. When it is in the series, give its times under phases; otherwise type its result here.
 */
export interface VerificationBout {
  /**
   * Easy recovery between the end of the incremental phase and the bout. 5 to 20 min is usual.
   */
  rest_before_s?: number;
  /**
   * How long the client kept going. Two to three minutes usually suffice.
   */
  duration_s?: number;
  /**
   * Power of the bout.
   */
  power_w?: number;
  /**
   * Speed of the bout.
   */
  speed_km_h?: number;
  /**
   * Grade of the bout.
   */
  grade_pct?: number;
  /**
   * Highest uptake of the bout, averaged over the same window as the incremental peak.
   */
  vo2_peak_l_min?: number;
  /**
   * Highest heart rate of the bout.
   */
  heart_rate_bpm?: number;
  confirmed?: Confirmed;
}
/**
 * The practitioner's own reading of the thresholds from the plots. It is shown beside the computed one and both are kept.
 */
export interface ThresholdReading {
  /**
   * Role or initials. Not a full name.
   */
  by?: string;
  vt1?: ReadThreshold;
  vt2?: ReadThreshold;
  /**
   * Why it was read there, or why none could be.
   */
  remark?: string;
}
/**
 * Where the practitioner reads a threshold. Time or uptake is enough.
 */
export interface ReadThreshold {
  /**
   * On the clock of the series.
   */
  time_s?: number;
  /**
   * Oxygen uptake there.
   */
  vo2_l_min?: number;
  /**
   * Heart rate there.
   */
  heart_rate_bpm?: number;
  /**
   * true when the practitioner looked and found none.
   */
  not_seen?: boolean;
  confirmed?: Confirmed;
}
export interface ExercisePressure {
  /**
   * Part of the test.
   */
  when: "rest" | "exercise" | "peak" | "recovery";
  /**
   * On the clock of the series.
   */
  time_s?: number;
  /**
   * Systolic pressure.
   */
  systolic_mmhg: number;
  /**
   * Diastolic pressure. Hard to hear in exercise; leave out when in doubt, never write 0.
   */
  diastolic_mmhg?: number;
  confirmed?: Confirmed;
}
export interface ExerciseSaturation {
  /**
   * Part of the test.
   */
  when: "rest" | "exercise" | "peak" | "recovery";
  /**
   * On the clock of the series.
   */
  time_s?: number;
  /**
   * Oxygen saturation by pulse oximeter.
   */
  spo2_pct: number;
  confirmed?: Confirmed;
}
/**
 * Heart-rate recovery. The fall in the first minute depends on posture and on whether the client kept moving, so both are recorded.
 */
export interface ExerciseRecovery {
  /**
   * Posture in the first minute after stopping.
   */
  posture?: "active" | "standing" | "sitting" | "lying";
  /**
   * Heart rate one minute after stopping, where it is not in the series.
   */
  heart_rate_1_min_bpm?: number;
  /**
   * Heart rate two minutes after stopping.
   */
  heart_rate_2_min_bpm?: number;
  confirmed?: Confirmed;
}
/**
 * A step test with blood lactate at the end of each step. Type the steps, or name a CSV with one row a step. All threshold definitions are computed and their spread shown; the one chosen in choices.lactate_definition is followed.
 */
export interface Lactate {
  /**
   * File name of a CSV with one row a step: power or speed, lactate, and where measured heart rate, oxygen uptake and perceived exertion.
   */
  series?: string;
  /**
   * Key of the instrument in lab.yaml instruments; its `columns:` mapping names the columns of the series.
   */
  instrument?: string;
  /**
   * Mode of exercise. Thresholds of different modes must not be compared.
   */
  mode?: "cycle" | "treadmill running" | "treadmill walking" | "rowing" | "skiing" | "arm crank" | "other";
  /**
   * Where blood was taken. Earlobe and fingertip differ a little: keep it the same.
   */
  site?: "earlobe" | "fingertip" | "venous" | "arterial";
  /**
   * Length of each step. Definitions assume steps of 3 to 5 minutes.
   */
  step_duration_s?: number;
  /**
   * Lowest value the analyser prints. A step at or below it means "not above", so it is used as printed and remarked on.
   */
  analyser_floor_mmol_l?: number;
  /**
   * Treadmill grade, the same in every step.
   */
  grade_pct?: number;
  /**
   * Lactate before the first step. Shown; never used as the baseline of a definition.
   */
  rest_lactate_mmol_l?: number;
  /**
   * Steps in order. A step in which lactate failed stays in the list without its lactate.
   *
   * @minItems 1
   * @maxItems 30
   */
  steps?: [LactateStep, ...LactateStep[]];
  /**
   * Anything a colleague should know about this test.
   */
  remark?: string;
  confirmed?: Confirmed;
}
export interface LactateStep {
  /**
   * Power of the step, in watts. Give power or speed.
   */
  power_w?: number;
  /**
   * Speed of the step, in kilometres an hour.
   */
  speed_km_h?: number;
  /**
   * Blood lactate at the end of the step. Leave out when the sample failed: 0 is not a value.
   */
  lactate_mmol_l?: number;
  /**
   * Mean heart rate at the end of the step.
   */
  heart_rate_bpm?: number;
  /**
   * Oxygen uptake at the end of the step, STPD, in litres a minute.
   */
  vo2_l_min?: number;
  /**
   * Carbon dioxide output at the end of the step, STPD, in litres a minute.
   */
  vco2_l_min?: number;
  /**
   * Perceived exertion at the end of the step, scale 6 to 20.
   */
  rpe?: number;
  /**
   * How long this step lasted, when it was cut short. The load of an unfinished last step is taken pro rata.
   */
  duration_s?: number;
  confirmed?: Confirmed;
}
/**
 * Several bouts to exhaustion, each at one power or over one distance, from which critical power or critical speed is fitted. At least three bouts between 2 and 15 minutes, the longest at least 5 minutes longer than the shortest.
 */
export interface CriticalPower {
  /**
   * Mode of exercise, the same in all bouts.
   */
  mode?: "cycle" | "running" | "rowing" | "skiing" | "swimming" | "other";
  /**
   * Days over which the bouts were spread. Bouts on one day need full recovery between them.
   */
  days_between?: number;
  /**
   * The bouts, in any order. Give power_w for each, or distance_m for each.
   *
   * @minItems 1
   * @maxItems 12
   */
  bouts:
    | [CriticalPowerBout]
    | [CriticalPowerBout, CriticalPowerBout]
    | [CriticalPowerBout, CriticalPowerBout, CriticalPowerBout]
    | [CriticalPowerBout, CriticalPowerBout, CriticalPowerBout, CriticalPowerBout]
    | [CriticalPowerBout, CriticalPowerBout, CriticalPowerBout, CriticalPowerBout, CriticalPowerBout]
    | [CriticalPowerBout, CriticalPowerBout, CriticalPowerBout, CriticalPowerBout, CriticalPowerBout, CriticalPowerBout]
    | [
        CriticalPowerBout,
        CriticalPowerBout,
        CriticalPowerBout,
        CriticalPowerBout,
        CriticalPowerBout,
        CriticalPowerBout,
        CriticalPowerBout
      ]
    | [
        CriticalPowerBout,
        CriticalPowerBout,
        CriticalPowerBout,
        CriticalPowerBout,
        CriticalPowerBout,
        CriticalPowerBout,
        CriticalPowerBout,
        CriticalPowerBout
      ]
    | [
        CriticalPowerBout,
        CriticalPowerBout,
        CriticalPowerBout,
        CriticalPowerBout,
        CriticalPowerBout,
        CriticalPowerBout,
        CriticalPowerBout,
        CriticalPowerBout,
        CriticalPowerBout
      ]
    | [
        CriticalPowerBout,
        CriticalPowerBout,
        CriticalPowerBout,
        CriticalPowerBout,
        CriticalPowerBout,
        CriticalPowerBout,
        CriticalPowerBout,
        CriticalPowerBout,
        CriticalPowerBout,
        CriticalPowerBout
      ]
    | [
        CriticalPowerBout,
        CriticalPowerBout,
        CriticalPowerBout,
        CriticalPowerBout,
        CriticalPowerBout,
        CriticalPowerBout,
        CriticalPowerBout,
        CriticalPowerBout,
        CriticalPowerBout,
        CriticalPowerBout,
        CriticalPowerBout
      ]
    | [
        CriticalPowerBout,
        CriticalPowerBout,
        CriticalPowerBout,
        CriticalPowerBout,
        CriticalPowerBout,
        CriticalPowerBout,
        CriticalPowerBout,
        CriticalPowerBout,
        CriticalPowerBout,
        CriticalPowerBout,
        CriticalPowerBout,
        CriticalPowerBout
      ];
  confirmed?: Confirmed;
}
export interface CriticalPowerBout {
  /**
   * Time to exhaustion, or time over the distance.
   */
  duration_s: number;
  /**
   * Mean power of the bout.
   */
  power_w?: number;
  /**
   * Distance covered.
   */
  distance_m?: number;
  confirmed?: Confirmed;
}
/**
 * A test in thin air: the client breathes a gas with less oxygen, or sits in a chamber at reduced pressure, at rest or in easy exercise, with a pulse oximeter on. Write the measured oxygen fraction and the pressure in the room; an altitude on a label is not enough, because conventions differ by 300 to 400 m. Have a second person watch, oxygen at hand and limits agreed with the responsible physician before you start.
 */
export interface Hypoxia {
  /**
   * How the air was made thin: a mask or room with less oxygen at local pressure, or a chamber at low pressure.
   */
  method?: "low oxygen at local pressure" | "low pressure chamber";
  /**
   * Who watched, as a role, and that oxygen was at hand.
   */
  supervision?: string;
  /**
   * One entry a step of the test, the first in room air.
   *
   * @minItems 1
   * @maxItems 40
   */
  steps: [HypoxiaStep, ...HypoxiaStep[]];
  /**
   * Lake Louise scores (2018 items) noted at altitude or in the hypoxic room after at least 6 hours. A research score; it does not diagnose.
   *
   * @maxItems 200
   */
  lake_louise?: LakeLouise[];
  confirmed?: Confirmed;
}
export interface HypoxiaStep {
  /**
   * Measured fraction of oxygen in the dry inspired gas, 0.2093 for room air.
   */
  fio2: number;
  /**
   * Barometric pressure at the client during the step. Left out, the pressure of the room block is taken.
   */
  pressure_mmhg?: number;
  /**
   * Length of the step.
   */
  minutes?: number;
  /**
   * What the client did: rest, or easy exercise with its load in words.
   */
  exercise?: string;
  /**
   * Oxygen saturation by pulse oximeter at the end of the step, mean of the last half minute.
   */
  spo2_pct?: number;
  /**
   * Heart rate at the end of the step.
   */
  heart_rate_bpm?: number;
  /**
   * Ventilation at the end of the step, BTPS.
   */
  ventilation_l_min?: number;
  /**
   * End-tidal CO2 at the end of the step.
   */
  petco2_mmhg?: number;
  /**
   * What the client reported, in words; write none when asked and none.
   */
  symptoms?: string;
  /**
   * True when the step was ended early.
   */
  stopped?: boolean;
  confirmed?: Confirmed;
}
export interface LakeLouise {
  /**
   * Date of the score.
   */
  date?: string;
  /**
   * Altitude of the place.
   */
  altitude_m?: number;
  /**
   * 0 none, 1 mild, 2 moderate, 3 severe and incapacitating.
   */
  headache: number;
  /**
   * 0 good appetite, 1 poor appetite or nausea, 2 moderate nausea or vomiting, 3 severe and incapacitating.
   */
  gastrointestinal: number;
  /**
   * 0 not tired or weak, 1 mild, 2 moderate, 3 severe and incapacitating.
   */
  fatigue: number;
  /**
   * 0 none, 1 mild, 2 moderate, 3 severe and incapacitating.
   */
  dizziness: number;
  /**
   * Effect on activity: 0 none, 1 present but no change of plan, 2 had to stop or go down, 3 had to be evacuated. Not part of the total.
   */
  functional?: number;
}
/**
 * What the client did since the last visit, from a log in the visit's folder: a row a session with date and minutes, and where kept exertion, distance, climb and mean heart rate.
 */
export interface TrainingLog {
  /**
   * Name of the CSV in this visit's folder.
   */
  file: string;
  columns?: LogColumns;
  /**
   * Sign between cells; left out, the comma.
   */
  delimiter?: "," | ";" | "\t";
  /**
   * Decimal sign; left out, the point.
   */
  decimal?: "." | ",";
  /**
   * Who kept it, and how.
   */
  kept_by?: string;
  confirmed?: Confirmed;
}
/**
 * Headers of the file, where they differ from date, minutes, rpe, distance_km, climb_m, heart_rate_bpm.
 */
export interface LogColumns {
  /**
   * Header of the date, year-month-day.
   */
  date?: string;
  /**
   * Header of the duration in minutes.
   */
  minutes?: string;
  /**
   * Header of the exertion of the whole session, 0 to 10.
   */
  rpe?: string;
  /**
   * Header of the distance in km.
   */
  distance_km?: string;
  /**
   * Header of the climb in m.
   */
  climb_m?: string;
  /**
   * Header of the mean heart rate.
   */
  heart_rate_bpm?: string;
}
