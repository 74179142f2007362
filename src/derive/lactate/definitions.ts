/** All lactate definitions of the trade with their exact wording, each tried on one test. */
import type { FormulaName } from "../../kernel/notebook.js";
import { attempt, type Outcome } from "../found-or-withheld.js";
import * as plus from "./baseline-plus.js";
import type { Point } from "./curve.js";
import * as dmax from "./dmax.js";
import * as fixed from "./fixed-lactate.js";
import * as logLog from "./log-log.js";
import * as modified from "./modified-dmax.js";

export type DefinitionId =
  | "baseline-plus-0.5"
  | "baseline-plus-1.0"
  | "fixed-2"
  | "fixed-4"
  | "log-log"
  | "dmax"
  | "modified-dmax";

export interface Definition {
  readonly id: DefinitionId;
  readonly info: FormulaName;
  readonly wording: string;
  readonly run: (points: readonly Point[]) => number;
}

const DEFINITIONS: readonly Definition[] = [
  {
    id: "baseline-plus-0.5",
    info: plus.info,
    wording: "last crossing of the lowest step + 0.5 mmol/L, straight between steps",
    run: (points) => plus.baselinePlus(points, 0.5),
  },
  {
    id: "baseline-plus-1.0",
    info: plus.info,
    wording: "last crossing of the lowest step + 1.0 mmol/L, straight between steps",
    run: (points) => plus.baselinePlus(points, 1),
  },
  {
    id: "log-log",
    info: logLog.info,
    wording: "two least-squares lines of ln lactate on ln load, all splits, lowest pooled residual; where they meet",
    run: logLog.logLog,
  },
  {
    id: "fixed-2",
    info: fixed.info,
    wording: "last crossing of 2.0 mmol/L, straight between steps",
    run: (points) => fixed.fixedLactate(points, 2),
  },
  {
    id: "dmax",
    info: dmax.info,
    wording: "third-order polynomial, farthest below the chord of first and last step",
    run: dmax.dmax,
  },
  {
    id: "modified-dmax",
    info: modified.info,
    wording:
      "third-order polynomial, farthest below the chord from the step before the first rise > 0.4 mmol/L to the last",
    run: modified.modifiedDmax,
  },
  {
    id: "fixed-4",
    info: fixed.info,
    wording: "last crossing of 4.0 mmol/L, straight between steps",
    run: (points) => fixed.fixedLactate(points, 4),
  },
];

/** Each definition with its load, or why it has none. */
export function everyDefinition(
  points: readonly Point[],
): readonly { definition: Definition; outcome: Outcome<number> }[] {
  return DEFINITIONS.map((definition) => ({ definition, outcome: attempt(() => definition.run(points)) }));
}
