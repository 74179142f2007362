/**
 * The stated rates, by simulation through compare() itself: with no true change one comparison in twenty is claimed, and
 * printed chances come true as often as they say. Seeded, so a failure is a change of the program.
 */
import { describe, expect, it } from "vitest";
import {
  exactGainStudy,
  falseAlarmStudy,
  OWN_UPTAKE,
  reliabilityStudy,
  SETTINGS,
  TEN_PERCENT,
  UNDERSTATED,
} from "../tools/study-change.js";

describe("study of changes", () => {
  for (const [i, setting] of SETTINGS.entries())
    it(`claims 5 % ± 1 % of 10 000 pairs without a true change: ${setting.name}`, () => {
      const row = falseAlarmStudy(setting, 10_000, 101 + i);
      expect(Math.abs(row.claimed - 5), `claimed ${row.claimed} %`).toBeLessThanOrEqual(1);
    });

  it("can fail: an error believed smaller than it is gives more claims", () => {
    expect(falseAlarmStudy(UNDERSTATED, 2_000, 7).claimed).toBeGreaterThan(10);
  });

  it("spreads the chances evenly where the true gain is exactly 10 % at CV 5 %", () => {
    const { rows, held } = exactGainStudy(OWN_UPTAKE, 10_000, 11);
    for (const row of rows) expect(Math.abs(row.share - row.chance), `at ${row.chance} %`).toBeLessThanOrEqual(2);
    expect(Math.abs(held - 95)).toBeLessThanOrEqual(1);
  });

  it("prints chances that come true over gains of every size around 10 %", () => {
    const rows = reliabilityStudy(OWN_UPTAKE, 10_000, 13, (lucky) => TEN_PERCENT + lucky.between(-0.35, 0.35));
    for (const row of rows) {
      // Four standard errors of a share from that many pairs, and half a percent for rounding of the printed chance.
      const p = row.mean / 100;
      const room = 100 * 4 * Math.sqrt((p * (1 - p)) / row.pairs) + 0.5;
      expect(
        Math.abs(row.cameTrue - row.mean),
        `class ${row.printed}: ${row.cameTrue} of ${row.mean}`,
      ).toBeLessThanOrEqual(room);
    }
  });
});
