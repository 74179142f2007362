/** What nobody reads is left out of a dataflow; what is left draws the same (svg.test.ts draws with it). */
import { describe, expect, it } from "vitest";
import { lean } from "../../src/report/lean-dataflow.js";

const operators = [
  { id: 0, type: "collect" },
  { id: 1, type: "mark", params: { markdef: { role: "axis-label" }, pulse: { $ref: 0 } } },
  { id: 2, type: "bound", params: { mark: { $ref: 1 }, pulse: { $ref: 1 } } },
  { id: 3, type: "render", params: { pulse: { $ref: 2 } } },
  { id: 4, type: "sieve", params: { pulse: { $ref: 3 } }, parent: { $ref: 9 } },
  { id: 5, type: "mark", params: { markdef: { role: "mark" }, pulse: { $ref: 0 } } },
  { id: 6, type: "bound", params: { mark: { $ref: 5 }, pulse: { $ref: 5 } } },
  { id: 7, type: "sieve", params: { pulse: { $ref: 0 } } },
  { id: 8, type: "operator", params: { list: { $ref: 7 } } },
  { id: 9, type: "viewlayout" },
];

describe("a lean dataflow", () => {
  const left = lean({ description: "as it was", operators });
  const byId = new Map((left.operators as typeof operators).map((one) => [one.id, one]));
  it("repaints nothing, and bounds only what axes are laid out by", () => {
    expect([...byId.keys()]).toEqual([0, 1, 2, 5, 7, 8, 9]);
    expect(left.description).toBe("as it was");
  });
  it("lets follow what followed", () => {
    expect(byId.get(2)?.parent).toEqual({ $ref: 9 });
    expect(byId.get(5)?.parent).toBeUndefined();
  });
  it("keeps what another reads", () => {
    expect(byId.get(7)).toEqual(operators[7]);
  });
});
