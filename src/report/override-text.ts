/** What may stand in a practice's own HTML and CSS: nothing that runs, and nothing that is fetched. */

export interface TextFault {
  readonly line: number;
  readonly found: string;
  readonly fix: string;
}

/**
 * Values of the template stand as U+FFFC. What looks like an attribute is judged wherever it stands: where a tag ends is
 * for a browser to say, and it reads <a/onclick=x> and <a title=">" onclick=x> as we might not. Each pattern reads the
 * text once, however long it is.
 */
export function htmlFault(html: string): TextFault | undefined {
  const tag = /<\/?(script|iframe|frame|object|embed|link|meta|base|form|input|button|style|foreignobject|use)\b/i.exec(
    html,
  );
  if (tag)
    return { line: lineOf(html, tag.index), found: `<${tag[1]}> is not placed by a partial`, fix: "Leave it out." };
  for (const { name, value, at } of attributes(html)) {
    if (/^on./.test(name)) return { line: lineOf(html, at), found: `${name} would run code`, fix: "Leave it out." };
    if (LEADS.has(name) && !/^(?:#|\uFFFC|data:image\/)/i.test(value))
      return {
        line: lineOf(html, at),
        found: `${value.slice(0, 40)} would be fetched or followed from a report`,
        fix: "Link to a place in the report (#…), to a value, or to data:image/….",
      };
    if (name === "style") {
      const fault = value.includes("&") ? AMPERSAND : cssFault(`a{${value}}`);
      if (fault) return { ...fault, line: lineOf(html, at) };
    }
  }
  return undefined;
}

const LEADS: ReadonlySet<string> = new Set(
  "src href srcset action poster data background xlink:href formaction ping cite longdesc manifest srcdoc".split(" "),
);
const AMPERSAND = { found: "& has no place in style", fix: "Write the sign itself." };

/** Everything that could be an attribute with a value, names in small letters. */
function* attributes(html: string): Generator<{ readonly name: string; readonly value: string; readonly at: number }> {
  for (let sign = html.indexOf("="); sign >= 0; sign = html.indexOf("=", sign + 1)) {
    let end = sign;
    while (end > 0 && SPACE.test(html[end - 1] ?? "")) end--;
    const name = /[\w:-]+$/.exec(html.slice(Math.max(0, end - LONGEST_NAME), end))?.[0];
    if (name === undefined) continue;
    let from = sign + 1;
    while (from < html.length && SPACE.test(html[from] ?? "")) from++;
    const value = /^(?:"([^"]*)|'([^']*)|([^\s>]*))/.exec(html.slice(from, from + LONGEST_VALUE));
    const written = value?.[1] ?? value?.[2] ?? value?.[3] ?? "";
    yield { name: name.toLowerCase(), value: written.trim(), at: end - name.length };
  }
}
const SPACE = /\s/;
const LONGEST_NAME = 40;
/** No more of a value is looked at; only a picture written out as data: is longer, and its beginning tells. */
const LONGEST_VALUE = 2000;

export function cssFault(css: string): TextFault | undefined {
  const { text, open } = withoutComments(css);
  if (open !== undefined)
    return { line: lineOf(css, open), found: "a comment is never closed", fix: "Close it with */." };
  const plain = decoded(text);
  const fault = (at: number, found: string, fix: string): TextFault => ({ line: lineOf(plain, at), found, fix });
  const markup = plain.indexOf("<");
  if (markup >= 0) return fault(markup, "< has no place in style", "Leave it out.");
  const rule = /@(import|charset|namespace)\b/i.exec(plain);
  if (rule) return fault(rule.index, `@${rule[1]} would read another file`, "Put the rules themselves here.");
  for (const url of plain.matchAll(/\b(?:url|src)\(\s*(["']?)([^)]{0,100})/gi))
    if (!/^data:(?:image|font)\//i.test((url[2] ?? "").trim()))
      return fault(
        url.index,
        `url(${(url[2] ?? "").slice(0, 40)}) would be fetched`,
        "Use data:image/… or data:font/….",
      );
  const picture = /(?<![\w-])(?:-webkit-)?(image-set|image|cross-fade|expression|element|paint)\(/i.exec(plain);
  if (picture) return fault(picture.index, `${picture[1]}() is not allowed`, "Use a data:image/… address.");
  let depth = 0;
  for (let i = 0; i < plain.length; i++) {
    if (plain[i] === "{") depth++;
    if (plain[i] === "}" && --depth < 0) return fault(i, "a } closes nothing", "Take it out or open its {.");
  }
  return depth > 0 ? fault(plain.lastIndexOf("{"), "a { is never closed", "Close it with }.") : undefined;
}

/** Comments as nothing, their lines kept; `open` is where one begins that has no end. */
function withoutComments(css: string): { readonly text: string; readonly open?: number } {
  const pieces: string[] = [];
  let from = 0;
  for (let at = css.indexOf("/*"); at >= 0; at = css.indexOf("/*", from)) {
    const end = css.indexOf("*/", at + 2);
    if (end < 0) return { text: "", open: at };
    pieces.push(css.slice(from, at), css.slice(at, end + 2).replace(/[^\n]/g, " "));
    from = end + 2;
  }
  return { text: pieces.join("") + css.slice(from) };
}

/** CSS escapes undone, so that \75rl( and u\rl( are seen as url(. */
const decoded = (css: string): string =>
  css.replace(/\\(?:([0-9a-f]{1,6})[ \t]?|([^\n]))/gi, (_, hex: string | undefined, sign: string) => {
    if (hex === undefined) return sign;
    const code = Number.parseInt(hex, 16);
    return code > 0 && code <= 0x10ffff ? String.fromCodePoint(code) : "";
  });

const lineOf = (text: string, at: number): number => text.slice(0, at).split("\n").length;
