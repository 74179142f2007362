/** Characters a reader of the file cannot see, though they change what it says. */
export interface Hidden {
  readonly at: number;
  readonly code: number;
  readonly kind: "control" | "direction" | "invisible";
}

// Built from numbers, so that this file holds none of the characters it looks for.
const range = (from: number, to: number) =>
  `\\u${from.toString(16).padStart(4, "0")}-\\u${to.toString(16).padStart(4, "0")}`;
const CONTROL = `${range(0x00, 0x08)}${range(0x0b, 0x0c)}${range(0x0e, 0x1f)}${range(0x7f, 0x9f)}`;
const DIRECTION = `${range(0x200e, 0x200f)}${range(0x202a, 0x202e)}${range(0x2066, 0x2069)}${range(0x061c, 0x061c)}`;
const INVISIBLE = `${range(0x200b, 0x200d)}${range(0x2060, 0x2064)}${range(0xfeff, 0xfeff)}${range(0x00ad, 0x00ad)}${range(0x2028, 0x2029)}${range(0xd800, 0xdfff)}`;
const ANY = new RegExp(`[${CONTROL}${DIRECTION}${INVISIBLE}]`, "g");
const LONE_OR_LISTED = new RegExp(`[${CONTROL}]`);
const DIRECTING = new RegExp(`[${DIRECTION}]`);

/** The first hidden characters of a text, at most `limit`. A byte-order mark at the very start is allowed. */
export function hiddenCharacters(text: string, limit = 20): Hidden[] {
  const found: Hidden[] = [];
  ANY.lastIndex = 0;
  for (let match = ANY.exec(text); match !== null && found.length < limit; match = ANY.exec(text)) {
    const at = match.index;
    const unit = text.charCodeAt(at);
    if (unit === 0xfeff && at === 0) continue;
    if (unit >= 0xd800 && unit <= 0xdfff && !isLoneSurrogate(text, at)) continue;
    const kind = LONE_OR_LISTED.test(match[0]) ? "control" : DIRECTING.test(match[0]) ? "direction" : "invisible";
    found.push({ at, code: unit, kind });
  }
  return found;
}

function isLoneSurrogate(text: string, at: number): boolean {
  const unit = text.charCodeAt(at);
  if (unit < 0xdc00) {
    const next = text.charCodeAt(at + 1);
    return !(next >= 0xdc00 && next <= 0xdfff);
  }
  const before = text.charCodeAt(at - 1);
  return !(before >= 0xd800 && before <= 0xdbff);
}
