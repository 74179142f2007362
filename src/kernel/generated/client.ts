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
   * Who set it: a selection standard, a coach, the client.
   */
  from?: string;
}
/**
 * To be described.
 */
export interface Screening {
  [k: string]: unknown;
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
 * What the training plan needs to know.
 */
export interface Plan {
  [k: string]: unknown;
}
