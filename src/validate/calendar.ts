/** Dates as ISO texts; no clock and no time zone. */

/** Year, month, day of a date that exists, or undefined. Years before 1800 are slips (0026 for 2026). */
export function readDate(text: string): readonly [number, number, number] | undefined {
  const match = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
  if (!match) return undefined;
  const [year, month, day] = [Number(match[1]), Number(match[2]), Number(match[3])];
  return year >= 1800 && month >= 1 && month <= 12 && day >= 1 && day <= daysIn(year, month)
    ? [year, month, day]
    : undefined;
}

export function daysIn(year: number, month: number): number {
  if (month === 2) return (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0 ? 29 : 28;
  return [4, 6, 9, 11].includes(month) ? 30 : 31;
}

/**
 * Decimal age: completed years plus the elapsed share of the current one, birthday to birthday. Somebody born on
 * 29 February has their birthday on 1 March in other years. Both dates must exist; the visit must not precede birth.
 */
export function decimalAge(birth: string, visit: string): number {
  const b = readDate(birth);
  const v = readDate(visit);
  if (!b || !v || visit < birth) throw new RangeError(`no age from ${birth} to ${visit}`);
  const birthdayIn = (year: number) =>
    b[1] === 2 && b[2] === 29 && daysIn(year, 2) === 28 ? Date.UTC(year, 2, 1) : Date.UTC(year, b[1] - 1, b[2]);
  const at = Date.UTC(v[0], v[1] - 1, v[2]);
  const years = v[0] - b[0] - (at < birthdayIn(v[0]) ? 1 : 0);
  const last = birthdayIn(b[0] + years);
  return years + (at - last) / (birthdayIn(b[0] + years + 1) - last);
}

/** The ISO forms of a date written in another common order: one, or two where day and month cannot be told apart. */
export function suggestDates(text: string): readonly string[] {
  const named = /^(\d{1,4})[-./ ](\d{1,2})[-./ ](\d{1,4})$/.exec(text.trim());
  if (!named) return [];
  const [a, b, c] = [Number(named[1]), Number(named[2]), Number(named[3])];
  const iso = (y: number, m: number, d: number) =>
    `${String(y).padStart(4, "0")}-${String(m).padStart(2, "0")}-${String(d).padStart(2, "0")}`;
  const candidates = (a > 31 ? [iso(a, b, c)] : c > 31 ? [iso(c, b, a), iso(c, a, b)] : []).filter((d) => readDate(d));
  return [...new Set(candidates)].filter((day) => day !== text);
}
