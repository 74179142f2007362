/** The editions of a report: their files, and what turns results into them. Types and names only, so that it loads at once. */
import type { Results } from "../kernel/results.js";
import type { Visit } from "../kernel/visit.js";
import type { PdfFacts } from "../report/pdf.js";
import type { Edition } from "../report/render.js";

export const EDITIONS: readonly Edition[] = ["practitioner", "client", "referral"];

/** report.html is the practitioner's edition; the others say whose they are. */
export const htmlName = (edition: Edition): string =>
  edition === "practitioner" ? "report.html" : `report-${edition}.html`;
export const pdfName = (edition: Edition): string => htmlName(edition).replace(/html$/, "pdf");

/** A rendered edition. */
export interface Page {
  readonly edition: Edition;
  readonly html: string;
  readonly facts: PdfFacts;
}
/** An edition whose HTML lies on the disk: what is left to print. */
export type WrittenPage = Omit<Page, "html">;

export interface Press {
  /** Opens what a language needs. Throws Unreadable for a fault in the practice's own templates, words or style. */
  prepare(language: string | undefined): void;
  /** `digest` is the SHA-256 of results.yaml. */
  render(
    visit: Visit,
    results: Results,
    earlier: readonly Results[],
    digest: string,
    editions: readonly Edition[],
  ): Promise<Page[]>;
}
