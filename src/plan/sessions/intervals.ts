/**
 * Interval formats with trials behind them, quoted by their own means. The longest that fits a session is used, and the
 * number of efforts rises over the first weeks (a convention).
 */
export interface Format {
  readonly name: string;
  readonly work: string;
  readonly heartRate: string;
  readonly evidence: string;
  readonly source: string;
}

const FOUR_BY_FOUR: Format = {
  name: "4-min efforts",
  work: "4 min hard, 3 min easy between",
  heartRate: "by its end 90 to 95 % of maximal heart rate",
  evidence:
    "4 × 4 min three times a week for 8 weeks: 55.5 to 60.4 mL/kg/min in a group of trained young men; people differ",
  source: "Helgerud 2007, Med Sci Sports Exerc 39:665–671; Hov 2023, Scand J Med Sci Sports 33:146–159",
};
const ONE_BY_FOUR: Format = {
  name: "one 4-min effort",
  work: "one effort of 4 min hard",
  heartRate: "by its end about 90 % of maximal heart rate",
  evidence: "1 × 4 min three times a week for 10 weeks: 5.0 mL/kg/min more in 11 inactive men of 35 to 45 years",
  source: "Tjønna 2013, PLoS One 8:e65382",
};

const WARM_UP = 10;
const COOL_DOWN = 5;
const EFFORT = 4;
const PAUSE = 3;

export interface Intervals {
  readonly efforts: number;
  readonly hardMinutes: number;
  readonly format: Format;
  readonly what: string;
}

/** The most 4-min efforts that fit into the minutes and do not pass `most`; undefined when not even one fits. */
export function intervalsFor(minutes: number, most: number, heartRate: boolean): Intervals | undefined {
  const room = Math.floor((minutes - WARM_UP - COOL_DOWN + PAUSE) / (EFFORT + PAUSE));
  const efforts = Math.min(4, most, room);
  if (efforts < 1) return undefined;
  const format = efforts === 1 ? ONE_BY_FOUR : FOUR_BY_FOUR;
  const hardMinutes = efforts * EFFORT;
  const what = `${WARM_UP} min easy, then ${efforts === 1 ? format.work : `${efforts} × ${format.work}`}${heartRate ? ` (${format.heartRate})` : ""}; easy to the end of ${minutes} min`;
  return { efforts, hardMinutes, format, what };
}
