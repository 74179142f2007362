/* Made by npm run generate from the modules. Do not edit. */
import type { AnyFormula } from "./kernel/formula.js";
import { info as info0 } from "./derive/size/body-mass-index.js";

export const formulas: readonly AnyFormula[] = [
  info0,
];
