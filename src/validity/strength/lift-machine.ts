/**
 * A lift over body mass can be compared only on the same machine: a sled at 45 degrees moves far more than a seated
 * press.
 */
import type { Rule } from "../../kernel/rule.js";
import { notRecorded } from "../finding.js";

export const rule: Rule = {
  id: "lift-machine",
  revision: 1,
  title: "Machine of the lifts",
  section: "strength",
  source: {
    authors: "common practice",
    year: null,
    title: "Habit of the trade",
    where: "ratio tables hold for one machine",
    verified: "common practice",
  },
  judge: ({ visit }) => {
    const block = visit.session.strength;
    return (["bench_press", "leg_press"] as const).flatMap((name) => {
      const lift = block?.[name];
      if (lift === undefined || lift.machine !== undefined) return [];
      return [
        notRecorded(`machine of the ${name.replace("_", " ")}`, "Machines differ by far more than training does.", [
          `${name}_1rm`,
          `${name}_1rm_estimated`,
          `${name}_ratio`,
        ]),
      ];
    });
  },
};
