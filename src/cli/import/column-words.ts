/** A header and the cell of units below it, taken apart: name, unit, gas condition. */
import { unitsOf } from "../../kernel/channel-units.js";
import type { Channel, GasCondition } from "../../kernel/series.js";
import { UNIT_SPELLINGS } from "./synonyms.js";

const BY_SPELLING = new Map(
  Object.entries(UNIT_SPELLINGS).flatMap(([unit, spellings]) => spellings.map((s) => [plainUnit(s), unit] as const)),
);

/** "V'O2 [mL/min] STPD" to name, unit and gas condition; the unit row goes where the header says none. */
export function partsOf(
  header: string,
  unitCell: string,
): { name: string; unit: string; condition: GasCondition | undefined } {
  const both = `${header} ${unitCell}`;
  const condition = /\b(BTPS|STPD|ATPS|ATPD)\b/i.exec(both)?.[1]?.toUpperCase() as GasCondition | undefined;
  const clean = (text: string) => text.replace(/\b(BTPS|STPD|ATPS|ATPD)\b/gi, " ").trim();
  const bracketed = /[([{]([^)\]}]*)[)\]}]/.exec(header)?.[1] ?? "";
  const name = clean(header.replace(/[([{][^)\]}]*[)\]}]/g, " "));
  const after = /^(.*\S)\s*[,;:/]\s*([^,;:]+)$/.exec(name);
  const unit = clean(bracketed) || clean(unitCell.replace(/^[([{]|[)\]}]$/g, ""));
  if (unit === "" && after && BY_SPELLING.has(plainUnit(after[2] ?? "")))
    return { name: after[1] ?? name, unit: after[2] ?? "", condition };
  return { name, unit, condition };
}

/** "vo2_ml_min" to "vo2": units that stand in names. */
export const withoutUnit = (name: string) =>
  name.replace(/[ _.-]+(m?l[ _./-]?min|l|ml|bpm|mmhg|kpa|km[ _./-]?h|pct|w|s|ms|min)$/i, "");

function plainUnit(text: string): string {
  return text
    .normalize("NFKC")
    .toLowerCase()
    .replace(/\s*\/\s*/g, "/")
    .replace(/⁻¹|\^-1/g, "-1")
    .replace(/[[\]()]/g, "")
    .trim();
}

export function knownUnit(written: string, channel: Channel): string | undefined {
  const unit = BY_SPELLING.get(plainUnit(written));
  return unit !== undefined && unitsOf(channel).includes(unit) ? unit : undefined;
}
