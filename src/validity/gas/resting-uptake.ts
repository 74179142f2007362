/**
 * Uptake at rest against body size. A lying or sitting adult takes up about 3 to 5 mL/kg/min sitting with a mask and
 * less lying; measured energy far from what size predicts points to the instrument before it points to the client.
 * Limits of this project: 70 to 140 % of the prediction, and no less than 2 mL/kg/min before exercise. The rest before
 * an exercise test has no upper limit here: it is often not quiet.
 */
import { compareAtDecimals, toDecimals } from "../../kernel/rounding.js";
import type { Rule } from "../../kernel/rule.js";
import { mean } from "../../kernel/statistics.js";
import { finding } from "../finding.js";
import { columns, readRows } from "../read-rows.js";

const LOW_PCT = 70;
const HIGH_PCT = 140;
const LEAST = 2; // mL/kg/min

export const rule: Rule = {
  id: "resting-uptake",
  revision: 1,
  title: "Oxygen uptake at rest against body size",
  section: "rest",
  source: {
    authors:
      "this project; resting range of 3 to 5 mL/kg/min by a handbook chapter on calibration of exercise-testing systems",
    year: null,
    title: "Working limits around the prediction",
    where: "rule stated above",
    verified: "own",
  },
  judge: (findings) => {
    const share = findings.value("resting_energy_percent_predicted");
    const out = [];
    const outside =
      share !== undefined && (compareAtDecimals(share, LOW_PCT, 0) < 0 || compareAtDecimals(share, HIGH_PCT, 0) > 0);
    if (share !== undefined && outside) {
      const because =
        share < LOW_PCT
          ? "Likely causes: a leak at hood or mask, a flow that is not measured in full, sleep, a wrong body mass."
          : "Likely causes: no rest or no fast before, restlessness, a wrong gas condition, a wrong pressure, an oxygen analyser that drifted.";
      out.push(
        finding("weakens", `${toDecimals(share, 0)} % of the prediction`, `${LOW_PCT} to ${HIGH_PCT} %`, because, [
          "resting_vo2",
          "resting_vo2_per_mass",
          "resting_energy_expenditure",
        ]),
      );
    }
    const massKg = findings.value("body_mass");
    const before = readRows(findings.entry("incremental_bins")).filter((row) => row.phase === "rest");
    const [vo2 = []] = columns(before, "vo2_l_min");
    if (massKg !== undefined && vo2.length >= 4 && (1000 * mean(vo2)) / massKg < LEAST)
      out.push(
        finding(
          "weakens",
          `${toDecimals((1000 * mean(vo2)) / massKg, 1)} mL/kg/min before exercise`,
          `${LEAST} mL/kg/min or more`,
          "Likely causes: a leak of expired gas at the mask, a flow sensor that does not see quiet breaths, a blocked sample line.",
          ["vo2_peak", "vo2_peak_per_mass"],
        ),
      );
    return out;
  },
};
