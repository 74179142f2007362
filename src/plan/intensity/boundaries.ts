/**
 * The two boundaries between easy, steady and hard, read from recorded results: ventilatory thresholds first, the lactate
 * threshold where a ventilatory one is missing. Each number keeps its interval.
 */
import type { Quantity } from "../../kernel/measure.js";
import type { MeasureId } from "../../kernel/measures.js";
import type { Results } from "../../kernel/results.js";
import { quantityOf } from "../recorded.js";

/** A number with its 95 % interval, where known. */
export interface Limit {
  readonly value: number;
  readonly low?: number;
  readonly high?: number;
}
export interface Boundary {
  readonly name: string;
  readonly heartRate?: Limit;
  readonly speed?: Limit;
  readonly grade?: Limit;
  readonly power?: Limit;
  /** mL/kg/min */
  readonly uptake?: Limit;
  /** 6 to 20, the client's own rating there. */
  readonly rating?: number;
}
export interface Boundaries {
  readonly first?: Boundary;
  readonly second?: Boundary;
  /** Said on the page where a lactate threshold stands in. */
  readonly remark?: string;
}

const limit = (quantity: Quantity | undefined): Limit | undefined =>
  quantity && {
    value: quantity.value,
    ...(quantity.error?.low === undefined ? {} : { low: quantity.error.low }),
    ...(quantity.error?.high === undefined ? {} : { high: quantity.error.high }),
  };

function boundary(
  results: Results,
  name: string,
  ids: Readonly<Partial<Record<"heartRate" | "speed" | "grade" | "power" | "uptake", MeasureId>>>,
  rating: MeasureId,
): Boundary | undefined {
  const limits = Object.entries(ids).flatMap(([key, id]) => {
    const found = limit(quantityOf(results, id));
    return found ? [[key, found] as const] : [];
  });
  if (limits.length === 0) return undefined;
  const own = quantityOf(results, rating)?.value;
  return { name, ...Object.fromEntries(limits), ...(own === undefined ? {} : { rating: own }) };
}

/** Lactate definitions that mark the upper boundary; the others mark the lower. */
const UPPER = ["fixed-4", "dmax", "modified-dmax"];

export function measuredBoundaries(results: Results): Boundaries {
  const at = (id: "vt1" | "vt2", name: string) =>
    boundary(
      results,
      name,
      {
        heartRate: `${id}_heart_rate`,
        speed: `${id}_speed`,
        grade: `${id}_grade`,
        power: `${id}_power`,
        uptake: `${id}_vo2_per_mass`,
      },
      `${id}_rpe`,
    );
  const lactate = boundary(
    results,
    `lactate threshold (${results.choices.lactate_definition})`,
    { heartRate: "lactate_threshold_heart_rate", speed: "lactate_threshold_speed", power: "lactate_threshold_power" },
    "lactate_threshold_rpe",
  );
  const upper = UPPER.includes(results.choices.lactate_definition);
  const vt1 = at("vt1", "first ventilatory threshold");
  const vt2 = at("vt2", "second ventilatory threshold");
  const first = vt1 ?? (upper ? undefined : lactate);
  const second = vt2 ?? (upper ? lactate : undefined);
  const standsIn = (first === lactate || second === lactate) && lactate !== undefined;
  return {
    ...(first === undefined ? {} : { first }),
    ...(second === undefined ? {} : { second }),
    ...(standsIn
      ? {
          remark: `The ${lactate.name} stands in for the ${upper ? "second" : "first"} ventilatory threshold; the two are near each other, not the same.`,
        }
      : {}),
  };
}
