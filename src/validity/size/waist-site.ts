/**
 * A waist without its site can be compared with no limit and no other visit: sites differ by 1 to 3 cm.
 */
import type { Rule } from "../../kernel/rule.js";
import { notRecorded } from "../finding.js";

export const rule: Rule = {
  id: "waist-site",
  revision: 1,
  title: "Site of the waist measurement",
  section: "size",
  source: {
    authors: "World Health Organization",
    year: 2008,
    title: "Waist circumference and waist-hip ratio: report of a WHO expert consultation",
    where: "measurement sites; sites differ by 1 to 3 cm",
    verified: "seen",
  },
  judge: ({ visit }) => {
    const size = visit.session.size;
    if (size?.waist_cm === undefined || size.waist_site !== undefined) return [];
    return [
      notRecorded("waist_site", "Sites differ by 1 to 3 cm.", ["waist", "waist_to_height", "waist_to_hip"], "weakens"),
    ];
  },
};
