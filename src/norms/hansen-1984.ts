/**
 * Predicted peak oxygen uptake, cycle ergometer (Hansen, Sue and Wasserman 1984, with the textbook's mass branches).
 *
 *     men    PW = 0.79·stature − 60.7    F = 50.72 − 0.372·age
 *     women  PW = 0.65·stature − 42.8    F = 22.78 − 0.17·age     with 43 kg added to each mass
 *     mass below PW: the mean of both masses times F; above PW: PW·F + 6·(mass − PW)
 *     treadmill: 1.11 times
 *
 * Predicted mass PW keeps a heavy body from being promised the uptake of its fat. The branch for men heavier than
 * predicted uses PW as the textbook does; one reprint shows the actual mass there.
 */
import { type FormulaInfo, OutOfRange, requireRange } from "../kernel/formula.js";

/** mL/min from sex, years, cm, kg and mode. No standard error and no lower limit are published. */
export function hansen1984(sex: string, ageYears: number, statureCm: number, massKg: number, mode: string): number {
  requireRange(info.id, "age", Math.floor(ageYears), 30, 75, "years");
  requireRange(info.id, "stature", statureCm, 140, 210, "cm");
  requireRange(info.id, "body mass", massKg, 35, 200, "kg");
  if (mode !== "cycle" && mode !== "treadmill") throw new OutOfRange(info.id, "mode", mode, "cycle or treadmill");
  if (sex !== "female" && sex !== "male") throw new OutOfRange(info.id, "sex", sex, "female or male");
  const male = sex === "male";
  const PW = male ? 0.79 * statureCm - 60.7 : 0.65 * statureCm - 42.8;
  const F = male ? 50.72 - 0.372 * ageYears : 22.78 - 0.17 * ageYears;
  const added = male ? 0 : 43;
  const cycle = massKg < PW ? ((PW + massKg) / 2 + added) * F : (PW + added) * F + 6 * (massKg - PW);
  return mode === "treadmill" ? 1.11 * cycle : cycle;
}

export const info: FormulaInfo<[string, number, number, number, string], number> = {
  id: "hansen-1984",
  revision: 1,
  title: "Predicted peak oxygen uptake, Hansen 1984",
  equation: "PW·F + 6·(mass − PW), or (PW + mass)/2·F below PW; women 43 kg more; treadmill 1.11 times",
  inputs: {
    sex: { unit: "", range: "female or male" },
    age: { unit: "years", range: "30 to 75" },
    stature: { unit: "cm", range: "140 to 210" },
    mass: { unit: "kg", range: "35 to 200" },
    mode: { unit: "", range: "cycle or treadmill" },
  },
  output: { unit: "mL/min", decimals: 0 },
  caveat: "No standard error is published, so no z and no lower limit can be given.",
  source: {
    authors: "Hansen JE, Sue DY, Wasserman K",
    year: 1984,
    title: "Predicted values for clinical exercise testing",
    journal: "Am Rev Respir Dis 129(2 Pt 2):S49–S55",
    doi: "10.1164/arrd.1984.129.2P2.S49",
    where: "core factors and branches as reprinted in J Am Heart Assoc 2020;9(11):e015117, Table 1",
    verified: "seen",
  },
  compute: hansen1984,
  checks: [
    { given: ["male", 40, 178, 80, "cycle"], expect: 2864.8, tolerance: 0.05, from: "by hand: 79.92·35.84 + 6·0.08" },
    { given: ["male", 40, 178, 80, "treadmill"], expect: 3179.9, tolerance: 0.1, from: "by hand: 1.11·2864.8" },
    { given: ["male", 40, 178, 95, "cycle"], expect: 2954.8, tolerance: 0.05, from: "by hand: 2864.33 + 6·15.08" },
    { given: ["male", 40, 178, 70, "cycle"], expect: 2686.6, tolerance: 0.05, from: "by hand: 74.96·35.84" },
    {
      given: ["female", 40, 165, 65, "cycle"],
      expect: 1720.4,
      tolerance: 0.05,
      from: "by hand: 107.45·15.98 + 6·0.55",
    },
    { given: ["male", 29, 178, 80, "cycle"], expect: "refused", from: "the source begins at 30 years" },
  ],
};
