/** What follows from resting uptake and output: ratio and its band, energy, fuel shares. */

import type { Judgement } from "../../kernel/measure.js";
import type { Notebook } from "../../kernel/notebook.js";
import { toDecimals } from "../../kernel/rounding.js";
import { lPerMin } from "../../kernel/unit.js";
import type { Visit } from "../../kernel/visit.js";
import { attempt, foundOrWithheld } from "../found-or-withheld.js";
import * as rer from "../gas/respiratory-exchange-ratio.js";
import * as brockway from "./brockway-1987.js";
import * as frayn from "./frayn-1983.js";
import * as lusk from "./lusk-1924.js";
import * as peronnet from "./peronnet-massicotte-1991.js";
import * as band from "./quotient-band.js";
import * as weir from "./weir-1949.js";
import * as weirShort from "./weir-short.js";

/**
 * Day-to-day variation within one person. Energy: the larger of two studies, the one that comparing visits uses too
 * (src/compare/tables/resting-metabolism-2014.yaml; a test holds them equal): 34 adults within a week, against 4.85 % in
 * 14 men on two days. It lies within the 5 to 8 % of a review (Donahoo 2004). Ratio: the 14 men, for want of a larger study.
 */
const DAY_TO_DAY_PCT = { energy: 6.89, ratio: 3.22 };
const FROM_ENERGY =
  "day-to-day variation in 34 adults within 7 days (conference abstract of 2014, J Int Soc Sports Nutr 11(S1):P46)";
const FROM_RATIO = "day-to-day variation in 14 men over two days (study of 2021, PMC8708346)";

export function restingEnergy(book: Notebook, visit: Visit): void {
  if (book.entry("resting_rer") === undefined) ratioOf(book);
  const ratio = book.value("resting_rer");
  const vo2 = book.value("resting_vo2");
  const vco2 = book.value("resting_vco2");
  if (ratio === undefined || vo2 === undefined || vco2 === undefined) {
    const because = "resting oxygen uptake and carbon dioxide output are both needed";
    for (const id of [
      "resting_energy_expenditure",
      "resting_fat_oxidation",
      "resting_carbohydrate_oxidation",
      "resting_carbohydrate_share",
    ] as const)
      book.withhold(id, because);
    return;
  }
  judgeBand(book, ratio);
  const refused = implausible(ratio);
  const litres = [lPerMin(vo2 / 1000), lPerMin(vco2 / 1000)] as const;
  const nitrogen = visit.session.rest?.urinary_nitrogen_g_per_day;
  const inputs = ["resting_vo2", "resting_vco2"] as const;
  const urine = nitrogen === undefined ? [] : [{ name: "urinary nitrogen", value: nitrogen, unit: "g/d" }];
  if (refused !== undefined) {
    book.withhold("resting_energy_expenditure", refused);
  } else {
    const equation = { "weir-1949": weir, "weir-short": weirShort, "brockway-1987": brockway }[
      visit.choices.energy_equation
    ];
    const run = () => equation.info.compute(...litres, ...(nitrogen === undefined ? [] : [nitrogen]));
    const usesNitrogen = equation !== weirShort;
    const typical = attempt(run);
    foundOrWithheld(
      book,
      "resting_energy_expenditure",
      equation.info,
      [...inputs, ...(usesNitrogen ? urine : [])],
      run,
      {
        ...(typical.because === undefined
          ? { error: { typical: (typical.value * DAY_TO_DAY_PCT.energy) / 100, from: FROM_ENERGY } }
          : {}),
      },
    );
  }
  fuels(book, visit, litres, ratio, refused, nitrogen);
}

function ratioOf(book: Notebook): void {
  const [vco2, vo2] = [book.value("resting_vco2"), book.value("resting_vo2")];
  if (vco2 === undefined || vo2 === undefined) {
    book.withhold("resting_rer", "resting oxygen uptake and carbon dioxide output are both needed");
    return;
  }
  foundOrWithheld(
    book,
    "resting_rer",
    rer.info,
    ["resting_vco2", "resting_vo2"],
    () => rer.respiratoryExchangeRatio(vco2 / 1000, vo2 / 1000),
    {
      error: { typical: ((vco2 / vo2) * DAY_TO_DAY_PCT.ratio) / 100, from: FROM_RATIO },
    },
  );
}

/** The sentence that withholds what rests on a ratio no resting person has. */
function implausible(ratio: number): string | undefined {
  const outcome = attempt(() => band.quotientBand(ratio));
  if (outcome.because !== undefined) return outcome.because;
  if (outcome.value === "reject")
    return `the respiratory exchange ratio of ${toDecimals(ratio, 2)} is outside the physiological range of 0.67 to 1.30: repeat the measurement`;
  if (ratio > 1)
    return `a ratio of ${toDecimals(ratio, 2)} at rest speaks of overbreathing or of an analyser error, not of fuel: repeat the measurement`;
  return undefined;
}

const WORDS: Readonly<Record<band.QuotientBand, Pick<Judgement, "verdict" | "because">>> = {
  accept: {
    verdict: "plausible",
    because: "The ratio lies between 0.67 and 0.90, as it does after a fast. It cannot show whether the fast was kept.",
  },
  suspect: {
    verdict: "suspect",
    because:
      "The ratio is above 0.90: after a fast that points to food, to overbreathing, to a leak or to the calibration. Consider repeating.",
  },
  reject: {
    verdict: "repeat",
    because: "The ratio is outside the physiological range of 0.67 to 1.30: an error is likely.",
  },
};

function judgeBand(book: Notebook, ratio: number): void {
  const outcome = attempt(() => band.quotientBand(ratio));
  if (outcome.because !== undefined) {
    book.withhold("resting_rer_band", outcome.because);
    return;
  }
  const { verdict, because } = WORDS[outcome.value];
  book.judge("resting_rer_band", verdict, because, {
    rule: `${band.info.id} r${band.info.revision}`,
    inputs: [{ name: "resting_rer", text: toDecimals(ratio, 2), measure: "resting_rer" }],
  });
}

function fuels(
  book: Notebook,
  visit: Visit,
  litres: readonly [ReturnType<typeof lPerMin>, ReturnType<typeof lPerMin>],
  ratio: number,
  refused: string | undefined,
  nitrogen: number | undefined,
): void {
  const both = ["resting_fat_oxidation", "resting_carbohydrate_oxidation"] as const;
  const share = "resting_carbohydrate_share";
  if (refused !== undefined) {
    for (const id of [...both, share] as const) book.withhold(id, refused);
    return;
  }
  const useFrayn = visit.choices.substrate_equation === "frayn-1983";
  const { info } = useFrayn ? frayn : peronnet;
  const inputs = ["resting_vo2", "resting_vco2"] as const;
  const run = () =>
    useFrayn ? frayn.frayn1983(...litres, (nitrogen ?? 0) / 1440) : peronnet.peronnetMassicotte1991(...litres);
  const note =
    useFrayn && nitrogen !== undefined ? "urinary nitrogen allowed for" : "protein counted as fat and carbohydrate";
  foundOrWithheld(book, both[0], info, inputs, () => run().fat, { note });
  foundOrWithheld(book, both[1], info, inputs, () => run().carbohydrate, { note });
  foundOrWithheld(book, share, lusk.info, ["resting_rer"], () => lusk.lusk1924(ratio).carbohydrateShare, {
    note: "share of energy, protein left out",
  });
}
