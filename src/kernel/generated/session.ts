/* Made by npm run generate from schema/session.schema.json. Do not edit. */

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
   * A short name of the visit, unique for the client on this date.
   */
  label?: string;
  /**
   * baseline: first measurement of a goal · retest: after a block of training · reliability: repeated without training, to learn the laboratory's own error · other.
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
 * To be described.
 */
export interface Preparation {
  [k: string]: unknown;
}
/**
 * To be described.
 */
export interface Room {
  [k: string]: unknown;
}
/**
 * To be described.
 */
export interface Calibration {
  [k: string]: unknown;
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
/**
 * Values of this mapping that are unusual but true: key and why you are sure, e.g. {mass_kg: "weighed twice"}.
 */
export interface Confirmed {
  [k: string]: string;
}
