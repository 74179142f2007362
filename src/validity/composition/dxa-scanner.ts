/**
 * A scan without maker and mode fits no reference table and no other scan.
 */
import type { Rule } from "../../kernel/rule.js";
import { notRecorded } from "../finding.js";

const AFFECTED = ["fat_mass", "lean_mass", "body_fat_percent"] as const;

export const rule: Rule = {
  id: "dxa-scanner",
  revision: 1,
  title: "Scanner of the scan",
  section: "composition",
  source: {
    authors: "Hangartner TN, Warner S, Braillon P, Jankowski L, Shepherd J",
    year: 2013,
    title:
      "The Official Positions of the International Society for Clinical Densitometry: acquisition of body composition by DXA",
    journal: "J Clin Densitom 16(4):520–536",
    doi: "10.1016/j.jocd.2013.08.004",
    where: "never compare makers without conversion",
    verified: "memory",
  },
  judge: ({ visit }) => {
    const dxa = visit.session.dxa;
    if (dxa === undefined) return [];
    const missing = (["scanner_maker", "mode", "software"] as const).filter((name) => dxa[name] === undefined);
    if (missing.length === 0) return [];
    const severity = dxa.scanner_maker === undefined ? "weakens" : "record";
    return [
      notRecorded(
        missing.join(", "),
        "Makers, modes and versions of the software read differently.",
        AFFECTED,
        severity,
      ),
    ];
  },
};
