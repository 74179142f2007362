/** What a reference table may ask about a person: sex, age and facts by name. */
import type { ReferenceTable } from "../kernel/generated/reference-table.js";
import type { Entry } from "../kernel/measure.js";
import { compareAtDecimals, toDecimals } from "../kernel/rounding.js";
import type { Visit } from "../kernel/visit.js";

export interface Person {
  readonly sex: "female" | "male";
  /** Decimal age. */
  readonly ageYears: number;
  /** By the names of FACTS; a fact that was not recorded is absent. */
  readonly facts: Readonly<Record<string, number | string>>;
  /** Why no reference for peak uptake may be used for this test, in words; empty where nothing speaks against it. */
  readonly notAsReferences?: readonly string[];
}

type Fact = Exclude<keyof ReferenceTable["applies"], "sex" | "age_years">;

interface FactWords {
  readonly name: string;
  readonly unit?: string;
  /** How a word is written in the name of a group; "" leaves it out. */
  readonly inGroup?: (word: string) => string;
  /** The reason for refusing, where the general sentence reads badly. */
  readonly refused?: string;
}

/** Words for each fact a table can limit: as in "the mode of the test was not recorded". */
export const FACTS: Readonly<Record<Fact, FactWords>> = {
  stature_cm: { name: "stature", unit: "cm" },
  mass_kg: { name: "body mass", unit: "kg" },
  body_mass_index: { name: "body mass index", unit: "kg/m²" },
  exercise_mode: { name: "mode of the incremental test" },
  scanner_maker: { name: "maker of the scanner", inGroup: (maker) => `${maker} scanner` },
  dynamometer: { name: "kind of dynamometer", inGroup: (kind) => `${kind} dynamometer` },
  grip_posture: { name: "posture of the grip test" },
  push_up_form: { name: "form of the push-ups", inGroup: (form) => `${form} form` },
  bench_machine: { name: "machine of the bench press" },
  leg_press_machine: { name: "machine of the leg press" },
  pregnant: { name: "pregnancy", inGroup: () => "", refused: "it does not hold in pregnancy" },
  stance_eyes: { name: "state of the eyes", inGroup: (eyes) => `eyes ${eyes}` },
  waist_site: { name: "site of the waist measurement", inGroup: (site) => `waist at ${site}` },
  bronchodilator: {
    name: "time of the spirometry (before or after a bronchodilator)",
    inGroup: (time) => `${time} a bronchodilator`,
  },
  population_group: { name: "population group" },
};

/** The person of a visit, from the session and the values derived from it. */
export function personOf(visit: Visit, entries: readonly Entry[]): Person {
  const { session } = visit;
  const value = (id: string) => {
    const entry = entries.find((e) => e.id === id);
    return entry?.kind === "quantity" ? entry.value : undefined;
  };
  const facts: Readonly<Record<Fact, number | string | undefined>> = {
    stature_cm: value("stature"),
    mass_kg: value("body_mass"),
    body_mass_index: value("body_mass_index"),
    exercise_mode: session.incremental?.mode,
    scanner_maker: session.dxa?.scanner_maker,
    dynamometer: session.strength?.grip?.device_type,
    grip_posture: session.strength?.grip?.posture,
    push_up_form: session.strength?.push_ups?.form,
    bench_machine: session.strength?.bench_press?.machine,
    leg_press_machine: session.strength?.leg_press?.machine,
    pregnant: session.size?.pregnant === true ? "yes" : "no",
    stance_eyes: session.mobility?.single_leg_stance?.eyes,
    waist_site: session.size?.waist_site,
    bronchodilator: session.lungs?.bronchodilator,
    population_group: visit.choices.population_group === "not stated" ? undefined : visit.choices.population_group,
  };
  return {
    notAsReferences: notAsReferences(visit, value("rer_peak")),
    sex: visit.client.sex,
    ageYears: visit.ageYears,
    facts: Object.fromEntries(Object.entries(facts).filter((pair) => pair[1] !== undefined)) as Person["facts"],
  };
}

/** Room air, with the spread that analysers and the two conventions (.2093, .2095) leave. */
const ROOM_AIR = [0.205, 0.213] as const;
/** Station pressure, mmHg, at about 1500 m: above that peak uptake falls by about 1 % for each 100 m (common practice). */
const HIGH_UP_MMHG = 640;
const HIGH_UP_M = 1500;
/** The registries took tests with an exchange ratio of 1.00 or more at the peak (Kaminsky 2015 and 2022, Myers 2017). */
const LEAST_RATIO = 1;

/** What the references for peak uptake have in common: room air, low altitude, a test carried on to the limit. */
function notAsReferences(visit: Visit, ratio: number | undefined): string[] {
  const { room } = visit.session;
  const altitude = visit.laboratory.altitude_m;
  const out: string[] = [];
  if (room?.fio2 !== undefined && !(room.fio2 >= ROOM_AIR[0] && room.fio2 <= ROOM_AIR[1]))
    out.push(`it covers tests in room air, and the inspired oxygen fraction was ${room.fio2}`);
  if (room?.pressure_mmhg !== undefined ? room.pressure_mmhg < HIGH_UP_MMHG : (altitude ?? 0) > HIGH_UP_M)
    out.push(
      room?.pressure_mmhg !== undefined
        ? `it covers tests near sea level, and the pressure was ${toDecimals(room.pressure_mmhg, 0)} mmHg`
        : `it covers tests near sea level, and the laboratory lies at ${toDecimals(altitude ?? 0, 0)} m`,
    );
  if (ratio !== undefined && compareAtDecimals(ratio, LEAST_RATIO, 2) < 0)
    out.push(
      `it covers tests with an exchange ratio of ${toDecimals(LEAST_RATIO, 2)} or more at the peak, and here it was ${toDecimals(ratio, 2)}`,
    );
  return out;
}
