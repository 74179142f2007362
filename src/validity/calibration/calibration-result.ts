/** A check whose own result was "failed" takes the instrument's values out of use, unless a later check of it passed. */
import type { CalibrationCheck } from "../../kernel/generated/session.js";
import type { Instrument } from "../../kernel/measure.js";
import type { Rule } from "../../kernel/rule.js";
import { finding } from "../finding.js";
import { carries, instrumentOf, lastChecks, restingOn } from "../instrument.js";

export const rule: Rule = {
  id: "calibration-result",
  revision: 1,
  title: "Result of the instrument's own calibration",
  section: "validity",
  source: {
    authors: "this project",
    year: null,
    title: "A failed calibration is not used",
    where: "common practice",
    verified: "common practice",
  },
  judge: (findings) =>
    lastChecks(findings, (check) => check.result !== undefined)
      .filter((check) => check.result === "failed")
      .map((check) =>
        finding(
          "fatal",
          `the check of ${check.instrument} failed`,
          "passed",
          "What an instrument measures after a failed check cannot be used. Repeat the check, and the measurement if it fails again.",
          restingOn(findings, check.instrument, partsOf(check, carries(instrumentOf(findings, check.instrument)))),
        ),
      ),
};

/** A check of volume or gas concerns those parts of the instrument; any other check the whole of it. */
function partsOf(check: CalibrationCheck, all: readonly Instrument[]): readonly Instrument[] {
  const parts: Instrument[] = [];
  if (check.volume !== undefined) parts.push("flow sensor");
  if (check.gas !== undefined) parts.push("gas analyser");
  return parts.length > 0 ? parts : all;
}
