/**
 * Contrast medium, barium or an isotope given in the days before absorbs or adds radiation: the scan must wait.
 */
import type { Rule } from "../../kernel/rule.js";
import { finding } from "../finding.js";
import { SCAN_MEASURES } from "./scan-measures.js";

export const rule: Rule = {
  id: "dxa-contrast",
  revision: 1,
  title: "Contrast medium or isotopes before the scan",
  section: "composition",
  source: {
    authors: "Hangartner TN, Warner S, Braillon P, Jankowski L, Shepherd J",
    year: 2013,
    title:
      "The Official Positions of the International Society for Clinical Densitometry: acquisition of body composition by DXA",
    journal: "J Clin Densitom 16(4):520–536",
    doi: "10.1016/j.jocd.2013.08.004",
    where: "postpone after recent contrast, barium or nuclear medicine study",
    verified: "memory",
  },
  judge: ({ visit }) => {
    const dxa = visit.session.dxa;
    if (dxa?.contrast_or_isotope_last_week !== true) return [];
    const because = "What remains in the body is read as bone or lean.";
    return [finding("fatal", "contrast medium or isotope in the days before", "none", because, SCAN_MEASURES)];
  },
};
