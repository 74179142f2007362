/**
 * Impedance is not measured with a pacemaker or another implanted electronic device.
 */
import type { Rule } from "../../kernel/rule.js";
import { finding } from "../finding.js";

export const rule: Rule = {
  id: "impedance-implant",
  revision: 1,
  title: "Implanted device and impedance",
  section: "composition",
  source: {
    authors: "Kyle UG, Bosaeus I, De Lorenzo AD, et al. (ESPEN)",
    year: 2004,
    title: "Bioelectrical impedance analysis, part II: utilization in clinical practice",
    journal: "Clin Nutr 23(6):1430–1453",
    doi: "10.1016/j.clnu.2004.09.012",
    where: "not with a pacemaker or implanted electronic device",
    verified: "memory",
  },
  judge: ({ visit }) => {
    if (visit.session.impedance?.implanted_device !== true) return [];
    const because = "The current may disturb the device, and the value is not to be relied on.";
    return [
      finding("fatal", "an implanted electronic device", "none", because, [
        "impedance_fat_percent",
        "impedance_phase_angle",
      ]),
    ];
  },
};
