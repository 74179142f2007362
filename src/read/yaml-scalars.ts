/** The scalars of plain YAML: words and numbers by the core schema of YAML 1.2, and quoted text on one line. */

/** Thrown for what is not of the plain form; one object, because no reader asks where. */
export const notPlain = new Error("not of the plain form");
export function fail(): never {
  throw notPlain;
}

/** Offset after the mark that closes the quotation mark at `start`. */
export function closing(text: string, start: number, end: number): number {
  const mark = text[start];
  for (let i = start + 1; i < end; i++) {
    if (text[i] === "\\" && mark === '"') i++;
    else if (text[i] === mark) {
      if (mark === "'" && text[i + 1] === "'") i++;
      else return i + 1;
    }
  }
  return fail();
}

export function quoted(text: string): string {
  if (text[0] === "'") return text.slice(1, -1).replaceAll("''", "'");
  if (!text.includes("\\")) return text.slice(1, -1);
  try {
    return JSON.parse(text) as string; // every JSON string is the same YAML string; other escapes are not plain
  } catch {
    return fail();
  }
}

const DECIMAL = /^[-+]?(?:\d{1,15}\.?\d{0,15}|\.\d{1,15})(?:[eE][-+]?\d{1,2})?$/;
const WORDS: Readonly<Record<string, boolean | null>> = {
  ...{ null: null, Null: null, NULL: null },
  ...{ true: true, True: true, TRUE: true, false: false, False: false, FALSE: false },
};

/** A scalar without quotation marks, by the YAML 1.2 core schema. */
export function plain(word: string): string | number | boolean | null {
  const c = word.charCodeAt(0);
  const isLetter = (c >= 97 && c <= 122) || (c >= 65 && c <= 90) || c === 95 || c === 40 || c > 0xa0;
  if (isLetter) return Object.hasOwn(WORDS, word) ? (WORDS[word] as boolean | null) : word;
  const isDigit = c >= 48 && c <= 57;
  if (!isDigit && !/^[-+.]\d|^[-+]\.\d/.test(word)) return word === "~" ? null : fail();
  if (DECIMAL.test(word)) return Number(word);
  return /^0[xo]/.test(word) || /^[-+]?[\d.]+(?:[eE][-+]?\d+)?$/.test(word) ? fail() : word;
}
