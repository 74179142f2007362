/** What validation makes of good input, and single parts of it. */
import { describe, expect, it } from "vitest";
import { editDistance, nearest } from "../../src/kernel/near.js";
import { readYaml } from "../../src/read/yaml.js";
import { daysIn, decimalAge, readDate, suggestDates } from "../../src/validate/calendar.js";
import { openChecker } from "../../src/validate/checker.js";
import { resolveChoices } from "../../src/validate/choices.js";
import { isConfirmed } from "../../src/validate/confirmed.js";
import { fileNameFault } from "../../src/validate/file-name.js";
import { personal } from "../../src/validate/privacy.js";
import { references, seriesFiles } from "../../src/validate/references.js";
import { readTree, schemas, validateTree } from "./practice-tree.js";

const base = () => readTree("tests/golden/bad-input/_base");
const SESSION = "clients/c-017/2026-03-02-baseline/session.yaml";
const bytes = (text: string) => new TextEncoder().encode(text);
const textOf = (tree: ReadonlyMap<string, Uint8Array>, path: string) => new TextDecoder().decode(tree.get(path));

describe("a good session", () => {
  it("becomes a visit", async () => {
    const { validations } = await validateTree(base());
    const visit = validations[0]?.visit;
    expect(visit?.file).toBe("session.yaml");
    expect(visit?.client.id).toBe("c-017");
    expect(visit?.series["rest.csv"]?.length).toBe(4);
    expect(visit?.series["rest.csv"]?.conditions.ventilation_l_min).toBe("BTPS");
    // By hand: 45 birthdays by 14 May 2025, then 292 of 365 days to 2 March 2026.
    expect(visit?.ageYears).toBeCloseTo(45 + 292 / 365, 12);
  });

  it("is still given with warnings, and not with an error", async () => {
    const unusual = base();
    unusual.set(SESSION, bytes(textOf(unusual, SESSION).replace("21.5", "31")));
    const warned = (await validateTree(unusual)).validations[0];
    expect(warned?.diagnostics.map((d) => d.code)).toEqual(["unusual-value"]);
    expect(warned?.visit?.session.room?.temperature_c).toBe(31);
    const impossible = base();
    impossible.set(SESSION, bytes(textOf(impossible, SESSION).replace("21.5", "310")));
    expect((await validateTree(impossible)).validations[0]?.visit).toBeUndefined();
  });

  it("is quiet once an unusual value is confirmed, by key or in a sentence", async () => {
    for (const confirmed of ['{temperature_c: "heating broken"}', '"read twice"']) {
      const tree = base();
      tree.set(SESSION, bytes(textOf(tree, SESSION).replace("21.5", `31\n  confirmed: ${confirmed}`)));
      expect((await validateTree(tree)).diagnostics).toEqual([]);
    }
  });

  it("takes choices from the schema, the laboratory, the client and the session, the nearest first", async () => {
    const tree = base();
    tree.set("lab.yaml", bytes(`${textOf(tree, "lab.yaml")}choices: {peak_window_s: 20, hrmax_equation: nes-2013}\n`));
    const client = "clients/c-017/client.yaml";
    tree.set(client, bytes(`${textOf(tree, client)}choices: {hrmax_equation: gellish-2007}\n`));
    const { choices } = (await validateTree(tree)).validations[0]?.visit ?? {};
    expect(choices?.peak_window_s).toBe(20);
    expect(choices?.hrmax_equation).toBe("gellish-2007");
    const schema = (await openChecker(schemas)).schema("blocks/choices.schema.json");
    const { confirmed: _, ...known } = (schema?.properties ?? {}) as Record<string, unknown>;
    expect(Object.keys(choices ?? {}).sort()).toEqual(Object.keys(known).sort());
    expect(resolveChoices(schema ?? {}).peak_window_s).toBe(30);
  });

  it("offers repairs that mend the text", async () => {
    const tree = base();
    const broken = textOf(tree, SESSION)
      .replace("68.2", "68,2")
      .replace("172.4", "1.724")
      .replace("humidity_pct", "humidty_pct");
    tree.set(SESSION, bytes(broken));
    const { diagnostics } = await validateTree(tree);
    const repairs = diagnostics.flatMap((d) => (d.repair ? [d.repair] : [])).sort((a, b) => b.start - a.start);
    expect(repairs).toHaveLength(3);
    let mended = broken;
    for (const { start, end, text } of repairs) mended = mended.slice(0, start) + text + mended.slice(end);
    expect(mended).toBe(textOf(base(), SESSION));
  });
});

