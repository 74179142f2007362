/** At least three acceptable forced manoeuvres, and for each whether it was acceptable. */
import type { Finding, Rule } from "../../kernel/rule.js";

const LEAST = 3;

export const rule: Rule = {
  id: "spirometry-manoeuvres",
  revision: 1,
  title: "Enough acceptable manoeuvres",
  section: "lungs",
  source: {
    authors: "Graham BL, Steenbruggen I, Miller MR, et al.",
    year: 2019,
    title: "Standardization of spirometry 2019 update. An official ATS/ERS technical statement",
    journal: "Am J Respir Crit Care Med 200(8):e70–e88",
    doi: "10.1164/rccm.201908-1590ST",
    where: "at least three acceptable manoeuvres, up to eight",
    verified: "seen",
  },
  judge: ({ visit, entry }) => {
    const all = visit.session.lungs?.manoeuvres;
    const table = entry("spirometry_manoeuvres");
    if (all === undefined || table?.kind !== "table") return [];
    const affects = ["fev1", "fvc", "fev1_fvc"] as const;
    const limit = `${LEAST} acceptable manoeuvres`;
    const unmarked = all.filter((m) => m.acceptable === undefined).length;
    if (unmarked > 0)
      return [
        {
          severity: "weakens",
          found: `not recorded for ${unmarked} of ${all.length} manoeuvres`,
          limit,
          because: "Without a word on each breath nobody can tell later whether a low value was a spoilt one.",
          affects,
        },
      ];
    const counted = table.rows.filter((row) => row[row.length - 1] === "yes").length;
    if (counted >= LEAST) return [];
    const finding: Finding = {
      severity: "weakens",
      found: `${counted} of ${all.length} manoeuvres`,
      limit,
      because: "With fewer good breaths the largest one is more likely to fall short of what the client can do.",
      affects,
    };
    return [finding];
  },
};
