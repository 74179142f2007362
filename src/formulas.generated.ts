/* Made by npm run generate from the modules. Do not edit. */
import type { AnyFormula } from "./kernel/formula.js";
import { info as info0 } from "./derive/altitude/equivalent-altitude.js";
import { info as info1 } from "./derive/altitude/inspired-oxygen-pressure.js";
import { info as info2 } from "./derive/altitude/lake-louise-score.js";
import { info as info3 } from "./derive/altitude/mountain-pressure.js";
import { info as info4 } from "./derive/altitude/standard-pressure.js";
import { info as info5 } from "./derive/altitude/uptake-at-altitude.js";
import { info as info6 } from "./derive/size/body-mass-index.js";

export const formulas: readonly AnyFormula[] = [
  info0,
  info1,
  info2,
  info3,
  info4,
  info5,
  info6,
];
