/** Regions of a whole-body scan: limbs, shares of fat, and the table of all regions as printed. */
import type { Dxa } from "../../kernel/generated/session.js";
import type { Cell } from "../../kernel/measure.js";
import type { Notebook } from "../../kernel/notebook.js";
import * as fatShare from "./body-fat-percent.js";

const REGIONS = [
  ["whole", "Whole body with head"],
  ["head", "Head"],
  ["trunk", "Trunk"],
  ["left_arm", "Left arm"],
  ["right_arm", "Right arm"],
  ["arms", "Both arms"],
  ["left_leg", "Left leg"],
  ["right_leg", "Right leg"],
  ["legs", "Both legs"],
  ["android", "Android region"],
  ["gynoid", "Gynoid region"],
] as const;
type RegionName = (typeof REGIONS)[number][0];
type Region = NonNullable<Dxa["trunk"]>;

/** Fat share (%) of a region, undefined where one of its three parts was not printed or its mass is 0. */
export function regionShare(region: Region | undefined): number | undefined {
  const { fat_g: fat, lean_g: lean, bmc_g: bone } = region ?? {};
  if (fat === undefined || lean === undefined || bone === undefined || fat + lean + bone <= 0) return undefined;
  return (100 * fat) / (fat + lean + bone);
}

/** Lean mass (g, without bone) of arms and legs, side by side or together; or why it cannot be added up. */
export function limbs(dxa: Dxa): { names: readonly RegionName[]; leanG: readonly number[] } | string {
  const names: RegionName[] = [];
  const leanG: number[] = [];
  for (const [left, right, both] of [
    ["left_arm", "right_arm", "arms"],
    ["left_leg", "right_leg", "legs"],
  ] as const) {
    const sides = [dxa[left]?.lean_g, dxa[right]?.lean_g];
    const together = dxa[both]?.lean_g;
    if (sides[0] !== undefined && sides[1] !== undefined) {
      names.push(left, right);
      leanG.push(sides[0], sides[1]);
    } else if (together !== undefined) {
      names.push(both);
      leanG.push(together);
    } else return `lean_g of ${left} and ${right} (or ${both}) was not recorded`;
  }
  return { names, leanG };
}

export function writeRegions(book: Notebook, dxa: Dxa): void {
  const rows = REGIONS.flatMap(([name, title]): Cell[][] => {
    const region = dxa[name];
    if (region === undefined) return [];
    const share = regionShare(region);
    return [
      [
        title,
        region.fat_g ?? null,
        region.lean_g ?? null,
        region.bmc_g ?? null,
        share ?? null,
        region.bmd_g_cm2 ?? null,
      ],
    ];
  });
  if (rows.length === 0) return;
  const scanner = `${dxa.scanner_maker ?? "not recorded"}, mode ${dxa.mode ?? "not recorded"}`;
  book.table(
    "dxa_regions",
    [
      { key: "region", title: "Region" },
      { key: "fat", title: "Fat", unit: "g", decimals: 0 },
      { key: "lean", title: "Lean without bone", unit: "g", decimals: 0 },
      { key: "bmc", title: "Bone mineral", unit: "g", decimals: 0 },
      { key: "share", title: "Fat share", unit: "%", decimals: 1 },
      { key: "bmd", title: "Bone mineral density", unit: "g/cm²", decimals: 3 },
    ],
    rows,
    fatShare.info,
    [{ name: "scanner maker", value: scanner, unit: "" }],
    "Bone mineral of a whole-body scan is not classed. Values of different makers must not be compared.",
  );
}
