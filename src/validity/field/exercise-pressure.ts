/**
 * Pressure beyond the published limits to stop, and a fall below the resting pressure while the load rises. Both are
 * findings for a physician; the stricter of two printed operators is used (from 250 and 115).
 */
import type { Rule } from "../../kernel/rule.js";
import { finding } from "../finding.js";

export const rule: Rule = {
  id: "exercise-pressure",
  revision: 1,
  title: "Blood pressure during the submaximal test",
  section: "submaximal",
  source: {
    authors: "Fletcher GF, Ades PA, Kligfield P, et al., as printed in Trials 14:91",
    year: 2013,
    title: "Indications for terminating exercise testing",
    journal: "Trials 14:91",
    doi: "10.1186/1745-6215-14-91",
    where: "Table 6: stop above 250 systolic or 115 diastolic; fall of more than 10 mmHg below baseline",
    verified: "seen",
  },
  judge: ({ visit, value }) => {
    const stages = visit.session.submaximal?.cycle_stages?.stages ?? [];
    const rest = value("systolic_pressure");
    const affects = ["submaximal_stages"] as const;
    return stages.flatMap((stage) => {
      const { power_w: power, systolic_mmhg: systolic, diastolic_mmhg: diastolic } = stage;
      const high = (systolic ?? 0) >= 250 || (diastolic ?? 0) >= 115;
      const fell = systolic !== undefined && rest !== undefined && rest - systolic >= 10;
      const found = `${systolic ?? "?"}/${diastolic ?? "?"} mmHg at ${power} W`;
      return [
        ...(high
          ? [
              finding(
                "record",
                found,
                "below 250/115 mmHg",
                "Published lists stop the test here; a physician should see it.",
                affects,
              ),
            ]
          : []),
        ...(fell
          ? [
              finding(
                "record",
                `${found}, rest ${Math.round(rest)} mmHg`,
                "not 10 mmHg below rest",
                "A fall with rising load is a reason to stop; a physician should see it.",
                affects,
              ),
            ]
          : []),
      ];
    });
  },
};
