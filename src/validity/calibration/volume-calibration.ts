/**
 * A syringe of known volume shows whether the flow sensor reads true. Every stroke counts: a sensor that is right on
 * average and wrong at high flow is wrong at peak exercise.
 */
import { compareAtDecimals, toDecimals } from "../../kernel/rounding.js";
import type { Rule } from "../../kernel/rule.js";
import { finding } from "../finding.js";
import { instrumentOf, lastChecks, restingOn } from "../instrument.js";

const LIMIT_PCT = 3;

export const rule: Rule = {
  id: "volume-calibration",
  revision: 1,
  title: "Syringe check of the flow sensor",
  section: "validity",
  source: {
    authors: "Graham BL, Steenbruggen I, Miller MR, and others",
    year: 2019,
    title: "Standardization of Spirometry 2019 Update",
    journal: "Am J Respir Crit Care Med 200:e70–e88",
    doi: "10.1164/rccm.201908-1590ST",
    where: "calibration verification: 2.5 % for the device, 3 % with the syringe (the sum from memory)",
    verified: "memory",
  },
  judge: (findings) =>
    lastChecks(findings, (check) => check.volume !== undefined).flatMap((check) => {
      if (check.volume === undefined) return [];
      const limit = instrumentOf(findings, check.instrument)?.calibration_limits?.volume_pct ?? LIMIT_PCT;
      const { syringe_l, read_l } = check.volume;
      const errors = read_l.map((read) => (100 * (read - syringe_l)) / syringe_l);
      const worst = errors.reduce((a, b) => (Math.abs(b) > Math.abs(a) ? b : a), 0);
      if (compareAtDecimals(Math.abs(worst), limit, 2) <= 0) return [];
      return [
        finding(
          "fatal",
          `a stroke of ${check.instrument} read ${toDecimals(worst, 1)} % from the syringe of ${syringe_l} L`,
          `±${limit} %`,
          "Ventilation, uptake and output scale with this error. Likely causes: dirt or moisture in the sensor, a leak between syringe and sensor, a syringe that was dropped.",
          restingOn(findings, check.instrument, ["flow sensor"]),
        ),
      ];
    }),
};
