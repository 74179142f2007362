/**
 * Bytes to text. YAML must be UTF-8: a guess would turn a µ into something else in a record kept for decades.
 * CSV comes out of instruments, so its older character sets are accepted.
 */
export type Encoding = "utf-8" | "latin-1" | "utf-16";

export const BYTE_ORDER_MARK = "\uFEFF";

/** UTF-8 text with its byte-order mark kept, or why not. */
export function decodeStrictly(bytes: Uint8Array): { text: string } | { fault: "utf-16" | "not utf-8" } {
  if (looksLikeUtf16(bytes)) return { fault: "utf-16" };
  try {
    return { text: new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes) };
  } catch {
    return { fault: "not utf-8" };
  }
}

/** Text of a CSV in the stated encoding; unstated: UTF-16 by its mark, else UTF-8, else the Western 8-bit set. */
export function decodeLeniently(bytes: Uint8Array, encoding?: Encoding): string {
  if (encoding === "utf-16" || (encoding === undefined && looksLikeUtf16(bytes)))
    return new TextDecoder(bytes[0] === 0xfe || bytes[0] === 0 ? "utf-16be" : "utf-16le").decode(bytes);
  if (encoding === "latin-1") return new TextDecoder("windows-1252").decode(bytes);
  const strict = decodeStrictly(bytes);
  const text = "text" in strict ? strict.text : new TextDecoder("windows-1252").decode(bytes);
  return text.startsWith(BYTE_ORDER_MARK) ? text.slice(1) : text;
}

function looksLikeUtf16(bytes: Uint8Array): boolean {
  const [a, b] = bytes;
  return (a === 0xff && b === 0xfe) || (a === 0xfe && b === 0xff) || (bytes.length > 3 && (a === 0 || b === 0));
}
