/** Bringing in files of instruments: how they are written, what their columns mean, and where it goes. */
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { parse } from "yaml";
import { instrumentEntry } from "../../src/cli/import/instrument.js";
import { withBlock } from "../../src/cli/import/into-session.js";
import { withInstrument } from "../../src/cli/import/lab-entry.js";
import { propose, type Told } from "../../src/cli/import/propose.js";
import { type Sniffed, sniff } from "../../src/cli/import/sniff.js";
import { bare, SYNONYMS } from "../../src/cli/import/synonyms.js";
import { beatsText, dxaBlock, lactateBlock } from "../../src/cli/import/tables.js";
import type { Channel } from "../../src/kernel/series.js";
import { readSeries, type SeriesMapping } from "../../src/read/series.js";
import fc from "../tools/properties.js";
import { copyPractice, EXAMPLE } from "./practice-copy.js";

const sniffed = (content: string | Uint8Array): Sniffed => {
  const found = sniff(typeof content === "string" ? new TextEncoder().encode(content) : content);
  if (found === undefined) throw new Error("no table found");
  return found;
};
const understood = (content: string | Uint8Array, told: Told = {}) => {
  const found = sniffed(content);
  const proposed = propose(found, told);
  const entry = instrumentEntry(found, proposed) as unknown as SeriesMapping;
  return { found, proposed, entry, reading: readSeries("f.csv", content, entry) };
};
const channel = (content: string | Uint8Array, name: Channel, told: Told = {}) =>
  Array.from(understood(content, told).reading.series?.channels[name] ?? []);

const GERMAN = `Messung;Belastung
Datum;02.03.2026

Zeit;V'O2;V'CO2;V'E BTPS;AF;HF;Last;V'O2/kg;Bemerkung
h:mm:ss;ml/min;ml/min;l/min;1/min;S/min;W;ml/min/kg;
0:00:05;312,5;260,1;9,8;12,5;66;0;4,5;Ruhe
0:00:10;1322,5;1270,1;40,1;13,5;---;100;4,6;
0:01:15;2342,5;2280,1;70,4;22,9;167;150;4,7;
`;

describe("how a file is written", () => {
  it("finds semicolons, decimal commas, lines before the headers, a row of units and a mark for no value", () => {
    const found = sniffed(GERMAN);
    expect(found).toMatchObject({ delimiter: ";", decimal: ",", headerLine: 4, skipped: 1, marks: ["---"] });
    expect(found?.endsBefore).toBeUndefined();
    expect(found.rows).toHaveLength(3);
  });
  it("ends before a summary below the data, and takes no column of words for one", () => {
    const found = (text: string) => sniff(new TextEncoder().encode(text));
    const ended = found("t,VO2\n1,0.3\n2,0.4\nMean,0.35\nMax,0.4\n");
    expect(ended).toMatchObject({ endsBefore: "Mean", marks: [] });
    expect(ended?.rows).toHaveLength(2);
    expect(found("phase,VO2\nrest,0.3\nwork,0.4\nwork,0.5\n")?.endsBefore).toBeUndefined();
  });
  it("reads it as it is meant, in the channels' own units", () => {
    expect(channel(GERMAN, "time_s")).toEqual([5, 10, 75]);
    expect(channel(GERMAN, "vo2_l_min")).toEqual([0.3125, 1.3225, 2.3425]);
    expect(channel(GERMAN, "heart_rate_bpm")).toEqual([66, Number.NaN, 167]);
    expect(channel(GERMAN, "power_w")).toEqual([0, 100, 150]);
  });
  it.each([
    ["commas", "Time (s),HR (bpm)\n5,66\n10,67\n", ",", "."],
    ["tabs", "Time\tHeart rate\n5\t66\n10\t67\n", "\t", "."],
    ["bars", "time|hr\n5,5|66\n10,5|67\n", "|", ","],
    ["Windows line ends and a byte-order mark", "\uFEFFTime;HF\r\n5,5;66\r\n10,5;67\r\n", ";", ","],
    ["bars around decimal commas", "time|x|hr\n5,5|66,1|66\n10,5|67,2|67\n", "|", ","],
    ["tabs around decimal commas", "time\tx\thr\n5,5\t66,1\t66\n10,5\t67,2\t67\n", "\t", ","],
    ["quoted headers", '"Time, s";"HR"\n5;66\n10;67\n', ";", "."],
  ])("finds %s", (_, text, delimiter, decimal) => {
    expect(sniffed(text)).toMatchObject({ delimiter, decimal, headerLine: 1 });
    expect(channel(text, "heart_rate_bpm")).toEqual([66, 67]);
  });
  it("reads the Western 8-bit set and UTF-16", () => {
    const latin = Buffer.from("Zeit;Sättigung;Schläge\n5;98;1\n10;97;2\n", "latin1");
    expect(sniffed(latin)).toMatchObject({ encoding: "latin-1" });
    expect(channel(latin, "spo2_pct")).toEqual([98, 97]);
    const wide = Buffer.from("\uFEFFtime;hr\n5;66\n10;67\n", "utf16le");
    expect(channel(wide, "heart_rate_bpm")).toEqual([66, 67]);
  });
  it("finds no table in prose, and does not fail on anything", () => {
    expect(sniff(new TextEncoder().encode("Dear colleague,\nno numbers here.\n"))).toBeUndefined();
    fc.assert(fc.property(fc.uint8Array({ maxLength: 400 }), (bytes) => void sniff(bytes)));
    fc.assert(
      fc.property(fc.string({ unit: fc.constantFrom(..."1,;.\n\t ax\"'") }), (s) => void sniff(Buffer.from(s))),
    );
  });
});

