/** Strength and mobility work as tables: exercises for what there is, loads from measured maxima, by experience. */
import type { Cell } from "../../kernel/measure.js";
import type { Notebook } from "../../kernel/notebook.js";
import type { Results } from "../../kernel/results.js";
import { roundTo, toDecimals } from "../../kernel/rounding.js";
import { numberOf, quantityOf } from "../recorded.js";
import { avoids, type Settings } from "../settings.js";
import { type Exercise, MOVEMENTS } from "./exercises.js";
import { nextLoad, info as nextLoadInfo } from "./next-load.js";

const STAND = "ACSM position stand 2009; the loads in % of the maximum from memory, to be checked against the source";
/** By experience: repetitions, share of the maximum, sets, rest (min). */
const LEVEL = {
  novice: { repetitions: "8 to 12", share: [0.6, 0.7], sets: "1 to 3", rest: "2 to 3" },
  intermediate: { repetitions: "1 to 12", share: [0.7, 0.8], sets: "several", rest: "2 to 3" },
  advanced: { repetitions: "1 to 12, mostly 1 to 6", share: [0.8, 1], sets: "several", rest: "3 to 5" },
} as const;

export function writeStrength(book: Notebook, results: Results, settings: Settings): void {
  const dose = LEVEL[settings.strengthLevel];
  const fits = (exercise: Exercise): boolean =>
    exercise.needs.every((need) => settings.equipment.includes(need)) &&
    !exercise.strains.some((strain) => avoids(settings, strain, settings.firstDay - 1));
  const rows = MOVEMENTS.flatMap((movement): Cell[][] => {
    const exercise = movement.find(fits);
    if (exercise === undefined) return [];
    const id = exercise.maximum?.find((one) => quantityOf(results, one) !== undefined);
    const maximum = id === undefined ? undefined : numberOf(results, id);
    const from = maximum === undefined ? null : roundTo(dose.share[0] * maximum, 0);
    const to = maximum === undefined ? null : roundTo(dose.share[1] * maximum, 0);
    const repetitions = maximum === undefined && exercise.maximum === undefined ? "8 to 15" : dose.repetitions;
    return [
      [
        exercise.name,
        dose.sets,
        repetitions,
        from,
        to,
        maximum === undefined
          ? `a load that ends the set at ${repetitions} repetitions`
          : maximumText(id as string, maximum),
        dose.rest,
        from === null || from < 1
          ? "more repetitions first, then load"
          : `${toDecimals(nextLoad(from, 2), 1)} to ${toDecimals(nextLoad(from, 10), 1)} kg next`,
        STAND,
      ],
    ];
  });
  book.table(
    "strength_work",
    [
      { key: "exercise", title: "Exercise" },
      { key: "sets", title: "Sets" },
      { key: "repetitions", title: "Repetitions" },
      { key: "load_from", title: "Load from", unit: "kg", decimals: 0 },
      { key: "load_to", title: "Load to", unit: "kg", decimals: 0 },
      { key: "load", title: "Load by" },
      { key: "rest", title: "Rest", unit: "min" },
      { key: "next", title: "When 1 to 2 repetitions more go well" },
      { key: "source", title: "Source" },
    ],
    rows,
    nextLoadInfo,
    [{ name: "experience", value: settings.strengthLevel, unit: "" }],
    `Lift and lower in 1 to 2 s each. ${settings.injuries.map((one) => `Because of ${one.area}, left out: ${one.avoid.join(", ")}.`).join(" ")} Strength beside endurance costs neither strength nor size (Schumann 2022: 43 studies); where power matters, leave 3 h between.`.replace(
      / +/g,
      " ",
    ),
  );
  writeMobility(book);
}

const maximumText = (id: string, maximum: number): string =>
  `${id.endsWith("estimated") ? "estimated" : "measured"} maximum of ${toDecimals(maximum, 0)} kg`;

function writeMobility(book: Notebook): void {
  const garber = "ACSM position stand 2011 (Garber and others)";
  book.table(
    "mobility_work",
    [
      { key: "what", title: "What" },
      { key: "dose", title: "How much" },
      { key: "source", title: "Source" },
    ],
    [
      ["Stretching of the large muscle groups", "2 days a week or more, 60 s in all for each", garber],
      ["Balance, agility, coordination", "2 to 3 days a week", garber],
      ["Where", "in the last 10 min of the strength sessions", "convention"],
    ],
    { id: "mobility-dose", revision: 1 },
    [],
  );
}
