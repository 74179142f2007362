/**
 * Impedance reads water: food, drink, exercise, alcohol and a full bladder move it by more than training does.
 */
import type { Rule } from "../../kernel/rule.js";
import { finding, notRecorded } from "../finding.js";

export const rule: Rule = {
  id: "impedance-conditions",
  revision: 1,
  title: "State of the client at impedance",
  section: "composition",
  source: {
    authors: "Kyle UG, Bosaeus I, De Lorenzo AD, et al. (ESPEN)",
    year: 2004,
    title: "Bioelectrical impedance analysis, part II: utilization in clinical practice",
    journal: "Clin Nutr 23(6):1430–1453",
    doi: "10.1016/j.clnu.2004.09.012",
    where:
      "fasted 2 to 4 h, no alcohol or hard exercise for 8 to 24 h, voided; unreliable in oedema, dialysis, pregnancy",
    verified: "memory",
  },
  judge: ({ visit }) => {
    const block = visit.session.impedance;
    if (block === undefined) return [];
    const affects = ["impedance_fat_percent", "impedance_phase_angle"] as const;
    const because = "Impedance reads water, and this moves it by more than training does.";
    const missing = (
      ["hours_since_food", "hours_since_exercise", "alcohol_last_day", "voided", "posture"] as const
    ).filter((name) => block[name] === undefined);
    const broken = [
      ...((block.hours_since_food ?? 4) < 2
        ? [["food or drink", `${block.hours_since_food} h before`, "2 h"] as const]
        : []),
      ...((block.hours_since_exercise ?? 24) < 8
        ? [["hard exercise", `${block.hours_since_exercise} h before`, "8 h"] as const]
        : []),
      ...(block.alcohol_last_day === true ? [["alcohol", "in the last day", "none in 24 h"] as const] : []),
      ...(block.voided === false ? [["bladder", "not emptied", "emptied first"] as const] : []),
      ...(block.oedema_or_dialysis === true
        ? [["oedema, dialysis, pregnancy or dehydration", "present", "none"] as const]
        : []),
    ];
    return [
      ...(missing.length > 0 ? [notRecorded(missing.join(", "), because, affects)] : []),
      ...broken.map(([what, found, limit]) => finding("weakens", `${what} ${found}`, limit, because, affects)),
    ];
  },
};
