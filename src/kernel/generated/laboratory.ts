/* Made by npm run generate from schema/laboratory.schema.json. Do not edit. */

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
 * Header of the column, exactly as the file writes it. A list of headers means their sum (expiration time plus inspiration time).
 */
export type ColumnHeader = string | [string, string] | [string, string, string] | [string, string, string, string];
/**
 * Gas condition of this volume. ATPS: ambient temperature and pressure, saturated. BTPS: body temperature, saturated. STPD: 0 °C, 760 mmHg, dry. ATPD: ambient, dry. ambient: at the room's own humidity. Without it, what needs a conversion is not given.
 */
export type GasConditionWord = "ATPS" | "BTPS" | "STPD" | "ATPD" | "ambient";

/**
 * The laboratory: where it stands, its instruments, and its house choices. One file, lab.yaml, at the top of the practice folder.
 */
export interface Laboratory {
  /**
   * Format of this file. Write: laboratory 1
   */
  waymark: "laboratory 1";
  /**
   * Name of the laboratory as reports print it.
   */
  name: string;
  /**
   * Address as the letterhead prints it; several lines are fine.
   */
  address?: string;
  /**
   * Further lines for the head of a report: department, accreditation number, how to reach the laboratory.
   */
  letterhead?: string;
  /**
   * File name of a picture (SVG or PNG) in the practice folder, printed at the head of reports.
   */
  logo?: string;
  /**
   * Paper of the PDF report.
   */
  paper?: "A4" | "Letter";
  /**
   * Language of reports.
   */
  language?: "en" | "de" | "es" | "fr";
  /**
   * Print customary units beside the metric ones in the client edition, or not.
   */
  units_beside?: "none" | "customary";
  /**
   * Altitude of the site above sea level. It is used to judge a barometric reading (the pressure of a weather service is reduced to sea level, that of the room is not) and for training at altitude; never in place of a measured pressure.
   */
  altitude_m?: number;
  /**
   * Volume of mask or mouthpiece and valve between mouth and sensor.
   */
  dead_space_ml?: number;
  /**
   * How long client folders are kept after the last visit, by your local code. The archive command prints who is due.
   */
  retention_years?: number;
  /**
   * Instruments by a short key of your own (cart, treadmill, dxa). Sessions name them by this key.
   */
  instruments?: {
    [k: string]: InstrumentEntry;
  };
  choices?: Choices;
  /**
   * Files with your own test-retest pairs. From them come the laboratory's own typical errors, which go before published ones.
   *
   * @maxItems 200
   */
  retests?: RetestFile[];
  /**
   * File names of the laboratory's own reference tables, in the practice folder (norms/rowers.yaml).
   *
   * @maxItems 200
   */
  norms?: string[];
  /**
   * File names of the laboratory's own event-demand profiles, in the practice folder (profiles/ferry-crew.yaml). client.yaml names one by its id in plan.profile.
   *
   * @maxItems 200
   */
  profiles?: string[];
  screening_sign_off?: ScreeningSignOff;
  confirmed?: Confirmed;
}
/**
 * One instrument: what it is, what it measures, and how its files are to be read.
 */
