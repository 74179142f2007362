/** For a high goal: what trials say of hypoxia beforehand, what saturations were seen, what such journeys cost. Context, no limits. */
import type { Cell } from "../../kernel/measure.js";
import type { Notebook } from "../../kernel/notebook.js";

/** Altitudes from which each page is printed, m. */
const FROM_M = 2500;

const PREACCLIMATISATION: readonly (readonly [string, string, string])[] = [
  [
    "14 nights at 14 to 15 % oxygen, 76 men, double-blind",
    "planned dose reached by 21 of 37; in those, mountain sickness 14 against 52 in 100 (a subgroup)",
    "Dehnert 2014, Wilderness Environ Med 25:263–271",
  ],
  ["7 × 1 h at rest at 4500 m, 32 susceptible people", "no effect: 59 against 67 in 100", "Faulhaber 2016"],
  [
    "7 × 1 h at 11 % oxygen, 49 people",
    "lower scores in more of them, no change in ventilation or saturation; laboratory only",
    "Front Physiol 2020;11:531",
  ],
  [
    "review",
    "no agreed protocol; some nights on the way up are advised",
    "Küpper and Schöffl 2012, Med Sport 16:81–86",
  ],
];
const SATURATION: readonly (readonly [string, string, string])[] = [
  ["3050 m, on arrival", "88 to 91", "CDC Yellow Book 2024"],
  ["3500 m, trekking day, rest", "about 89", "step-test study of 332 trekkers, PMC8077104"],
  ["3500 m, end of exercise", "82 to 84", "step-test study of 332 trekkers, PMC8077104"],
  ["5330 m", "65 to 81", "US joint trauma guideline"],
  ["5360 m", "70 to 80", "clinic's page on an expedition"],
];
const ENERGY: readonly (readonly [string, string, string])[] = [
  ["Energy spent a day on a peak of 6170 m, 14 people", "4173 kcal (SD 848)", "Wilderness Environ Med 2013;24:337–344"],
  [
    "Energy missing a day, 5 people",
    "5.7 MJ (SD 1.9); two thirds of the mass lost was fat",
    "Westerterp 1992, J Appl Physiol 73:1815–1819",
  ],
  [
    "Intake when only oxygen is low, 6 people",
    "3136 falling to 1789 kcal a day",
    "Operation Everest II, nutrition report",
  ],
  [
    "Effort over the day",
    "88 % of active time at 3 to 6 METs, about 7.7 h a day above 3 METs",
    "Wilderness Environ Med 2013;24:337–344",
  ],
  [
    "Fitness and mountain sickness, 44 trekkers to 5085 m",
    "a higher peak uptake made the effort lighter; sickness was neither rarer nor commoner",
    "Rossetti 2017, High Alt Med Biol 18:152–162",
  ],
];

export function writeAltitudeNotes(book: Notebook, altitudeM: number | undefined): void {
  if (altitudeM === undefined || altitudeM < FROM_M) return;
  const note = (
    id: "saturation_by_altitude" | "preacclimatisation" | "altitude_energy",
    titles: readonly [string, string],
    rows: typeof ENERGY,
    text: string,
  ) =>
    book.table(
      id,
      [
        { key: "what", title: titles[0] },
        { key: "found", title: titles[1] },
        { key: "source", title: "Source" },
      ],
      rows.map((row): Cell[] => [...row]),
      { id: "altitude-evidence", revision: 1 },
      [],
      text,
    );
  note(
    "saturation_by_altitude",
    ["Where", "Saturation, %"],
    SATURATION,
    "Context only. No number allows or forbids going higher; an oximeter does not tell altitude illness, and cold, movement and dark skin can mislead it.",
  );
  note(
    "preacclimatisation",
    ["What was done", "What was found"],
    PREACCLIMATISATION,
    "Nights for about two weeks at an altitude truly reached may lower mountain sickness on a quick ascent; single hours a day are unreliable; nothing replaces a slow ascent. It belongs before a physician experienced in altitude medicine.",
  );
  note(
    "altitude_energy",
    ["What", "Found"],
    ENERGY,
    "Plan food for a lost appetite, and for cold, dry air and wind; the energy need rises. Being fit does not protect from altitude illness. Illness up there belongs before a physician; with symptoms nobody goes higher.",
  );
}
