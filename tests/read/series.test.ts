/** From CSV text and a mapping to a Series. */
import { existsSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { channelNames, converter, unitsOf } from "../../src/kernel/channel-units.js";
import type { Series } from "../../src/kernel/series.js";
import { readSeries, type SeriesMapping } from "../../src/read/series.js";
import fc from "../tools/properties.js";

const MAPPING: SeriesMapping = {
  columns: {
    time_s: { column: "t", unit: "s" },
    vo2_l_min: { column: "VO2", unit: "L/min" },
    heart_rate_bpm: { column: "HR", unit: "1/min" },
    power_w: { column: "P", unit: "W" },
  },
};
const read = (text: string | Uint8Array, mapping: SeriesMapping = MAPPING): Series => {
  const { series, diagnostics } = readSeries("a.csv", text, mapping);
  if (series === undefined) throw new Error(JSON.stringify(diagnostics));
  return series;
};
const TEXT = "t,VO2,HR,P\n2.5,0.31,80,0\n5.25,0.4,,50\n\n8,0,0,50\n";

describe("readSeries", () => {
  it("reads mapped columns, remembers lines, and counts what is missing", () => {
    const series = read(TEXT);
    expect(series.length).toBe(3);
    expect([...series.lines]).toEqual([2, 3, 5]);
    expect([...(series.channels.time_s ?? [])]).toEqual([2.5, 5.25, 8]);
    expect([...(series.channels.vo2_l_min ?? [])]).toEqual([0.31, 0.4, Number.NaN]);
    expect([...(series.channels.heart_rate_bpm ?? [])]).toEqual([80, Number.NaN, Number.NaN]);
    // Zero watt is a work rate, not a gap.
    expect([...(series.channels.power_w ?? [])]).toEqual([0, 50, 50]);
    expect(series.missing).toEqual({ vo2_l_min: 1, heart_rate_bpm: 2 });
  });

  it("finds headers below a preamble, and skips a row of units", () => {
    const text = `recorded by nobody\n\n${TEXT.replace("P\n", "P\ns,L/min,1/min,W\n")}`;
    expect(read(text, { ...MAPPING, header_row: 3, skip_rows: 1 }).channels).toEqual(read(TEXT).channels);
  });

  it("leaves a summary below the data alone where the mapping says how it begins, and asks for that where it does not", () => {
    const text = `${TEXT}\n\nMean,1.2,,\nMax,3.1\n`;
    const [fault, ...more] = readSeries("a.csv", text, MAPPING).diagnostics;
    expect(more).toEqual([]);
    expect(fault?.found).toBe('rows below the data that begin with "Mean", "Max"');
    expect(fault?.fix).toContain('write ends_before: ["Mean"]');
    expect(fault?.at.line).toBe(text.split("\n").indexOf("Mean,1.2,,") + 1);
    expect(read(text, { ...MAPPING, ends_before: ["Mean"] })).toEqual(read(TEXT));
  });
  it("takes a lost or mistyped number in the last row for what it is", () => {
    const codes = (end: string) => readSeries("a.csv", TEXT + end, MAPPING).diagnostics.map((d) => d.found);
    const cells = (TEXT.trimEnd().split("\n").at(-1) as string).split(",").slice(1).join(",");
    expect(codes(`x9,${cells}\n`)[0]).toMatch(/^"x9"/);
    expect(codes(`NA,${cells}\n`).join()).not.toMatch(/below the data/);
  });

  it("reads UTF-16, the Western 8-bit set, and a byte-order mark", () => {
    const mapping: SeriesMapping = { columns: { time_s: { column: "zeit µ", unit: "s" } } };
    const text = "zeit µ;x\n1;2\n2;3\n";
    const expected = read(text, mapping).channels;
    expect(read(Buffer.from(text, "latin1"), mapping).channels).toEqual(expected);
    for (const mark of ["", "\uFEFF"]) {
      const little = Buffer.from(mark + text, "utf16le");
      expect(read(little, mapping).channels).toEqual(expected);
      expect(read(Buffer.from(little).swap16(), mapping).channels).toEqual(expected);
    }
    expect(read(Buffer.from(`\uFEFF${text}`, "utf8"), mapping).channels).toEqual(expected);
    expect(read(text.replaceAll("\n", "\r"), mapping).channels).toEqual(expected);
  });

  it("adds columns that are mapped as a list, and turns the time of a breath into a frequency", () => {
    const mapping: SeriesMapping = {
      columns: {
        breathing_frequency_per_min: { column: ["te", "ti"], unit: "s" },
        tidal_volume_l: { column: "vt", unit: "mL", condition: "BTPS" },
      },
    };
    const { channels, conditions } = read("te,ti,vt\n2,1,500\n1,1,1500\n", mapping);
    expect([...(channels.breathing_frequency_per_min ?? [])]).toEqual([20, 30]);
    // By hand: 0.5 L · 20/min = 10 L/min, 1.5 L · 30/min = 45 L/min.
    expect([...(channels.ventilation_l_min ?? [])]).toEqual([10, 45]);
    expect(conditions.ventilation_l_min).toBe("BTPS");
  });

  it("counts the time of a clock from the first row, over midnight", () => {
    const mapping: SeriesMapping = { columns: { time_s: { column: "t", unit: "clock" } } };
    expect([...(read("t,x\n23:59:50,1\n23:59:58,1\n0:00:04,1\n", mapping).channels.time_s ?? [])]).toEqual([0, 8, 14]);
  });

  it("gives the same series for decimal comma with semicolons, for tabs, and for plain text", () => {
    const row = fc.tuple(
      fc.integer({ min: 100, max: 6000 }),
      fc.integer({ min: 0, max: 220 }),
      fc.integer({ min: 0, max: 400 }),
    );
    fc.assert(
      fc.property(fc.array(row, { minLength: 1, maxLength: 30 }), (rows) => {
        const table = rows.map(([vo2, hr, power], i) => [
          `${i + 1}.5`,
          (vo2 / 1000).toFixed(3),
          String(hr),
          String(power),
        ]);
        const lines = [["t", "VO2", "HR", "P"], ...table];
        const join = (delimiter: string, decimal: string) =>
          lines.map((cells, i) => cells.map((c) => (i === 0 ? c : c.replace(".", decimal))).join(delimiter)).join("\n");
        const plain = readSeries("a.csv", join(",", "."), MAPPING);
        for (const [delimiter, decimal] of [
          [";", ","],
          ["\t", ","],
          ["|", "."],
        ] as const) {
          const other = readSeries("a.csv", join(delimiter, decimal), { ...MAPPING, decimal });
          expect(other).toEqual(plain);
        }
      }),
    );
  });

  it("gives the same doubles for mL/min as for L/min", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 150, max: 6500 }), { minLength: 1 }), (values) => {
        const inMl = values.map((v, i) => `${i},${v}`).join("\n");
        const inL = values.map((v, i) => `${i},${(v / 1000).toFixed(3)}`).join("\n");
        const mapping = (unit: string): SeriesMapping => ({
          columns: { time_s: { column: "t", unit: "s" }, vo2_l_min: { column: "v", unit } },
        });
        expect(read(`t,v\n${inMl}`, mapping("mL/min")).channels).toEqual(
          read(`t,v\n${inL}`, mapping("L/min")).channels,
        );
      }),
    );
  });

  it("tells a blank from a zero only where zero is a value", () => {
    const cell = fc.constantFrom("", "0", "-", "0.0", "NA", "120");
    fc.assert(
      fc.property(fc.array(fc.tuple(cell, cell), { minLength: 1 }), (rows) => {
        const text = `t,HR,P\n${rows.map(([hr, power], i) => `${i},${hr},${power}`).join("\n")}`;
        const { columns } = MAPPING;
        const mapping: SeriesMapping = {
          columns: {
            ...(columns?.time_s ? { time_s: columns.time_s } : {}),
            heart_rate_bpm: { column: "HR", unit: "1/min" },
            power_w: { column: "P", unit: "W" },
          },
        };
        const { channels, missing } = read(text, mapping);
        rows.forEach(([hr, power], i) => {
          expect(channels.heart_rate_bpm?.[i]).toEqual(hr === "120" ? 120 : Number.NaN);
          expect(channels.power_w?.[i]).toEqual(power === "120" ? 120 : power.startsWith("0") ? 0 : Number.NaN);
        });
        expect(missing.heart_rate_bpm ?? 0).toBe(rows.filter(([hr]) => hr !== "120").length);
      }),
    );
  });

  it("reads the laboratory's own missing marks", () => {
    const { channels } = read("t,VO2,HR,P\n1,-999,err,5\n2,0.5,90,5\n", { ...MAPPING, missing: ["-999", "err"] });
    expect(channels.vo2_l_min?.[0]).toBeNaN();
    expect(channels.heart_rate_bpm?.[0]).toBeNaN();
  });

  it("never throws, whatever the text", () => {
    const piece = fc.constantFrom(
      "t",
      "VO2",
      "HR",
      "P",
      ",",
      ";",
      "\n",
      '"',
      "1",
      "0",
      ".",
      "5",
      "-",
      ":",
      " ",
      "\r\n",
      "\t",
      "x",
    );
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 60 }), (pieces) => {
        const { series, diagnostics } = readSeries("a.csv", `t,VO2,HR,P\n${pieces.join("")}`, MAPPING);
        expect(series === undefined).toBe(diagnostics.some((d) => d.severity === "error"));
      }),
      { numRuns: 1000 },
    );
  });

  it("reads 500 breaths of 12 columns in about a millisecond", () => {
    const text = `${"t,VO2,HR,P,a,b,c,d,e,f,g,h"}\n${Array.from({ length: 500 }, (_, i) => `${i * 3}.217,1.${200 + i},140,200,1.1,2.2,3.3,4.4,5.5,6.6,7.7,8.8`).join("\n")}`;
    for (let i = 0; i < 30; i++) read(text);
    let best = Number.POSITIVE_INFINITY;
    for (let i = 0; i < 30; i++) {
      const started = performance.now();
      read(text);
      best = Math.min(best, performance.now() - started);
    }
    // About 0.5 ms on a quiet machine; the bound only catches a change of order.
    expect(best).toBeLessThan(10);
  });
});

