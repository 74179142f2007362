/**
 * Training impulse of an aerobic session from its mean heart rate.
 *
 *     x = (HR − HRrest)/(HRmax − HRrest);   men D·x·0.64·e^(1.92 x)   women D·x·0.86·e^(1.67 x)
 *
 * A mean heart rate underrates intervals: sum short pieces where a trace exists.
 */
import { type FormulaInfo, OutOfRange, requireRange } from "../../kernel/formula.js";

/** Minutes, mean, resting and maximal heart rate (beats/min), sex for the weighting; to arbitrary units. */
export function trainingImpulse(
  minutes: number,
  meanBpm: number,
  restBpm: number,
  maxBpm: number,
  sex: "female" | "male",
): number {
  requireRange(info.id, "duration", minutes, 0, 1440, "min");
  if (maxBpm - restBpm < 30) throw new OutOfRange(info.id, "reserve", maxBpm - restBpm, "at least 30 beats/min");
  const x = (meanBpm - restBpm) / (maxBpm - restBpm);
  requireRange(info.id, "share of heart-rate reserve", x, 0, 1, "");
  return sex === "male" ? minutes * x * 0.64 * Math.exp(1.92 * x) : minutes * x * 0.86 * Math.exp(1.67 * x);
}

export const info: FormulaInfo<[number, number, number, number, "female" | "male"], number> = {
  id: "training-impulse",
  revision: 1,
  title: "Training impulse from mean heart rate",
  equation: "men D·x·0.64·e^(1.92x); women D·x·0.86·e^(1.67x); x = share of heart-rate reserve",
  inputs: {
    duration: { unit: "min", range: "0 to 1440" },
    "mean heart rate": { unit: "beats/min", range: "resting to maximal" },
    "resting heart rate": { unit: "beats/min", range: "" },
    "maximal heart rate": { unit: "beats/min", range: "at least 30 above rest" },
    sex: { unit: "", range: "female, male" },
  },
  output: { unit: "units", decimals: 0 },
  caveat: "For aerobic sessions; a mean heart rate underrates intervals.",
  source: {
    authors: "Banister EW",
    year: 1991,
    title: "Modeling elite athletic performance, in: Physiological Testing of Elite Athletes",
    where: "as quoted on several teaching pages",
    verified: "seen",
  },
  compute: trainingImpulse,
  checks: [
    { given: [60, 150, 60, 190, "male"], expect: 100.44, tolerance: 0.005, from: "by hand: x 0.69231, weight 2.41801" },
    {
      given: [45, 150, 60, 190, "male"],
      expect: 75.36,
      tolerance: 0.05,
      from: "published worked example 75.36 (it rounds the weight)",
    },
    { given: [60, 150, 60, 190, "female"], expect: 113.517, tolerance: 0.005, from: "by hand: weight 2.73281" },
  ],
};
