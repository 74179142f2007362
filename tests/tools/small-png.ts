/** A PNG of a screenshot with at most 256 colours: a page of text and lines needs few, and the file is a third as large. */
import { deflateSync, inflateSync } from "node:zlib";

const SIGNATURE = Buffer.from([137, 80, 78, 71, 13, 10, 26, 10]);
/** Bits of each colour that are kept, from the most that give a palette small enough. */
const DEPTHS = [6, 5, 4, 3];

export function smallPng(png: Uint8Array): Buffer {
  const { width, height, channels, pixels } = decoded(Buffer.from(png));
  const exact = commonest(pixels, channels);
  for (const bits of DEPTHS) {
    const palette = new Map<number, number>();
    const rows = Buffer.alloc(height * (width + 1));
    for (let y = 0; y < height; y++)
      for (let x = 0; x < width; x++) {
        const at = (y * width + x) * channels;
        const own = colourAt(pixels, at);
        const colour = exact.has(own)
          ? own
          : [0, 1, 2].reduce((sum, i) => sum * 256 + rounded(pixels[at + i] as number, bits), 0);
        const index = palette.get(colour) ?? palette.size;
        palette.set(colour, index);
        rows[y * (width + 1) + 1 + x] = index & 255;
      }
    if (palette.size <= 256) return written(width, height, [...palette.keys()], rows);
  }
  throw new Error("the picture has too many colours for a palette");
}

const colourAt = (pixels: Buffer, at: number): number =>
  (pixels[at] as number) * 65536 + (pixels[at + 1] as number) * 256 + (pixels[at + 2] as number);

/** The colours of areas and lines stay as they are; only the edges of letters are rounded. */
function commonest(pixels: Buffer, channels: number): ReadonlySet<number> {
  const counts = new Map<number, number>();
  for (let at = 0; at < pixels.length; at += channels) {
    const colour = colourAt(pixels, at);
    counts.set(colour, (counts.get(colour) ?? 0) + 1);
  }
  return new Set(
    [...counts]
      .sort((a, b) => b[1] - a[1] || a[0] - b[0])
      .slice(0, EXACT)
      .map(([colour]) => colour),
  );
}
const EXACT = 100;

const rounded = (value: number, bits: number): number => {
  const steps = 2 ** bits - 1;
  return Math.round((Math.round((value * steps) / 255) * 255) / steps);
};

function decoded(png: Buffer) {
  const width = png.readUInt32BE(16);
  const height = png.readUInt32BE(20);
  const channels = png[25] === 6 ? 4 : 3;
  const parts: Buffer[] = [];
  for (let at = 8; at < png.length; ) {
    const length = png.readUInt32BE(at);
    if (png.toString("latin1", at + 4, at + 8) === "IDAT") parts.push(png.subarray(at + 8, at + 8 + length));
    at += length + 12;
  }
  const raw = inflateSync(Buffer.concat(parts));
  const line = width * channels;
  const pixels = Buffer.alloc(height * line);
  for (let y = 0; y < height; y++)
    for (let i = 0; i < line; i++) {
      const left = i < channels ? 0 : (pixels[y * line + i - channels] as number);
      const up = y === 0 ? 0 : (pixels[(y - 1) * line + i] as number);
      const corner = y === 0 || i < channels ? 0 : (pixels[(y - 1) * line + i - channels] as number);
      const guess = [0, left, up, (left + up) >> 1, paeth(left, up, corner)][raw[y * (line + 1)] as number] as number;
      pixels[y * line + i] = ((raw[y * (line + 1) + 1 + i] as number) + guess) & 255;
    }
  return { width, height, channels, pixels };
}

function paeth(left: number, up: number, corner: number): number {
  const guess = left + up - corner;
  const [a, b, c] = [Math.abs(guess - left), Math.abs(guess - up), Math.abs(guess - corner)];
  return a <= b && a <= c ? left : b <= c ? up : corner;
}

function written(width: number, height: number, colours: readonly number[], rows: Buffer): Buffer {
  const head = Buffer.alloc(13);
  head.writeUInt32BE(width, 0);
  head.writeUInt32BE(height, 4);
  head.set([8, 3, 0, 0, 0], 8);
  const palette = Buffer.from(colours.flatMap((colour) => [colour >> 16, (colour >> 8) & 255, colour & 255]));
  const data = deflateSync(rows, { level: 9 });
  return Buffer.concat([
    SIGNATURE,
    chunk("IHDR", head),
    chunk("PLTE", palette),
    chunk("IDAT", data),
    chunk("IEND", Buffer.alloc(0)),
  ]);
}

function chunk(name: string, data: Buffer): Buffer {
  const body = Buffer.concat([Buffer.from(name, "latin1"), data]);
  const out = Buffer.alloc(data.length + 12);
  out.writeUInt32BE(data.length, 0);
  body.copy(out, 4);
  out.writeUInt32BE(crc(body), data.length + 8);
  return out;
}

function crc(bytes: Buffer): number {
  let value = 0xffffffff;
  for (const byte of bytes) {
    value ^= byte;
    for (let bit = 0; bit < 8; bit++) value = value & 1 ? (value >>> 1) ^ 0xedb88320 : value >>> 1;
  }
  return (value ^ 0xffffffff) >>> 0;
}
