/**
 * Class of a resting blood pressure in a published scheme. Each scheme is a ladder of lower bounds; the higher step
 * of systolic and diastolic wins. Pressures are classed as printed, in whole mmHg, so that class and number agree.
 *
 * Isolated systolic hypertension (ESH 2023: systolic from 140 with diastolic below 90) is a second label: the grade
 * still follows systolic.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";
import { roundTo } from "../../kernel/rounding.js";
import type { Scheme } from "./resting-average.js";

type Step = readonly [name: string, systolicFrom: number, diastolicFrom: number];
export const LADDERS: Readonly<Record<Scheme, readonly Step[]>> = {
  // Whelton PK et al. 2018, Table 6: "elevated" needs a diastolic below 80, so diastolic never lifts into it
  "acc-aha-2017": [
    ["normal", 0, 0],
    ["elevated", 120, 80],
    ["stage 1 hypertension", 130, 80],
    ["stage 2 hypertension", 140, 90],
  ],
  // Williams B et al. 2018, classification table; kept by Mancia G et al. 2023
  "esh-2023": [
    ["optimal", 0, 0],
    ["normal", 120, 80],
    ["high normal", 130, 85],
    ["grade 1 hypertension", 140, 90],
    ["grade 2 hypertension", 160, 100],
    ["grade 3 hypertension", 180, 110],
  ],
  // McEvoy JW et al. 2024, classification
  "esc-2024": [
    ["non-elevated", 0, 0],
    ["elevated", 120, 70],
    ["hypertension", 140, 90],
  ],
};
export const SCHEME_NAMES: Readonly<Record<Scheme, string>> = {
  "acc-aha-2017": "ACC/AHA 2017",
  "esh-2023": "ESH 2023",
  "esc-2024": "ESC 2024",
};

export interface PressureClass {
  readonly name: string;
  /** Step of the ladder, from 0. */
  readonly step: number;
  readonly isolatedSystolic: boolean;
}

/** mmHg, mmHg and a scheme to its class. Throws OutOfRange for pressures no reading can have. */
export function pressureClass(systolic: number, diastolic: number, scheme: Scheme): PressureClass {
  requireRange(info.id, "systolic pressure", systolic, 50, 300, "mmHg");
  requireRange(info.id, "diastolic pressure", diastolic, 20, 200, "mmHg");
  const s = roundTo(systolic, 0);
  const d = roundTo(diastolic, 0);
  const ladder = LADDERS[scheme];
  const step = Math.max(
    ladder.findLastIndex(([, from]) => s >= from),
    ladder.findLastIndex(([, , from]) => d >= from),
  );
  return { name: ladder[step]?.[0] ?? "", step, isolatedSystolic: scheme === "esh-2023" && s >= 140 && d < 90 };
}

const step = (c: PressureClass) => c.step;
export const info: FormulaInfo<[number, number, Scheme], PressureClass> = {
  id: "pressure-class",
  revision: 1,
  title: "Blood pressure class",
  equation: "the higher step of systolic and diastolic",
  inputs: {
    systolic: { unit: "mmHg", range: "50 to 300" },
    diastolic: { unit: "mmHg", range: "20 to 200" },
    scheme: { unit: "", range: "acc-aha-2017, esh-2023 or esc-2024" },
  },
  output: { unit: "step", decimals: 0 },
  caveat: "One visit is not a diagnosis: the reading lies in the range, the client does not have the disease.",
  source: {
    authors: "Whelton PK et al. 2018; Williams B et al. 2018 and Mancia G et al. 2023; McEvoy JW et al. 2024",
    year: "2018–2024",
    title: "Guidelines for high blood pressure: ACC/AHA 2017, ESC/ESH 2018 with ESH 2023, ESC 2024",
    journal: "Hypertension 71:e13; Eur Heart J 39:3021 and J Hypertens 41:1874; Eur Heart J 45:3912",
    doi: "10.1161/HYP.0000000000000065",
    where: "Table 6; classification tables",
    verified: "seen",
  },
  compute: pressureClass,
  checks: [
    {
      given: [128, 82, "acc-aha-2017"],
      expect: 2,
      tolerance: 0,
      pick: step,
      from: "Whelton 2018, Table 6: 80–89 diastolic is stage 1, and the higher class wins",
    },
    {
      given: [120, 80, "acc-aha-2017"],
      expect: 2,
      tolerance: 0,
      pick: step,
      from: "Whelton 2018, Table 6: diastolic 80 is stage 1",
    },
    {
      given: [129, 79, "acc-aha-2017"],
      expect: 1,
      tolerance: 0,
      pick: step,
      from: "Whelton 2018, Table 6: 120–129 with diastolic below 80 is elevated",
    },
    {
      given: [145, 82, "esh-2023"],
      expect: 3,
      tolerance: 0,
      pick: step,
      from: "Williams 2018: 145 is grade 1, 82 normal",
    },
    {
      given: [145, 82, "esh-2023"],
      expect: 1,
      tolerance: 0,
      pick: (c) => Number(c.isolatedSystolic),
      from: "Williams 2018: systolic from 140 with diastolic below 90 is isolated systolic",
    },
    { given: [139.4, 84.4, "esh-2023"], expect: 2, tolerance: 0, pick: step, from: "printed 139/84: high normal" },
    {
      given: [145, 75, "esc-2024"],
      expect: 2,
      tolerance: 0,
      pick: step,
      from: "McEvoy 2024: from 140 is hypertension",
    },
    {
      given: [118, 70, "esc-2024"],
      expect: 1,
      tolerance: 0,
      pick: step,
      from: "McEvoy 2024: diastolic 70 is elevated",
    },
    { given: [120, 0, "esh-2023"], expect: "refused", from: "a diastolic of 0 was not found" },
  ],
};
