/** A check against something known (test mass, belt speed, control solution, phantom) that missed its limit. */
import type { InstrumentEntry } from "../../kernel/generated/laboratory.js";
import type { ReferenceCheck } from "../../kernel/generated/session.js";
import { compareAtDecimals, toDecimals } from "../../kernel/rounding.js";
import type { Rule } from "../../kernel/rule.js";
import { finding } from "../finding.js";
import { carries, instrumentOf, lastChecks, restingOn } from "../instrument.js";

export const rule: Rule = {
  id: "reference-check",
  revision: 1,
  title: "Check of an instrument against a known value",
  section: "validity",
  source: {
    authors: "this project",
    year: null,
    title: "The laboratory's own limit for its instrument",
    where: "common practice; the limit stands in the session or in lab.yaml",
    verified: "common practice",
  },
  judge: (findings) =>
    lastChecks(findings, (check) => check.reference !== undefined).flatMap((check) => {
      const { reference } = check;
      if (reference === undefined) return [];
      const entry = instrumentOf(findings, check.instrument);
      const affects = restingOn(findings, check.instrument, carries(entry));
      const error = reference.read_value - reference.true_value;
      const limit = limitOf(reference, entry);
      const found = `${check.instrument} read ${reference.quantity} ${toDecimals(error, 2)} ${reference.unit} from the known ${reference.true_value}`;
      if (limit === undefined)
        return [
          finding("record", found, "stated", "No limit is stated for this check, so nothing follows from it.", affects),
        ];
      if (compareAtDecimals(Math.abs(error), limit, 6) <= 0) return [];
      return [
        finding(
          "fatal",
          found,
          `±${limit} ${reference.unit}`,
          "The instrument does not read true at the value that was checked.",
          affects,
        ),
      ];
    }),
};

function limitOf(check: ReferenceCheck, entry: InstrumentEntry | undefined): number | undefined {
  const limits = entry?.calibration_limits;
  if (check.limit !== undefined) return check.limit;
  if (check.unit === "kg") return limits?.mass_kg;
  if (check.unit === "W" && limits?.power_pct !== undefined)
    return (limits.power_pct * Math.abs(check.true_value)) / 100;
  return undefined;
}
