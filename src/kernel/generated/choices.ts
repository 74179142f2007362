/* Made by npm run generate from schema/blocks/choices.schema.json. Do not edit. */

/**
 * Choices that change numbers. House default in lab.yaml; a client or a session may set its own. They are written into results.yaml and must not move between visits that are compared.
 */
export interface Choices {
  /**
   * Length of the averaging window for peak values. The window alone moves VO2peak by 4 to 10 %.
   */
  peak_window_s: 10 | 15 | 20 | 30 | 60;
  /**
   * Fractions of O2 and CO2 taken for dry room air where the session states that room air was inspired and does not give its own.
   */
  room_air: "0.2093/0.0003" | "0.2095/0.0004";
  /**
   * Equation for energy expenditure from gas exchange. weir-1949: 3.941 and 1.106 kcal/L · weir-short: 3.9 and 1.1 · brockway-1987.
   */
  energy_equation: "weir-1949" | "weir-short" | "brockway-1987";
  /**
   * Prediction that measured resting energy expenditure is compared with.
   */
  resting_prediction:
    "mifflin-st-jeor" | "harris-benedict-revised" | "cunningham-1980" | "cunningham-1991" | "owen" | "schofield";
  /**
   * Classes of resting blood pressure.
   */
  blood_pressure_scheme: "acc-aha-2017" | "esh-2023" | "esc-2024";
  /**
   * Prediction of maximal heart rate; used only where none was measured, and always with its standard error.
   */
  hrmax_equation: "tanaka-2001" | "gellish-2007" | "nes-2013";
  /**
   * Reference table for VO2peak, by id (waymark norms lists them).
   */
  vo2_reference: string;
  /**
   * Lactate threshold that is followed for the client.
   */
  lactate_definition:
    "baseline-plus-0.5" | "baseline-plus-1.0" | "fixed-2" | "fixed-4" | "log-log" | "dmax" | "modified-dmax";
  /**
   * Reference equations for spirometry.
   */
  lung_reference: "gli-global-2022" | "nhanes-1999";
}
