/**
 * Cuts the report's fonts to the characters a report can hold, and again to the common ones, and writes them to templates/theme/fonts, with their
 * licence and the widths that charts measure text by. Run it only when a character must be added:
 *
 *     npm install --no-save source-sans@3.52.0 source-serif@4.5.1 && npx tsx tests/tools/subset-fonts.ts
 *
 * The licence (SIL OFL 1.1) reserves the original family name for unmodified fonts, so the cut ones are renamed.
 */
import { copyFileSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
// @ts-expect-error the package carries no types
import subsetFont from "subset-font";
import { COMMON } from "../../src/report/characters.js";

const packages = process.argv[2] ?? "node_modules";
const folder = "templates/theme/fonts";
const range = (from: number, to: number) => Array.from({ length: to - from + 1 }, (_, i) => from + i);
const CHARACTERS = String.fromCodePoint(
  ...range(0x20, 0x7e),
  ...range(0xa0, 0x17f),
  ...range(0x218, 0x21b),
  0x2c6,
  0x2dc,
  ...range(0x300, 0x304),
  ...range(0x306, 0x30c),
  0x323,
  0x327,
  ...range(0x391, 0x3a1),
  ...range(0x3a3, 0x3a9),
  ...range(0x3b1, 0x3c9),
  0x1e9e,
  ...[0x2009, 0x200b, 0x2010, 0x2011, 0x2012, 0x2013, 0x2014, 0x2018, 0x2019, 0x201a, 0x201c, 0x201d, 0x201e],
  ...[0x2020, 0x2021, 0x2022, 0x2026, 0x202f, 0x2030, 0x2032, 0x2033, 0x2039, 0x203a, 0x2044],
  ...[0x2070, ...range(0x2074, 0x208e)],
  ...[0x20ac, 0x2113, 0x2122, 0x2126, ...range(0x2153, 0x215e), ...range(0x2190, 0x2193), 0x2194],
  ...[0x2202, 0x2206, 0x220f, 0x2211, 0x2212, 0x2215, 0x2219, 0x221a, 0x221e, 0x222b, 0x2248, 0x2260, 0x2264, 0x2265],
  ...[0x25a0, 0x25a1, 0x25b2, 0x25b3, 0x25bc, 0x25ca, 0x25cb, 0x25cf, 0x2713, 0x2717],
);
const FEATURES = ["kern", "mark", "mkmk", "ccmp", "locl", "lnum", "tnum"];
const FACES = [
  {
    file: "serif-regular",
    from: "source-serif/TTF/SourceSerif4-Regular.ttf",
    family: "Waymark Serif",
    style: "Regular",
  },
  { file: "serif-bold", from: "source-serif/TTF/SourceSerif4-Semibold.ttf", family: "Waymark Serif", style: "Bold" },
  { file: "sans-regular", from: "source-sans/TTF/SourceSans3-Regular.ttf", family: "Waymark Sans", style: "Regular" },
  { file: "sans-bold", from: "source-sans/TTF/SourceSans3-Semibold.ttf", family: "Waymark Sans", style: "Bold" },
];

interface Slice {
  readonly tag: string;
  readonly bytes: Buffer;
}

function tablesOf(font: Buffer): Slice[] {
  return range(0, font.readUInt16BE(4) - 1).map((i) => {
    const at = 12 + 16 * i;
    const start = font.readUInt32BE(at + 8);
    return {
      tag: font.toString("latin1", at, at + 4),
      bytes: font.subarray(start, start + font.readUInt32BE(at + 12)),
    };
  });
}

function checksum(bytes: Buffer): number {
  let sum = 0;
  for (let i = 0; i < bytes.length; i += 4) sum = (sum + bytes.readUInt32BE(i)) >>> 0;
  return sum;
}

/** A font file of these tables, in tag order, as the OpenType specification lays it out. */
function assemble(tables: readonly Slice[]): Buffer {
  const sorted = [...tables].sort((a, b) => (a.tag < b.tag ? -1 : 1));
  const power = 2 ** Math.floor(Math.log2(sorted.length));
  const header = Buffer.alloc(12 + 16 * sorted.length);
  header.writeUInt32BE(0x00010000, 0);
  header.writeUInt16BE(sorted.length, 4);
  header.writeUInt16BE(power * 16, 6);
  header.writeUInt16BE(Math.log2(power), 8);
  header.writeUInt16BE(sorted.length * 16 - power * 16, 10);
  const parts: Buffer[] = [header];
  let at = header.length;
  sorted.forEach(({ tag, bytes }, i) => {
    const padded = Buffer.concat([bytes, Buffer.alloc((4 - (bytes.length % 4)) % 4)]);
    header.write(tag, 12 + 16 * i, "latin1");
    header.writeUInt32BE(checksum(padded), 12 + 16 * i + 4);
    header.writeUInt32BE(at, 12 + 16 * i + 8);
    header.writeUInt32BE(bytes.length, 12 + 16 * i + 12);
    parts.push(padded);
    at += padded.length;
  });
  return Buffer.concat(parts);
}

function nameTable(names: Readonly<Record<number, string>>): Buffer {
  const entries = Object.entries(names).map(([id, text]) => ({
    id: Number(id),
    text: Buffer.from(text, "utf16le").swap16(),
  }));
  const header = Buffer.alloc(6 + 12 * entries.length);
  header.writeUInt16BE(entries.length, 2);
  header.writeUInt16BE(header.length, 4);
  let offset = 0;
  entries.forEach(({ id, text }, i) => {
    [3, 1, 0x409, id, text.length, offset].forEach((field, j) => {
      header.writeUInt16BE(field, 6 + 12 * i + 2 * j);
    });
    offset += text.length;
  });
  return Buffer.concat([header, ...entries.map((e) => e.text)]);
}

/** Advance widths in thousandths of an em, by character. */
function widths(font: Buffer, characters: string): Record<string, number> {
  const table = (tag: string) => tablesOf(font).find((t) => t.tag === tag)?.bytes as Buffer;
  const [head, hhea, hmtx, cmap] = [table("head"), table("hhea"), table("hmtx"), table("cmap")];
  const unitsPerEm = head.readUInt16BE(18);
  const metrics = hhea.readUInt16BE(34);
  const glyphs = glyphsOf(cmap);
  const out: Record<string, number> = {};
  for (const character of characters) {
    const glyph = glyphs(character.codePointAt(0) as number);
    if (glyph === 0) continue;
    out[character] = Math.round((1000 * hmtx.readUInt16BE(4 * Math.min(glyph, metrics - 1))) / unitsPerEm);
  }
  return out;
}

/** Reads the format 4 (basic plane) character map. */
function glyphsOf(cmap: Buffer): (code: number) => number {
  for (let i = 0; i < cmap.readUInt16BE(2); i++) {
    const at = cmap.readUInt32BE(4 + 8 * i + 4);
    if (cmap.readUInt16BE(at) !== 4) continue;
    const segments = cmap.readUInt16BE(at + 6) / 2;
    const [ends, starts] = [at + 14, at + 16 + 2 * segments];
    const [deltas, offsets] = [starts + 2 * segments, starts + 4 * segments];
    return (code) => {
      for (let s = 0; s < segments; s++) {
        if (code > cmap.readUInt16BE(ends + 2 * s)) continue;
        const start = cmap.readUInt16BE(starts + 2 * s);
        if (code < start) return 0;
        const delta = cmap.readUInt16BE(deltas + 2 * s);
        const offset = cmap.readUInt16BE(offsets + 2 * s);
        if (offset === 0) return (code + delta) & 0xffff;
        const glyph = cmap.readUInt16BE(offsets + 2 * s + offset + 2 * (code - start));
        return glyph === 0 ? 0 : (glyph + delta) & 0xffff;
      }
      return 0;
    };
  }
  throw new Error("no format 4 character map");
}

const measured: Record<string, Record<string, number>> = {};
for (const face of FACES) {
  const original = readFileSync(join(packages, face.from));
  const cut = await subsetFont(original, CHARACTERS, {
    targetFormat: "sfnt",
    keepFeatures: FEATURES,
    noHinting: true,
  });
  const postscript = `${face.family.replace(" ", "")}-${face.style}`;
  const licence = "SIL Open Font License 1.1, see the licence file beside this font";
  const name = nameTable({
    0: `Made from ${face.from.split("/")[0]} (Adobe), cut and renamed. ${licence}`,
    1: face.family,
    2: face.style,
    3: postscript,
    4: `${face.family} ${face.style}`,
    6: postscript,
    13: licence,
  });
  const named = assemble(tablesOf(cut).map((t) => (t.tag === "name" ? { tag: "name", bytes: name } : t)));
  const files = { [face.file]: CHARACTERS, [`${face.file}-common`]: COMMON };
  for (const [file, characters] of Object.entries(files)) {
    const options = { targetFormat: "woff2", preserveNameIds: [0, 13], keepFeatures: FEATURES };
    writeFileSync(join(folder, `${file}.woff2`), await subsetFont(named, characters, options));
  }
  if (face.file.startsWith("sans")) measured[face.file] = widths(named, CHARACTERS);
}
writeFileSync(join(folder, "widths.json"), `${JSON.stringify(measured)}\n`);
copyFileSync(join(packages, "source-sans/LICENSE.md"), join(folder, "LICENSE-sans.md"));
copyFileSync(join(packages, "source-serif/LICENSE.md"), join(folder, "LICENSE-serif.md"));