describe("what columns mean", () => {
  const meant = (header: string, unit = "", value = "30") => {
    const { columns } = propose(sniffed(`t;${header}\ns;${unit}\n1;${value}\n2;${value}\n`));
    const found = columns.find((column) => column.channel !== "time_s");
    return found && `${found.channel} ${found.unit} ${found.condition ?? ""}`.trim();
  };
  // Trade terms in both languages, and ways exports write a unit: common practice.
  it.each([
    ["V̇O₂", "mL/min", "1500", "vo2_l_min mL/min STPD"],
    ["VO2 [L/min]", "", "1.5", "vo2_l_min L/min STPD"],
    ["vo2_ml_min", "", "1500", "vo2_l_min mL/min STPD"],
    ["Sauerstoffaufnahme", "l/min", "1.5", "vo2_l_min L/min STPD"],
    ["VE (L/min) ATPS", "", "60", "ventilation_l_min L/min ATPS"],
    ["Atemminutenvolumen", "l/min BTPS", "60", "ventilation_l_min L/min BTPS"],
    ["Atemfrequenz", "1/min", "30", "breathing_frequency_per_min 1/min"],
    ["RR", "1/min", "30", "breathing_frequency_per_min 1/min"],
    ["RR", "ms", "800", "rr_ms ms"],
    ["Herzfrequenz", "S/min", "130", "heart_rate_bpm 1/min"],
    ["Geschwindigkeit", "km/h", "10", "speed_km_h km/h"],
    ["Speed", "m/s", "3", "speed_km_h m/s"],
    ["Steigung", "%", "3", "grade_pct %"],
    ["Work rate", "W", "150", "power_w W"],
    ["Laktat", "mmol/l", "3", "lactate_mmol_l mmol/L"],
    ["PETCO2", "kPa", "5", "petco2_mmhg kPa"],
    ["SpO2", "", "97", "spo2_pct %"],
    ["FeO2", "", "16", "feo2 %"],
    ["FeO2", "", "0.16", "feo2 fraction"],
  ])("reads %s in %s as what it is", (header, unit, value, expected) => {
    expect(meant(header, unit, value)).toBe(expected);
  });
  it.each(["VO2/kg", "VO2 (mL/min/kg)", "METS", "RER", "Phase", "Name"])("does not take %s", (header) => {
    expect(meant(header)).toBeUndefined();
  });
  it("has no name that means two channels", () => {
    const names = Object.values(SYNONYMS).flatMap((list) => [...new Set(list.map(bare))]);
    expect(names.filter((name, i) => names.indexOf(name) !== i)).toEqual([]);
  });
  it("tells times of the day from elapsed times, and says what it assumed", () => {
    const clock = understood("Zeit;HF\n08:10:05;66\n08:10:10;67\n");
    expect(clock.proposed.columns[0]).toMatchObject({ unit: "clock" });
    expect(clock.proposed.columns[0]?.assumed[0]).toMatch(/the time of day, since it begins at 08:10:05/);
    expect(Array.from(clock.reading.series?.channels.time_s ?? [])).toEqual([0, 5]);
    expect(channel("Zeit;HF\n02:05;66\n02:10;67\n", "time_s")).toEqual([125, 130]);
  });
  it("asks for the gas condition of a volume and takes none for granted", () => {
    const { proposed } = understood("t;VO2;VCO2;VE\ns;L/min;L/min;L/min\n1;1;1;30\n2;1;1;30\n");
    expect(proposed.missing).toEqual([
      "the gas condition of VE: --condition ventilation_l_min=BTPS (or ATPS, STPD, ATPD, ambient)",
    ]);
  });
  it("does what it is told before what it guesses", () => {
    const text = "t;A;VO2\ns;;L/min\n1;1500;9\n2;1500;9\n";
    expect(channel(text, "vo2_l_min", { vo2_l_min: { header: "A", unit: "mL/min" } })).toEqual([1.5, 1.5]);
  });
});

