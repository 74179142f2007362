/** Body composition: the scan, skinfolds, girths and impedance. Each keeps its own measures: methods are never mixed. */
import type { Notebook } from "../kernel/notebook.js";
import type { Visit } from "../kernel/visit.js";
import { writeDxa } from "./composition/write-dxa.js";
import { writeGirths } from "./composition/write-girths.js";
import { writeImpedance } from "./composition/write-impedance.js";
import { writeSkinfolds } from "./composition/write-skinfolds.js";

export function deriveComposition(book: Notebook, visit: Visit): void {
  if (visit.session.dxa !== undefined) writeDxa(book, visit, visit.session.dxa);
  if (visit.session.skinfolds !== undefined) writeSkinfolds(book, visit, visit.session.skinfolds);
  if (visit.session.girths !== undefined) writeGirths(book, visit, visit.session.girths);
  if (visit.session.impedance !== undefined) writeImpedance(book, visit, visit.session.impedance);
}
