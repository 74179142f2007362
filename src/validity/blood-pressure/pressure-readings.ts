/**
 * One reading of blood pressure is not enough: the first is usually the highest. Two at least; the European rule wants
 * three.
 */
import type { Rule } from "../../kernel/rule.js";
import { finding } from "../finding.js";

const AFFECTED = ["systolic_pressure", "diastolic_pressure", "blood_pressure_class"] as const;

export const rule: Rule = {
  id: "pressure-readings",
  revision: 1,
  title: "Number of pressure readings",
  section: "blood_pressure",
  source: {
    authors: "Pickering TG, Hall JE, Appel LJ, et al.; Muntner P, Shimbo D, Carey RM, et al.",
    year: "2005–2019",
    title: "Measurement of blood pressure in humans",
    journal: "Hypertension",
    doi: "10.1161/01.HYP.0000150859.47929.8e",
    where: "at least two readings, 1 minute apart",
    verified: "seen",
  },
  judge: ({ visit }) => {
    const block = visit.session.blood_pressure;
    if (block === undefined) return [];
    const count = block.readings?.length ?? 0;
    const european = visit.choices.blood_pressure_scheme !== "acc-aha-2017";
    const wanted = european ? 3 : 2;
    if (count >= wanted) return [];
    const because = "The first reading is usually the highest, because a cuff alarms.";
    return [
      finding(
        count < 2 ? "weakens" : "record",
        `${count} reading${count === 1 ? "" : "s"}`,
        `${wanted} or more readings`,
        because,
        AFFECTED,
      ),
    ];
  },
};