export interface InstrumentEntry {
  /**
   * What it is.
   */
  kind:
    | "gas exchange system"
    | "douglas bag system"
    | "treadmill"
    | "cycle ergometer"
    | "rowing ergometer"
    | "other ergometer"
    | "heart-rate monitor"
    | "sphygmomanometer"
    | "scales"
    | "stadiometer"
    | "dxa"
    | "impedance analyser"
    | "skinfold caliper"
    | "spirometer"
    | "dynamometer"
    | "jump mat or force plate"
    | "lactate analyser"
    | "pulse oximeter"
    | "calibration syringe"
    | "calibration gas"
    | "barometer"
    | "timing system"
    | "other";
  /**
   * What results rest on it. A fault found at its calibration withholds those results.
   */
  measures?: (
    | "gas analyser"
    | "flow sensor"
    | "ergometer"
    | "heart-rate monitor"
    | "sphygmomanometer"
    | "scales"
    | "stadiometer"
    | "dxa"
    | "spirometer"
    | "dynamometer"
    | "lactate analyser"
    | "pulse oximeter"
    | "impedance"
  )[];
  /**
   * Model and whatever a colleague needs to tell it from another one.
   */
  description?: string;
  /**
   * Maker, in lower case. Reference values of DXA and of some dynamometers hold for one maker only.
   */
  maker?: string;
  /**
   * Serial or inventory number, in quotes.
   */
  serial?: string;
  /**
   * Version of its own software. A change between two visits is named in the comparison.
   */
  software?: string;
  /**
   * Date since which it has been in use.
   */
  in_use_since?: string;
  /**
   * For gas exchange: a sample a breath, or a mixing chamber with a sample every few seconds.
   */
  mixing?: "breath by breath" | "mixing chamber" | "bag";
  /**
   * Time between samples of a mixing chamber.
   */
  mixing_interval_s?: number;
  /**
   * Time by which gas lags behind flow after the instrument's own correction.
   */
  delay_s?: number;
  /**
   * Every biological control of this instrument: a healthy member of staff measured at one work rate every few weeks. Six or more show a trend that no single calibration shows; five or more make the limits of the next one. A visit looks at those up to its own date.
   *
   * @maxItems 2000
   */
  biological_controls?: ControlRecord[];
  calibration_limits?: CalibrationLimits;
  /**
   * Character set of its files. Without it: UTF-8, else the Western 8-bit set.
   */
  encoding?: "utf-8" | "latin-1" | "utf-16";
  /**
   * What stands between cells. Without it, the one that makes the mapped headers appear.
   */
  delimiter?: "," | ";" | "tab" | "|";
  /**
   * Decimal mark of its numbers.
   */
  decimal?: "." | ",";
  /**
   * Line of the file on which the column headers stand, counted from 1.
   */
  header_row?: number;
  /**
   * Lines right below the headers that are not data: a row of units, an empty row.
   */
  skip_rows?: number;
  /**
   * How the first row below the data begins, where its files end with a summary ("Mean"). That row and all below it are not read.
   *
   * @maxItems 10
   */
  ends_before?:
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
    | [string, string, string, string, string, string, string, string, string, string];
  /**
   * Further marks that mean "no value" in its files ("-999", "err"). Blank, -, --, NA, N/A, n/a, NaN, null and ? are always such marks; 0 is one for every channel that cannot be zero.
   *
   * @maxItems 30
   */
  missing?: string[];
  columns?: ColumnMapping;
  confirmed?: Confirmed;
}
/**
 * One control.
 */
export interface ControlRecord {
  /**
   * Date of the control, year-month-day.
   */
  date: string;
  /**
   * What was measured and in which unit, the same words every time: vo2 at 100 W, L/min. No names.
   */
  measure: string;
  /**
   * Value found.
   */
  value: number;
  confirmed?: Confirmed;
}
/**
 * Limits your laboratory holds this instrument to. Without them the published ones are used.
 */
export interface CalibrationLimits {
  /**
   * Largest accepted difference between read and true syringe volume.
   */
  volume_pct?: number;
  /**
   * Largest accepted difference between read and true gas fraction, as a fraction (0.0005).
   */
  gas_fraction?: number;
  /**
   * Largest accepted error of a test mass.
   */
  mass_kg?: number;
  /**
   * Largest accepted error of an ergometer's power.
   */
  power_pct?: number;
  /**
   * How long a calibration holds.
   */
  valid_for_hours?: number;
  confirmed?: Confirmed;
}
/**
 * Which column of its files holds what. Only the columns named here are read.
 */
