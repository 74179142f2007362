/** Impedance: what the device printed, kept apart from every other method, with its error. */
import type { Impedance } from "../../kernel/generated/session.js";
import type { Notebook } from "../../kernel/notebook.js";
import type { Visit } from "../../kernel/visit.js";
import * as phaseAngle from "./phase-angle.js";

export function writeImpedance(book: Notebook, visit: Visit, block: Impedance): void {
  const key = (name: string) => `${visit.file} impedance.${name}`;
  if (block.fat_percent === undefined) book.withhold("impedance_fat_percent", "impedance.fat_percent was not recorded");
  else
    book.record("impedance_fat_percent", block.fat_percent, key("fat_percent"), {
      error: {
        typical: 5,
        from: "3.5 to 5 percentage points against DXA, Kyle 2004 (from memory, to be checked against the source)",
      },
      note: "An estimate by the device's own equation, not a measurement; not to be mixed with DXA or another device.",
    });
  if (block.resistance_ohm !== undefined && block.reactance_ohm !== undefined)
    book.compute("impedance_phase_angle", phaseAngle.info, [
      { name: key("reactance_ohm"), value: block.reactance_ohm, unit: "Ω" },
      { name: key("resistance_ohm"), value: block.resistance_ohm, unit: "Ω" },
    ]);
}
