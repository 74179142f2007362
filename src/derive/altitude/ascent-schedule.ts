/**
 * Sleeping altitudes night by night against published limits for people who are not acclimatised.
 *
 *     above 2750 m: at most 500 m higher a night, and a night without gain for every 1000 m gained;
 *     from below 1200 m: first night not above 2750 m
 *
 * The lower figures of other guidance (300 m a night, a rest day every two to three days) are the cautious plan; these are
 * the ceiling. A schedule inside the limits lowers the risk of altitude illness; it does not remove it.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";
import { roundTo } from "../../kernel/rounding.js";

export interface Night {
  readonly night: number;
  readonly altitudeM: number;
  readonly gainM: number;
  readonly flags: readonly string[];
}

const LIMIT_M = 2750;
const GAIN_M = 500;
const EXTRA_NIGHT_M = 1000;
const LOW_START_M = 1200;
const HIGH_FIRST_NIGHT_M = 3500;

/** Altitude before the ascent and of each night, in m, to one row a night with the limits it breaks. */
export function ascentSchedule(startM: number, nightsM: readonly number[]): readonly Night[] {
  requireRange(info.id, "starting altitude", startM, -430, 6000, "m");
  let previous = startM;
  let sinceFlat = startM;
  return nightsM.map((altitudeM, i) => {
    const gainM = altitudeM - previous;
    const flags: string[] = [];
    const lowFirst = i === 0 && startM < LOW_START_M;
    if (lowFirst && altitudeM > HIGH_FIRST_NIGHT_M)
      flags.push(
        `first night above ${HIGH_FIRST_NIGHT_M} m from below ${LOW_START_M} m: high risk, medical advice needed beforehand`,
      );
    else if (lowFirst && altitudeM > LIMIT_M)
      flags.push(`first night above ${LIMIT_M} m: medical advice on prevention`);
    if (!lowFirst && altitudeM > LIMIT_M && gainM > GAIN_M)
      flags.push(`sleeping gain of ${roundTo(gainM, 1)} m, above ${GAIN_M} m`);
    if (gainM <= 0 || lowFirst) sinceFlat = altitudeM;
    else if (altitudeM > LIMIT_M && altitudeM - Math.max(sinceFlat, startM) > EXTRA_NIGHT_M)
      flags.push(
        `${roundTo(altitudeM - Math.max(sinceFlat, startM), 1)} m since the last night without gain, above ${EXTRA_NIGHT_M} m`,
      );
    previous = altitudeM;
    return { night: i + 1, altitudeM, gainM, flags };
  });
}

const flagCount = (nights: readonly Night[]) => nights.reduce((n, night) => n + night.flags.length, 0);

export const info: FormulaInfo<[number, readonly number[]], readonly Night[]> = {
  id: "ascent-schedule",
  revision: 1,
  title: "Ascent schedule against published limits",
  equation:
    "above 2750 m: gain ≤ 500 m a night, one night without gain for every 1000 m; first night ≤ 2750 m from below 1200 m",
  inputs: {
    "starting altitude": { unit: "m", range: "−430 to 6000" },
    nights: { unit: "m", range: "sleeping altitudes" },
  },
  output: { unit: "", decimals: 0 },
  caveat: "Guidance differs (300 to 500 m a night); this is the ceiling, for people who are not acclimatised.",
  source: {
    authors: "US Centers for Disease Control and Prevention; Luks AM, Beidleman BA, Freer L et al.",
    year: 2024,
    title: "Travel to High Altitudes; Wilderness Medical Society guidelines for acute altitude illness, 2024 update",
    journal: "CDC Travelers' Health; Wilderness Environ Med 35(1_suppl):2S–19S",
    where: "itinerary advice (1600 ft a day above 9000 ft, an extra day every 3300 ft); risk table",
    verified: "seen",
  },
  compute: ascentSchedule,
  checks: [
    {
      given: [1500, [4000]],
      expect: 2,
      tolerance: 0,
      pick: flagCount,
      from: "by hand: gain 2500 > 500, and 2500 since the last flat night > 1000",
    },
    {
      given: [100, [2700, 3200, 3800]],
      expect: 2,
      tolerance: 0,
      pick: flagCount,
      from: "by hand: night 3 gains 600 > 500, and 1100 since night 1 > 1000",
    },
    {
      given: [100, [2700, 3100, 3500, 3500, 3900]],
      expect: 0,
      tolerance: 0,
      pick: flagCount,
      from: "by hand: gains 400, 400, 0, 400; 800 then 400 since a flat night",
    },
    {
      given: [100, [3600]],
      expect: 1,
      tolerance: 0,
      pick: flagCount,
      from: "2024 risk table: first night above 3500 m is in the high column",
    },
  ],
};
