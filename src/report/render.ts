/** Results and figures to one self-contained HTML document: no scripts, no outside requests. */
import { entryOf } from "../kernel/entries.js";
import type { Figure } from "../kernel/figure.js";
import type { AnyFormula } from "../kernel/formula.js";
import type { Client } from "../kernel/generated/client.js";
import type { Laboratory } from "../kernel/generated/laboratory.js";
import type { Results } from "../kernel/results.js";
import type { Rule } from "../kernel/rule.js";
import { speechOf, type WordTree } from "../kernel/speech.js";
import { isCommon, printable } from "./characters.js";
import { withEnglishMarked } from "./english.js";
import { type Faces, facesOf, withWholeFaces } from "./faces.js";
import { remembering } from "./remembered-figures.js";
import { openSvgDrawer, type SvgDrawer, type Theme } from "./svg.js";
import { compileTemplates, type Page, type TemplateSet } from "./templates.js";
import { clientEdition } from "./view/client.js";
import type { CitedTable, Context, DrawnFigure } from "./view/context.js";
import { frame } from "./view/frame.js";
import { practitioner } from "./view/practitioner.js";
import { referral } from "./view/referral.js";
import { shortCitation } from "./view/sources.js";

export type Edition = "practitioner" | "client" | "referral";

export interface ReportInput {
  readonly results: Results;
  readonly earlier: readonly Results[];
  /** From charts/: drawCharts with the same results and language. */
  readonly figures: readonly Figure[];
  readonly client: Client;
  readonly laboratory: Laboratory;
  readonly formulas: readonly AnyFormula[];
  readonly rules: readonly Rule[];
  readonly tables: readonly CitedTable[];
  readonly words: WordTree;
  /** SHA-256 of results.yaml, hex. */
  readonly digest: string;
  readonly edition: Edition;
  /** The laboratory's picture as a data: address, or "". */
  readonly logo?: string;
}

/** Everything the templates folder holds, read by the caller. */
export interface ReportAssets {
  readonly templates: TemplateSet;
  readonly theme: Theme;
  /** theme/print.css */
  readonly css: string;
  /** theme/pages.css: what the pages beside the reports add. */
  readonly pagesCss: string;
  /** A practice's own style, read after ours on every page. */
  readonly ownCss?: string;
  /** theme/fonts/*.woff2 by file name without ending: each face whole, and as "…-common". */
  readonly fonts: Readonly<Record<string, Uint8Array>>;
  /** Keep drawn figures, for a report that is rendered again and again with little changed. */
  readonly remember?: boolean;
}

export interface Reporter {
  renderReport(input: ReportInput): Promise<string>;
}

export function openReporter(assets: ReportAssets): Reporter {
  const pages = compileTemplates(assets.templates);
  const drawer = assets.remember ? remembering(openSvgDrawer(assets.theme)) : openSvgDrawer(assets.theme);
  const faces = facesOf(assets);
  const once = oncePerFigure(drawer);
  return { renderReport: (input) => render(input, assets, pages, once, faces) };
}

/** The editions of a visit share their figures: each is drawn for the first that asks, and goes with its figure. */
function oncePerFigure(drawer: SvgDrawer): SvgDrawer {
  const drawn = new WeakMap<Figure, Map<string, Promise<string>>>();
  return {
    draw(figure, marks) {
      const kept = drawn.get(figure) ?? new Map<string, Promise<string>>();
      drawn.set(figure, kept);
      const key = `${marks.decimal} ${marks.thousands}`;
      const svg = kept.get(key) ?? drawer.draw(figure, marks);
      kept.set(key, svg);
      return svg;
    },
  };
}

/** What each edition draws; the others' figures are not rendered for it. */
const DRAWN: Readonly<Record<Edition, (figure: Figure) => boolean>> = {
  practitioner: () => true,
  client: (figure) => figure.size === "strip" || figure.name === "weekly-load",
  referral: () => false,
};

async function render(
  input: ReportInput,
  assets: ReportAssets,
  pages: Readonly<Record<string, Page>>,
  drawer: SvgDrawer,
  faces: Faces,
): Promise<string> {
  const speech = speechOf(input.words);
  const marks = { decimal: speech.say("language.decimal_sign"), thousands: speech.say("language.thousands") };
  const drawn = new Map<string, DrawnFigure>();
  for (const figure of input.figures.filter(DRAWN[input.edition])) {
    const svg = await drawer.draw(figure, marks);
    drawn.set(figure.name, {
      section: figure.section,
      measure: figure.measure,
      view: {
        id: `figure-${figure.name}`,
        title: figure.title,
        alt: figure.alt,
        size: figure.size,
        svg,
        source:
          figure.source === undefined
            ? ""
            : speech.say("report.figure_source", {
                source: shortCitation({ tables: input.tables, speech }, figure.source),
              }),
        hasSource: figure.source !== undefined,
        ...dataLink(figure, input.results),
      },
    });
  }
  const context: Context = { ...input, speech, drawn };
  const style = `${faces.common}\n${pageRule(input, speech)}\n${assets.css}${assets.ownCss ?? ""}`;
  const shared = { ...frame(context, input.edition, style, input.logo ?? ""), words: input.words };
  const view =
    input.edition === "practitioner"
      ? practitioner(context, shared)
      : input.edition === "client"
        ? clientEdition(context, shared)
        : referral(context, shared);
  const page = pages[PAGES[input.edition]];
  if (page === undefined) throw new Error(`no template ${PAGES[input.edition]}`);
  const html = page(view);
  const told = speech.language === "en" ? html : withEnglishMarked(html);
  return isCommon(told) ? told : withWholeFaces(printable(told, assets.theme), faces);
}

/** Where the numbers behind a figure stand: its table in the results, the table of changes, or its own among the data. */
function dataLink(figure: Figure, results: Results): { readonly dataHref: string; readonly hasData: boolean } {
  if (figure.size === "strip") return { dataHref: "", hasData: false };
  if (figure.name === "change-figure") return { dataHref: "#changes-table", hasData: true };
  if (figure.name.startsWith("trend-")) return { dataHref: "#table-course", hasData: true };
  const entry = figure.entry === undefined ? undefined : entryOf(results, figure.entry);
  const id = entry === undefined ? `data-${figure.name}` : `table-${entry.id.replaceAll("_", "-")}`;
  return { dataHref: `#${id}`, hasData: true };
}

const PAGES: Readonly<Record<Edition, string>> = { practitioner: "report", client: "client", referral: "referral" };

/** Running head and foot of the printed page: they need the visit's own words, so they are written per report. */
function pageRule(input: ReportInput, speech: ReturnType<typeof speechOf>): string {
  const { results, laboratory } = input;
  const left = cssText(`${results.client} · ${speech.date(results.date)}`);
  const right = cssText(laboratory.name);
  const pageOf = speech.say("report.page_of", { page: "\u0001", pages: "\u0002" });
  const counter = cssText(pageOf).replace("\u0001", '" counter(page) "').replace("\u0002", '" counter(pages) "');
  const digest = cssText(speech.say("report.digest", { digest: input.digest.slice(0, 12) }));
  return `@page{size:${laboratory.paper === "Letter" ? "letter" : "A4"};@top-left{content:${left}}@top-right{content:${right}}@bottom-left{content:${digest}}@bottom-right{content:${counter}}}`;
}
/** Any text as a string of CSS. */
export const cssText = (text: string): string =>
  `"${text.replace(/[\\"<>\n\r]/g, (sign) => `\\${sign.codePointAt(0)?.toString(16)} `)}"`;
