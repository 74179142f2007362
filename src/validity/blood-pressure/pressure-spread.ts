/**
 * Where the first two readings differ by more than 10 mmHg a fourth is taken; otherwise the mean rests on an unsettled
 * client.
 */
import { roundTo } from "../../kernel/rounding.js";
import type { Rule } from "../../kernel/rule.js";
import { finding } from "../finding.js";

const AFFECTED = ["systolic_pressure", "diastolic_pressure", "blood_pressure_class"] as const;

export const rule: Rule = {
  id: "pressure-spread",
  revision: 1,
  title: "Spread of the first two pressure readings",
  section: "blood_pressure",
  source: {
    authors: "Pickering TG, Hall JE, Appel LJ, et al.; McEvoy JW, McCarthy CP, Bruno RM, et al.",
    year: "2005–2024",
    title: "Measurement of blood pressure in humans; 2024 ESC guidelines",
    journal: "Hypertension; Eur Heart J",
    where: "a fourth reading where the first two differ by more than 10 mmHg",
    verified: "memory",
  },
  judge: ({ visit }) => {
    const readings = visit.session.blood_pressure?.readings ?? [];
    const [first, second] = readings;
    if (first === undefined || second === undefined || readings.length >= 4) return [];
    const apart = Math.max(
      Math.abs(first.systolic_mmhg - second.systolic_mmhg),
      Math.abs(first.diastolic_mmhg - second.diastolic_mmhg),
    );
    if (apart <= 10) return [];
    const because = "The client had not settled, or a reading is off.";
    return [
      finding(
        "weakens",
        `first two readings ${roundTo(apart, 1)} mmHg apart, ${readings.length} taken`,
        "10 mmHg, else a fourth reading",
        because,
        AFFECTED,
      ),
    ];
  },
};
