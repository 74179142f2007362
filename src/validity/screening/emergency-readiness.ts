/**
 * Staff, telephone plan and defibrillator are checked before a maximal test, and that is written down.
 */
import type { Rule } from "../../kernel/rule.js";
import { finding, notRecorded } from "../finding.js";

export const rule: Rule = {
  id: "emergency-readiness",
  revision: 1,
  title: "Readiness before exercise tests",
  section: "screening",
  source: {
    authors: "Cardiac Society of Australia and New Zealand",
    year: 2015,
    title: "Clinical exercise stress testing in adults (2014)",
    journal: "Heart Lung Circ 24:831–837",
    doi: "10.1016/j.hlc.2015.01.022",
    where: "staff, defibrillator and telephone plan; the list from memory",
    verified: "memory",
  },
  judge: ({ visit }) => {
    if (visit.session.incremental === undefined) return [];
    const ready = visit.session.screening?.emergency_check;
    const because =
      "One death in 10 000 clinical exercise tests is published; healthy clients differ, and readiness costs little.";
    if (ready === undefined) return [notRecorded("emergency_check", because, ["screening_decision"])];
    return ready
      ? []
      : [finding("weakens", "emergency check not made", "checked before the test", because, ["screening_decision"])];
  },
};
