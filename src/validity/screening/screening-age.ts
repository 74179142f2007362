/**
 * Answers older than 12 months are asked again before exercise.
 */
import { DAYS_OF_12_MONTHS, daysBetween } from "../../kernel/days.js";
import type { Rule } from "../../kernel/rule.js";
import { finding, notRecorded } from "../finding.js";

export const rule: Rule = {
  id: "screening-age",
  revision: 1,
  title: "Age of the screening answers",
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
    if (session.screening !== undefined && session.screening.date === undefined) return []; // answered on the day
    const asked = session.screening?.date ?? client.screening?.date;
    if (session.screening === undefined && client.screening === undefined) return [];
    if (asked === undefined)
      return [notRecorded("date of the screening", "Health changes; old answers do not hold.", ["screening_decision"])];
    const days = daysBetween(asked, session.date);
    if (days >= 0 && days <= DAYS_OF_12_MONTHS) return [];
    const found =
      days < 0 ? `answers dated ${asked}, after the visit` : `answers of ${asked}, ${Math.floor(days)} days old`;
    return [finding("weakens", found, "12 months", "Health changes; old answers do not hold.", ["screening_decision"])];
  },
};
