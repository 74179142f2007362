/**
 * The same gases read again after the test show drift. In one study an analyser drifted by 0.18 % absolute in oxygen and
 * 0.05 % in carbon dioxide: corrected VO2max was 5 to 6 % lower and the ratio 8 to 9 % higher.
 */
import { compareAtDecimals, toDecimals } from "../../kernel/rounding.js";
import type { Rule } from "../../kernel/rule.js";
import { finding } from "../finding.js";
import { gasErrors, gasLimit } from "../gas-errors.js";
import { lastChecks, restingOn } from "../instrument.js";

export const rule: Rule = {
  id: "gas-drift",
  revision: 1,
  title: "Drift of the gas analyser over the test",
  section: "validity",
  source: {
    authors: "Garcia-Tabar I and others",
    year: 2015,
    title:
      "Gas analyzer's drift leads to systematic error in maximal oxygen uptake and maximal respiratory exchange ratio determination",
    journal: "Front Physiol 6:308",
    doi: "10.3389/fphys.2015.00308",
    where: "abstract; the limit of 0.10 % absolute is a working limit of this project",
    verified: "seen",
  },
  judge: (findings) =>
    lastChecks(findings, (check) => check.gas !== undefined && check.when === "after").flatMap((check) => {
      const limit = gasLimit(findings, check.instrument);
      return gasErrors(check)
        .filter(({ error }) => compareAtDecimals(Math.abs(error), limit, 5) > 0)
        .map(({ gas, name, error }) =>
          finding(
            compareAtDecimals(Math.abs(error), 2 * limit, 5) > 0 ? "fatal" : "weakens",
            `after the test ${check.instrument} read ${toDecimals(Math.abs(100 * error), 2)} % absolute ${error < 0 ? "below" : "above"} the true ${name} of ${gas}`,
            `±${toDecimals(100 * limit, 2)} % absolute; beyond twice that the values are withheld`,
            "An analyser that drifted was wrong for part of the test. Nothing is corrected here: repeat, or state the error.",
            restingOn(findings, check.instrument, ["gas analyser"]),
          ),
        );
    }),
};
