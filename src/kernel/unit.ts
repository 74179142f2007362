/**
 * Rival units of one measure are branded, so that a swap does not compile. A brand costs nothing at run time.
 */
export type In<Unit extends string> = number & { readonly __unit: Unit };

export const lPerMin = (x: number) => x as In<"L/min">;

/** 1 standard atmosphere is 760 mmHg or 101.325 kPa by definition. */
export const KPA_PER_MMHG = 101.325 / 760;
/** International avoirdupois pound, exact by definition (1959). */
export const KG_PER_POUND = 0.45359237;
/** International inch, exact by definition (1959). */
export const CM_PER_INCH = 2.54;
/** Thermochemical calorie, exact by definition: 1 kcal = 4.184 kJ. */
export const KJ_PER_KCAL = 4.184;
