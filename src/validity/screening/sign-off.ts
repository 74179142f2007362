/**
 * The limits at which the laboratory stops or refers are agreed with the physician responsible, and looked at again in
 * time.
 */
import type { Rule } from "../../kernel/rule.js";
import { finding, notRecorded } from "../finding.js";

export const rule: Rule = {
  id: "sign-off",
  revision: 1,
  title: "Sign-off of the limits",
  section: "screening",
  source: {
    authors: "Waymark",
    year: null,
    title: "Rule of this project",
    where: "limits to stop or refer need the responsible physician's agreement",
    verified: "own",
  },
  judge: ({ visit, entry }) => {
    const used = entry("screening_decision") !== undefined || entry("blood_pressure_referral") !== undefined;
    if (!used) return [];
    const sign = visit.laboratory.screening_sign_off;
    const affects = ["screening_decision", "blood_pressure_referral"] as const;
    const because = "Published limits are used until the responsible physician has agreed to them.";
    if (sign?.by_role === undefined || sign.date === undefined)
      return [notRecorded("screening_sign_off in lab.yaml", because, affects)];
    if (sign.review_by === undefined || sign.review_by >= visit.session.date) return [];
    return [finding("record", `to be reviewed by ${sign.review_by}`, "reviewed in time", because, affects)];
  },
};
