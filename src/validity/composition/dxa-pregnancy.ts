/**
 * No scan is made in pregnancy; the question is asked and its answer written down for clients who could be pregnant.
 */
import type { Rule } from "../../kernel/rule.js";
import { finding, notRecorded } from "../finding.js";

const AFFECTED = ["fat_mass", "lean_mass", "body_fat_percent"] as const;

export const rule: Rule = {
  id: "dxa-pregnancy",
  revision: 1,
  title: "Pregnancy question before the scan",
  section: "composition",
  source: {
    authors: "Hangartner TN, Warner S, Braillon P, Jankowski L, Shepherd J",
    year: 2013,
    title:
      "The Official Positions of the International Society for Clinical Densitometry: acquisition of body composition by DXA",
    journal: "J Clin Densitom 16(4):520–536",
    doi: "10.1016/j.jocd.2013.08.004",
    where: "pregnancy is a contraindication",
    verified: "memory",
  },
  judge: ({ visit }) => {
    const dxa = visit.session.dxa;
    if (dxa === undefined || visit.client.sex !== "female" || visit.ageYears >= 60) return [];
    const because =
      "Ionising radiation is not used for body composition in pregnancy, and tissue water is then changed.";
    if (dxa.pregnancy === undefined || dxa.pregnancy === "not asked")
      return [notRecorded("pregnancy", because, ["dxa_caution"])];
    if (dxa.pregnancy !== "possible") return [];
    return [
      finding("weakens", "pregnancy was possible", "excluded before the scan", because, [...AFFECTED, "dxa_caution"]),
    ];
  },
};
