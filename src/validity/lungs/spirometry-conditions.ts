/** What must be known to compare spirometry with a reference or a retest: posture, nose clip, bronchodilator. */
import type { Finding, Rule } from "../../kernel/rule.js";

export const rule: Rule = {
  id: "spirometry-conditions",
  revision: 1,
  title: "Conditions of the spirometry",
  section: "lungs",
  source: {
    authors: "Graham BL, Steenbruggen I, Miller MR, et al.",
    year: 2019,
    title: "Standardization of spirometry 2019 update. An official ATS/ERS technical statement",
    journal: "Am J Respir Crit Care Med 200(8):e70–e88",
    doi: "10.1164/rccm.201908-1590ST",
    where: "patient details and procedures to record",
    verified: "memory",
  },
  judge: ({ visit }) => {
    const block = visit.session.lungs;
    if (block?.manoeuvres === undefined) return [];
    const missing = [
      ...(block.posture === undefined ? ["posture"] : []),
      ...(block.nose_clip === undefined ? ["nose clip"] : []),
      ...(block.bronchodilator === undefined ? ["bronchodilator"] : []),
    ];
    const findings: Finding[] = [];
    if (missing.length > 0)
      findings.push({
        severity: "record",
        found: `not recorded: ${missing.join(", ")}`,
        limit: "posture, nose clip and bronchodilator recorded",
        because: "Each moves the result, so a retest can only be compared when they were the same.",
        affects: ["fev1", "fvc", "fev1_fvc"],
      });
    if (block.bronchodilator === "after")
      findings.push({
        severity: "weakens",
        found: "after a bronchodilator",
        limit: "reference values hold before a bronchodilator",
        because: "A bronchodilator can raise the values, so no reference is given.",
        affects: ["fev1", "fvc", "fev1_fvc"],
      });
    return findings;
  },
};
