/* Made by npm run generate from schema/event-profile.schema.json. Do not edit. */

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
 * What an event or a job asks of a person, as data. One file a profile; built-in ones stand in src/plan/profiles/, a laboratory's own in profiles/ of its practice folder, under this same schema. A demand without a published source is marked as a convention.
 */
export interface EventProfile {
  /**
   * Equal to the file name without its ending; client.yaml names it in plan.profile.
   */
  id: string;
  /**
   * Name as a reader of the report sees it.
   */
  title: string;
  /**
   * What the days before the goal and the sessions are laid out for: an endurance event of competition, a stay or tour of many days, or a test of a job.
   */
  kind: "event" | "tour" | "job test";
  /**
   * How long the effort lasts, a day of it where there are many.
   */
  duration_min?: number;
  /**
   * How many days in a row.
   */
  days?: number;
  /**
   * True where a load is carried: loaded walking then belongs to the programme.
   */
  load_bearing?: boolean;
  walk?: ProfileWalk;
  /**
   * Altitude of the place.
   */
  altitude_m?: number;
  /**
   * Limits that a measured value is held against.
   *
   * @minItems 1
   * @maxItems 24
   */
  demands: [Demand, ...Demand[]];
  /**
   * What the profile leaves out.
   */
  notes: string;
  confirmed?: Confirmed;
}
/**
 * The hardest steady walk of it; the client's own plan.walk goes before it.
 */
export interface ProfileWalk {
  /**
   * Walking speed.
   */
  speed_km_h: number;
  /**
   * Mean grade uphill.
   */
  grade_pct: number;
  /**
   * Load carried.
   */
  load_kg: number;
  /**
   * The published source of the number, or the word convention with a reason.
   */
  from: string;
}
export interface Demand {
  /**
   * Id of the measure, as results.yaml writes it.
   */
  measure: string;
  /**
   * Lower limit, in the measure's unit.
   */
  at_least?: number;
  /**
   * Upper limit, in the measure's unit.
   */
  at_most?: number;
  /**
   * Where the limit holds for one sex only.
   */
  sex?: "female" | "male";
  /**
   * What the measure stands for in the event.
   */
  why?: string;
  /**
   * The published source of the number, or the word convention with a reason.
   */
  from: string;
}
