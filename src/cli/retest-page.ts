/** `waymark retests --html`: the laboratory's own error as one page, with a plot and a table for each set of pairs. */

import { differencePlot } from "../charts/difference-plot.js";
import type { Laboratory } from "../kernel/generated/laboratory.js";
import { unitOf } from "../kernel/names.js";
import type { WordTree } from "../kernel/speech.js";
import { openPages } from "../report/pages.js";
import type { ReportAssets } from "../report/render.js";
import { told } from "../report/view/context.js";
import type { OwnRetests } from "./own-retests.js";
import { retestFacts, retestOrigin } from "./retest-facts.js";

export async function retestPage(
  sets: readonly OwnRetests[],
  laboratory: Laboratory,
  { assets, words }: { readonly assets: ReportAssets; readonly words: WordTree },
): Promise<string> {
  const pages = openPages(assets, words, laboratory);
  const { speech } = pages;
  const views = [];
  for (const [i, own] of sets.entries()) {
    const { set, report, title, unit, decimals } = own;
    const id = `pairs-${i + 1}`;
    const named = speech.find(`measures.${set.measure}`) ?? title;
    const heading = [
      named,
      ...(set.conditions?.mode === undefined ? [] : [told({ speech }, set.conditions.mode)]),
    ].join(", ");
    const rows = set.pairs.map(([test, retest], pair) => ({
      head: String(pair + 1),
      headNumber: true,
      cells: [test, retest, (test + retest) / 2, retest - test].map((value, column) => ({
        text: (column === 3 ? speech.signed : speech.number)(value, column === 2 ? decimals + 1 : decimals),
        number: true,
      })),
    }));
    const figure =
      report &&
      (await pages.draw(
        differencePlot({
          name: id,
          measure: set.measure,
          unit,
          decimals,
          pairs: set.pairs,
          meanShift: report.shift.mean,
          limits: report.limitsOfAgreement,
          suspects: report.suspects,
          speech,
        }),
        `#table-${id}`,
      ));
    views.push({
      id,
      title: heading,
      from: retestOrigin(own, speech),
      hasFigure: figure !== undefined,
      figure: figure ?? {},
      facts: retestFacts(own, speech),
      flagsTitle: speech.say("retests.flags"),
      flags: flagsOf(
        own,
        (because) => speech.say("retests.cannot", { because }),
        speech.say("retests.no_flags"),
        (text) => told({ speech }, text),
      ),
      pairs: {
        id: `table-${id}`,
        caption: speech.say("retests.pairs_of", { measure: heading }),
        hasCaption: true,
        columns: ["pair", "test", "retest", "mean", "difference"].map((key) => ({
          title: speech.say(`retests.${key}`),
          unit: key === "pair" ? "" : unitOf(speech, unit),
          hasUnit: key !== "pair" && unitOf(speech, unit) !== "",
          number: true,
        })),
        rows,
        note: "",
        hasNote: false,
        wide: false,
        crowded: false,
        half: false,
        short: rows.length <= 16,
      },
    });
  }
  return pages.render(
    "retests",
    { title: speech.say("retests.title"), subtitle: speech.say("retests.subtitle") },
    {
      lead: speech.say("retests.lead"),
      none: speech.say("retests.none"),
      hasNone: sets.length === 0,
      hasContents: sets.length > 1,
      sets: views,
    },
  );
}

/** What a reader should look at; never empty. */
export function flagsOf(
  own: OwnRetests,
  cannot: (because: string) => string,
  none: string,
  told = (text: string) => text,
): readonly string[] {
  if (own.report === undefined) return [cannot(told(own.because ?? ""))];
  return own.report.remarks.length === 0 ? [none] : own.report.remarks.map(told);
}
