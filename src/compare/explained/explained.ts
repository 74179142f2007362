/**
 * Why a value changed: VO2peak per kilogram into uptake and mass, threshold speed into economy, VO2peak and fraction, grip
 * into left and right. Each is a table from the printed values; what rounding leaves over has its own row.
 */
import type { Cell, Column, Table } from "../../kernel/measure.js";
import { measureInfo } from "../../kernel/measures.js";
import { roundTo, toDecimals } from "../../kernel/rounding.js";
import { attempt } from "../attempt.js";
import { comparability } from "../comparable.js";
import { type Occasion, type Pooled, pooled } from "../occasions.js";
import { type Factor, productShares } from "./product-shares.js";

interface Part {
  readonly title: string;
  readonly unit: string;
  readonly decimals: number;
  readonly factor: Factor;
}

export function explained(before: Occasion, now: Occasion): readonly Table[] {
  return [
    uptakePerMass(before, now),
    ...["vt1", "vt2", "lactate_threshold"].map((threshold) => thresholdSpeed(threshold, before, now)),
    grip(before, now),
  ].filter((table) => table !== undefined);
}

/** A measure at both occasions, or undefined where it is missing or not comparable. */
function both(id: string, before: Occasion, now: Occasion): { was: Pooled; is: Pooled } | undefined {
  const [was, is] = [pooled(before, id), pooled(now, id)];
  if (!was || !is || comparability(id, was.visit, is.visit).differs.length > 0) return undefined;
  return { was, is };
}

function uptakePerMass(before: Occasion, now: Occasion): Table | undefined {
  const whole = both("vo2_peak_per_mass", before, now);
  const uptake = both("vo2_peak", before, now);
  const mass = both("body_mass", before, now);
  if (!whole || !uptake || !mass) return undefined;
  return sharesTable(whole, "explained_vo2_peak_per_mass", 1000, [
    part("Oxygen uptake", uptake, 1),
    part("Body mass", mass, -1),
  ]);
}

/**
 * speed = 60 · VO2peak · fraction / cost, with cost in mL/kg/km at the threshold itself (uptake there over speed there) and
 * fraction the share of VO2peak used there. Cost is gross: it contains resting uptake.
 */
function thresholdSpeed(threshold: string, before: Occasion, now: Occasion): Table | undefined {
  const speed = both(`${threshold}_speed`, before, now);
  if (!speed) return undefined;
  const peak = both("vo2_peak_per_mass", before, now);
  const [was, is] = [uptakeAt(threshold, before), uptakeAt(threshold, now)];
  if (!peak || was === undefined || is === undefined) return undefined;
  if (speed.was.value === speed.is.value || !sameGrade(threshold, before, now)) return undefined;
  const cost = { before: (60 * was) / speed.was.value, after: (60 * is) / speed.is.value };
  const fraction = { before: was / peak.was.value, after: is / peak.is.value };
  return sharesTable(speed, `explained_${threshold}_speed`, 60, [
    part("Peak oxygen uptake", peak, 1),
    { title: "Share of it used at the threshold", unit: "ratio", decimals: 3, factor: { ...fraction, power: 1 } },
    { title: "Oxygen cost of the threshold speed", unit: "mL/kg/km", decimals: 1, factor: { ...cost, power: -1 } },
  ]);
}

/** Cost of a speed is comparable on one grade only; where none was recorded the protocol gate has seen to it. */
function sameGrade(threshold: string, before: Occasion, now: Occasion): boolean {
  const [was, is] = [pooled(before, `${threshold}_grade`), pooled(now, `${threshold}_grade`)];
  return was?.value === is?.value;
}

/** Uptake at a threshold in mL/kg/min, from its own measure or from L/min and body mass. */
function uptakeAt(threshold: string, occasion: Occasion): number | undefined {
  const perMass = pooled(occasion, `${threshold}_vo2_per_mass`);
  if (perMass) return perMass.value;
  const [uptake, mass] = [pooled(occasion, `${threshold}_vo2`), pooled(occasion, "body_mass")];
  if (!uptake || !mass) return undefined;
  if (uptake.unit === "mL/kg/min") return uptake.value;
  return uptake.unit === "L/min" ? (1000 * uptake.value) / mass.value : undefined;
}

