/** What may stand in a practice's own HTML and CSS: nothing that runs, and nothing that is fetched. */

export interface TextFault {
  readonly line: number;
  readonly found: string;
  readonly fix: string;
}

/** Values of the template stand as U+FFFC. */
export function htmlFault(html: string): TextFault | undefined {
  const tag = /<\s*\/?\s*(script|iframe|object|embed|link|meta|base|form|input|button|style|foreignobject|use)\b/i.exec(
    html,
  );
  if (tag)
    return { line: lineOf(html, tag.index), found: `<${tag[1]}> is not placed by a partial`, fix: "Leave it out." };
  const handler = /<[^>]*\s(on\w+)\s*=/i.exec(html);
  if (handler)
    return { line: lineOf(html, handler.index), found: `${handler[1]} would run code`, fix: "Leave it out." };
  for (const link of html.matchAll(
    /\s(?:src|href|srcset|action|poster|data|background|xlink:href)\s*=\s*(["']?)\s*([^"'\s>]*)/gi,
  ))
    if (!/^(?:#|\uFFFC|data:image\/)/i.test(link[2] ?? ""))
      return {
        line: lineOf(html, link.index),
        found: `${link[2]} would be fetched or followed from a report`,
        fix: "Link to a place in the report (#…), to a value, or to data:image/….",
      };
  for (const style of html.matchAll(/\sstyle\s*=\s*(?:"([^"]*)"|'([^']*)')/gi)) {
    const fault = cssFault(`a{${style[1] ?? style[2] ?? ""}}`);
    if (fault) return { ...fault, line: lineOf(html, style.index) };
  }
  return undefined;
}

export function cssFault(css: string): TextFault | undefined {
  const plain = decoded(css.replace(/\/\*[\s\S]*?\*\//g, (comment) => comment.replace(/[^\n]/g, " ")));
  const fault = (at: number, found: string, fix: string): TextFault => ({ line: lineOf(plain, at), found, fix });
  const markup = plain.indexOf("<");
  if (markup >= 0) return fault(markup, "< has no place in style", "Leave it out.");
  const rule = /@\s*(import|charset|namespace)\b/i.exec(plain);
  if (rule) return fault(rule.index, `@${rule[1]} would read another file`, "Put the rules themselves here.");
  for (const url of plain.matchAll(/\b(?:url|src)\s*\(\s*(["']?)([^)]*)/gi))
    if (!/^data:(?:image|font)\//i.test((url[2] ?? "").trim()))
      return fault(
        url.index,
        `url(${(url[2] ?? "").slice(0, 40)}) would be fetched`,
        "Use data:image/… or data:font/….",
      );
  const picture = /\b(?:-webkit-)?(image-set|image|cross-fade|expression|element|paint)\s*\(/i.exec(plain);
  if (picture) return fault(picture.index, `${picture[1]}() is not allowed`, "Use a data:image/… address.");
  let depth = 0;
  for (let i = 0; i < plain.length; i++) {
    if (plain[i] === "{") depth++;
    if (plain[i] === "}" && --depth < 0) return fault(i, "a } closes nothing", "Take it out or open its {.");
  }
  return depth > 0 ? fault(plain.lastIndexOf("{"), "a { is never closed", "Close it with }.") : undefined;
}

/** CSS escapes undone, so that \75rl( is seen as url(. */
const decoded = (css: string): string =>
  css.replace(/\\([0-9a-f]{1,6})\s?/gi, (_, hex: string) => {
    const code = Number.parseInt(hex, 16);
    return code > 0 && code <= 0x10ffff ? String.fromCodePoint(code) : "";
  });

const lineOf = (text: string, at: number): number => text.slice(0, at).split("\n").length;
