/**
 * A gas of known composition shows whether the analyser reads true. An error of 0.1 % absolute in expired oxygen moves
 * uptake by nearly 3 %. No tolerance for this is published; the limit is the laboratory's own or this one.
 */
import { compareAtDecimals, toDecimals } from "../../kernel/rounding.js";
import type { Rule } from "../../kernel/rule.js";
import { finding } from "../finding.js";
import { gasErrors, gasLimit } from "../gas-errors.js";
import { lastChecks, restingOn } from "../instrument.js";

export const rule: Rule = {
  id: "gas-calibration",
  revision: 1,
  title: "Check of the gas analyser before the test",
  section: "validity",
  source: {
    authors: "this project",
    year: null,
    title: "Working limit of 0.10 % absolute, so that uptake stays within 3 %",
    where: "Haldane transformation: expired oxygen of 16.60 instead of 16.50 % lowers uptake by 2.8 %",
    verified: "own",
  },
  judge: (findings) =>
    lastChecks(findings, (check) => check.gas !== undefined && check.when !== "after").flatMap((check) => {
      const limit = gasLimit(findings, check.instrument);
      return gasErrors(check)
        .filter(({ error }) => compareAtDecimals(Math.abs(error), limit, 5) > 0)
        .map(({ gas, name, error }) =>
          finding(
            "fatal",
            `${check.instrument} read ${toDecimals(Math.abs(100 * error), 2)} % absolute ${error < 0 ? "below" : "above"} the true ${name} of ${gas}`,
            `±${toDecimals(100 * limit, 2)} % absolute`,
            "Uptake, output and their ratio rest on this reading. Likely causes: a wrong certificate value, a leak in the sample line, moisture, an analyser not warmed up.",
            restingOn(findings, check.instrument, ["gas analyser"]),
          ),
        );
    }),
};
