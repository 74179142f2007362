/** One planned session: its day, its minutes by domain, and what to do. */
export type Kind = "easy" | "long" | "steady" | "intervals" | "loaded walk" | "strength" | "rest";
export interface Session {
  /** Day number (days.ts). */
  readonly day: number;
  readonly kind: Kind;
  readonly minutes: number;
  readonly easy: number;
  readonly steady: number;
  readonly hard: number;
  /** Metres climbed, for walks uphill. */
  readonly climb?: number;
  readonly loadKg?: number;
  /** 0 to 10, the rating the planned load is reckoned with. */
  readonly rating: number;
  readonly what: string;
  readonly source: string;
  /** The practitioner's reason, where set by hand. */
  readonly byHand?: string;
}

export const loadOf = (session: Session): number => session.rating * session.minutes;

export function minutesIn(sessions: readonly Session[]): number {
  let sum = 0;
  for (const { minutes } of sessions) sum += minutes;
  return sum;
}
