/** One row of a client's training log. What was not kept is absent, never zero. */
export interface LoggedSession {
  /** ISO date. */
  readonly date: string;
  readonly minutes: number;
  /** Exertion of the whole session, 0 to 10. */
  readonly rating?: number;
  readonly distanceKm?: number;
  readonly climbM?: number;
  readonly heartRateBpm?: number;
}
