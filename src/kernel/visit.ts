/**
 * A validated visit: everything the computing stages may know. Dates are ISO texts; there is no clock.
 */
import type { Choices } from "./generated/choices.js";
import type { Client } from "./generated/client.js";
import type { Laboratory } from "./generated/laboratory.js";
import type { Session } from "./generated/session.js";
import type { Series } from "./series.js";
import type { LoggedSession } from "./training-log.js";

export interface Visit {
  readonly laboratory: Laboratory;
  readonly client: Client;
  readonly session: Session;
  /** The session file's name, for origins: "session.yaml". */
  readonly file: string;
  /** Raw series by the file name the session uses. */
  readonly series: Readonly<Record<string, Series>>;
  /** The client's own log of training since the last visit, where the session names one. */
  readonly trainingLog?: readonly LoggedSession[];
  /** House choices, with the client's and the session's own on top: every key has a value. */
  readonly choices: Choices;
  /** Decimal age at the visit: completed years plus the elapsed share of the current one. */
  readonly ageYears: number;
}
