/**
 * Pre-participation decision: is medical clearance wanted before exercise?
 *
 *     symptoms                 active: stop and seek clearance   inactive: clearance first
 *     known disease            active: clearance before vigorous exercise   inactive: clearance first
 *     neither                  proceed
 *
 * Disease is cardiovascular, metabolic or renal; active means 30 minutes of moderate exercise on 3 days a week for
 * the last 3 months. Counting risk factors was dropped in 2015: it sent most adults to a physician. An answer that is
 * missing is never taken for a no: it refers.
 */
import type { FormulaInfo } from "../../kernel/formula.js";

const PARTICIPATION = ["proceed", "clear before vigorous", "clear first", "stop and clear"] as const;
export type Participation = (typeof PARTICIPATION)[number];
export type Answer = boolean | undefined;

/** Answers, undefined where there is none, and whether vigorous or maximal exercise is planned, to the decision. */
export function preParticipation(active: Answer, symptoms: Answer, disease: Answer, vigorous: boolean): Participation {
  if (symptoms === true) return active === false ? "clear first" : "stop and clear";
  if (symptoms === undefined || disease === undefined || active === undefined) return "clear first";
  if (!disease) return "proceed";
  if (!active) return "clear first";
  return vigorous ? "clear before vigorous" : "proceed";
}

const level = (decision: Participation) => PARTICIPATION.indexOf(decision);
const at = (decision: Participation) => ({ expect: level(decision), tolerance: 0, pick: level });
export const info: FormulaInfo<[Answer, Answer, Answer, boolean], Participation> = {
  id: "pre-participation",
  revision: 1,
  title: "Pre-participation screening",
  equation: "symptoms, then known disease, then activity; a missing answer refers",
  inputs: {
    active: { unit: "", range: "yes, no or not answered" },
    symptoms: { unit: "", range: "yes, no or not answered" },
    disease: { unit: "", range: "yes, no or not answered" },
    vigorous: { unit: "", range: "yes or no" },
  },
  output: { unit: "decision", decimals: 0 },
  caveat: "It does not replace the laboratory's own medical requirements for maximal tests.",
  source: {
    authors: "Riebe D, Franklin BA, Thompson PD, Garber CE, Whitfield GP, Magal M, Pescatello LS",
    year: 2015,
    title: "Updating ACSM's recommendations for exercise preparticipation health screening",
    journal: "Med Sci Sports Exerc 47:2473–2479",
    where: "decision chart",
    verified: "seen",
  },
  compute: preParticipation,
  checks: [
    { given: [true, false, true, true], ...at("clear before vigorous"), from: "Riebe 2015: active, disease, vigorous" },
    { given: [true, false, true, false], ...at("proceed"), from: "Riebe 2015: active, disease, moderate" },
    { given: [true, false, false, false], ...at("proceed"), from: "Riebe 2015: active, neither" },
    { given: [true, true, false, false], ...at("stop and clear"), from: "Riebe 2015: active with symptoms" },
    { given: [false, false, true, false], ...at("clear first"), from: "Riebe 2015: inactive with disease" },
    { given: [false, true, false, false], ...at("clear first"), from: "Riebe 2015: inactive with symptoms" },
    { given: [false, false, false, false], ...at("proceed"), from: "Riebe 2015: inactive, neither" },
    { given: [true, undefined, false, false], ...at("clear first"), from: "a missing answer refers" },
    {
      given: [undefined, true, false, false],
      ...at("stop and clear"),
      from: "a missing answer takes the stricter path",
    },
  ],
};
