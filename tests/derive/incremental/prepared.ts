/** The prepared test of a visit that has one. */
import { type Prepared, prepareTest } from "../../../src/derive/incremental/prepare.js";
import type { Visit } from "../../../src/kernel/visit.js";

export function preparedOf(visit: Visit): Prepared | undefined {
  const made = prepareTest(visit);
  return made !== undefined && "test" in made ? made.test : undefined;
}
