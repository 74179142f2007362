/** A generated test as a visit with a series, the way a session file would give it. */
import type { Channel, Series } from "../../src/kernel/series.js";
import type { Visit } from "../../src/kernel/visit.js";
import { seriesOf, visitOf } from "../derive/incremental/visit.js";
import type { GeneratedTest, Row } from "./breaths.js";

const CHANNEL: Partial<Record<Channel, keyof Row>> = {
  time_s: "time",
  vo2_l_min: "vo2",
  vco2_l_min: "vco2",
  ventilation_l_min: "ve",
  breathing_frequency_per_min: "bf",
  peto2_mmhg: "peto2",
  petco2_mmhg: "petco2",
  heart_rate_bpm: "hr",
  speed_km_h: "speed",
  grade_pct: "grade",
  power_w: "power",
};
const MAY_BE_ZERO: readonly string[] = ["time", "speed", "grade", "power"];

/** 0 in a gas, volume or heart channel becomes missing, as the reader of a CSV does it. `without` leaves channels out. */
export function seriesOfTest(test: GeneratedTest, without: readonly Channel[] = []): Series {
  const unused: Channel[] = test.recipe.mode === "cycle" ? ["speed_km_h", "grade_pct"] : ["power_w"];
  const channels = Object.entries(CHANNEL)
    .filter(([channel]) => !without.includes(channel as Channel) && !unused.includes(channel as Channel))
    .map(([channel, key]) => {
      const values = test.rows.map((row) => row[key]);
      return [channel, MAY_BE_ZERO.includes(key) ? values : values.map((v) => (v === 0 ? Number.NaN : v))] as const;
    });
  return seriesOf(Object.fromEntries(channels), { ventilation_l_min: "BTPS" });
}

export interface VisitParts {
  readonly without?: readonly Channel[];
  /** Leave the phases to be found from the workload. */
  readonly findPhases?: boolean;
  readonly reading?: NonNullable<Visit["session"]["incremental"]>["reading"];
  readonly choices?: Partial<Visit["choices"]>;
}

export function visitOfTest(test: GeneratedTest, parts: VisitParts = {}): Visit {
  const at = (name: string) => test.truth.phases.find((phase) => phase.name === name);
  const incremental = at("incremental");
  if (incremental === undefined) throw new Error("a generated test has an incremental phase");
  const warmUp = at("warm-up");
  const phases = {
    rest_start_s: 0,
    ...(warmUp ? { warm_up_start_s: warmUp.fromS } : {}),
    incremental_start_s: incremental.fromS,
    recovery_start_s: incremental.toS,
  };
  return visitOf({
    massKg: test.recipe.massKg,
    series: seriesOfTest(test, parts.without),
    ...(parts.choices ? { choices: parts.choices } : {}),
    incremental: {
      mode: test.recipe.mode,
      series: "test.csv",
      ...(parts.findPhases ? {} : { phases }),
      ...(parts.reading ? { reading: parts.reading } : {}),
    },
  });
}