function grip(before: Occasion, now: Occasion): Table | undefined {
  const hands = (["left", "right"] as const).map((hand) => ({
    hand,
    pair: both(`grip_strength_${hand}`, before, now),
  }));
  const [left, right] = hands.map((h) => h.pair);
  if (!left || !right) return undefined;
  const { unit, decimals } = left.is;
  const row = (name: string, { was, is }: { was: Pooled; is: Pooled }): Cell[] => [
    name,
    was.value,
    is.value,
    roundTo(is.value - was.value, decimals),
  ];
  const difference = (a: Pooled, b: Pooled) => roundTo(a.value - b.value, decimals);
  const [gap, gapNow] = [difference(right.was, left.was), difference(right.is, left.is)];
  return {
    kind: "table",
    id: "explained_grip_strength",
    columns: [
      { key: "hand", title: "Hand" },
      { key: "before", title: "Before", unit, decimals },
      { key: "now", title: "Now", unit, decimals },
      { key: "change", title: "Change", unit, decimals },
    ],
    rows: [row("left", left), row("right", right), ["right minus left", gap, gapNow, roundTo(gapNow - gap, decimals)]],
    origin: { kind: "formula", formula: "change-interval r1", inputs: [] },
  };
}

const part = (title: string, { was, is }: { was: Pooled; is: Pooled }, power: 1 | -1): Part => ({
  title,
  unit: is.unit,
  decimals: is.decimals,
  factor: { before: was.value, after: is.value, power },
});

function sharesTable(
  whole: { was: Pooled; is: Pooled },
  id: string,
  constant: number,
  parts: readonly Part[],
): Table | undefined {
  const shares = attempt(() =>
    productShares(
      parts.map((p) => p.factor),
      constant,
    ),
  );
  if (shares === undefined) return undefined;
  const { was, is } = whole;
  const places = is.decimals + 1;
  const change = roundTo(is.value - was.value, is.decimals);
  const rounded = shares.map((share) => roundTo(share, places));
  const left = roundTo(change - rounded.reduce((sum, x) => sum + x, 0), places);
  const title = measureInfo(is.measure)?.title ?? is.measure;
  const columns: Column[] = [
    { key: "part", title: "Part" },
    { key: "before", title: "Before" },
    { key: "now", title: "Now" },
    { key: "unit", title: "Unit" },
    { key: "share", title: `Share of the change in ${title.toLowerCase()}`, unit: is.unit, decimals: places },
  ];
  const rows: Cell[][] = parts.map((p, i) => [
    p.title,
    roundTo(p.factor.before, p.decimals),
    roundTo(p.factor.after, p.decimals),
    p.unit,
    rounded[i] as number,
  ]);
  return {
    kind: "table",
    id,
    columns,
    rows: [
      ...rows,
      ["Rounding of the printed values", null, null, is.unit, left],
      ["Whole change", was.value, is.value, is.unit, change],
    ],
    origin: { kind: "formula", formula: "product-shares r1", inputs: [] },
    note: `${why(parts, rounded, change, is)} Each share carries the error of its own part; a share smaller than that error explains nothing.`,
  };
}

/** "Of the change of +3.8 mL/kg/min, +2.0 came from oxygen uptake and +1.7 from body mass." */
function why(parts: readonly Part[], shares: readonly number[], change: number, { unit, decimals }: Pooled): string {
  const signed = (x: number) => {
    const text = toDecimals(Math.abs(x), decimals);
    return Number(text) === 0 ? text : `${x < 0 ? "−" : "+"}${text}`;
  };
  const named = parts.map((p, i) => `${signed(shares[i] as number)} came from ${p.title.toLowerCase()}`);
  const list = `${named.slice(0, -1).join(", ")} and ${named.at(-1)}`;
  return `Of the change of ${signed(change)} ${unit}, ${list}.`;
}
