/**
 * Scans to be compared are made in the same state: food and drink are read as lean mass.
 */
import type { Rule } from "../../kernel/rule.js";
import { finding, notRecorded } from "../finding.js";

const AFFECTED = ["fat_mass", "lean_mass", "body_fat_percent"] as const;

export const rule: Rule = {
  id: "dxa-preparation",
  revision: 1,
  title: "State of the client at the scan",
  section: "composition",
  source: {
    authors: "Hangartner TN, Warner S, Braillon P, Jankowski L, Shepherd J",
    year: 2013,
    title:
      "The Official Positions of the International Society for Clinical Densitometry: acquisition of body composition by DXA",
    journal: "J Clin Densitom 16(4):520–536",
    doi: "10.1016/j.jocd.2013.08.004",
    where: "same time of day, fasted or same meal state",
    verified: "memory",
  },
  judge: ({ visit }) => {
    const dxa = visit.session.dxa;
    if (dxa === undefined) return [];
    const because = "Half a kilogram of food and drink is read as half a kilogram of lean mass.";
    if (dxa.fasted === undefined) return [notRecorded("fasted", because, AFFECTED)];
    return dxa.fasted
      ? []
      : [
          finding(
            "weakens",
            "neither fasted nor in the agreed meal state",
            "fasted or the same meal state",
            because,
            AFFECTED,
          ),
        ];
  },
};
