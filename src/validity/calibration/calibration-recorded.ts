/** Gas exchange without a record of its calibration: nobody can tell later whether it read true. */
import type { MeasureId } from "../../kernel/measures.js";
import type { Rule } from "../../kernel/rule.js";
import { notRecorded } from "../finding.js";

const BLOCKS = [
  ["rest", ["resting_vo2", "resting_energy_expenditure"]],
  ["incremental", ["vo2_peak", "vo2_peak_per_mass"]],
] as const satisfies readonly (readonly [string, readonly MeasureId[]])[];

export const rule: Rule = {
  id: "calibration-recorded",
  revision: 1,
  title: "Record of the gas-exchange calibration",
  section: "validity",
  source: {
    authors: "Miller MR and others; Garcia-Tabar I and others",
    year: "2005, 2015",
    title:
      "Standardisation of spirometry (daily volume check); Gas analyzer's drift (gases before and after each test)",
    journal: "Eur Respir J 26:319–338; Front Physiol 6:308",
    where: "frequency of checks",
    verified: "seen",
  },
  judge: ({ visit, value }) => {
    const checks = visit.session.calibration ?? [];
    return BLOCKS.flatMap(([block, affects]) => {
      if (!affects.some((id) => value(id) !== undefined)) return [];
      const key = visit.session[block]?.instrument;
      const own = checks.filter((check) => key === undefined || check.instrument === key);
      const name = block === "rest" ? "the resting measurement" : "the incremental test";
      const absent = [
        [own.some((c) => c.volume !== undefined), `the syringe check before ${name}`],
        [own.some((c) => c.gas !== undefined && c.when !== "after"), `the gas check before ${name}`],
        [own.some((c) => c.gas !== undefined && c.when === "after"), `the gas check after ${name}`],
      ] as const;
      const what = absent.filter(([there]) => !there).map(([, text]) => text);
      if (what.length === 0) return [];
      return [
        notRecorded(what.join(", "), "Without it a colleague cannot tell whether the instrument read true.", affects),
      ];
    });
  },
};
