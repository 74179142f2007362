/** Conditions before the resting measurement that nobody wrote down. */
import type { Rule } from "../../kernel/rule.js";
import { notRecorded } from "../finding.js";
import { readRows } from "../read-rows.js";

export const rule: Rule = {
  id: "resting-conditions-recorded",
  revision: 1,
  title: "Record of the conditions before the resting measurement",
  section: "preparation",
  source: {
    authors: "Fullmer S, Benson-Davies S, Earthman CP, and others",
    year: 2015,
    title:
      "Evidence Analysis Library review of best practices for performing indirect calorimetry in healthy and non-critically ill individuals",
    journal: "J Acad Nutr Diet 115(9):1417–1446",
    doi: "10.1016/j.jand.2015.04.003",
    where: "list of conditions",
    verified: "seen",
  },
  judge: ({ entry }) => {
    const unknown = readRows(entry("resting_conditions")).filter((row) => row.outcome === "not recorded");
    if (unknown.length === 0) return [];
    const names = unknown.map((row) => String(row.condition).toLowerCase()).join(", ");
    return [
      notRecorded(names, "What is not recorded cannot explain a difference between two visits.", [
        "resting_vo2",
        "resting_energy_expenditure",
      ]),
    ];
  },
};
