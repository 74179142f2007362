/**
 * A maximum estimated from more than six repetitions is wide: equations part company there.
 */
import type { Rule } from "../../kernel/rule.js";
import { finding } from "../finding.js";

export const rule: Rule = {
  id: "repetitions-far-from-maximum",
  revision: 1,
  title: "Repetitions behind an estimated maximum",
  section: "strength",
  source: {
    authors: "LeSuer DA, McCormick JH, Mayhew JL, Wasserstein RL, Arnold MD",
    year: 1997,
    title: "The accuracy of prediction equations for estimating 1-RM performance",
    journal: "J Strength Cond Res 11(4):211–213",
    where: "best with few repetitions; up to 6 preferred",
    verified: "seen",
  },
  judge: ({ visit }) => {
    const block = visit.session.strength;
    return (["bench_press", "leg_press"] as const).flatMap((name) => {
      const lift = block?.[name];
      if (lift === undefined || lift.repetitions <= 6) return [];
      return [
        finding(
          "weakens",
          `${name.replace("_", " ")}: ${lift.repetitions} repetitions`,
          "6 repetitions",
          "With more repetitions endurance decides and the equations part company.",
          [`${name}_1rm_estimated`],
        ),
      ];
    });
  },
};
