/** Grip: each hand apart, the better hand as the client's value; two hands are never added. */

import type { Grip } from "../../kernel/generated/session.js";
import type { Cell } from "../../kernel/measure.js";
import type { Notebook } from "../../kernel/notebook.js";
import { listOf } from "../../kernel/readings.js";
import type { Visit } from "../../kernel/visit.js";
import { best } from "../repeated.js";
import * as bestOf from "./best-trial.js";
import * as difference from "./hand-difference.js";

export function writeGrip(book: Notebook, visit: Visit, grip: Grip): void {
  const key = (name: string) => `${visit.file} strength.grip.${name}`;
  const note = { note: `best of the trials; ${conditions(grip)}` };
  for (const side of ["left", "right"] as const) {
    const readings = grip[`${side}_kg`];
    if (readings === undefined) book.withhold(`grip_strength_${side}`, `strength.grip.${side}_kg was not recorded`);
    else
      book.compute(
        `grip_strength_${side}`,
        bestOf.info,
        [{ name: key(`${side}_kg`), value: listOf(readings), unit: "kg" }],
        note,
      );
  }
  const left = book.value("grip_strength_left");
  const right = book.value("grip_strength_right");
  if (left === undefined && right === undefined) {
    book.withhold("grip_strength", "no hand was recorded");
    return;
  }
  const hands = [...(left === undefined ? [] : [left]), ...(right === undefined ? [] : [right])];
  const refs = [
    ...(left === undefined ? [] : (["grip_strength_left"] as const)),
    ...(right === undefined ? [] : (["grip_strength_right"] as const)),
  ];
  const oneHand = hands.length === 1 ? "; only one hand was tested" : "";
  book.found("grip_strength", best(hands), bestOf.info, refs, { note: `better hand; ${conditions(grip)}${oneHand}` });
  if (hands.length === 2)
    book.compute("grip_difference", difference.info, ["grip_strength_right", "grip_strength_left"]);
  tabulate(book, grip, refs);
}

const conditions = (grip: Grip): string =>
  [
    `posture ${grip.posture ?? "not recorded"}`,
    `device ${grip.device_type ?? "not recorded"}`,
    ...(grip.handle_position === undefined ? [] : [`handle position ${grip.handle_position}`]),
  ].join(", ");

function tabulate(book: Notebook, grip: Grip, refs: readonly ("grip_strength_left" | "grip_strength_right")[]): void {
  const sides = [
    ["Left", grip.left_kg],
    ["Right", grip.right_kg],
  ] as const;
  book.table(
    "grip_attempts",
    [
      { key: "hand", title: "Hand" },
      { key: "dominant", title: "Dominant" },
      { key: "attempts", title: "Attempts", unit: "kg" },
      { key: "best", title: "Best", unit: "kg", decimals: 1 },
    ],
    sides.flatMap(([hand, readings]): Cell[][] => {
      if (readings === undefined) return [];
      const dominant =
        grip.dominant === undefined ? null : grip.dominant === "both" || grip.dominant === hand.toLowerCase();
      return [[hand, dominant === null ? null : dominant ? "yes" : "no", listOf(readings).join(", "), best(readings)]];
    }),
    bestOf.info,
    refs,
  );
}
