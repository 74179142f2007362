/**
 * Pages beside a visit's report, in the same look: the laboratory's own error, the practice, a client. Their views are
 * made elsewhere; here figures are drawn and templates filled.
 */
import type { Figure } from "../kernel/figure.js";
import type { Laboratory } from "../kernel/generated/laboratory.js";
import { type Speech, speechOf, type WordTree } from "../kernel/speech.js";
import { isCommon } from "./characters.js";
import { withEnglishMarked } from "./english.js";
import { facesOf, withWholeFaces } from "./faces.js";
import { cssText, type ReportAssets } from "./render.js";
import { openSvgDrawer } from "./svg.js";
import { compileTemplates } from "./templates.js";
import type { FigureView, Head } from "./view/types.js";

export type PageName = "retests" | "practice" | "client-page";

/** The parts of a view that every page has. */
export interface PageFrame {
  readonly title: string;
  readonly subtitle: string;
  readonly facts?: Head["facts"];
}

export interface Pages {
  readonly speech: Speech;
  /** `dataHref` leads to the table of the figure's numbers. */
  draw(figure: Figure, dataHref: string): Promise<FigureView>;
  /** `view` holds what the page's template names beyond the frame. */
  render(page: PageName, frame: PageFrame, view: object): string;
}

/** Embedded in each page: no more than it is set in. */
const FACES = ["serif-regular", "sans-regular", "sans-bold"];

export function openPages(
  assets: ReportAssets,
  words: WordTree,
  laboratory: Pick<Laboratory, "name" | "address" | "letterhead" | "paper">,
): Pages {
  const speech = speechOf(words);
  const templates = compileTemplates(assets.templates);
  const drawer = openSvgDrawer(assets.theme);
  const faces = facesOf(assets, FACES);
  const style = `${faces.common}\n${sheet(laboratory, speech)}\n${assets.css}\n${assets.pagesCss}${assets.ownCss ?? ""}`;
  const marks = { decimal: speech.say("language.decimal_sign"), thousands: speech.say("language.thousands") };
  const lines = [laboratory.address, laboratory.letterhead].flatMap((text) => text?.split("\n") ?? []);
  return {
    speech,
    async draw(figure, dataHref) {
      return {
        id: `figure-${figure.name}`,
        title: figure.title,
        alt: figure.alt,
        size: figure.size,
        svg: await drawer.draw(figure, marks),
        source: figure.source === undefined ? "" : speech.say("report.figure_source", { source: figure.source }),
        hasSource: figure.source !== undefined,
        dataHref,
        hasData: dataHref !== "",
      };
    },
    render(page, { title, subtitle, facts = [] }, view) {
      const template = templates[page];
      if (template === undefined) throw new Error(`no template ${page}`);
      const head: Head = {
        laboratory: laboratory.name,
        lines: lines.filter((line) => line.trim() !== ""),
        hasLogo: false,
        logo: "",
        title,
        subtitle,
        facts,
      };
      const shared = {
        language: speech.language,
        documentTitle: title,
        footDigest: laboratory.name,
        style,
        words,
        head,
      };
      const html = template({ ...view, ...shared, edition: page });
      const told = speech.language === "en" ? html : withEnglishMarked(html);
      return isCommon(told) ? told : withWholeFaces(told, faces);
    },
  };
}

function sheet(laboratory: Pick<Laboratory, "name" | "paper">, speech: Speech): string {
  const pageOf = speech.say("report.page_of", { page: "\u0001", pages: "\u0002" });
  const counter = cssText(pageOf).replace("\u0001", '" counter(page) "').replace("\u0002", '" counter(pages) "');
  const size = laboratory.paper === "Letter" ? "letter" : "A4";
  return `@page{size:${size};@top-right{content:${cssText(laboratory.name)}}@bottom-right{content:${counter}}}`;
}
