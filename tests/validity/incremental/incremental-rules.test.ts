/** Rules about the course of an incremental test, through the whole program, on the examiner's body. */
import { describe, expect, it } from "vitest";
import { rule as jump } from "../../../src/validity/incremental/heart-rate-jump.js";
import { rule as phases } from "../../../src/validity/incremental/phases-in-series.js";
import { send, sessionText } from "../../examiner/bench.js";
import { type Breath, exercise, PERSON } from "../../examiner/body.js";
import { commaCsv, EXAMINER_LAB, phasesText } from "../../examiner/files.js";

const test = exercise(PERSON, { start: 60, rise: 25, stageS: 0 }, 4);
const sent = (stated = phasesText(test), edit: (b: Breath) => Partial<Record<keyof Breath, number>> = () => ({})) =>
  send({
    lab: EXAMINER_LAB,
    session: sessionText(`incremental:\n  mode: cycle\n  series: a.csv\n  instrument: comma_cart\n${stated}`),
    files: { "a.csv": commaCsv(test, edit) },
  });
const remark = async (id: string, answer: ReturnType<typeof sent>) => {
  const found = (await answer).entry(`remark_${id.replaceAll("-", "_")}`);
  return found?.kind === "remark" ? found : undefined;
};

describe(jump.id, () => {
  const raised = (by: number) => (b: Breath) => (b.t > 600 && b.t < 630 ? { hr: b.hr + by } : {});
  it("sees twenty to thirty seconds of a doubled count, and not a step of ten", async () => {
    expect((await remark(jump.id, sent(undefined, raised(60))))?.severity).toBe("weakens");
    expect(await remark(jump.id, sent(undefined, raised(10)))).toBeUndefined();
    expect(await remark(jump.id, sent())).toBeUndefined();
  });
});

describe(phases.id, () => {
  const written = (incremental: number, recovery: number) =>
    `  phases: {incremental_start_s: ${incremental}, recovery_start_s: ${recovery}}\n`;
  it("withholds the test whose recovery was written before it began", async () => {
    const answer = sent(written(240, 100));
    expect((await remark(phases.id, answer))?.severity).toBe("fatal");
    expect((await answer).because("vo2_peak")).toMatch(/recovery at 100 s, but incremental phase at 240 s/);
  });
  it("doubts a test that ends after its file, by more than clocks differ", async () => {
    const last = test.breaths.at(-1)?.t ?? 0;
    expect((await remark(phases.id, sent(written(240, 5000))))?.severity).toBe("weakens");
    expect(await remark(phases.id, sent(written(240, Math.floor(last) + 29)))).toBeUndefined();
    expect(await remark(phases.id, sent())).toBeUndefined();
  });
});
