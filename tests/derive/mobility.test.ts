import { describe, expect, it } from "vitest";
import { sitAndReachCommonScale } from "../../src/derive/mobility/sit-and-reach-common-scale.js";
import { deriveMobility } from "../../src/derive/mobility.js";
import type { Mobility } from "../../src/kernel/generated/session.js";
import { openNotebook } from "../../src/kernel/notebook.js";
import fc from "../tools/properties.js";
import { because, judgement, quantity, table, visitOf } from "./visit-of.js";

const derived = (mobility: Mobility) => {
  const book = openNotebook();
  deriveMobility(book, visitOf({ mobility }));
  return book.entries();
};

describe("mobility", () => {
  it("puts every box on the scale of 26 cm, best trial first", () => {
    const reach = (reach_cm: [number, ...number[]], zero_cm: 26 | 23 | 0) =>
      quantity(derived({ sit_and_reach: { reach_cm, zero_cm } }), "sit_and_reach")?.value;
    expect(reach([28, 30], 26)).toBe(30);
    expect(reach([27, 25], 23)).toBe(30);
    expect(reach([-4], 0)).toBe(22);
  });
  it("boxes agree: the same reach past the soles gives the same value", () => {
    fc.assert(
      fc.property(fc.double({ min: -15, max: 15, noNaN: true }), (pastSoles) => {
        const on = (zero: number) => sitAndReachCommonScale(zero + pastSoles, zero);
        expect(on(26)).toBeCloseTo(on(23), 9);
        expect(on(26)).toBeCloseTo(on(0), 9);
      }),
    );
  });
  it("takes the mean of the stance trials and says where the watch stopped them", () => {
    const found = derived({ single_leg_stance: { left_s: [40, 44, 45], right_s: 12, eyes: "open", ceiling_s: 45 } });
    expect(quantity(found, "single_leg_stance_left")?.value).toBe(43); // by hand: 129 / 3
    expect(quantity(found, "single_leg_stance_left")?.note).toContain("stopped at 45 s");
    expect(quantity(found, "single_leg_stance_right")?.note).not.toContain("stopped");
    expect(quantity(found, "single_leg_stance_best")?.value).toBe(45);
    expect(judgement(found, "single_leg_stance_conditions")?.verdict).toBe("eyes open");
    expect(because(derived({ single_leg_stance: { left_s: 3 } }), "single_leg_stance_conditions")).toContain("eyes");
  });
  it("gives composites and the forward difference as something to watch, not a forecast", () => {
    const leg = (anterior_cm: number) => ({
      anterior_cm,
      posteromedial_cm: 105,
      posterolateral_cm: 100,
      limb_length_cm: 92,
    });
    const found = derived({ reach: { left: leg(62), right: leg(66.5) } });
    expect(quantity(found, "reach_composite_left")?.value).toBeCloseTo(96.74, 2); // by hand: 26 700 / 276
    expect(quantity(found, "reach_asymmetry_anterior")?.value).toBe(4.5);
    expect(quantity(found, "reach_asymmetry_anterior")?.note).toContain("not a forecast of injury");
    expect(table(found, "reach_trials")?.rows.length).toBe(2);
  });
  it("says which parts of a half-recorded reach are missing", () => {
    const found = derived({ reach: { left: { anterior_cm: 62 } } });
    expect(because(found, "reach_composite_left")).toContain("posteromedial_cm, posterolateral_cm, limb_length_cm");
    expect(because(found, "reach_composite_right")).toContain("right was not recorded");
    expect(because(found, "reach_asymmetry_anterior")).toContain("both legs");
  });
});
