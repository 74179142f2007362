/** How a language fills in its texts and writes its numbers. */

import { describe, expect, it } from "vitest";
import { toDecimals } from "../../src/kernel/rounding.js";
import { speechOf, type WordTree } from "../../src/kernel/speech.js";
import fc from "../tools/properties.js";

const language = {
  tag: "xx",
  decimal_sign: ",",
  months: "Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec",
  short_months: "J F M A M J J A S O N D",
  date: "{day} {month} {year}",
  list_last: "{first} & {last}",
};
const words: WordTree = {
  language,
  units: { "1/min": "per min", "kg.m": "kg m" },
  greeting: { twice: "{name}, {name}: {count} of {all}", plain: "no place {here-not}" },
};
const speech = speechOf(words);

describe("a text", () => {
  it("is found by its path, a name with a point in it too, and a group is none", () => {
    expect(speech.find("units.1/min")).toBe("per min");
    expect(speech.find("units.kg.m")).toBe("kg m");
    for (const path of ["units", "units.", "greeting.none", "constructor", "language.constructor", "__proto__", ""])
      expect(speech.find(path)).toBeUndefined();
  });
  it("is filled at every place, and at no other", () => {
    expect(speech.say("greeting.twice", { name: "{all}", count: 0, all: 5 })).toBe("{all}, {all}: 0 of 5");
    expect(speech.say("greeting.plain")).toBe("no place {here-not}");
  });
  it("says which place nothing fills", () => {
    expect(() => speech.say("greeting.twice", { name: "A", all: 1 })).toThrow("place {count} that nothing fills");
    const inherited = speechOf({ language, a: "{constructor}" });
    expect(() => inherited.say("a", {})).toThrow("place {constructor}");
    expect(() => speech.say("greeting.none")).toThrow("greeting.none has no text");
  });
  it("of another tree is another text", () => {
    const other = speechOf({ language, greeting: { plain: "other" } });
    expect([other.say("greeting.plain"), speechOf(words)]).toEqual(["other", speech]);
  });
});

describe("a number", () => {
  it("has the language's sign, a true minus and a thin space from ten thousand on", () => {
    expect(speech.number(-12345.678, 1)).toBe("\u221212\u202f345,7");
    expect(speech.number(1234567, 0)).toBe("1\u202f234\u202f567");
    expect(speech.number(9999, 2)).toBe("9999,00");
    expect(speech.number(-0.04, 1)).toBe("0,0");
  });
  it("has the digits that rounding gives", () => {
    const value = fc.double({ min: -1e9, max: 1e9, noNaN: true });
    fc.assert(
      fc.property(value, fc.integer({ min: 0, max: 6 }), (x, decimals) => {
        const digits = speech.number(x, decimals).replaceAll("\u202f", "").replace(",", ".").replace("\u2212", "-");
        expect(digits).toBe(toDecimals(x, decimals));
      }),
    );
  });
});
