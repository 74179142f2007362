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

/** A page that was set in the common faces, with the whole ones in their place. */
export const withWholeFaces = (html: string, { common, whole }: Faces): string => html.replace(common, () => whole);
