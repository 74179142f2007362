/** Size and the incremental test alone: what these tests look at, without the fits that follow. */
import { deriveIncremental } from "../../../src/derive/incremental.js";
import { deriveSize } from "../../../src/derive/size.js";
import type { Entry } from "../../../src/kernel/measure.js";
import { openNotebook } from "../../../src/kernel/notebook.js";
import type { Visit } from "../../../src/kernel/visit.js";

export function derive(visit: Visit): readonly Entry[] {
  const book = openNotebook();
  deriveSize(book, visit);
  deriveIncremental(book, visit);
  return book.entries();
}
