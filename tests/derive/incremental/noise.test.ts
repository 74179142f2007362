/** What the noise of breaths does to claims about the peak, on the examiner's body (tests/examiner/body.ts). */
import { describe, expect, it } from "vitest";
import { maximality } from "../../../src/derive/incremental/maximality.js";
import { send, sessionText } from "../../examiner/bench.js";
import { exercise, PERSON, truePeak } from "../../examiner/body.js";
import { commaCsv, EXAMINER_LAB, phasesText } from "../../examiner/files.js";

const SEEDS = Array.from({ length: 24 }, (_, i) => i + 1);
const answers = (person: Partial<typeof PERSON>) =>
  Promise.all(
    SEEDS.map(async (seed) => {
      const test = exercise({ ...PERSON, ...person }, { start: 60, rise: 25, stageS: 0 }, seed);
      const session = sessionText(
        `incremental:\n  mode: cycle\n  series: a.csv\n  instrument: comma_cart\n${phasesText(test)}`,
      );
      return { test, answer: await send({ lab: EXAMINER_LAB, session, files: { "a.csv": commaCsv(test) } }) };
    }),
  );

describe("breaths that resemble their neighbours", () => {
  // Binomial: 24 intervals of nominal 95 % hold the truth fewer than 20 times with a probability below 0.01.
  it("leave the interval of the peak as wide as it has to be", async () => {
    const held = (await answers({ depthCarry: 0.4 })).filter(({ test, answer }) => {
      const error = answer.quantity("vo2_peak")?.error;
      const truth = truePeak(test);
      return error?.low !== undefined && error.high !== undefined && error.low <= truth && truth <= error.high;
    });
    expect(held.length).toBeGreaterThanOrEqual(20);
  });

  it("make no maximum of a test that was stopped at two thirds of the peak", async () => {
    for (const { answer } of await answers({ stopAt: 0.65 })) expect(answer.verdict("maximality")).toBe("VO2peak");
  });
});

describe("maximality", () => {
  it("believes neither a plateau nor a bout at an exchange ratio below 1.00, and says why", () => {
    const claim = maximality("plateau", "confirmed", false, 0.96);
    expect(claim.verdict).toBe("VO2peak");
    expect(claim.because).toMatch(/0\.96/);
    expect(maximality(undefined, "confirmed", false, 1.02).verdict).toBe("VO2max");
    expect(maximality("plateau", undefined, false, undefined).verdict).toBe("VO2max");
    // Compared at two decimals, as printed (design rule: decimals as integers).
    expect(maximality("plateau", undefined, false, 0.996).verdict).toBe("VO2max");
  });
});
