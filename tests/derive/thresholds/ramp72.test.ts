/**
 * The 67 open ramps of trained runners (Nolte, Rein, Quittmann 2023, CC-BY 4.0): each threshold lies inside 40 to 95 %
 * of the peak with an interval, or is withheld with a reason.
 */
import { expect, it } from "vitest";
import { derive } from "../../../src/derive/derive.js";
import { present, ramp, runners } from "../incremental/ramp72.js";
import { visitOf } from "../incremental/visit.js";
import { because, quantity } from "../visit-of.js";

it.skipIf(!present)("thresholds of the open ramps (skipped where ../shared/data/ramp72 is absent)", () => {
  const reasons = { vt1: 0, vt2: 0, steep: 0, edge: 0 };
  for (const runner of runners()) {
    const entries = derive(
      visitOf({
        massKg: runner.massKg,
        series: ramp(runner.test),
        incremental: {
          mode: "treadmill",
          series: "test.csv",
          phases: {
            rest_start_s: runner.restS,
            warm_up_start_s: runner.warmUpS,
            incremental_start_s: runner.loadS,
            recovery_start_s: runner.recoveryS,
          },
        },
      }),
    );
    const peak = quantity(entries, "vo2_peak")?.value as number;
    for (const name of ["vt1", "vt2"] as const) {
      const found = quantity(entries, `${name}_vo2`);
      if (found === undefined) {
        const why = because(entries, `${name}_vo2`) ?? "";
        expect(why, `test ${runner.test}`).toMatch(/because .{20,}/);
        reasons[name]++;
        if (/already rises/.test(why)) reasons.steep++;
        if (name === "vt1" && /within a minute of an end/.test(why)) reasons.edge++;
        continue;
      }
      expect(found.value / peak, `test ${runner.test} ${name}`).toBeGreaterThanOrEqual(0.4);
      expect(found.value / peak, `test ${runner.test} ${name}`).toBeLessThanOrEqual(0.95);
      expect(found.error?.low).toBeLessThan(found.value);
      expect(found.error?.high).toBeGreaterThan(found.value);
    }
  }
  // These runners start at about 63 % of their peak: where VT1 is withheld it is mostly because VCO2
  // outruns VO2 from there on, which is work above VT1, or because the bend lies within the first minute that is fitted.
  // What is withheld for any other reason is at most a fifth.
  console.info("withheld of 67:", reasons);
  expect(reasons.vt1 - reasons.steep - reasons.edge).toBeLessThanOrEqual(13); // a fifth of the tests
});