describe("units", () => {
  it("convert as the definitions say", () => {
    const convert = (channel: Parameters<typeof converter>[0], unit: string, x: number) =>
      converter(channel, unit)?.(x);
    // SI Brochure and definitions of the international mile, the standard atmosphere and the Celsius scale.
    expect(convert("speed_km_h", "m/s", 2.8)).toBeCloseTo(10.08, 12);
    expect(convert("speed_km_h", "mph", 1)).toBe(1.609344);
    expect(convert("peto2_mmhg", "kPa", 101.325)).toBeCloseTo(760, 10);
    expect(convert("peto2_mmhg", "hPa", 1013.25)).toBeCloseTo(760, 10);
    expect(convert("gas_temperature_c", "°F", 98.6)).toBeCloseTo(37, 12);
    expect(convert("gas_temperature_c", "K", 273.15)).toBe(0);
    expect(convert("heart_rate_bpm", "ms", 500)).toBe(120);
    expect(convert("grade_pct", "degrees", 45)).toBeCloseTo(100, 10);
    // By hand: molar mass of lactic acid 90.08 g/mol, so 9.008 mg/dL in 1 mmol/L.
    expect(convert("lactate_mmol_l", "mg/dL", 36.032)).toBeCloseTo(4, 10);
    expect(converter("speed_km_h", "mL/min")).toBeUndefined();
  });

  it("are the ones the laboratory's schema offers, channel by channel", () => {
    const schema = JSON.parse(readFileSync("schema/laboratory.schema.json", "utf8"));
    const { properties } = schema.$defs.instrument.properties.columns;
    expect(Object.keys(properties).sort()).toEqual([...channelNames].sort());
    for (const channel of channelNames)
      expect(properties[channel].properties.unit.enum, channel).toEqual([...unitsOf(channel)]);
  });
});

