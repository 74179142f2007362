/** Drawing of problems: the frame, what is escaped in it, and the list for other programs. */
import { describe, expect, it } from "vitest";
import {
  drawDiagnostic,
  drawDiagnostics,
  drawSummary,
  listDiagnostics,
  visible,
} from "../../src/cli/draw-diagnostic.js";
import type { Diagnostic } from "../../src/kernel/diagnostic.js";

const TEXT = "date: 2026-05-11\nsize:\n  stature_cm: 1.784\n  mass_kg: 72.1\n";
const diagnostic: Diagnostic = {
  code: "unit-slip",
  severity: "error",
  at: { file: "retest/session.yaml", line: 3, column: 15, length: 5 },
  found: "1.784",
  expected: "a number from 100 to 250, in cm",
  why: "predicted values scale with stature",
  fix: "1.784 looks like metres: write 178.4",
};

describe("drawDiagnostic", () => {
  it("draws heading, frame and facts", () => {
    expect(drawDiagnostic(diagnostic, TEXT)).toBe(
      [
        "error unit-slip   retest/session.yaml:3:15",
        "",
        "    2 | size:",
        "  > 3 |   stature_cm: 1.784",
        "      |               ^^^^^ found 1.784",
        "    4 |   mass_kg: 72.1",
        "",
        "  Expected  a number from 100 to 250, in cm",
        "  Why       predicted values scale with stature",
        "  Fix       1.784 looks like metres: write 178.4",
      ].join("\n"),
    );
  });

  it("says what was found in words where no line can be shown", () => {
    const drawn = drawDiagnostic({ ...diagnostic, at: { file: "a.csv", header: "VO2" } });
    expect(drawn).toContain('error unit-slip   a.csv   column "VO2"\n\n  Found     1.784\n');
  });

  it("keeps the mark under its word behind tabs, control and wide characters", () => {
    const text = "\tk\u0007ey: 9\n";
    const at = { file: "a", line: 1, column: 8, length: 1 };
    const [line = "", mark = ""] = drawDiagnostic({ ...diagnostic, at, found: "9" }, text)
      .split("\n")
      .slice(2);
    expect(line).toContain("\\u{09}k\\u{07}ey: 9");
    expect(mark.indexOf("^")).toBe(line.indexOf("9", line.indexOf("ey")));
  });

  it("cuts a long line around the mark", () => {
    const text = `${"x".repeat(500)}BAD${"y".repeat(500)}`;
    const at = { file: "a", line: 1, column: 501, length: 3 };
    const [line = "", mark = ""] = drawDiagnostic({ ...diagnostic, at }, text)
      .split("\n")
      .slice(2);
    expect(line.length).toBeLessThan(130);
    expect(line.slice(mark.indexOf("^"), mark.indexOf("^") + 3)).toBe("BAD");
  });

  it("lets nothing of the input move the cursor", () => {
    const nasty = "\u001b[2J\u202e\r\u0000\u009b";
    const drawn = drawDiagnostic(
      { ...diagnostic, found: nasty, fix: nasty, at: { ...diagnostic.at, file: nasty, header: nasty } },
      `a\nb\n${nasty}`,
    );
    expect(drawn.replaceAll("\n", "")).not.toMatch(/[\p{Cc}\p{Cf}]/u);
    expect(visible("\u202e")).toBe("\\u{202e}");
  });
});

describe("summary and list", () => {
  it("counts", () => {
    expect(drawSummary([])).toBe("No problems found.");
    expect(drawSummary([diagnostic, { ...diagnostic, severity: "warning" }])).toBe("1 error and 1 warning in 1 file.");
    expect(drawDiagnostics([diagnostic, diagnostic], () => TEXT).split("error unit-slip")).toHaveLength(3);
  });

  it("is flat data with every name present", () => {
    expect(listDiagnostics([diagnostic])).toEqual([
      {
        file: "retest/session.yaml",
        line: 3,
        column: 15,
        endColumn: 20,
        severity: "error",
        code: "unit-slip",
        message: "found 1.784; expected a number from 100 to 250, in cm; 1.784 looks like metres: write 178.4",
        found: "1.784",
        expected: "a number from 100 to 250, in cm",
        why: "predicted values scale with stature",
        fix: "1.784 looks like metres: write 178.4",
        header: null,
      },
    ]);
    const { at: _, ...rest } = diagnostic;
    expect(listDiagnostics([{ ...rest, at: { file: "a" } }])[0]).toMatchObject({
      line: null,
      column: null,
      endColumn: null,
    });
  });
});
