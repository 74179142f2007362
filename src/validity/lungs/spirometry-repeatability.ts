/** The two largest FEV1, and the two largest FVC, of a session must lie within 0.150 L. */
import { compareAtDecimals, toDecimals } from "../../kernel/rounding.js";
import type { Finding, Rule } from "../../kernel/rule.js";

const LIMIT_L = 0.15;
const PAIRS = [
  { apart: "fev1_repeatability", value: "fev1", name: "FEV1" },
  { apart: "fvc_repeatability", value: "fvc", name: "FVC" },
] as const;

export const rule: Rule = {
  id: "spirometry-repeatability",
  revision: 1,
  title: "Spirometry repeats itself",
  section: "lungs",
  source: {
    authors: "Graham BL, Steenbruggen I, Miller MR, et al.",
    year: 2019,
    title: "Standardization of spirometry 2019 update. An official ATS/ERS technical statement",
    journal: "Am J Respir Crit Care Med 200(8):e70–e88",
    doi: "10.1164/rccm.201908-1590ST",
    where: "repeatability of FEV1 and FVC, age above 6 years",
    verified: "seen",
  },
  judge: ({ value }) =>
    PAIRS.flatMap(({ apart, value: id, name }): Finding[] => {
      const difference = value(apart);
      if (difference === undefined || compareAtDecimals(difference, LIMIT_L, 3) <= 0) return [];
      return [
        {
          severity: "weakens",
          found: `the two largest ${name} are ${toDecimals(difference, 3)} L apart`,
          limit: `${toDecimals(LIMIT_L, 3)} L`,
          because: `Only a second breath as large shows that the first was full, so the true ${name} may be larger.`,
          affects: id === "fev1" ? ["fev1", "fev1_fvc"] : ["fvc", "fev1_fvc"],
        },
      ];
    }),
};
