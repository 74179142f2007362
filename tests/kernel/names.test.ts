/** Names of what comparing visits writes, in both languages. */
import { describe, expect, it } from "vitest";
import { nameOf } from "../../src/kernel/names.js";
import { speechOf } from "../../src/kernel/speech.js";
import { wordsOf } from "../report/assets.js";

const named = (id: string, language = "en") => nameOf(speechOf(wordsOf(language)), id);

describe("names of comparisons", () => {
  it("are words, not ids", () => {
    expect(named("goal_vo2_peak_per_mass_1")).toBe("Goal: Peak oxygen uptake per kilogram");
    expect(named("explained_grip_strength")).toBe("What moved: Grip strength, better hand");
    expect(named("change_false_alarms")).toBe("False alarms to expect");
    expect(named("change_body_mass")).toBe("Change: Body mass");
    expect(named("change_false_alarms", "de")).toMatch(/^Fehlalarme/);
    expect(named("goal_vo2_peak_per_mass_1", "de")).toMatch(/^Ziel: /);
  });
  it("leave the catalogue's own names alone", () => {
    expect(named("goal_altitude")).not.toMatch(/^Goal: /);
    expect(named("body_mass")).toBe("Body mass");
  });
});
