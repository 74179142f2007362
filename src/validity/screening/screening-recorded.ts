/**
 * No exercise test is made without screening. A visit with exercise and no answers is pointed out, and refers.
 */
import type { Rule } from "../../kernel/rule.js";
import { notRecorded } from "../finding.js";

export const rule: Rule = {
  id: "screening-recorded",
  revision: 1,
  title: "Screening before exercise",
  section: "screening",
  source: {
    authors: "Riebe D, Franklin BA, Thompson PD, Garber CE, Whitfield GP, Magal M, Pescatello LS",
    year: 2015,
    title: "Updating ACSM's recommendations for exercise preparticipation health screening",
    journal: "Med Sci Sports Exerc 47:2473–2479",
    where: "screening before exercise; a clearance holds for 12 months",
    verified: "seen",
  },
  judge: ({ visit }) => {
    const { client, session } = visit;
    if (client.screening !== undefined || session.screening !== undefined) return [];
    const strength = Object.keys(session.strength ?? {}).some((name) => name !== "grip" && name !== "confirmed");
    const blocks = [session.incremental, session.submaximal, session.field_tests, session.hypoxia];
    if (!strength && blocks.every((block) => block === undefined)) return [];
    const because = "Whether exercise was safe for the client cannot be told afterwards.";
    return [notRecorded("screening", because, ["screening_decision"], "weakens")];
  },
};
