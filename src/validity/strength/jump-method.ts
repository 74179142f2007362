/**
 * Jump height depends on method, kind of jump and use of the arms; all three are recorded and kept.
 */
import type { Rule } from "../../kernel/rule.js";
import { notRecorded } from "../finding.js";

export const rule: Rule = {
  id: "jump-method",
  revision: 1,
  title: "Method of the jump",
  section: "strength",
  source: {
    authors: "Sayers SP, Harackiewicz DV, Harman EA, Frykman PN, Rosenstein MT",
    year: 1999,
    title: "Cross-validation of three jump power equations",
    journal: "Med Sci Sports Exerc 31(4):572–577",
    doi: "10.1097/00005768-199904000-00013",
    where: "derived on the squat jump; methods of height differ",
    verified: "seen",
  },
  judge: ({ visit }) => {
    const jump = visit.session.strength?.jump;
    if (jump === undefined) return [];
    const missing = (["method", "type", "arms"] as const).filter((name) => jump[name] === undefined);
    return missing.length === 0
      ? []
      : [
          notRecorded(
            missing.join(", "),
            "Methods differ by several centimetres.",
            ["jump_height"],
            jump.method === undefined ? "weakens" : "record",
          ),
        ];
  },
};
