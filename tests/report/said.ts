/** Every sentence of ours that an entry of the results gives to a report, but citations of sources. */
import type { Entry } from "../../src/kernel/measure.js";
import type { Results } from "../../src/kernel/results.js";
import type { Speech } from "../../src/kernel/speech.js";

/** What stays English when a whole visit and what it is compared by are told, but for citations and ids. */
export function leftEnglish({ entries, conditions }: Results, speech: Speech): string[] {
  const left: string[] = [];
  const verdicts = entries.flatMap((entry) =>
    entry.kind === "judgement" && speech.find(`verdicts.${entry.verdict.replaceAll(/\W+/g, "_")}`) === undefined
      ? [entry.verdict]
      : [],
  );
  for (const text of [...entries.flatMap(said), ...verdicts, ...Object.values(conditions)])
    speech.told(text, (english) => {
      if (!CITED.test(english) && !IDS.test(english)) left.push(english);
      return english;
    });
  return left;
}

function said(entry: Entry): readonly string[] {
  const shared = "because" in entry ? [entry.because] : [];
  if (entry.kind === "quantity") {
    const norms = (entry.norms ?? []).flatMap((norm) => [norm.group, norm.category, norm.note, norm.notGiven]);
    return [entry.note, ...norms].flatMap((text) => text ?? []);
  }
  if (entry.kind === "table") {
    const source = entry.columns.findIndex((column) => column.key === "source");
    const cells = entry.rows.flatMap((row) => row.filter((cell, i) => typeof cell === "string" && i !== source));
    return [...(entry.note === undefined ? [] : [entry.note]), ...(cells as string[])];
  }
  if (entry.kind === "remark") return [...shared, entry.found, entry.limit];
  if (entry.kind === "change") return [...shared, ...entry.differs, ...(entry.notes ?? [])];
  return shared;
}

/** Works: a year, pages or a volume, "and others", names after each other; names of equations; ids of tables. */
export const CITED =
  /\b(?:19|20)\d{2}\b|\d+:[a-z]?\d+|and others|as printed in|authors not seen|^[A-Z][a-z]+ [A-Z]{1,3},|^(?:[A-Z][\w']+ ?)+$|^[a-z0-9]+(?:-[a-z0-9]+){2,}/;
/** Ids that a table of the results names. */
const IDS = /^(?:fev1|fvc|other)$/;
