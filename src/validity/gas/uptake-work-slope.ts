/** The slope of uptake on power in cycling is close to 10 mL/min/W in all healthy people. */
import { compareAtDecimals, toDecimals } from "../../kernel/rounding.js";
import type { Rule } from "../../kernel/rule.js";
import { finding } from "../finding.js";

const AFFECTED = ["vo2_work_slope", "vo2_peak", "vo2_peak_per_mass"] as const;
const LOW = 8; // and below (Glaab and Taube 2022)
const HIGH = 12.3; // mean + 1.96 SD: 10.29 + 1.96·1.01 (Hansen 1987)

export const rule: Rule = {
  id: "uptake-work-slope",
  revision: 1,
  title: "Slope of oxygen uptake on power",
  section: "incremental",
  source: {
    authors: "Hansen JE, Sue DY, Oren A, Wasserman K; Glaab T, Taube C",
    year: "1987, 2022",
    title:
      "Relation of oxygen uptake to work rate in normal men and men with circulatory disorders; Practical guide to cardiopulmonary exercise testing in adults",
    journal: "Am J Cardiol 59:669–674; Respir Res 23:9",
    doi: "10.1016/0002-9149(87)91190-8",
    where: "10.29 ± 1.01 in 54 healthy men, abstract; 8 and below low, Table 1",
    verified: "seen",
  },
  judge: ({ value }) => {
    const slope = value("vo2_work_slope");
    if (slope === undefined) return [];
    const found = `${toDecimals(slope, 1)} mL/min/W`;
    const limit = `above ${LOW}, up to ${HIGH} mL/min/W`;
    if (compareAtDecimals(slope, LOW, 1) <= 0) {
      const because =
        "Likely causes in the test: a leak, a flow sensor that reads low, an ergometer that shows too much. If these are excluded, a physician should see the value.";
      return [finding("weakens", found, limit, because, AFFECTED)];
    }
    if (compareAtDecimals(slope, HIGH, 1) > 0) {
      const because =
        "Likely causes: an ergometer that shows too little, a flow sensor that reads high, a wrong gas condition. Body mass raises the level of uptake, not its slope.";
      return [finding("weakens", found, limit, because, AFFECTED)];
    }
    return [];
  },
};
