/** The generator must do what it says: same seed same rows, errors of the stated size, truth where the lines bend. */
import { describe, expect, it } from "vitest";
import { mean, sampleSd } from "../../src/kernel/statistics.js";
import { generateTest } from "./breaths.js";
import { course } from "./course.js";
import { COMMA, csvText, MILLILITRES } from "./csv.js";
import { NO_FAULTS, NO_NOISE, recipe } from "./recipe.js";

const steady = recipe(5, { faults: NO_FAULTS, softness: 0 });

describe("generated tests", () => {
  it("are the same for the same seed and differ for another", () => {
    expect(csvText(generateTest(recipe(9)))).toBe(csvText(generateTest(recipe(9))));
    expect(csvText(generateTest(recipe(9)))).not.toBe(csvText(generateTest(recipe(10))));
  });

  it("bend VCO2 on VO2 at VT1 and VE on VCO2 at VT2", () => {
    const r = recipe(11, { softness: 0, tauStores: 1, stopAt: 1, plateauS: 0 });
    const path = course(r);
    const slope = (y: Float64Array, x: Float64Array, t: number) =>
      ((y[t + 5] as number) - (y[t] as number)) / ((x[t + 5] as number) - (x[t] as number));
    const vt1 = path.truth.vt1?.timeS as number;
    const vt2 = path.truth.vt2?.timeS as number;
    expect(slope(path.vco2, path.vo2, vt1 + 3) - slope(path.vco2, path.vo2, vt1 - 10)).toBeCloseTo(
      r.slope2 - r.slope1,
      2,
    );
    expect(slope(path.ve, path.vco2, vt2 + 3) / slope(path.ve, path.vco2, vt2 - 10)).toBeCloseTo(1 + r.veRise, 2);
    expect(path.vo2[vt1] as number).toBeGreaterThanOrEqual(r.vt1);
    expect(path.vo2[vt1 - 1] as number).toBeLessThan(r.vt1);
  });

  it("have breath errors of the stated size and correlation", () => {
    const errors: [number, number, number][] = [];
    for (let seed = 1; seed <= 20; seed++) {
      const noisy = generateTest({ ...steady, seed }).rows;
      const path = course({ ...steady, seed });
      for (const row of noisy) {
        const t = Math.max(0, Math.floor(row.time - 30 / row.bf));
        errors.push([
          row.vo2 / (path.vo2[t] as number) - 1,
          row.vco2 / (path.vco2[t] as number) - 1,
          row.ve / (path.ve[t] as number) - 1,
        ]);
      }
    }
    const column = (k: 0 | 1 | 2) => errors.map((e) => e[k]);
    const r = (a: number[], b: number[]) =>
      mean(a.map((x, i) => (x - mean(a)) * ((b[i] as number) - mean(b)))) / (sampleSd(a) * sampleSd(b));
    expect(sampleSd(column(0))).toBeCloseTo(0.07, 2);
    const small = errors.slice(0, 4000);
    const pick = (k: 0 | 1 | 2) => small.map((e) => e[k]);
    expect(r(pick(0), pick(1))).toBeCloseTo(0.95, 1);
    expect(r(pick(0), pick(2))).toBeCloseTo(0.8, 1);
  });

  it("have no VT2 when stopped before it, and no noise when asked", () => {
    const r = recipe(3, { stopAt: 0.7, vt1: 1.3, vo2Peak: 2.4, vt2: 2.0, noise: NO_NOISE, faults: NO_FAULTS });
    const test = generateTest(r);
    expect(test.truth.vt2).toBeNull();
    expect(test.truth.vt1?.vo2).toBe(1.3);
    expect(test.truth.peak.vo2).toBeCloseTo(0.7 * 2.4, 1);
  });

  it("write zeros for lost breaths and a dead channel, and decimal commas", () => {
    const r = recipe(4, { faults: { coughs: 0, lost: 0.05, dropouts: 2, dead: [{ channel: "vco2", fromS: 400 }] } });
    const test = generateTest(r);
    expect(test.rows.filter((row) => row.time >= 400).every((row) => row.vco2 === 0)).toBe(true);
    expect(test.rows.filter((row) => row.time < 400 && row.vo2 === 0).length).toBeGreaterThan(0);
    const text = csvText(test, MILLILITRES, COMMA);
    expect(text.split("\r\n")[0]).toContain("VO2;VCO2");
    expect(text).toMatch(/;-;/);
    expect(text).not.toContain(".");
  });

  it("hold a verification bout, steps, means and a mixing chamber", () => {
    const r = recipe(6, { verificationS: 150, sampling: { kind: "mixing", everyS: 15 } });
    const test = generateTest(r);
    expect(test.truth.phases.map((p) => p.name)).toContain("verification");
    const times = test.rows.map((row) => row.time);
    expect(times.every((t) => t % 15 === 0)).toBe(true);
  });
});
