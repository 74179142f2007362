import { describe, expect, it } from "vitest";
import { deriveBloodPressure } from "../../src/derive/blood-pressure.js";
import { ABSOLUTE, EMERGENCY, RELATIVE, SYMPTOMS } from "../../src/derive/screening/lists.js";
import { deriveScreening } from "../../src/derive/screening.js";
import type { Screening, Session } from "../../src/kernel/generated/session.js";
import { openNotebook } from "../../src/kernel/notebook.js";
import fc from "../tools/properties.js";
import { type Around, because, find, judgement, table, visitOf } from "./visit-of.js";

const no = (words: object) => Object.fromEntries(Object.keys(words).map((name) => [name, false]));
const clear: Screening = {
  regularly_active: true,
  known_disease: { cardiovascular: false, metabolic: false, renal: false },
  symptoms: no(SYMPTOMS),
  emergency_signs: no(EMERGENCY),
  absolute_contraindications: no(ABSOLUTE),
  relative_contraindications: no(RELATIVE),
  intended_intensity: "maximal",
};
const screened = (screening: Screening | undefined, blocks: Partial<Session> = {}, around?: Around) => {
  const book = openNotebook();
  const visit = visitOf({ ...blocks, ...(screening ? { screening } : {}) }, around);
  deriveBloodPressure(book, visit);
  deriveScreening(book, visit);
  return book.entries();
};
const verdict = (screening: Screening | undefined, blocks?: Partial<Session>, around?: Around) =>
  judgement(screened(screening, blocks, around), "screening_decision")?.verdict;
const clearance = { by: "physician", date: "2025-09-01", intensity: "maximal", change_since: false } as const;
const disease = { cardiovascular: false, metabolic: true, renal: false };
const pressure = (systolic: number, diastolic: number): Partial<Session> => ({
  blood_pressure: { readings: [{ systolic_mmhg: systolic, diastolic_mmhg: diastolic, pulse_per_min: 60 }] },
});

describe("decision", () => {
  it("proceeds when every answer is given and none speaks against it", () => expect(verdict(clear)).toBe("proceed"));
  // Riebe D et al. 2015, decision chart
  it("refers known disease before vigorous exercise, not before moderate", () => {
    expect(verdict({ ...clear, known_disease: disease })).toBe("refer");
    expect(verdict({ ...clear, known_disease: disease, intended_intensity: "moderate" })).toBe("proceed");
  });
  it("stops an active client with symptoms and refers an inactive one", () => {
    const symptoms = { ...no(SYMPTOMS), chest_discomfort: true };
    expect(verdict({ ...clear, symptoms })).toBe("stop");
    expect(verdict({ ...clear, symptoms, regularly_active: false })).toBe("refer");
  });
  it("stops for each sign of emergency and each absolute contraindication", () => {
    for (const name of Object.keys(EMERGENCY))
      expect(verdict({ ...clear, emergency_signs: { ...no(EMERGENCY), [name]: true } }), name).toBe("stop");
    for (const name of Object.keys(ABSOLUTE))
      expect(verdict({ ...clear, absolute_contraindications: { ...no(ABSOLUTE), [name]: true } }), name).toBe("stop");
  });
  it("refers each relative contraindication, unless cleared", () => {
    for (const name of Object.keys(RELATIVE)) {
      const found = { ...clear, relative_contraindications: { ...no(RELATIVE), [name]: true } };
      expect(verdict(found), name).toBe("refer");
      expect(verdict({ ...found, clearance }), name).toBe("proceed");
    }
  });
});

describe("missing answers", () => {
  const questions = (["regularly_active", "intended_intensity"] as const).map((name) => [name, undefined] as const);
  const inGroups = (
    [
      "known_disease",
      "symptoms",
      "emergency_signs",
      "absolute_contraindications",
      "relative_contraindications",
    ] as const
  ).flatMap((group) => Object.keys(clear[group] ?? {}).map((name) => [group, name] as const));
  it.each([...questions, ...inGroups])("refers without %s %s", (group, name) => {
    const { [group]: answers, ...rest } = clear;
    const left =
      name === undefined
        ? {}
        : { [group]: Object.fromEntries(Object.entries(answers as object).filter(([n]) => n !== name)) };
    expect(verdict({ ...rest, ...left })).toBe("refer");
  });
  it("never turns a missing answer into proceed, whatever else is answered", () => {
    const answer = fc.constantFrom(true, false, undefined);
    fc.assert(
      fc.property(answer, answer, answer, fc.boolean(), (active, chest, metabolic, cleared) => {
        const found = verdict({
          ...clear,
          ...(active === undefined ? {} : { regularly_active: active }),
          symptoms: {
            ...no(SYMPTOMS),
            ...(chest === undefined ? { chest_discomfort: undefined as never } : { chest_discomfort: chest }),
          },
          known_disease: { cardiovascular: false, renal: false, ...(metabolic === undefined ? {} : { metabolic }) },
          ...(cleared ? { clearance } : {}),
        });
        if (chest === undefined || metabolic === undefined) expect(found).not.toBe("proceed");
      }),
    );
  });
  it("refers a tested visit without any screening, and leaves one with grip and pressure alone", () => {
    expect(verdict(undefined, { field_tests: { twelve_minute_run: { distance_m: 2600 } } })).toBe("refer");
    expect(verdict(undefined, { strength: { grip: { left_kg: 30 } }, ...pressure(120, 80) })).toBeUndefined();
  });
  it("takes answers older than 12 months for none", () => {
    const asked = (date: string) => verdict(undefined, {}, { client: { screening: { ...clear, date } } });
    expect(asked("2025-03-01")).toBe("proceed"); // 366 days before 2026-03-02
    expect(asked("2025-02-28")).toBe("refer");
  });
  it("takes the client's own screening and lets the visit's answers go before it", () => {
    expect(verdict(undefined, {}, { client: { screening: clear } })).toBe("proceed");
    expect(verdict({ known_disease: disease }, {}, { client: { screening: clear } })).toBe("refer");
  });
});

