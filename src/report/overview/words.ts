/** How the overview pages name things: sections, verdicts, units. */

import { signedWithUnit, withUnit } from "../../kernel/names.js";
import type { Speech } from "../../kernel/speech.js";
import { told } from "../view/context.js";
import type { TableView } from "../view/types.js";
import type { Flag, Outcome } from "./visit-summary.js";

export const sectionName = (speech: Speech, id: string): string => speech.find(`sections.${id}`) ?? id;
export const verdictWord = (speech: Speech, verdict: string): string =>
  speech.find(`verdicts.${verdict.replaceAll(/\W+/g, "_")}`) ?? told({ speech }, verdict);
export const valueText = (speech: Speech, at: Outcome, value: number): string => withUnit(speech, { ...at, value });
export const changeText = (speech: Speech, at: Outcome): string =>
  at.change === undefined ? speech.say("overview.no_change") : signedWithUnit(speech, { ...at, change: at.change });

export const flagText = (speech: Speech, { text, values }: Flag): string =>
  values === undefined
    ? told({ speech }, text)
    : speech.say("overview.withheld", { values, rules: told({ speech }, text) });

/** A table of texts in the form the shared partial prints. The first cell of a row is its head. */
export function textTable(
  id: string,
  caption: string,
  columns: readonly string[],
  rows: readonly (readonly string[])[],
  note = "",
): TableView {
  return {
    id,
    caption,
    hasCaption: caption !== "",
    columns: columns.map((title) => ({ title, unit: "", hasUnit: false, number: false, long: false })),
    rows: rows.map(([head = "", ...cells]) => ({
      head,
      headNumber: false,
      cells: cells.map((text) => ({ text, number: false, long: false })),
    })),
    note,
    hasNote: note !== "",
    wide: columns.length > 7,
    crowded: false,
    half: false,
    short: rows.length <= 16,
  };
}
