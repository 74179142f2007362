/** Heart rate variability of a short record. */
import { describe, expect, it } from "vitest";
import { deriveHeartRateVariability } from "../../src/derive/heart-rate-variability.js";
import { openNotebook } from "../../src/kernel/notebook.js";
import { testSeries, testVisit } from "./rest/visit.js";

/** Intervals that swing 5 % with a breath of five beats. */
const swing = (n: number) => Array.from({ length: n }, (_, i) => 900 * (1 + 0.05 * Math.sin((2 * Math.PI * i) / 5)));
const derived = (rr: readonly (number | null)[], more: object = {}) => {
  const book = openNotebook();
  deriveHeartRateVariability(
    book,
    testVisit({
      session: { heart_rate_variability: { series: "rr.txt", ...more } },
      series: { "rr.txt": testSeries("rr.txt", { rr_ms: rr }) },
    }),
  );
  return book;
};

describe("heart rate variability", () => {
  it("gives RMSSD of a sine as its closed form", () => {
    // Differences of A·sin(2πi/5) have the root mean square A·√2·sin(π/5): by hand 45·1.4142·0.58779 = 37.41 ms.
    expect(derived(swing(420)).value("hrv_rmssd")).toBeCloseTo(45 * Math.SQRT2 * Math.sin(Math.PI / 5), 1);
  });
  it("barely moves when a few beats are missed, because none is put in their place", () => {
    const rr = swing(420);
    const bad = rr.map((x, i) => (i % 60 === 30 ? 2 * x : x));
    const [clean, dirty] = [derived(rr).value("hrv_rmssd") ?? 0, derived(bad).value("hrv_rmssd") ?? 0];
    expect(Math.abs(dirty / clean - 1)).toBeLessThan(0.02);
  });
  it("refuses a record with more than 5 % artefacts and still states the share", () => {
    const book = derived(swing(420).map((x, i) => (i % 12 === 6 ? 2 * x : x)));
    expect(book.value("hrv_artefact_share")).toBeGreaterThan(5);
    expect(book.entry("hrv_rmssd")?.kind).toBe("not given");
  });
  it("counts missing intervals as artefacts", () => {
    const book = derived(swing(440).map((x, i) => (i % 15 === 3 ? null : x)));
    expect(book.entry("hrv_rmssd")?.kind).toBe("not given");
  });
  it("refuses a record that is too short, and pulse intervals", () => {
    expect(JSON.stringify(derived(swing(200)).entry("hrv_rmssd"))).toMatch(/needed/);
    expect(JSON.stringify(derived(swing(420), { recorder: "optical sensor" }).entry("hrv_sdnn"))).toMatch(
      /pulse intervals/,
    );
  });
});
