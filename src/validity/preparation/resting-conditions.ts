/** Conditions before the resting measurement that were not met, by the edition the laboratory chose. */
import type { Rule } from "../../kernel/rule.js";
import { finding } from "../finding.js";
import { readRows } from "../read-rows.js";

const AFFECTED = ["resting_vo2", "resting_vco2", "resting_energy_expenditure", "resting_heart_rate"] as const;

export const rule: Rule = {
  id: "resting-conditions",
  revision: 1,
  title: "Conditions before the resting measurement",
  section: "preparation",
  source: {
    authors: "Fullmer S, Benson-Davies S, Earthman CP, and others; Evidence Analysis Library",
    year: "2006, 2015",
    title:
      "Evidence Analysis Library review of best practices for performing indirect calorimetry in healthy and non-critically ill individuals",
    journal: "J Acad Nutr Diet 115(9):1417–1446",
    doi: "10.1016/j.jand.2015.04.003",
    where: "conditions of the edition chosen under rest_conditions",
    verified: "seen",
  },
  judge: ({ entry }) =>
    readRows(entry("resting_conditions"))
      .filter((row) => row.outcome === "not met")
      .map((row) =>
        finding(
          "weakens",
          `${row.condition}: ${row.found}`,
          String(row.limit),
          `It can move resting energy expenditure (${row.source}).`,
          AFFECTED,
        ),
      ),
};
