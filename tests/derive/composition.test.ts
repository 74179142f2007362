import { existsSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { bodyFatPercent } from "../../src/derive/composition/body-fat-percent.js";
import { info as sevenMen } from "../../src/derive/composition/density-seven-site-men.js";
import { info as sevenWomen } from "../../src/derive/composition/density-seven-site-women.js";
import { info as threeMen } from "../../src/derive/composition/density-three-site-men.js";
import { info as threeWomen } from "../../src/derive/composition/density-three-site-women.js";
import { fatPercentSiri as siri } from "../../src/derive/composition/fat-percent-siri.js";
import { girthFatMen } from "../../src/derive/composition/girth-fat-men.js";
import { deriveComposition } from "../../src/derive/composition.js";
import { deriveSize } from "../../src/derive/size.js";
import { OutOfRange } from "../../src/kernel/formula.js";
import type { Dxa, Session } from "../../src/kernel/generated/session.js";
import { openNotebook } from "../../src/kernel/notebook.js";
import fc from "../tools/properties.js";
import { type Around, because, find, judgement, quantity, table, visitOf } from "./visit-of.js";

const derived = (blocks: Partial<Session>, around?: Around) => {
  const book = openNotebook();
  deriveSize(book, visitOf(blocks, around));
  deriveComposition(book, visitOf(blocks, around));
  return book.entries();
};
const size = { stature_cm: 170, mass_kg: 66.5 };
const limb = (lean_g: number) => ({ fat_g: 1200, lean_g, bmc_g: 190 });
const dxa: Dxa = {
  scanner_maker: "ge-lunar",
  mode: "standard",
  pregnancy: "excluded",
  whole: { fat_g: 24467, lean_g: 39910, bmc_g: 3261, bmd_g_cm2: 1.268 },
  left_arm: limb(1987),
  right_arm: limb(2049),
  left_leg: limb(7059),
  right_leg: limb(7104),
  android: { fat_g: 1880, lean_g: 2669, bmc_g: 80 },
  gynoid: { fat_g: 5064, lean_g: 6219, bmc_g: 314 },
};

describe("scan", () => {
  it("keeps lean with and without bone apart", () => {
    const found = derived({ size, dxa });
    expect(quantity(found, "lean_mass")?.value).toBe(39.91);
    expect(quantity(found, "fat_free_mass")?.value).toBeCloseTo(43.171, 9);
    expect(quantity(found, "fat_free_mass_index")?.value).toBeCloseTo(14.938, 3); // by hand: 43.171 / 2.89
    expect(quantity(found, "lean_mass_index")?.value).toBeCloseTo(13.8097, 3); // by hand: 39.91 / 2.89
    expect(quantity(found, "fat_mass_index")?.value).toBeCloseTo(8.466, 3); // by hand: 24.467 / 2.89
    expect(quantity(found, "appendicular_lean_mass_index")?.value).toBeCloseTo(6.297, 3); // by hand: 18.199 / 2.89
  });
  it("names the two android to gynoid ratios by their definition", () => {
    const found = derived({ size, dxa });
    expect(quantity(found, "android_gynoid_mass_ratio")?.value).toBeCloseTo(0.3712, 4); // by hand: 1880 / 5064
    // by hand: (1880 / 4629) / (5064 / 11597) = 0.40614 / 0.43666
    expect(quantity(found, "android_gynoid_percent_ratio")?.value).toBeCloseTo(0.9301, 3);
  });
  it("says from whose precision the least change comes", () => {
    const found = derived({ size, dxa });
    // by hand: 3 % of 24.467 kg is 0.734 kg; 2.77 times that
    expect(quantity(found, "fat_mass_least_change")?.value).toBeCloseTo(2.0332, 3);
    expect(quantity(found, "fat_mass_least_change")?.note).toContain("ISCD");
    const precision = { fat_g: 250, from: "30 invented people twice" };
    const own = quantity(derived({ size, dxa: { ...dxa, precision } }), "fat_mass_least_change");
    expect(own?.value).toBeCloseTo(0.6925, 9); // by hand: 2.77 · 0.25 kg
    expect(own?.note).toContain("30 invented people twice");
  });
  it("never classes bone, and carries the radiation and pregnancy caution", () => {
    const found = derived({ size, dxa });
    expect(quantity(found, "whole_body_bmd")?.note).toContain("not for diagnosis");
    expect(judgement(found, "dxa_caution")?.verdict).toBe("pregnancy excluded");
    expect(judgement(derived({ dxa: {} }), "dxa_caution")?.verdict).toBe("pregnancy not recorded");
  });
  it("does not compute a share from two parts of three", () => {
    const found = derived({ size, dxa: { whole: { fat_g: 20000, lean_g: 40000 } } });
    expect(because(found, "body_fat_percent")).toBe("dxa.whole.bmc_g not recorded");
    expect(because(found, "fat_free_mass_index")).toContain("bmc_g was not recorded");
    expect(quantity(found, "fat_mass")?.value).toBe(20);
    expect(because(found, "appendicular_lean_mass_index")).toContain("left_arm and right_arm");
  });
});

const FILE = "../shared/data/exscidata/dxa-pre-post.csv";
const there = existsSync(FILE);
it.skipIf(!there)(`gives the fat shares of 80 real scans${there ? "" : " (skipped: open data not there)"}`, () => {
  const [head = "", ...lines] = readFileSync(FILE, "utf8").trim().split("\n");
  const names = head.split(",").map((cell) => cell.replaceAll('"', ""));
  const shares = lines.map((line) => {
    const cells = line.split(",");
    const cell = (name: string) => Number(cells[names.indexOf(name)]);
    const region = (name: string) => ({
      fat_g: cell(`fat.${name}`),
      lean_g: cell(`lean.${name}`),
      bmc_g: cell(`BMC.${name}`),
    });
    const scan: Dxa = {
      whole: region("whole"),
      arms: region("arms"),
      legs: region("legs"),
      android: region("android"),
    };
    const found = derived({ size: { stature_cm: cell("height"), mass_kg: cell("weight") }, dxa: scan });
    expect(quantity(found, "appendicular_lean_mass")?.value).toBeCloseTo(
      (cell("lean.arms") + cell("lean.legs")) / 1000,
      6,
    );
    return quantity(found, "body_fat_percent")?.value ?? Number.NaN;
  });
  // Hammarström D et al. 2020, curated data: 80 rows, fat share of fat + lean + BMC 11.4 to 41.0 %
  expect(shares.length).toBe(80);
  expect(Math.min(...shares)).toBeCloseTo(11.4, 1);
  expect(Math.max(...shares)).toBeCloseTo(41.0, 1);
});

describe("skinfolds", () => {
  const skinfolds: Session["skinfolds"] = { triceps_mm: [18, 18.4], suprailiac_mm: [16, 16.2], thigh_mm: [20.6, 20.8] };
  it("tracks the sum in millimetres and offers the share as an estimate", () => {
    const found = derived({ skinfolds }, { ageYears: 35 });
    expect(quantity(found, "skinfold_sum")?.value).toBeCloseTo(55, 9);
    // by hand: density 1.0469681 at S 55 and 35 years, then 495 / D − 450
    expect(quantity(found, "skinfold_fat_percent_three_site")?.value).toBeCloseTo(22.79, 2);
    expect(quantity(found, "skinfold_fat_percent_three_site")?.note).toContain("not a measurement");
    expect(find(found, "skinfold_fat_percent_seven_site")).toBeUndefined();
    // by hand: √((0.16 + 0.04 + 0.04) / 6) = 0.2
    expect(quantity(found, "skinfold_technical_error")?.value).toBeCloseTo(0.2, 9);
    expect(table(found, "skinfold_sites")?.rows.length).toBe(3);
  });
  it("obeys the choice of equation and refuses an age outside the sample", () => {
    const brozek = derived({ skinfolds }, { ageYears: 35, choices: { density_to_fat: "brozek" } });
    expect(quantity(brozek, "skinfold_fat_percent_three_site")?.value).toBeCloseTo(22.3, 1); // 457 / 1.0469681 − 414.2
    const old = derived({ skinfolds }, { ageYears: 60 });
    expect(because(old, "skinfold_fat_percent_three_site")).toContain("18 to 55.999");
    expect(quantity(old, "skinfold_sum")?.value).toBeCloseTo(55, 9);
  });
});

describe("laws", () => {
  const formulas = { sevenMen, sevenWomen, threeMen, threeWomen };
  it.each(Object.entries(formulas))("thicker folds never make a denser body: %s", (_, { compute, inputs }) => {
    const range = inputs["sum of skinfolds"]?.range ?? "";
    const [from, to] = range.split(" to ").map(Number);
    fc.assert(
      fc.property(fc.double({ min: from ?? 0, max: (to ?? 0) - 1, noNaN: true }), (sum) => {
        expect(compute(sum + 1, 40)).toBeLessThan(compute(sum, 40));
        expect(siri(compute(sum + 1, 40))).toBeGreaterThan(siri(compute(sum, 40)));
      }),
    );
  });
  it("a wider abdomen means more fat, a wider neck less", () => {
    const cm = fc.double({ min: 75, max: 120, noNaN: true });
    fc.assert(
      fc.property(cm, fc.double({ min: 34, max: 44, noNaN: true }), (abdomen, neck) => {
        const here = girthFatMen(abdomen, neck, 178, 40);
        expect(girthFatMen(abdomen + 1, neck, 178, 40)).toBeGreaterThan(here);
        expect(girthFatMen(abdomen, neck + 1, 178, 40)).toBeLessThan(here);
      }),
    );
  });
  it("fat share is the share: scaling every part changes nothing", () => {
    const part = fc.double({ min: 1, max: 2, noNaN: true });
    fc.assert(
      fc.property(part, part, part, part, (f, l, b, scale) => {
        const share = bodyFatPercent(f * 9000, l * 30000, b * 1500);
        expect(bodyFatPercent(scale * f * 9000, scale * l * 30000, scale * b * 1500)).toBeCloseTo(share, 9);
      }),
    );
  });
});

describe("girths and impedance", () => {
  it("takes the equation of the client's sex, or says what it lacks", () => {
    const girths: Session["girths"] = { abdomen_navel_cm: 88, neck_cm: 39 };
    const man = derived({ size: { stature_cm: 178 }, girths }, { sex: "male" });
    expect(quantity(man, "girth_fat_percent")?.value).toBeCloseTo(17.96, 2);
    expect(because(derived({ size, girths }), "girth_fat_percent")).toContain("narrowest waist and hip");
  });
  it("answers an abdomen 20 cm beyond the neck and refuses a smaller one", () => {
    expect(girthFatMen(60, 40, 178, 40)).toBeLessThan(10);
    expect(() => girthFatMen(59.9, 40, 178, 40)).toThrow(OutOfRange);
  });
  it("gives the phase angle only with both parts of the impedance", () => {
    const found = derived({ impedance: { fat_percent: 20, resistance_ohm: 500, reactance_ohm: 50 } });
    expect(quantity(found, "impedance_phase_angle")?.value).toBeCloseTo(5.711, 3); // by hand: atan 0.1
    expect(find(derived({ impedance: { resistance_ohm: 500 } }), "impedance_phase_angle")).toBeUndefined();
  });
  it("writes no table and no technical error where nothing was read twice or at all", () => {
    expect(find(derived({ girths: {} }), "girth_readings")).toBeUndefined();
    const once = derived({ skinfolds: { triceps_mm: 12 } });
    expect(find(once, "skinfold_technical_error")).toBeUndefined();
    expect(quantity(once, "skinfold_sum")?.value).toBe(12);
  });
  it("gives no share to a region without mass", () => {
    const none = { fat_g: 0, lean_g: 0, bmc_g: 0 };
    const found = derived({ dxa: { whole: dxa.whole ?? {}, android: none, gynoid: none } });
    expect(because(found, "android_gynoid_percent_ratio")).toContain("not recorded");
    expect(table(found, "dxa_regions")?.rows[1]?.[4]).toBeNull();
  });
  it("keeps impedance apart from the scan", () => {
    const found = derived({ impedance: { fat_percent: 27.4 } });
    expect(quantity(found, "impedance_fat_percent")?.error?.typical).toBe(5);
    expect(find(found, "body_fat_percent")).toBeUndefined();
  });
});
