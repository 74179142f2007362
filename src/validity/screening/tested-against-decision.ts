/**
 * A test was made although the answers said stop or refer. The record says so; what it found is read with that in
 * view.
 */
import type { Rule } from "../../kernel/rule.js";
import { finding } from "../finding.js";

export const rule: Rule = {
  id: "tested-against-decision",
  revision: 1,
  title: "Exercise tested in spite of the decision",
  section: "screening",
  source: {
    authors: "Waymark",
    year: null,
    title: "Rule of this project",
    where: "a test made although screening said stop or refer",
    verified: "own",
  },
  judge: ({ visit, entry }) => {
    const decision = entry("screening_decision");
    const screened = visit.session.screening !== undefined || visit.client.screening !== undefined;
    if (decision?.kind !== "judgement" || decision.verdict === "proceed" || !screened) return [];
    // what occurred during the test was no reason to leave it
    const reasons = entry("screening_reasons");
    const before =
      reasons?.kind === "table" ? reasons.rows.filter(([, words]) => !String(words).endsWith("during the test")) : [];
    if (before.length === 0) return [];
    const { incremental, submaximal, field_tests, hypoxia } = visit.session;
    const blocks = { incremental, submaximal, field_tests, hypoxia };
    const made = Object.entries(blocks).flatMap(([name, block]) =>
      block === undefined ? [] : [name.replace("_", " ")],
    );
    if (made.length === 0) return [];
    const because = "The reasons stand with the decision; if a physician cleared the client, record it.";
    return [
      finding(
        "weakens",
        `${made.join(", ")} tested, screening says ${decision.verdict}`,
        "proceed, or a clearance that covers the test",
        because,
        ["screening_decision"],
      ),
    ];
  },
};