describe("the calendar", () => {
  it("knows the Gregorian leap years", () => {
    // Inter gravissimas, 1582: centuries are common years unless divisible by 400.
    expect([1900, 2000, 2024, 2026].map((year) => daysIn(year, 2))).toEqual([28, 29, 29, 28]);
    expect(readDate("2026-02-29")).toBeUndefined();
    expect(readDate("2024-02-29")).toEqual([2024, 2, 29]);
    expect(readDate("0026-03-02")).toBeUndefined();
  });

  it("counts age from birthday to birthday", () => {
    expect(decimalAge("1980-05-14", "2026-05-14")).toBe(46);
    expect(decimalAge("1980-05-14", "2026-05-13")).toBeCloseTo(45 + 364 / 365, 12);
    expect(decimalAge("2000-02-29", "2025-02-28")).toBeLessThan(25);
    expect(decimalAge("2000-02-29", "2025-03-01")).toBe(25);
    expect(() => decimalAge("2026-05-14", "2026-03-02")).toThrow(RangeError);
  });

  it("suggests a date only where one day is possible", () => {
    expect(suggestDates("14.05.1980")).toEqual(["1980-05-14"]);
    expect(suggestDates("2026-3-2")).toEqual(["2026-03-02"]);
    expect(suggestDates("03/04/2026")).toEqual(["2026-04-03", "2026-03-04"]);
    expect(suggestDates("99.99.2026")).toEqual([]);
  });
});

describe("names", () => {
  it("finds the word that was meant", () => {
    // Damerau's four slips (Commun ACM 7:171-176, 1964): one letter wrong, missing, too many, or two swapped.
    expect(["sexx", "sx", "sez", "esx"].map((w) => editDistance(w, "sex"))).toEqual([1, 1, 1, 1]);
    expect(nearest("statrue_cm", ["stature_cm", "mass_kg"])).toBe("stature_cm");
    expect(nearest("colour", ["stature_cm", "mass_kg"])).toBeUndefined();
    expect(nearest("W", ["s", "ms"])).toBeUndefined();
  });

  it("lets a file name stay inside the folder", () => {
    for (const name of ["rest.csv", "raw/rest 1.csv"]) expect(fileNameFault(name), name).toBeUndefined();
    for (const name of [
      "",
      "/etc/x.csv",
      "../x.csv",
      "a/../../x.csv",
      "C:\\x.csv",
      "a\\b.csv",
      "~/x.csv",
      "http://x/y.csv",
      "a//b.csv",
      ".hidden.csv",
      "a\u0000.csv",
      "x?.csv",
    ])
      expect(fileNameFault(name), name).toBeDefined();
  });

  it("finds series and instruments anywhere in a session", () => {
    const value = readYaml(
      "s.yaml",
      "a: {series: x.csv, instrument: cart}\nb: [{series: ../y.csv}, {series: x.csv}]\nc: {device: cuff}\n",
    ).value;
    expect(references(value).series.map((s) => s.file)).toEqual(["x.csv", "../y.csv", "x.csv"]);
    expect(references(value).instruments.map((s) => s.instrument)).toEqual(["cart", "cuff"]);
    expect(seriesFiles(value)).toEqual(["x.csv"]);
  });
});

describe("text that looks personal", () => {
  it("is told from the words and numbers of a laboratory", () => {
    const looks = (text: string) => personal(text, false)?.what;
    for (const text of [
      "Stages 100 120 140 160 180 W, cadence 80 85 90",
      "Times 0 5 10 15 20 25 30 min",
      "Modified Bruce protocol on Tuesday Morning, room 2026-03-02 08:30",
      "Mask size M; Borg 17; 748.5 mmHg",
      "Stopped by the client. Legs heavy.",
      "serial 4711-0815",
    ])
      expect(looks(text), text).toBeUndefined();
    expect(looks("call 030 1234567")).toBe("a telephone number");
    expect(looks("+44 20 7946 0000")).toBe("a telephone number");
    expect(looks("555-123-4567")).toBe("a telephone number");
    expect(looks("write to a.b@example.org")).toBe("an e-mail address");
    expect(looks("measured by Erika Mustermann")).toBe("a name");
    expect(personal("Erika Mustermann", true)?.what).toBe("a name");
    expect(personal("E.M.", true)).toBeUndefined();
  });
});

describe("confirmed", () => {
  it("covers its own mapping with a sentence, and any depth by key", () => {
    const root = {
      a: { confirmed: "sure", x: 1, deep: { y: 2 } },
      b: { confirmed: { y: "sure", "list.z": "sure" }, deep: [{ y: 2 }], list: [{ z: 3 }] },
    };
    expect(isConfirmed(root, ["a", "x"])).toBe(true);
    expect(isConfirmed(root, ["a", "deep", "y"])).toBe(false);
    expect(isConfirmed(root, ["b", "deep", "0", "y"])).toBe(true);
    expect(isConfirmed(root, ["b", "list", "0", "z"])).toBe(true);
    expect(isConfirmed(root, ["b", "x"])).toBe(false);
  });
});
