/** What one rule says of an invented visit, after the domains of body, strength, field tests and screening. */
import { describe, expect, it } from "vitest";
import { deriveBloodPressure } from "../../src/derive/blood-pressure.js";
import { deriveComposition } from "../../src/derive/composition.js";
import { deriveField } from "../../src/derive/field.js";
import { deriveMobility } from "../../src/derive/mobility.js";
import { deriveScreening } from "../../src/derive/screening.js";
import { deriveSize } from "../../src/derive/size.js";
import { deriveStrength } from "../../src/derive/strength.js";
import { deriveSubmaximal } from "../../src/derive/submaximal.js";
import type { Session } from "../../src/kernel/generated/session.js";
import type { MeasureId } from "../../src/kernel/measures.js";
import { openNotebook } from "../../src/kernel/notebook.js";
import type { Finding, Rule } from "../../src/kernel/rule.js";
import { type Around, visitOf } from "../derive/visit-of.js";

/** `values` are further values that another domain would have written (resting heart rate). */
export function findingsOf(
  rule: Rule,
  blocks: Partial<Session>,
  around: Around = {},
  values: Partial<Record<MeasureId, number>> = {},
): readonly Finding[] {
  const book = openNotebook();
  const visit = visitOf(blocks, around);
  for (const [id, value] of Object.entries(values)) book.record(id as MeasureId, value, "invented");
  deriveSize(book, visit);
  deriveBloodPressure(book, visit);
  deriveScreening(book, visit);
  deriveComposition(book, visit);
  deriveStrength(book, visit);
  deriveMobility(book, visit);
  deriveField(book, visit);
  deriveSubmaximal(book, visit);
  return rule.judge({ visit, value: book.value, entry: book.entry });
}

export type Case = readonly [
  name: string,
  blocks: Partial<Session>,
  expected: readonly string[],
  around?: Around,
  values?: Partial<Record<MeasureId, number>>,
];

/** "fatal", "weakens", "record" for a broken limit; "record: not recorded" where something was not written down. */
export const severities = (findings: readonly Finding[]): string[] =>
  findings.map(({ severity, found }) => (found.endsWith("not recorded") ? `${severity}: not recorded` : severity));

/** One test a case: what the rule says of the visit. Each rule has a case that trips it and one that just does not. */
export function check(rule: Rule, cases: readonly Case[]): void {
  describe(rule.id, () => {
    for (const [name, blocks, expected, around, values] of cases)
      it(name, () => expect(severities(findingsOf(rule, blocks, around, values))).toEqual(expected));
  });
}
