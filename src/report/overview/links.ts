/** A report of a visit, as a page links to it. */
export interface Link {
  readonly edition: "practitioner" | "client" | "referral";
  readonly format: "html" | "pdf";
  readonly href: string;
}