export interface ColumnMapping {
  /**
   * Time of the sample since the recording began. h:mm:ss and mm:ss are elapsed times; clock is the time of the day, counted from the first row.
   */
  time_s?: {
    column: ColumnHeader;
    /**
     * Unit the file uses. It is converted to the unit in the key's name.
     */
    unit: "s" | "min" | "ms" | "h:mm:ss" | "mm:ss" | "clock";
  };
  /**
   * Oxygen uptake, STPD.
   */
  vo2_l_min?: {
    column: ColumnHeader;
    /**
     * Unit the file uses. It is converted to the unit in the key's name.
     */
    unit: "L/min" | "mL/min" | "L/s" | "mL/s";
    condition?: GasConditionWord;
  };
  /**
   * Carbon dioxide output, STPD.
   */
  vco2_l_min?: {
    column: ColumnHeader;
    /**
     * Unit the file uses. It is converted to the unit in the key's name.
     */
    unit: "L/min" | "mL/min" | "L/s" | "mL/s";
    condition?: GasConditionWord;
  };
  /**
   * Expired ventilation. Where it is absent it is tidal volume times breathing frequency.
   */
  ventilation_l_min?: {
    column: ColumnHeader;
    /**
     * Unit the file uses. It is converted to the unit in the key's name.
     */
    unit: "L/min" | "mL/min" | "L/s" | "mL/s";
    condition?: GasConditionWord;
  };
  /**
   * Inspired ventilation.
   */
  inspired_ventilation_l_min?: {
    column: ColumnHeader;
    /**
     * Unit the file uses. It is converted to the unit in the key's name.
     */
    unit: "L/min" | "mL/min" | "L/s" | "mL/s";
    condition?: GasConditionWord;
  };
  /**
   * Volume of one expiration.
   */
  tidal_volume_l?: {
    column: ColumnHeader;
    /**
     * Unit the file uses. It is converted to the unit in the key's name.
     */
    unit: "L" | "mL";
    condition?: GasConditionWord;
  };
  /**
   * Breaths per minute. With unit s or ms the column holds the duration of one breath.
   */
  breathing_frequency_per_min?: {
    column: ColumnHeader;
    /**
     * Unit the file uses. It is converted to the unit in the key's name.
     */
    unit: "1/min" | "1/s" | "s" | "ms";
  };
  /**
   * Mixed expired oxygen fraction, dry gas.
   */
  feo2?: {
    column: ColumnHeader;
    /**
     * Unit the file uses. It is converted to the unit in the key's name.
     */
    unit: "fraction" | "%";
  };
  /**
   * Mixed expired carbon dioxide fraction, dry gas.
   */
  feco2?: {
    column: ColumnHeader;
    /**
     * Unit the file uses. It is converted to the unit in the key's name.
     */
    unit: "fraction" | "%";
  };
  /**
   * Inspired oxygen fraction, dry gas.
   */
  fio2?: {
    column: ColumnHeader;
    /**
     * Unit the file uses. It is converted to the unit in the key's name.
     */
    unit: "fraction" | "%";
  };
  /**
   * Inspired carbon dioxide fraction, dry gas.
   */
  fico2?: {
    column: ColumnHeader;
    /**
     * Unit the file uses. It is converted to the unit in the key's name.
     */
    unit: "fraction" | "%";
  };
  /**
   * End-tidal oxygen pressure.
   */
  peto2_mmhg?: {
    column: ColumnHeader;
    /**
     * Unit the file uses. It is converted to the unit in the key's name.
     */
    unit: "mmHg" | "kPa" | "hPa";
  };
  /**
   * End-tidal carbon dioxide pressure.
   */
  petco2_mmhg?: {
    column: ColumnHeader;
    /**
     * Unit the file uses. It is converted to the unit in the key's name.
     */
    unit: "mmHg" | "kPa" | "hPa";
  };
  /**
   * Heart rate, beats per minute. With unit s or ms the column holds the interval between beats.
   */
  heart_rate_bpm?: {
    column: ColumnHeader;
    /**
     * Unit the file uses. It is converted to the unit in the key's name.
     */
    unit: "1/min" | "1/s" | "s" | "ms";
  };
  /**
   * Arterial oxygen saturation by pulse oximeter.
   */
  spo2_pct?: {
    column: ColumnHeader;
    /**
     * Unit the file uses. It is converted to the unit in the key's name.
     */
    unit: "%" | "fraction";
  };
  /**
   * Speed of the belt, or of the athlete in a field test.
   */
  speed_km_h?: {
    column: ColumnHeader;
    /**
     * Unit the file uses. It is converted to the unit in the key's name.
     */
    unit: "km/h" | "m/s" | "m/min" | "mph";
  };
  /**
   * Grade of the belt: rise over run.
   */
  grade_pct?: {
    column: ColumnHeader;
    /**
     * Unit the file uses. It is converted to the unit in the key's name.
     */
    unit: "%" | "fraction" | "degrees";
  };
  /**
   * Power at the ergometer.
   */
  power_w?: {
    column: ColumnHeader;
    /**
     * Unit the file uses. It is converted to the unit in the key's name.
     */
    unit: "W" | "kW";
  };
  /**
   * Pedal or stroke rate per minute.
   */
  cadence_rpm?: {
    column: ColumnHeader;
    /**
     * Unit the file uses. It is converted to the unit in the key's name.
     */
    unit: "1/min" | "1/s";
  };
  /**
   * Blood lactate concentration.
   */
  lactate_mmol_l?: {
    column: ColumnHeader;
    /**
     * Unit the file uses. It is converted to the unit in the key's name.
     */
    unit: "mmol/L" | "mg/dL";
  };
  /**
   * Rating of perceived exertion on the scale from 6 to 20.
   */
  rpe?: {
    column: ColumnHeader;
    /**
     * Unit the file uses. It is converted to the unit in the key's name.
     */
    unit: "6-20";
  };
  /**
   * Interval between two heart beats.
   */
  rr_ms?: {
    column: ColumnHeader;
    /**
     * Unit the file uses. It is converted to the unit in the key's name.
     */
    unit: "ms" | "s";
  };
  /**
   * Volume of expired gas collected in the bag.
   */
  bag_volume_l?: {
    column: ColumnHeader;
    /**
     * Unit the file uses. It is converted to the unit in the key's name.
     */
    unit: "L" | "mL";
    condition?: GasConditionWord;
  };
  /**
   * Time over which the bag was filled.
   */
  bag_duration_s?: {
    column: ColumnHeader;
    /**
     * Unit the file uses. It is converted to the unit in the key's name.
     */
    unit: "s" | "min" | "ms";
  };
  /**
   * Temperature of the gas where its volume was measured.
   */
  gas_temperature_c?: {
    column: ColumnHeader;
    /**
     * Unit the file uses. It is converted to the unit in the key's name.
     */
    unit: "°C" | "°F" | "K";
  };
  /**
   * Distance covered since the start.
   */
  distance_m?: {
    column: ColumnHeader;
    /**
     * Unit the file uses. It is converted to the unit in the key's name.
     */
    unit: "m" | "km";
  };
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
export interface RetestFile {
  /**
   * Id of the measure, as results.yaml writes it (vo2_peak).
   */
  measure: string;
  /**
   * CSV in the practice folder with two columns, test and retest, one pair a row.
   */
  file: string;
  /**
   * Kind of exercise the pairs come from, as sessions write it (treadmill, cycle). The error is then used for that kind only. Leave out where the measure has none.
   */
  mode?: string;
  /**
   * Usual number of days between test and retest.
   */
  days_between?: number;
  /**
   * Who was tested and how, in one line, without names.
   */
  from?: string;
  /**
   * What must be the same for the error to apply: instrument, protocol, averaging window.
   */
  method?: string;
}
/**
 * The physician who agreed to the limits at which this laboratory stops or refers a client. Without it the report says that published limits were used without local sign-off.
 */
export interface ScreeningSignOff {
  /**
   * Role of the physician, not the name ("sports physician of the hospital").
   */
  by_role: string;
  /**
   * Date of the sign-off.
   */
  date: string;
  /**
   * Date by which the limits are looked at again.
   */
  review_by?: string;
  /**
   * What was agreed, in a sentence.
   */
  note?: string;
  confirmed?: Confirmed;
}
