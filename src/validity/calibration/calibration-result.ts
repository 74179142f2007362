/** A check whose own result was "failed" takes the instrument's values out of use, unless a later check of it passed. */
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

/** A check of volume or gas alone concerns that part; any other the whole instrument. */
function partsOf(check: { readonly volume?: unknown; readonly gas?: unknown }, all: ReturnType<typeof carries>) {
  if (check.volume !== undefined && check.gas === undefined) return ["flow sensor"] as const;
  if (check.gas !== undefined && check.volume === undefined) return ["gas analyser"] as const;
  return all;
}
