/** Spirometry: which breaths count, the largest of each, grades by the ATS/ERS 2019 table, voluntary ventilation. */
import { describe, expect, it } from "vitest";
import { largestStartL } from "../../../src/derive/lungs/counting-manoeuvres.js";
import { deriveLungs } from "../../../src/derive/lungs.js";
import type { Lungs } from "../../../src/kernel/generated/session.js";
import { openNotebook } from "../../../src/kernel/notebook.js";
import { because, find, judgement, quantity, table, visitOf } from "../visit-of.js";

const derived = (lungs: Lungs) => {
  const book = openNotebook();
  deriveLungs(book, visitOf({ lungs }));
  return book.entries();
};
const good = (fvc_l: number, fev1_l: number, pef_l_s?: number) => ({
  fvc_l,
  fev1_l,
  acceptable: true,
  ...(pef_l_s === undefined ? {} : { pef_l_s }),
});
const session = (...manoeuvres: NonNullable<Lungs["manoeuvres"]>): Lungs => ({
  volumes_at: "BTPS",
  bronchodilator: "before",
  manoeuvres,
});

describe("lungs", () => {
  it("writes nothing without the block", () => {
    const book = openNotebook();
    deriveLungs(book, visitOf({}));
    expect(book.entries()).toEqual([]);
  });
  it("takes the largest of each, even from different breaths, and the ratio of those", () => {
    const found = derived(session(good(5.1, 4.02, 9.1), good(5.02, 4.1, 9.6), good(5.0, 4.0)));
    expect(quantity(found, "fvc")?.value).toBe(5.1);
    expect(quantity(found, "fev1")?.value).toBe(4.1);
    expect(quantity(found, "fev1_fvc")?.value).toBeCloseTo(4.1 / 5.1, 12);
    expect(quantity(found, "peak_expiratory_flow")?.value).toBe(9.6);
    expect(table(found, "spirometry_manoeuvres")?.rows).toHaveLength(3);
  });
  it("grades FEV1 and FVC apart", () => {
    const found = derived(session(good(5.1, 4.0), good(5.0, 4.18), good(4.9, 3.9)));
    expect(judgement(found, "fvc_grade")?.verdict).toBe("grade A"); // 0.10 L apart
    expect(judgement(found, "fev1_grade")?.verdict).toBe("grade C"); // 0.18 L apart
    expect(judgement(found, "fev1_grade")?.because).toContain("180 mL apart");
    expect(quantity(found, "fev1_repeatability")?.value).toBeCloseTo(0.18, 12);
  });
  it("holds 0.150 L against the limit to the millilitre", () => {
    // 4.25 − 4.10 is above 0.15 in floating point.
    expect(4.25 - 4.1 > 0.15).toBe(true);
    const found = derived(session(good(5, 4.1), good(5, 4.25), good(5, 4.0)));
    expect(judgement(found, "fev1_grade")?.verdict).toBe("grade A");
  });
  it("leaves a spoilt breath out, and says why", () => {
    const spoilt = { fvc_l: 5.5, fev1_l: 4.5, acceptable: false, remark: "cough in the first second" };
    const found = derived(session(good(5, 4), good(5, 4), good(5, 4), spoilt));
    expect(quantity(found, "fev1")?.value).toBe(4);
    expect(table(found, "spirometry_manoeuvres")?.rows[3]?.at(-1)).toBe("no: cough in the first second");
  });
  it("leaves a slow start out whatever the mark says", () => {
    // ATS/ERS 2019: 5 % of FVC or 0.100 L, whichever is greater.
    expect(largestStartL(5)).toBe(0.25);
    expect(largestStartL(1.5)).toBe(0.1);
    const slow = { ...good(5.5, 4.5), back_extrapolated_volume_l: 0.276 };
    const quick = { ...good(5.2, 4.2), back_extrapolated_volume_l: 0.26 };
    const found = derived(session(good(5, 4), slow, quick));
    expect(quantity(found, "fev1")?.value).toBe(4.2);
    expect(table(found, "spirometry_manoeuvres")?.rows[1]?.at(-1)).toMatch(/0\.276 L is above 0\.275 L/);
  });
  it("falls back to usable breaths with grade U, and gives nothing where none is", () => {
    const usable = { fvc_l: 5, fev1_l: 4, acceptable: false, usable: true };
    const found = derived(session(usable));
    expect(quantity(found, "fev1")?.value).toBe(4);
    expect(judgement(found, "fev1_grade")?.verdict).toBe("grade U");
    const none = derived(session({ ...usable, usable: false }));
    expect(because(none, "fev1")).toMatch(/at least one that counts/);
    expect(judgement(none, "fev1_grade")?.verdict).toBe("grade F");
  });
  it("gives no grade where acceptability was not recorded", () => {
    const found = derived(session({ fvc_l: 5, fev1_l: 4 }, good(5, 4)));
    expect(quantity(found, "fev1")?.value).toBe(4);
    expect(because(found, "fev1_grade")).toBe("acceptable was not recorded for 1 of 2 manoeuvres");
  });
  it("withholds volumes whose gas condition is not stated", () => {
    const found = derived({ manoeuvres: [good(5, 4)] });
    expect(because(found, "fev1")).toMatch(/volumes_at was not recorded/);
    expect(because(found, "fvc")).toMatch(/BTPS/);
    expect(find(found, "maximal_voluntary_ventilation")).toBeUndefined();
  });
  it("prefers measured voluntary ventilation to an estimate, and calls the estimate one", () => {
    const estimated = quantity(derived(session(good(5, 4.1))), "maximal_voluntary_ventilation");
    expect(estimated?.value).toBeCloseTo(164, 9); // by hand: 40 · 4.10
    expect(estimated?.note).toMatch(/estimate/i);
    const measured = derived({ ...session(good(5, 4.1)), mvv_l_min: 171 });
    expect(quantity(measured, "mvv")?.value).toBe(171);
    expect(find(measured, "maximal_voluntary_ventilation")).toBeUndefined();
  });
});
