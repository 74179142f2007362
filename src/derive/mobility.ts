/** Mobility and balance. */

import type { Reach, SingleLegStance } from "../kernel/generated/session.js";
import type { Cell } from "../kernel/measure.js";
import type { MeasureId } from "../kernel/measures.js";
import type { Notebook, Ref } from "../kernel/notebook.js";
import { listOf } from "../kernel/readings.js";
import type { Visit } from "../kernel/visit.js";
import * as trials from "./mobility/mean-of-trials.js";
import * as composite from "./mobility/reach-composite.js";
import * as difference from "./mobility/reach-difference.js";
import * as commonScale from "./mobility/sit-and-reach-common-scale.js";
import { best } from "./repeated.js";
import * as bestOf from "./strength/best-trial.js";

export function deriveMobility(book: Notebook, visit: Visit): void {
  const block = visit.session.mobility;
  if (block === undefined) return;
  const key = (name: string) => `${visit.file} mobility.${name}`;
  if (block.sit_and_reach !== undefined) {
    const { reach_cm, zero_cm } = block.sit_and_reach;
    book.compute(
      "sit_and_reach",
      commonScale.info,
      [
        { name: key("sit_and_reach.reach_cm"), value: best(reach_cm), unit: "cm" },
        { name: key("sit_and_reach.zero_cm"), value: zero_cm, unit: "cm" },
      ],
      { note: `best of ${listOf(reach_cm).join(", ")} cm as read` },
    );
  }
  if (block.single_leg_stance !== undefined) writeStance(book, block.single_leg_stance, key);
  if (block.reach !== undefined) writeReach(book, block.reach, key);
}

function writeStance(book: Notebook, stance: SingleLegStance, key: (name: string) => string): void {
  const all: number[] = [];
  for (const side of ["left", "right"] as const) {
    const times = stance[`${side}_s`];
    if (times === undefined) {
      book.withhold(`single_leg_stance_${side}`, `mobility.single_leg_stance.${side}_s was not recorded`);
      continue;
    }
    const list = listOf(times);
    all.push(...list);
    const stopped = stance.ceiling_s !== undefined && list.some((t) => t >= (stance.ceiling_s ?? 0));
    book.compute(
      `single_leg_stance_${side}`,
      trials.info,
      [{ name: key(`single_leg_stance.${side}_s`), value: list, unit: "s" }],
      {
        note: `mean of ${list.length}${stopped ? `; stopped at ${stance.ceiling_s} s, so the true time is at least this` : ""}`,
      },
    );
  }
  if (all.length > 0 && Math.max(...all) > 0)
    book.compute("single_leg_stance_best", bestOf.info, [
      { name: "trials of both legs", value: all.filter((t) => t > 0), unit: "s" },
    ]);
  const eyes = stance.eyes;
  if (eyes === undefined)
    book.withhold("single_leg_stance_conditions", "whether eyes were open or closed was not recorded");
  else
    book.judge(
      "single_leg_stance_conditions",
      `eyes ${eyes}`,
      `Eyes ${eyes}; trials stopped at ${stance.ceiling_s ?? "a time that was not recorded, in"} s.`,
    );
}

const DIRECTIONS = ["anterior_cm", "posteromedial_cm", "posterolateral_cm"] as const;

function writeReach(book: Notebook, reach: Reach, key: (name: string) => string): void {
  const rows: Cell[][] = [];
  for (const side of ["left", "right"] as const) {
    const leg = reach[side];
    const id: MeasureId = `reach_composite_${side}`;
    if (leg === undefined) {
      book.withhold(id, `mobility.reach.${side} was not recorded`);
      continue;
    }
    const missing = [...DIRECTIONS, "limb_length_cm" as const].filter((name) => leg[name] === undefined);
    rows.push([
      side,
      ...DIRECTIONS.map((direction) => {
        const trialsOf = leg[direction];
        return trialsOf === undefined ? null : best(trialsOf);
      }),
      leg.limb_length_cm ?? null,
    ]);
    if (missing.length > 0) book.withhold(id, `mobility.reach.${side}.${missing.join(", ")} not recorded`);
    else {
      const ref = (name: (typeof DIRECTIONS)[number] | "limb_length_cm"): Ref => ({
        name: key(`reach.${side}.${name}`),
        value: best(leg[name] ?? []),
        unit: "cm",
      });
      const [a, m, l] = DIRECTIONS;
      book.compute(id, composite.info, [ref(a), ref(m), ref(l), ref("limb_length_cm")]);
    }
  }
  const [right, left] = [reach.right?.anterior_cm, reach.left?.anterior_cm];
  if (right === undefined || left === undefined)
    book.withhold("reach_asymmetry_anterior", "forward reach of both legs was not recorded");
  else
    book.compute(
      "reach_asymmetry_anterior",
      difference.info,
      [
        { name: key("reach.right.anterior_cm"), value: best(right), unit: "cm" },
        { name: key("reach.left.anterior_cm"), value: best(left), unit: "cm" },
      ],
      {
        error: { typical: 3.1, from: "one maximal reach between testers, Shaffer SW et al. 2013" },
        note: "Differences of some centimetres are common in healthy people: something to train and watch, not a forecast of injury.",
      },
    );
  if (rows.length > 0) tabulate(book, rows);
}

function tabulate(book: Notebook, rows: readonly Cell[][]): void {
  book.table(
    "reach_trials",
    [
      { key: "leg", title: "Standing leg" },
      { key: "anterior", title: "Forward", unit: "cm", decimals: 1 },
      { key: "posteromedial", title: "Backward inward", unit: "cm", decimals: 1 },
      { key: "posterolateral", title: "Backward outward", unit: "cm", decimals: 1 },
      { key: "limb", title: "Limb length", unit: "cm", decimals: 1 },
    ],
    rows,
    bestOf.info,
    [],
  );
}
