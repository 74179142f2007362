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
   * A short name of the visit in small letters, digits and hyphens; unique for the client on this date, and the end of the folder name (2026-03-02-baseline).
   */
  label?: string;
  /**
   * Why the client came. baseline: first measurement for a goal. retest: after a block of training. reliability: repeated without training, to learn the laboratory's own error. other: anything else.
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
  hypoxia?: Hypoxia;
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
    "mifflin-st-jeor" | "harris-benedict-revised" | "cunningham-1980" | "cunningham-1991" | "owen" | "schofield";
  /**
   * Classes of resting blood pressure.
   */
  blood_pressure_scheme?: "acc-aha-2017" | "esh-2023" | "esc-2024";
  /**
   * Prediction of maximal heart rate; used only where none was measured, and always with its standard error.
   */
  hrmax_equation?: "tanaka-2001" | "gellish-2007" | "nes-2013";
  /**
   * Reference table for VO2peak, by id (waymark norms lists them).
   */
  vo2_reference?: string;
  /**
   * Lactate threshold that is followed for the client.
   */
  lactate_definition?:
    "baseline-plus-0.5" | "baseline-plus-1.0" | "fixed-2" | "fixed-4" | "log-log" | "dmax" | "modified-dmax";
  /**
   * Reference equations for spirometry.
   */
  lung_reference?: "gli-global-2022" | "nhanes-1999";
}
/**
 * To be described.
 */
export interface Screening {
  [k: string]: unknown;
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
 * To be described.
 */
export interface Size {
  [k: string]: unknown;
}
/**
 * To be described.
 */
export interface BloodPressure {
  [k: string]: unknown;
}
/**
 * To be described.
 */
export interface Rest {
  [k: string]: unknown;
}
/**
 * To be described.
 */
export interface HeartRateVariability {
  [k: string]: unknown;
}
/**
 * To be described.
 */
export interface Dxa {
  [k: string]: unknown;
}
/**
 * To be described.
 */
export interface Skinfolds {
  [k: string]: unknown;
}
/**
 * To be described.
 */
export interface Girths {
  [k: string]: unknown;
}
/**
 * To be described.
 */
export interface Impedance {
  [k: string]: unknown;
}
/**
 * To be described.
 */
export interface Lungs {
  [k: string]: unknown;
}
/**
 * To be described.
 */
export interface Strength {
  [k: string]: unknown;
}
/**
 * To be described.
 */
export interface Mobility {
  [k: string]: unknown;
}
/**
 * To be described.
 */
export interface FieldTests {
  [k: string]: unknown;
}
/**
 * To be described.
 */
export interface Submaximal {
  [k: string]: unknown;
}
/**
 * To be described.
 */
export interface Incremental {
  [k: string]: unknown;
}
/**
 * To be described.
 */
export interface Lactate {
  [k: string]: unknown;
}
/**
 * To be described.
 */
export interface Hypoxia {
  [k: string]: unknown;
}