describe("the example's own files", () => {
  const lab = parse(readFileSync(join(EXAMPLE, "lab.yaml"), "utf8")) as { instruments: Record<string, SeriesMapping> };
  const files = readdirSync(EXAMPLE, { recursive: true, encoding: "utf8" }).filter((file) =>
    /clients\/.*(treadmill|cycle|ramp|rest)\w*\.csv$/.test(file),
  );
  it("are understood without the mapping that was written by hand for them", () => {
    expect(files.length).toBeGreaterThan(5);
    for (const file of files) {
      const bytes = readFileSync(join(EXAMPLE, file));
      const { reading } = understood(bytes);
      expect(
        reading.diagnostics.filter((d) => d.severity === "error"),
        file,
      ).toEqual([]);
      const hand = Object.values(lab.instruments)
        .filter((mapping) => mapping.columns !== undefined)
        .map((mapping) => readSeries(file, bytes, mapping).series)
        .find((series) => series !== undefined);
      // The mapping by hand may call a 0 missing that an instrument could have meant: those cells are left out.
      for (const [name, values] of Object.entries(hand?.channels ?? {})) {
        const found = reading.series?.channels[name as Channel];
        const differs = Array.from(values).filter((x, i) => !Number.isNaN(x) && x !== found?.[i]);
        expect(differs, `${file} ${name}`).toEqual([]);
      }
    }
  });
});

const RAMPS = "../shared/data/ramp72/tests";
describe("published recordings", () => {
  it.skipIf(!existsSync(RAMPS))(
    "of 72 ramp tests are understood (skipped where ../shared/data/ramp72 is not there)",
    () => {
      for (const file of readdirSync(RAMPS).filter((name) => name.endsWith(".csv"))) {
        const { proposed, reading } = understood(readFileSync(join(RAMPS, file)));
        expect(
          proposed.columns.map((c) => `${c.channel} ${c.unit}`),
          file,
        ).toEqual(["time_s s", "vo2_l_min L/min", "vco2_l_min L/min", "speed_km_h km/h", "grade_pct %", "power_w W"]);
        expect(
          reading.diagnostics.filter((d) => d.severity === "error"),
          file,
        ).toEqual([]);
      }
    },
  );
});

describe("into lab.yaml and a session", () => {
  const entry = { kind: "heart-rate monitor", columns: { rr_ms: { column: "RR", unit: "ms" } } };
  it("changes no other byte", () => {
    const text = readFileSync(join(EXAMPLE, "lab.yaml"), "utf8");
    const after = withInstrument(text, "belt", entry);
    const added = "  belt:\n    kind: heart-rate monitor\n    columns:\n      rr_ms: {column: RR, unit: ms}\n";
    expect(after.replace(added, "")).toBe(text);
    expect((parse(after) as { instruments: object }).instruments).toMatchObject({ belt: entry });
  });
  it.each([
    ["no section", "name: A   # ours\n"],
    ["an empty section", "name: A   # ours\ninstruments:\n  # none yet\n"],
    ["braces", "name: A   # ours\ninstruments: {scales: {kind: scales}}   # old\n"],
    ["the last line", "name: A   # ours\ninstruments:\n  scales: {kind: scales}"],
    [
      "an entry without columns",
      "name: A   # ours\ninstruments:\n  belt: {kind: other, serial: '12'}\n  x:\n    kind: other\n",
    ],
  ])("finds a place in a file with %s", (_, text) => {
    const after = withInstrument(text, "belt", entry);
    const { instruments, name } = parse(after) as { instruments: Record<string, object>; name: string };
    expect(name).toBe("A");
    expect(instruments.belt).toMatchObject(entry);
    expect(after).toContain("# ours");
  });
  it("adds a block, or keys to a block, and never overwrites a value", () => {
    const text = "waymark: session 1\nlactate:\n  site: earlobe   # left\n\nremarks: [x]\n";
    const after = withBlock("s", text, "lactate", { steps: [{ power_w: 100, lactate_mmol_l: 1.2 }] });
    expect(after).toBe(
      "waymark: session 1\nlactate:\n  site: earlobe   # left\n  steps:\n    - {power_w: 100, lactate_mmol_l: 1.2}\n\nremarks: [x]\n",
    );
    expect(() => withBlock("s", after, "lactate", { steps: [] })).toThrow(/holds lactate\.steps already/);
    expect(parse(withBlock("s", text, "dxa", { whole: { fat_g: 1 } }))).toMatchObject({ dxa: { whole: { fat_g: 1 } } });
  });
});

