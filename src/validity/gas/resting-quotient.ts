/** The respiratory exchange ratio at rest after a fast: plausible from 0.67 to 0.90, suspect above, an error outside 0.67 to 1.30. */
import { compareAtDecimals, toDecimals } from "../../kernel/rounding.js";
import type { Rule } from "../../kernel/rule.js";
import { finding } from "../finding.js";

const AFFECTED = [
  "resting_rer",
  "resting_energy_expenditure",
  "resting_fat_oxidation",
  "resting_carbohydrate_oxidation",
] as const;

export const rule: Rule = {
  id: "resting-quotient",
  revision: 1,
  title: "Respiratory exchange ratio at rest",
  section: "rest",
  source: {
    authors: "Academy of Nutrition and Dietetics, Evidence Analysis Library",
    year: 2014,
    title: "Respiratory quotient in healthy and non-critically ill adults: recommendations",
    where: "bands, ratio rounded to two decimals",
    verified: "seen",
  },
  judge: ({ value, visit }) => {
    const ratio = value("resting_rer");
    if (ratio === undefined) return [];
    const found = `ratio ${toDecimals(ratio, 2)}`;
    if (compareAtDecimals(ratio, 0.67, 2) < 0 || compareAtDecimals(ratio, 1.3, 2) > 0)
      return [
        finding(
          "fatal",
          found,
          "0.67 to 1.30",
          "Outside the physiological range: an error of gas or calibration is likely, and the measurement is repeated.",
          AFFECTED,
        ),
      ];
    if (compareAtDecimals(ratio, 0.9, 2) <= 0) return [];
    const fast = visit.session.preparation?.hours_since_food;
    const food = fast === undefined ? "the fast was not recorded" : `${fast} h since food`;
    return [
      finding(
        "weakens",
        `${found}, ${food}`,
        "0.67 to 0.90 after a fast",
        "Likely causes: food, overbreathing, a leak, calibration. Consider repeating.",
        AFFECTED,
      ),
    ];
  },
};
