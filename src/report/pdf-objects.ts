/**
 * The objects of a PDF as Chromium prints it (ISO 32000, a classic cross-reference table), and a smaller file made of
 * them: everything that is not a stream goes into compressed object streams. A tagged table has thousands of small
 * objects; packed, a report is half as big. Compression is pako's, which gives the same bytes on every machine.
 */
import { createRequire } from "node:module";

const pako = createRequire(import.meta.url)("pako") as {
  deflate(bytes: Uint8Array, options: { level: number }): Uint8Array;
};

export interface PdfObjects {
  /** Content between "n 0 obj" and "endobj", by object number, as Latin-1 text. */
  readonly objects: ReadonlyMap<number, string>;
  readonly root: number;
  readonly info: number;
  readonly size: number;
}

export class PdfError extends Error {
  constructor(reason: string) {
    super(`the printed PDF has an unexpected shape: ${reason}`);
    this.name = "PdfError";
  }
}

export function readPdfObjects(text: string): PdfObjects {
  const end = /trailer\s*<<([\s\S]*?)>>\s*startxref\s+(\d+)\s+%%EOF\s*$/.exec(text);
  if (!end) throw new PdfError("no trailer");
  const from = (key: string): number => {
    const found = new RegExp(`/${key} (\\d+)`).exec(end[1] as string)?.[1];
    if (found === undefined) throw new PdfError(`no ${key} in the trailer`);
    return Number(found);
  };
  const table = Number(end[2]);
  const starts: { number: number; at: number }[] = [];
  for (const section of text
    .slice(table, end.index)
    .matchAll(/(?:^|\n)(\d+) (\d+) *\r?\n((?:\d{10} \d{5} [nf][ \r]*\n)+)/g))
    (section[3] as string).split("\n").forEach((line, i) => {
      if (line.charAt(17) === "n") starts.push({ number: Number(section[1]) + i, at: Number(line.slice(0, 10)) });
    });
  if (starts.length === 0) throw new PdfError("an empty cross-reference table");
  starts.sort((a, b) => a.at - b.at);
  const objects = new Map<number, string>();
  starts.forEach(({ number, at }, i) => {
    const head = `${number} 0 obj`;
    const end = text.lastIndexOf("endobj", starts[i + 1]?.at ?? table);
    if (!text.startsWith(head, at) || end <= at) throw new PdfError(`object ${number} has no end`);
    objects.set(number, text.slice(at + head.length + 1, end - 1));
  });
  return { objects, root: from("Root"), info: from("Info"), size: from("Size") };
}

const PER_STREAM = 4000;
/** Level 6 makes the file 3 % smaller and takes twice the time. */
const LEVEL = 4;
/** Bytes of a row of the cross-reference stream. */
const WIDTH = 7;

/** Each row as its difference from the row above, behind a 2 that says so (the "up" filter of PNG): rows are much alike. */
function differences(table: Uint8Array): Uint8Array {
  const rows = table.length / WIDTH;
  const out = new Uint8Array(rows * (WIDTH + 1));
  for (let row = 0; row < rows; row++) {
    out[row * (WIDTH + 1)] = 2;
    for (let i = 0; i < WIDTH; i++) {
      const above = row === 0 ? 0 : (table[(row - 1) * WIDTH + i] as number);
      out[row * (WIDTH + 1) + 1 + i] = ((table[row * WIDTH + i] as number) - above) & 255;
    }
  }
  return out;
}

/** A PDF 1.5 file of these objects. `id` is 32 hexadecimal digits. */
export function writePdf({ objects, root, info, size }: PdfObjects, id: string): Uint8Array {
  const parts: Uint8Array[] = [];
  let length = 0;
  const write = (text: string | Uint8Array): void => {
    const bytes = typeof text === "string" ? Buffer.from(text, "latin1") : text;
    parts.push(bytes);
    length += bytes.length;
  };
  /** Rows of the cross-reference stream: kind, offset or stream number, generation or place in the stream. */
  const rows = new Map<number, readonly [number, number, number]>([[0, [0, 0, 65535]]]);
  const place = (number: number, content: () => void): void => {
    rows.set(number, [1, length, 0]);
    write(`${number} 0 obj\n`);
    content();
    write("\nendobj\n");
  };
  const packed = (number: number, dictionary: string, bytes: Uint8Array): void =>
    place(number, () => {
      const small = pako.deflate(bytes, { level: LEVEL });
      write(`<<${dictionary}/Filter/FlateDecode/Length ${small.length}>>\nstream\n`);
      write(small);
      write("\nendstream");
    });

  write("%PDF-1.5\n%\xE2\xE3\xCF\xD3\n");
  const numbers = [...objects.keys()].sort((a, b) => a - b);
  const small: number[] = [];
  for (const number of numbers) {
    const content = objects.get(number) as string;
    if (content.endsWith("endstream")) place(number, () => write(content));
    else small.push(number);
  }
  let next = Math.max(size, ...numbers.map((n) => n + 1));
  for (let i = 0; i < small.length; i += PER_STREAM) {
    const group = small.slice(i, i + PER_STREAM);
    let offset = 0;
    const index: string[] = [];
    const contents = group.map((number, place) => {
      const content = objects.get(number) as string;
      rows.set(number, [2, next, place]);
      index.push(`${number} ${offset}`);
      offset += content.length + 1;
      return content;
    });
    const first = `${index.join(" ")}\n`;
    const body = Buffer.from(`${first}${contents.join("\n")}`, "latin1");
    packed(next, `/Type/ObjStm/N ${group.length}/First ${first.length}`, body);
    next++;
  }
  const start = length;
  rows.set(next, [1, start, 0]);
  const table = Buffer.alloc(WIDTH * (next + 1));
  for (let number = 0; number <= next; number++) {
    const [kind, where, rest] = rows.get(number) ?? [0, 0, 0];
    table.writeUInt8(kind, WIDTH * number);
    table.writeUInt32BE(where, WIDTH * number + 1);
    table.writeUInt16BE(rest, WIDTH * number + 5);
  }
  const form = `/DecodeParms<</Predictor 12/Columns ${WIDTH}>>/W[1 4 2]`;
  packed(
    next,
    `/Type/XRef/Size ${next + 1}${form}/Root ${root} 0 R/Info ${info} 0 R/ID[<${id}><${id}>]`,
    differences(table),
  );
  write(`startxref\n${start}\n%%EOF\n`);
  const { buffer, byteOffset } = Buffer.concat(parts, length);
  return new Uint8Array(buffer, byteOffset, length);
}