describe("clearance", () => {
  const found = { ...clear, known_disease: disease };
  it.each([
    [{}, "proceed"],
    [{ date: "2025-02-28" }, "refer"], // older than 12 months on 2026-03-02
    [{ date: "2025-03-01" }, "proceed"], // 366 days
    [{ date: "2026-03-02" }, "proceed"], // the same day
    [{ date: "2026-04-01" }, "refer"], // after the visit
    [{ intensity: "moderate" as const }, "refer"],
    [{ change_since: true }, "refer"],
  ])("with %j gives %s", (change, expected) => {
    expect(verdict({ ...found, clearance: { ...clearance, ...change } })).toBe(expected);
  });
  it("needs the statement that nothing changed", () => {
    const { change_since: _, ...silent } = clearance;
    expect(verdict({ ...found, clearance: silent })).toBe("refer");
    expect(because(screened({ ...found, clearance: silent }), "medical_clearance")).toContain("change_since");
  });
});

describe("resting pressure", () => {
  // ESC 2024: urgent evaluation from 180/110; ACC/AHA 2002: no test above 200 or 110
  it.each([
    [179, 109, "proceed"],
    [180, 80, "stop"],
    [150, 110, "stop"],
    [204, 98, "stop"],
  ])("of %i/%i gives %s", (s, d, expected) => expect(verdict(clear, pressure(s, d))).toBe(expected));
  it("stops even where nothing was screened, and names the limit for tests only beyond it", () => {
    expect(verdict(undefined, pressure(185, 90))).toBe("stop");
    expect(because(screened(clear, pressure(204, 98)), "screening_decision")).toContain("above 200 systolic");
    expect(because(screened(clear, pressure(190, 98)), "screening_decision")).not.toContain("above 200 systolic");
  });
  it("lists a routine referral without stopping", () => {
    const found = screened(clear, pressure(144, 84));
    expect(table(found, "referral_flags")?.rows).toEqual([
      ["Resting blood pressure", "144/84 mmHg", "140 or 90 mmHg", "routine referral", "ESC 2024"],
    ]);
    expect(judgement(found, "screening_decision")?.verdict).toBe("proceed");
    expect(find(screened(clear, pressure(139, 84)), "referral_flags")).toBeUndefined();
  });
});

describe("resting pulse", () => {
  const pulse = (pulse_per_min: number, activity: "recreational" | "trained" = "recreational") =>
    table(
      screened(
        clear,
        { blood_pressure: { readings: [{ systolic_mmhg: 120, diastolic_mmhg: 75, pulse_per_min }] } },
        { client: { activity } },
      ),
      "referral_flags",
    )?.rows.map((row) => [row[1], row[2]]);
  // common practice: above 100, or below 40 in people who are not trained
  it("is listed above 100 and, untrained, below 40", () => {
    expect(pulse(100)).toBeUndefined();
    expect(pulse(101)).toEqual([["101 /min", "above 100 /min"]]);
    expect(pulse(40)).toBeUndefined();
    expect(pulse(39)).toEqual([["39 /min", "below 40 /min in people who are not trained"]]);
    expect(pulse(39, "trained")).toBeUndefined();
  });
});

describe("record", () => {
  it("says in words what speaks against exercise", () => {
    expect(because(screened({ ...clear, known_disease: disease }), "screening_decision")).toContain(
      "known diabetes: clear before vigorous; no medical clearance is recorded",
    );
    const { symptoms: _, ...silent } = clear;
    expect(because(screened(silent), "screening_decision")).toContain("not answered: symptoms (discomfort of chest");
  });
  it("marks limits that nobody signed, and names who did", () => {
    expect(judgement(screened(clear), "physician_sign_off")?.verdict).toBe("needed");
    const sign = { screening_sign_off: { by_role: "sports physician", date: "2026-01-10" } };
    expect(because(screened(clear, {}, { laboratory: sign }), "physician_sign_off")).toContain("sports physician");
  });
  it("keeps every question with its answer", () => {
    const rows = table(screened({ ...clear, regularly_active: true }), "screening_answers")?.rows ?? [];
    expect(rows.length).toBe(3 + 4 + 9 + 3 + 12 + 13);
    expect(rows.at(-1)).toEqual(["readiness", "staff, telephone plan and defibrillator checked", "not answered"]);
  });
  it("stops after an event that names disease, and not after a request of the client", () => {
    expect(verdict({ ...clear, events: ["moderate-or-severe-angina"] })).toBe("stop");
    expect(verdict({ ...clear, events: ["hypertensive-response"] })).toBe("refer");
    expect(find(screened(clear), "test_events")).toBeUndefined();
    expect(find(screened({ ...clear, events: [] }), "test_events")).toBeUndefined();
    expect(verdict({ ...clear, events: ["client-request", "fatigue-or-breathlessness"] })).toBe("proceed");
  });
});
