/**
 * The faces a page embeds, so that it asks for no font of the machine: cut to the signs that nearly every page makes do
 * with, or whole on a page that holds another, which weighs two and a half times as much.
 */
/** A page's own rules for its faces. */
export interface Faces {
  readonly common: string;
  readonly whole: string;
}

const FACES: Readonly<Record<string, readonly [family: string, weight: number, style: string]>> = {
  "serif-regular": ["Waymark Serif", 400, "normal"],
  "serif-bold": ["Waymark Serif", 600, "normal"],
  "sans-regular": ["Waymark Sans", 400, "normal"],
  "sans-bold": ["Waymark Sans", 600, "normal"],
};

/** Signs of the common faces: Latin letters of English and German, and what our own words and sources hold besides. */
export const COMMON: string = [
  String.fromCodePoint(...Array.from({ length: 0x7f - 0x20 }, (_, i) => 0x20 + i)),
  "\u00a0\u00ad\u2009\u200b\u2011\u202f\u0304\u0307",
  "°±²³µ·¹½×÷ÄÅÖÜßáäéóöøúüćšžΣΩδηπτφχ–—‘’‚“”„…′″⁰⁴⁵⁶⁷⁸⁹⁺⁻₀₁₂₃₄₅₆₇₈₉₍₎→−√≈≠≤≥□▼○●",
].join("");
const common: ReadonlySet<string> = new Set(COMMON);

/** `fonts` by file name without ending. A practice's own style may bring any sign, so beside it all are whole. */
export function facesOf(
  { fonts, ownCss = "" }: { readonly fonts: Readonly<Record<string, Uint8Array>>; readonly ownCss?: string },
  files: readonly string[] = Object.keys(FACES),
): Faces {
  const rules = (ending: string) => files.map((file) => rule(file, fonts[`${file}${ending}`])).join("\n");
  const whole = rules("");
  return { common: ownCss === "" ? rules("-common") : whole, whole };
}

function rule(file: string, bytes: Uint8Array | undefined): string {
  const [family, weight, style] = FACES[file] ?? [];
  if (family === undefined || bytes === undefined) throw new Error(`no font ${file}`);
  const url = `data:font/woff2;base64,${Buffer.from(bytes).toString("base64")}`;
  return `@font-face{font-family:"${family}";font-weight:${weight};font-style:${style};src:url(${url}) format("woff2")}`;
}

/** A page that was set in the common faces, with the whole ones where it holds a sign that those lack. */
export const withItsFaces = (html: string, signs: ReadonlySet<string>, faces: Faces): string =>
  [...signs].every((sign) => common.has(sign)) ? html : html.replace(faces.common, () => faces.whole);
