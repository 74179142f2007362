/**
 * The lowest minute of VE/VCO2 and of VE/VO2. Healthy adults lie near 25 to 30 and 20 to 30; a value far below usually
 * means a flow or gas error, not a good lung. Not judged in hypoxia or above about 1200 m (station pressure below 650
 * mmHg), where ventilation is higher. Limits of this project: 18 to 40 and 15 to 38, slope at or above 20.
 */
import { compareAtDecimals, toDecimals } from "../../kernel/rounding.js";
import type { Finding, Rule } from "../../kernel/rule.js";
import { mean } from "../../kernel/statistics.js";
import { finding } from "../finding.js";
import { columns, readRows } from "../read-rows.js";

const AFFECTED = ["ventilation_vco2_slope", "ventilation_vco2_lowest", "ventilation_peak"] as const;
const LIMITS = [
  ["ve_vco2", "VE/VCO2", 18, 40],
  ["ve_vo2", "VE/VO2", 15, 38],
] as const;

export const rule: Rule = {
  id: "ventilatory-equivalents",
  revision: 1,
  title: "Ventilatory equivalents",
  section: "incremental",
  source: {
    authors: "Glaab T, Taube C",
    year: 2022,
    title: "Practical guide to cardiopulmonary exercise testing in adults",
    journal: "Respir Res 23:9",
    doi: "10.1186/s12931-021-01895-6",
    where:
      "Table 1: slope of 25 to 30, below 20 not plausible; the limits of the ratios are working limits of this project",
    verified: "seen",
  },
  judge: (findings) => {
    const room = findings.visit.session.room;
    if ((room?.fio2 ?? 0.21) < 0.19 || (room?.pressure_mmhg ?? 760) < 650) return [];
    const rows = readRows(findings.entry("incremental_bins")).filter((row) => row.phase === "incremental");
    const out: Finding[] = [];
    for (const [key, name, low, high] of LIMITS) {
      const [ratios = []] = columns(rows, key);
      if (ratios.length < 8) continue;
      const lowest = Math.min(...ratios.slice(3).map((_, i) => mean(ratios.slice(i, i + 4))));
      const limit = `${low} to ${high}`;
      if (compareAtDecimals(lowest, low, 1) < 0)
        out.push(finding("weakens", `lowest ${name} ${toDecimals(lowest, 1)}`, limit, LOW, AFFECTED));
      if (compareAtDecimals(lowest, high, 1) > 0)
        out.push(finding("weakens", `lowest ${name} ${toDecimals(lowest, 1)}`, limit, HIGH, AFFECTED));
    }
    const slope = findings.value("ventilation_vco2_slope");
    if (slope !== undefined && compareAtDecimals(slope, 20, 1) < 0)
      out.push(finding("weakens", `slope of ventilation on VCO2 ${toDecimals(slope, 1)}`, "20 or more", LOW, AFFECTED));
    return out;
  },
};

const LOW =
  "Likely causes: a flow sensor that reads low while gas is right, ventilation in another gas condition than stated, a carbon dioxide analyser that reads high.";
const HIGH =
  "Likely causes: room air drawn in at the sample line or mask (both equivalents rise), a carbon dioxide analyser that reads low, overbreathing. If these are excluded, a physician should see the value.";
