/**
 * Text that stays English in a report of another language. It is marked by two signs while the view is made, because a
 * template escapes all it is given, and becomes an element of its own language in the finished page.
 */

export const ENGLISH_BEGINS = "\ue000";
export const ENGLISH_ENDS = "\ue001";

export const asEnglish = (text: string): string => `${ENGLISH_BEGINS}${text.replace(SIGNS, "")}${ENGLISH_ENDS}`;

const SIGNS = /[\ue000\ue001]/g;
const TAGS_AND_SIGNS = /<(?:title|svg)\b[\s\S]*?<\/(?:title|svg)>|<[^>]*>|[\ue000\ue001]/g;

/** The page with its marks as elements; where no element may stand, they go. */
export function withEnglishMarked(html: string): string {
  const from = Math.max(0, html.indexOf("</style>"));
  const body = html.slice(from).replace(TAGS_AND_SIGNS, (found) => {
    if (found === ENGLISH_BEGINS) return '<span lang="en">';
    return found === ENGLISH_ENDS ? "</span>" : found.replace(SIGNS, "");
  });
  return html.slice(0, from).replace(SIGNS, "") + body;
}
