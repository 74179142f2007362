/** A syringe or gas check of another day says little about this one. */
import { daysBetween } from "../../kernel/days.js";
import type { Rule } from "../../kernel/rule.js";
import { finding } from "../finding.js";
import { instrumentOf, lastChecks, restingOn } from "../instrument.js";

export const rule: Rule = {
  id: "calibration-age",
  revision: 1,
  title: "Age of the syringe and gas checks",
  section: "validity",
  source: {
    authors: "Miller MR, Hankinson J, Brusasco V, and others",
    year: 2005,
    title: "Standardisation of spirometry",
    journal: "Eur Respir J 26:319–338",
    doi: "10.1183/09031936.05.00034805",
    where: "volume verification daily",
    verified: "seen",
  },
  judge: (findings) =>
    lastChecks(findings, (c) => c.when !== "periodic" && (c.volume !== undefined || c.gas !== undefined)).flatMap(
      (check) => {
        if (check.date === undefined) return [];
        const days = daysBetween(check.date, findings.visit.session.date);
        const hours = instrumentOf(findings, check.instrument)?.calibration_limits?.valid_for_hours ?? 24;
        if (days >= 0 && days * 24 <= Math.max(0, hours - 24)) return [];
        const found = days < 0 ? `${-days} days after the visit` : `${days} days before the visit`;
        return [
          finding(
            "weakens",
            `the check of ${check.instrument} is dated ${found}`,
            hours <= 24 ? "the day of the visit" : `within ${hours} h`,
            "Sensors and analysers move from day to day with temperature, moisture and age.",
            restingOn(findings, check.instrument, [
              ...(check.volume === undefined ? [] : (["flow sensor"] as const)),
              ...(check.gas === undefined ? [] : (["gas analyser"] as const)),
            ]),
          ),
        ];
      },
    ),
};
