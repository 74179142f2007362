/**
 * The whole body lay inside the field. Mirrored halves and limbs outside it are other measurements and are compared
 * only with their like.
 */
import type { Rule } from "../../kernel/rule.js";
import { finding, notRecorded } from "../finding.js";

const AFFECTED = ["fat_mass", "lean_mass", "body_fat_percent"] as const;

export const rule: Rule = {
  id: "dxa-positioning",
  revision: 1,
  title: "Position in the scan field",
  section: "composition",
  source: {
    authors: "Hangartner TN, Warner S, Braillon P, Jankowski L, Shepherd J",
    year: 2013,
    title:
      "The Official Positions of the International Society for Clinical Densitometry: acquisition of body composition by DXA",
    journal: "J Clin Densitom 16(4):520–536",
    doi: "10.1016/j.jocd.2013.08.004",
    where: "consistent positioning; offset and half scans are noted",
    verified: "memory",
  },
  judge: ({ visit }) => {
    const dxa = visit.session.dxa;
    if (dxa === undefined) return [];
    const because = "Parts outside the field are guessed from the other side.";
    if (dxa.positioning === undefined) return [notRecorded("positioning", because, AFFECTED)];
    return dxa.positioning === "whole"
      ? []
      : [finding("weakens", `positioning ${dxa.positioning}`, "whole body inside the field", because, AFFECTED)];
  },
};