const RAMP = "../shared/data/ramp72";
describe("open breath-by-breath data", () => {
  const absent = !existsSync(`${RAMP}/tests.csv`);
  it.skipIf(absent)(
    `reads 67 ramps as their description counts them${absent ? " (skipped: data folder absent)" : ""}`,
    () => {
      const mapping: SeriesMapping = {
        columns: {
          time_s: { column: "time_s", unit: "s" },
          vo2_l_min: { column: "vo2_L_min", unit: "L/min" },
          vco2_l_min: { column: "vco2_L_min", unit: "L/min" },
          speed_km_h: { column: "speed_km_h", unit: "km/h" },
          grade_pct: { column: "grade_pct", unit: "%" },
          tidal_volume_l: { column: "vol_exp_L", unit: "L" },
          breathing_frequency_per_min: { column: ["t_exp_s", "t_insp_s"], unit: "s" },
        },
      };
      const tests = readFileSync(`${RAMP}/tests.csv`, "utf8")
        .trim()
        .split("\n")
        .slice(1)
        .map((l) => l.split(","));
      let breaths = 0;
      let noUptake = 0;
      let noOutput = 0;
      for (const [id = ""] of tests) {
        const name = `${id.padStart(2, "0")}.csv`;
        const { series, diagnostics } = readSeries(name, readFileSync(`${RAMP}/tests/${name}`), mapping);
        expect(diagnostics, name).toEqual([]);
        breaths += series?.length ?? 0;
        noUptake += series?.missing.vo2_l_min ?? 0;
        noOutput += series?.missing.vco2_l_min ?? 0;
      }
      // README of the data: 67 tests, 32 230 breaths, 15 with VO2 = 0 and 12 with VCO2 = 0.
      expect([tests.length, breaths, noUptake, noOutput]).toEqual([67, 32_230, 15, 12]);
    },
  );

  it.skipIf(absent)(
    `reads one of them alike in other units, with decimal comma, semicolons and a row of units${absent ? " (skipped: data folder absent)" : ""}`,
    () => {
      const text = readFileSync(`${RAMP}/tests/03.csv`, "utf8");
      const [header = "", ...rows] = text.trim().split("\n");
      const names = header.split(",");
      const plain: SeriesMapping = {
        columns: {
          time_s: { column: "time_s", unit: "s" },
          vo2_l_min: { column: "vo2_L_min", unit: "L/min" },
          speed_km_h: { column: "speed_km_h", unit: "km/h" },
        },
      };
      const other = rows.map((line) => {
        const cell = (name: string) => line.split(",")[names.indexOf(name)] ?? "";
        const ms = String(Math.round(Number(cell("time_s")) * 1000));
        const ml = String(Math.round(Number(cell("vo2_L_min")) * 1000));
        return [ms, ml === "0" ? "-" : ml, cell("speed_km_h").replace(".", ",")].join(";");
      });
      const foreign = `Messung\nZeit;V´O2;Geschw.\nms;mL/min;km/h\n${other.join("\n")}\n`;
      const mapping: SeriesMapping = {
        header_row: 2,
        skip_rows: 1,
        decimal: ",",
        columns: {
          time_s: { column: "Zeit", unit: "ms" },
          vo2_l_min: { column: "V´O2", unit: "mL/min" },
          speed_km_h: { column: "Geschw.", unit: "km/h" },
        },
      };
      const expected = read(text, plain);
      const found = read(Buffer.from(foreign, "latin1"), mapping);
      expect(found.channels).toEqual(expected.channels);
      expect(found.missing).toEqual(expected.missing);
      expect([...found.lines]).toEqual([...expected.lines].map((line) => line + 2));
    },
  );
});
