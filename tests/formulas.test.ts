/** Runs every worked check of every formula, and asks each formula for what the methods page needs. */
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { formulas } from "../src/formulas.generated.js";
import { OutOfRange } from "../src/kernel/formula.js";

describe("formulas", () => {
  it("have ids that occur once", () => {
    const ids = formulas.map((f) => f.id);
    expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([]);
  });

  it("are used: what nothing computes has no place on the methods page", () => {
    const texts = readdirSync("src", { recursive: true, encoding: "utf8" })
      .filter((file) => file.endsWith(".ts") && !file.endsWith(".generated.ts"))
      .map((file) => readFileSync(`src/${file}`, "utf8"));
    const idle = formulas.filter(({ id }) => !texts.some((text) => text.includes(`/${id}.js"`)));
    expect(idle.map(({ id }) => id)).toEqual([]);
  });

  for (const formula of formulas)
    describe(formula.id, () => {
      it("has a source and at least one check", () => {
        expect(formula.checks.length).toBeGreaterThan(0);
        expect(formula.source.where.length).toBeGreaterThan(3);
      });
      for (const check of formula.checks)
        it(`gives ${check.expect} as in: ${check.from}`, () => {
          if (check.expect === "refused") {
            expect(() => formula.compute(...check.given)).toThrow(OutOfRange);
            return;
          }
          if (check.tolerance === undefined) throw new Error("a check with a number needs a tolerance");
          const out = formula.compute(...check.given);
          const value = check.pick ? check.pick(out) : out;
          expect(Math.abs(value - check.expect), `got ${value}`).toBeLessThanOrEqual(check.tolerance);
        });
    });
});
