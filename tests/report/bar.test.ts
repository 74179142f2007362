/** The small bar beside a change. */
import { describe, expect, it } from "vitest";
import type { Change } from "../../src/kernel/measure.js";
import { changeBar } from "../../src/report/view/bar.js";

const bar = (low: number, change: number, high: number, typicalError = 1): string =>
  changeBar({ low, change, high, typicalError, differs: [] } as unknown as Change);
const arrows = (svg: string): string[] => [...svg.matchAll(/d="(M\d+,2l-?4,3l-?4,3)"/g)].map(([, d]) => d as string);
const RIGHT = "M70,2l4,3l-4,3";
const LEFT = "M4,2l-4,3l4,3";

describe("changeBar", () => {
  it("shows dot and bar within six errors, without an arrow", () => {
    expect(arrows(bar(-6, 0, 6))).toEqual([]);
    expect(bar(-6, 0, 6)).toContain('<path class="bar-line" d="M0,5H72"/><circle class="bar-dot" cx="36"');
  });
  it("says with an arrow on each side that the bar goes on, and keeps the dot where it lies inside", () => {
    expect(arrows(bar(4, 5.9, 7.8))).toEqual([RIGHT]);
    expect(bar(4, 5.9, 7.8)).toContain("bar-dot");
    expect(arrows(bar(-6.1, 0, 6.1)).sort()).toEqual([LEFT, RIGHT].sort());
  });
  it("has no dot where the change lies beyond", () => {
    expect(bar(6.5, 9, 11.5)).not.toContain("bar-dot");
    expect(bar(-11.5, -9, -6.5)).not.toContain("bar-dot");
    expect(arrows(bar(-11.5, -9, -6.5))).toEqual([LEFT]);
  });
  it("shades what two tests of an unchanged person differ by 95 times in 100", () => {
    // By hand: 1.96 √2 = 2.772 errors of the six that half the bar, 36, stands for: 16.6 to either side of 36.
    expect(bar(-1, 0, 1)).toMatch(/class="bar-zone" d="M19\.4,0h33\.2v10h-33\.2z"/);
  });
  it("is not drawn without an error", () => {
    expect(bar(1, 2, 3, 0)).toBe("");
  });
});
