/** A client's page: draws the course of each primary outcome and links the reports that lie in the visit folders. */
import { trendFigure } from "../charts/trend-figure.js";
import { clientPage } from "../report/overview/client-page.js";
import { courseOf, knownError } from "../report/overview/course.js";
import type { Link } from "../report/overview/links.js";
import type { VisitSummary } from "../report/overview/visit-summary.js";
import type { Pages } from "../report/pages.js";
import { EDITIONS, htmlName, pdfName } from "./editions.js";
import { list } from "./files.js";
import type { ClientFolder, Practice, VisitFolder } from "./practice.js";

export async function drawnClientPage(
  pages: Pages,
  practice: Practice,
  client: ClientFolder,
  known: readonly { readonly visit: VisitFolder; readonly summary: VisitSummary }[],
): Promise<string> {
  const visits = known.map(({ summary }) => summary);
  const drawn = [];
  for (const course of courseOf(visits)) {
    const { measure, points } = course;
    const last = points[points.length - 1];
    if (points.length < 2 || last === undefined) continue;
    const error = knownError(course)?.typical;
    const figure = trendFigure({
      measure,
      unit: last.unit,
      decimals: last.decimals,
      points: points.map(({ date, value, differs }) => ({ date, value, differs: differs ?? "" })),
      speech: pages.speech,
      ...(error === undefined ? {} : { error }),
    });
    drawn.push(await pages.draw(figure, "#course"));
  }
  const reports = known.map(({ visit }) => reportsOf(practice, visit));
  return clientPage(pages, { client: client.id, visits, reports, drawn });
}

/** Reports that lie in a visit's folder, as addresses from the client's folder. */
export function reportsOf(practice: Practice, { path, name }: VisitFolder): readonly Link[] {
  const files = new Set(list(practice.root, path).map((entry) => entry.name));
  return EDITIONS.flatMap((edition) =>
    (["html", "pdf"] as const).flatMap((format): Link[] => {
      const file = format === "html" ? htmlName(edition) : pdfName(edition);
      return files.has(file) ? [{ edition, format, href: `${encodeURIComponent(name)}/${file}` }] : [];
    }),
  );
}

/** From the practice's page to a visit: its fullest report, else its folder. */
export const hrefOf = ({ client, name }: VisitFolder, reports: readonly Link[]): string =>
  `clients/${encodeURIComponent(client)}/${reports[0]?.href ?? `${encodeURIComponent(name)}/`}`;
