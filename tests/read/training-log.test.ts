/** A client's training log: what is known is read, what is missing stays missing, what cannot be is pointed at with its line. */
import { describe, expect, it } from "vitest";
import { readTrainingLog } from "../../src/read/training-log.js";

const read = (text: string, block = {}) =>
  readTrainingLog({ file: "log.csv", ...block }, text, "clients/c-017/visit/log.csv");

describe("a training log", () => {
  it("is read with gaps left as gaps, never as zero", () => {
    const { sessions, diagnostics } = read("date,minutes,rpe,climb_m\n2026-03-03,45,6,\n2026-03-05,60,,250\n\n");
    expect(diagnostics).toEqual([]);
    expect(sessions).toEqual([
      { date: "2026-03-03", minutes: 45, rating: 6 },
      { date: "2026-03-05", minutes: 60, climbM: 250 },
    ]);
    expect(read("date,minutes,rpe\n2026-03-03,45,0\n").sessions?.[0]?.rating).toBe(0);
  });

  it("takes other headers, semicolons, decimal commas and a byte-order mark", () => {
    const text = "\uFEFFTag;Dauer;km\n2026-03-03;45;5,5\n";
    const block = { columns: { date: "Tag", minutes: "Dauer", distance_km: "km" }, delimiter: ";", decimal: "," };
    expect(read(text, block).sessions).toEqual([{ date: "2026-03-03", minutes: 45, distanceKm: 5.5 }]);
    expect(read(new TextEncoder().encode(text) as never, block).sessions).toHaveLength(1);
  });

  it("names every fault with its line and header in one run", () => {
    const { sessions, diagnostics } = read(
      "date,minutes,rpe\n3.3.2026,45,6\n2026-02-30,45,6\n2026-03-05,,6\n2026-03-06,4500,6\n2026-03-07,45,16\n2026-03-08,x,3\n",
    );
    expect(sessions).toBeUndefined();
    expect(diagnostics.map((d) => [d.at.line, d.at.header])).toEqual([
      [2, "date"],
      [3, "date"],
      [4, "minutes"],
      [5, "minutes"],
      [6, "rpe"],
      [7, "minutes"],
    ]);
  });

  it("asks for the columns it needs", () => {
    expect(read("day,minutes\n2026-03-03,45\n").diagnostics[0]).toMatchObject({ expected: "a column date" });
    expect(read("").diagnostics).toHaveLength(2);
  });
});
