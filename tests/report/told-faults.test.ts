/** Visits with faults, half of their keys and unusual answers: nothing of ours stays English in a German report. */
import { describe, expect, it } from "vitest";
import { speechOf } from "../../src/kernel/speech.js";
import { oddVisits } from "../generator/odd-visits.js";
import { wordsOf } from "./assets.js";
import { leftEnglish } from "./said.js";

const VISITS = 60;

describe("visits with faults in German", () => {
  it("leave no sentence of ours in English", { timeout: 60_000 }, async () => {
    const speech = speechOf(wordsOf("de"));
    const left = new Set<string>();
    let visits = 0;
    for (let seed = 1; visits < VISITS && seed < VISITS; seed++)
      for (const results of await oddVisits(seed)) {
        visits++;
        for (const english of leftEnglish(results, speech)) left.add(english);
      }
    expect(visits).toBeGreaterThanOrEqual(VISITS);
    expect([...left]).toEqual([]);
  });
});
