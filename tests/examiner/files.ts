/** Texts of an invented laboratory's files for the examiner's body: three instruments with habits of their own. */
import { type Breath, type Person, raw, type Test } from "./body.js";

/** semicolons, decimal commas, mL/min, kPa, a row of units · raw dry fractions in % with ATPS volumes · plain. */
export const EXAMINER_LAB = `waymark: laboratory 1
name: Invented laboratory
altitude_m: 100
instruments:
  comma_cart:
    kind: gas exchange system
    mixing: breath by breath
    delimiter: ";"
    decimal: ","
    skip_rows: 1
    columns:
      time_s: {column: Zeit, unit: min}
      vo2_l_min: {column: VO2, unit: mL/min, condition: STPD}
      vco2_l_min: {column: VCO2, unit: mL/min, condition: STPD}
      ventilation_l_min: {column: VE, unit: L/min, condition: BTPS}
      breathing_frequency_per_min: {column: AF, unit: 1/min}
      peto2_mmhg: {column: PETO2, unit: kPa}
      petco2_mmhg: {column: PETCO2, unit: kPa}
      heart_rate_bpm: {column: HF, unit: 1/min}
      power_w: {column: W, unit: W}
  chamber:
    kind: gas exchange system
    mixing: mixing chamber
    mixing_interval_s: 30
    columns:
      time_s: {column: t, unit: s}
      ventilation_l_min: {column: VE, unit: L/min, condition: ATPS}
      feo2: {column: FEO2, unit: "%"}
      feco2: {column: FECO2, unit: "%"}
      heart_rate_bpm: {column: HR, unit: 1/min}
      power_w: {column: W, unit: W}
  fast_chamber:
    kind: gas exchange system
    mixing: mixing chamber
    mixing_interval_s: 10
    columns:
      time_s: {column: t, unit: s}
      ventilation_l_min: {column: VE, unit: L/min, condition: ATPS}
      feo2: {column: FEO2, unit: "%"}
      feco2: {column: FECO2, unit: "%"}
      heart_rate_bpm: {column: HR, unit: 1/min}
      power_w: {column: W, unit: W}
`;

const comma = (x: number, decimals: number) => x.toFixed(decimals).replace(".", ",");
const KPA = 101.325 / 760;

/** `edit` may change or drop (null) a row: dropouts, dead channels. */
export function commaCsv(
  test: Test,
  edit: (b: Breath) => Partial<Record<keyof Breath, number | string>> | null = () => ({}),
): string {
  const lines = ["Zeit;VO2;VCO2;VE;AF;PETO2;PETCO2;HF;W", "min;mL/min;mL/min;L/min;1/min;kPa;kPa;1/min;W"];
  for (const b of test.breaths) {
    const changed = edit(b);
    if (changed === null) continue;
    const cell = (key: keyof Breath, decimals: number, factor = 1) => {
      const x = changed[key] ?? b[key];
      return typeof x === "string" ? x : comma(x * factor, decimals);
    };
    lines.push(
      [
        comma(b.t / 60, 4),
        cell("vo2", 0, 1000),
        cell("vco2", 0, 1000),
        cell("ve", 1),
        cell("bf", 1),
        cell("petO2", 2, KPA),
        cell("petCO2", 2, KPA),
        cell("hr", 0),
        cell("power", 0),
      ].join(";"),
    );
  }
  return `${lines.join("\r\n")}\r\n`;
}

/** Dry fractions in % and ATPS ventilation, from means. */
export function rawCsv(means: readonly Breath[], person: Person, meterC: number): string {
  const lines = ["t,VE,FEO2,FECO2,HR,W"];
  for (const b of means) {
    const { feo2, feco2, atps } = raw(b, person, meterC);
    lines.push(
      [b.t, atps.toFixed(2), (100 * feo2).toFixed(3), (100 * feco2).toFixed(3), b.hr, b.power.toFixed(0)].join(","),
    );
  }
  return `${lines.join("\n")}\n`;
}

export const phasesText = (test: Test) =>
  `  phases: {rest_start_s: 0, warm_up_start_s: 60, incremental_start_s: ${test.startS}, recovery_start_s: ${test.stopS}}\n`;
