/** The raw files and instruments a session names, looked up in the folder and in lab.yaml. */
import type { Diagnostic } from "../kernel/diagnostic.js";
import type { Part, Path } from "../kernel/document.js";
import type { Laboratory } from "../kernel/generated/laboratory.js";
import { nearest } from "../kernel/near.js";
import type { Series } from "../kernel/series.js";
import type { Code } from "./codes.js";
import { fileNameFault } from "./file-name.js";
import { references } from "./references.js";
import type { VisitTexts } from "./visit.js";
import { type Words, words } from "./words.js";

type InstrumentEntry = NonNullable<Laboratory["instruments"]>[string];

/** How a raw file becomes a series; read/ has it, and pipeline.ts hands it over. */
export type ReadSeries = (
  name: string,
  content: string | Uint8Array,
  mapping: InstrumentEntry,
  path: string,
) => { readonly series?: Series; readonly diagnostics: readonly Diagnostic[] };

/** Reads every raw file the session names. Faults of the laboratory's file are not repeated here. */
export function seriesOf(texts: VisitTexts, labIsFaulty: boolean, readSeries: ReadSeries) {
  const { session, lab, seriesTexts } = texts;
  const series: Record<string, Series> = {};
  const faults: Diagnostic[] = [];
  const report = (code: Code, path: Path, why: Words, part: Part = "value") =>
    faults.push({ code, severity: "error", at: session.place(path, part), ...why });
  const instruments = ((lab.value as Laboratory | undefined)?.instruments ?? {}) as Record<string, InstrumentEntry>;
  const known = lab.value === undefined ? undefined : Object.keys(instruments);
  const named = references(session.value);
  for (const { instrument, path } of named.instruments)
    if (known !== undefined && !known.includes(instrument))
      report("unknown-instrument", path, words.unknownInstrument(instrument, known, nearest(instrument, known)));
  const folder = session.file.split("/").slice(0, -1).join("/");
  for (const { file, instrument, path } of named.series) {
    const fault = fileNameFault(file);
    const content = Object.hasOwn(seriesTexts, file) ? seriesTexts[file] : undefined;
    if (fault !== undefined) report("series-path", [...path, "series"], words.seriesPath(file, fault));
    else if (content === undefined)
      report("series-missing", [...path, "series"], words.seriesMissing(file, nearest(file, texts.folder ?? [])));
    else if (instrument === undefined)
      report("missing-companion", [...path, "series"], words.noInstrument(file), "key");
    else if (Object.hasOwn(instruments, instrument) && series[file] === undefined) {
      const entry = instruments[instrument] as InstrumentEntry;
      if (entry?.columns === undefined) {
        if (!labIsFaulty)
          report("instrument-without-columns", [...path, "instrument"], words.noColumns(instrument, file));
      } else if (!labIsFaulty) {
        const reading = readSeries(file, content, entry, folder ? `${folder}/${file}` : file);
        faults.push(...reading.diagnostics);
        if (reading.series) series[file] = reading.series;
      }
    }
  }
  return { series, faults };
}
