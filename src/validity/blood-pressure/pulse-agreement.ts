/**
 * The pulse at the cuff and the heart rate of the resting measurement of one visit are close, or one of the two was
 * not rest.
 */

import { toDecimals } from "../../kernel/rounding.js";
import type { Rule } from "../../kernel/rule.js";
import { finding } from "../finding.js";

export const rule: Rule = {
  id: "pulse-agreement",
  revision: 1,
  title: "Pulse at the cuff against resting heart rate",
  section: "blood_pressure",
  source: {
    authors: "Waymark",
    year: null,
    title: "Rule of this project",
    where: "two resting rates of one visit more than 15 /min apart do not describe the same rest",
    verified: "own",
  },
  judge: ({ value }) => {
    const cuff = value("resting_pulse");
    const rest = value("resting_heart_rate");
    if (cuff === undefined || rest === undefined || Math.abs(cuff - rest) <= 15) return [];
    const found = `${toDecimals(cuff, 0)} /min at the cuff, ${toDecimals(rest, 0)} /min at rest`;
    const because = "The client was not at rest in one of them, or a channel is off.";
    return [finding("record", found, "15 /min apart", because, ["resting_pulse", "resting_heart_rate"])];
  },
};
