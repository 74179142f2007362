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
  blood_pressure_scheme: "acc-aha-2017" | "esh-2023" | "esc-2024";
  /**
   * Classes of body mass index. who-2000: international · who-asian-2004: action points for Asian populations; set it only where the client chose it.
   */
  body_mass_index_classes: "who-2000" | "who-asian-2004";
  /**
   * Equation from body density (skinfolds) to fat share.
   */
  density_to_fat: "siri" | "brozek";
  /**
   * Prediction of maximal heart rate; used only where none was measured, and always with its standard error.
   */
  hrmax_equation: "tanaka-2001" | "gellish-2007" | "nes-2013";
  /**
   * Reference for VO2peak. vo2peak-by-mode: US registry 2015 for the treadmill, 2022 for men on the cycle · registry-2022: US registry 2022 for the same · registry-2022-figure: women on the cycle, quartiles read from a figure of that registry · ship-2009: German population study, cycle only, women and men · or a word of the laboratory's own tables.
   */
  vo2_reference: string;
  /**
   * Equation that measured VO2peak is given in percent of. by-mode: Myers 2017 for the treadmill, Hansen 1984 for the cycle · friend-2018: one equation for both modes · none. Always printed with its name, and with z where a standard error is published.
   */
  vo2_prediction: "by-mode" | "friend-2018" | "jones-1985" | "hansen-1984" | "none";
  /**
   * Named classes of VO2peak shown beside its percentile.
   */
  vo2_classes: "none" | "astrand-1960";
  /**
   * Reference table for hand grip, by the word its tables give (waymark norms lists them). germany-height: by age and stature · germany-age: by age · the table must match the dynamometer.
   */
  grip_reference: string;
  /**
   * Reference tables for body composition by DXA. by-maker: Ofenheimer 2020 for ge-lunar, Kirk 2021 for hologic · kelly-2009: US adults, hologic, lean with bone.
   */
  dxa_reference: string;
  /**
   * Group that some legacy tables are split by (Asian action points of the body mass index, NHANES III spirometry). State it only with the client's agreement; no default reference needs it.
   */
  population_group: "not stated" | "asian" | "white" | "african-american" | "mexican-american";
  /**
   * Lactate threshold that is followed for the client.
   */
  lactate_definition:
    "baseline-plus-0.5" | "baseline-plus-1.0" | "fixed-2" | "fixed-4" | "log-log" | "dmax" | "modified-dmax";
  /**
   * Minutes dropped at the start of the resting measurement, while the client settles under the hood or mask.
   */
  rest_settling_min: 0 | 5 | 10 | 15;
  /**
   * Length of the steady window at rest, in whole minutes.
   */
  rest_window_min: 5 | 10 | 15;
  /**
   * first-steady: the first window in which the minute values of VO2 and of VCO2 each vary by no more than 10 % · all-after-settling: the mean of everything after the settling time. A lowest window reads too low and is not offered.
   */
  rest_window_rule: "first-steady" | "all-after-settling";
  /**
   * Edition of the pre-test conditions for resting metabolic rate that the preparation is held against.
   */
  rest_conditions: "evidence-review-2015" | "practitioner-instructions-2006";
  /**
   * Equation for fat and carbohydrate oxidation, at rest and in steady exercise. jeukendrup-wallis-2005 is for exercise; at rest its glucose-based parent peronnet-massicotte-1991 is used instead.
   */
  substrate_equation: "frayn-1983" | "peronnet-massicotte-1991" | "jeukendrup-wallis-2005";
  /**
   * Length of the part of an RR record that is used. 300 is the standard short record; variability from records of different length must not be compared.
   */
  hrv_window_s: 60 | 120 | 300;
  /**
   * Part dropped at the start of an RR record.
   */
  hrv_settling_s: 0 | 60 | 120 | 300;
  /**
   * Model for critical power and critical speed. hyperbolic fits time, where the error is; the other two are straight lines. All three are shown.
   */
  critical_power_model: "hyperbolic" | "work-time" | "inverse-time";
  /**
   * Definition of the speed at VO2max. daniels: line through the submaximal stages · lacour: mean cost above standing · di-prampero: mean gross cost · completed-stage: highest completed stage · pro-rata: with the finished part of the last stage.
   */
  vvo2max_definition: "daniels" | "lacour" | "di-prampero" | "completed-stage" | "pro-rata";
  /**
   * How much earlier than the moment of the threshold the speed, grade or power is read. 0: as reached. In a ramp VO2 follows the load with a delay (mean response time, about 30 to 60 s), so the load that would hold this VO2 steadily is lower than the one reached.
   */
  threshold_load_lag_s: 0 | 30 | 45 | 60;
  /**
   * Reference equations for spirometry. gli-global-2022 is race-neutral; nhanes-1999 is split by group and needs population_group.
   */
  lung_reference: "gli-global-2022" | "nhanes-1999";
}