describe("small tables", () => {
  it("reads lactate steps, the value at rest and a failed sample", () => {
    const found = sniffed(
      "Stufe;Leistung (W);Laktat (mmol/l);HF\nRuhe;0;0,9;70\n1;100;1,2;110\n2;140;-;131\n3;180;3,8;152\n",
    );
    expect(lactateBlock(found, propose(found))?.keys).toEqual({
      rest_lactate_mmol_l: 0.9,
      steps: [
        { power_w: 100, lactate_mmol_l: 1.2, heart_rate_bpm: 110 },
        { power_w: 140, heart_rate_bpm: 131 },
        { power_w: 180, lactate_mmol_l: 3.8, heart_rate_bpm: 152 },
      ],
    });
  });
  it("reads regions of the body in grams, from kilograms too, and says what it passed over", () => {
    const read = dxaBlock(
      sniffed(
        "Region;Fett (kg);Mager (kg);BMC (kg)\nLinker Arm;1,01;2,19;0,165\nRumpf;9,23;20,62;0,82\nGesamt;20,14;43,82;2,61\nHals;1;1;1\n",
      ),
    );
    expect(read?.keys).toEqual({
      whole: { fat_g: 20140, lean_g: 43820, bmc_g: 2610 },
      trunk: { fat_g: 9230, lean_g: 20620, bmc_g: 820 },
      left_arm: { fat_g: 1010, lean_g: 2190, bmc_g: 165 },
    });
    expect(read?.notes).toEqual(['the row "Hals" names no region that is known here; passed over']);
  });
  it("puts a header above times between beats", () => {
    expect(beatsText(sniffed("812\n806\n799\n"))).toEqual({ text: "RR (ms)\n812\n806\n799\n", unit: "ms", beats: 3 });
    expect(beatsText(sniffed("0.812\n0.806\n0.799\n"))?.unit).toBe("s");
    expect(beatsText(sniffed("0,812\n0,806\n0,799\n"))).toMatchObject({ unit: "s", beats: 3 });
    expect(beatsText(sniffed("12\n13\n"))).toBeUndefined();
  });
});

describe("one column", () => {
  it.each(["RR (s)\n0,812\n0,806\n", "RR (s)\n0.812\n0.806\n"])(
    "is read by the mapping that is written for it",
    (text) => {
      expect(channel(text, "rr_ms")).toEqual([812, 806]);
    },
  );
});

describe("waymark import", () => {
  const folder = mkdtempSync(join(tmpdir(), "import-"));
  afterAll(() => rmSync(folder, { recursive: true }));
  it("writes the mapping, refuses to write over one, and shows without writing", () => {
    const copy = copyPractice(["c-044"]);
    const file = join(folder, "german.csv");
    writeFileSync(file, GERMAN);
    const before = readFileSync(join(copy.root, "lab.yaml"), "utf8");
    expect(copy.run("import", file, "--as", "new_cart", "--show").out).toMatch(
      /Nothing written\. In lab\.yaml it would be:/,
    );
    expect(readFileSync(join(copy.root, "lab.yaml"), "utf8")).toBe(before);
    const made = copy.run("import", file, "--as", "new_cart", "--into", "c-044/2026-03-30-baseline");
    expect(made).toMatchObject({ code: 0, err: "" });
    expect(made.out).toMatch(
      /german\.csv: 3 rows of 9 columns, semicolons between cells, decimal comma, headers on line 4/,
    );
    expect(made.out).toMatch(/time_s {2}vo2_l_min[\s\S]*\n {2}5 {7}0\.3125/);
    expect(copy.run("check").code).toBe(0);
    expect(copy.run("import", file, "--as", "new_cart").err).toMatch(
      /knows the columns of new_cart already.*--replace/,
    );
    expect(copy.run("import", file, "--as", "new_cart", "--replace")).toMatchObject({ code: 0 });
    expect(copy.run("import", file, "--as", "new_cart", "--unit", "vo2_l_min=W").err).toMatch(
      /vo2_l_min is never in W/,
    );
    expect(copy.run("import", file)).toMatchObject({ code: 2 });
    copy.remove();
  });
  it("puts a table into a session that checks", () => {
    const copy = copyPractice(["c-044"]);
    const file = join(folder, "steps.csv");
    writeFileSync(file, "Leistung (W);Laktat (mmol/l);HF\n80;1,2;110\n120;1,6;131\n160;3,8;152\n");
    expect(copy.run("import", file, "--block", "lactate").out).toMatch(/^lactate:\n {2}steps:\n {4}- \{power_w: 80/);
    const put = copy.run("import", file, "--block", "lactate", "--into", "c-044/2026-06-08-retest");
    expect(put.out).toMatch(/session\.yaml: lactate now holds steps\./);
    expect(copy.run("check")).toMatchObject({ code: 0 });
    copy.remove();
  });
});
