/** Units and dates as sentences write them. */
import { describe, expect, it } from "vitest";
import { spoken, spokenDate } from "../../src/compare/spoken.js";

describe("sentences", () => {
  it("write dates in full, and leave alone what is no date", () => {
    expect(spokenDate("2026-03-02")).toBe("2 March 2026");
    expect(spokenDate("2028-12-31")).toBe("31 December 2028");
    expect(spokenDate("spring")).toBe("spring");
  });
  it("give a ratio no unit and count what a rate counts", () => {
    expect(spoken("waist_to_height", 0.46, 2, "ratio")).toBe("0.46");
    expect(spoken("resting_heart_rate", 58, 0, "1/min")).toBe("58 beats/min");
    expect(spoken("breathing_frequency_peak", 44, 0, "1/min")).toBe("44 breaths/min");
    expect(spoken("vo2_peak_per_mass", 41.8, 1, "mL/kg/min")).toBe("41.8 mL/kg/min");
  });
});
