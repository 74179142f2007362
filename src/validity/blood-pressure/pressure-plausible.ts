/**
 * Systolic and diastolic that belong together. A pulse pressure below 20 or above 100 mmHg is far more often a
 * misreading than a finding.
 */

import { toDecimals } from "../../kernel/rounding.js";
import type { Rule } from "../../kernel/rule.js";
import { finding } from "../finding.js";

const AFFECTED = ["systolic_pressure", "diastolic_pressure", "blood_pressure_class"] as const;

export const rule: Rule = {
  id: "pressure-plausible",
  revision: 1,
  title: "Systolic against diastolic",
  section: "blood_pressure",
  source: {
    authors: "Waymark",
    year: null,
    title: "Rule of this project",
    where: "a pulse pressure below 20 or above 100 mmHg is far more often a misreading",
    verified: "own",
  },
  judge: ({ value }) => {
    const apart = value("pulse_pressure");
    if (apart === undefined || (apart >= 20 && apart <= 100)) return [];
    const because = "One of the two pressures may be misread; repeat the reading.";
    return [finding("weakens", `pulse pressure ${toDecimals(apart, 0)} mmHg`, "20 to 100 mmHg", because, AFFECTED)];
  },
};
