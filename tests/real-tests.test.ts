/**
 * Real breath-by-breath tests through the whole program to HTML, by nothing but a `columns:` mapping.
 * Data: Nolte S, Rein R, Quittmann OJ (2023). Data Processing Strategies to Determine Maximum Oxygen Uptake. Sports Medicine.
 * doi:10.1007/s40279-023-01903-3, CC-BY 4.0. Read from ../shared/data/ramp72; skipped where it is absent.
 */
import { spawnSync } from "node:child_process";
import { copyFileSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { readResults } from "../src/results/read.js";

const DATA = "../shared/data/ramp72";
const isThere = existsSync(`${DATA}/tests.csv`);

const LAB = `waymark: laboratory 1
name: A laboratory (test of real recordings)
instruments:
  cart:
    kind: gas exchange system
    measures: [gas analyser, flow sensor]
    mixing: breath by breath
    missing: ["0"]
    columns:
      time_s: {column: time_s, unit: s}
      vo2_l_min: {column: vo2_L_min, unit: L/min, condition: STPD}
      vco2_l_min: {column: vco2_L_min, unit: L/min, condition: STPD}
      speed_km_h: {column: speed_km_h, unit: km/h}
      grade_pct: {column: grade_pct, unit: "%"}
      # The files do not state the gas condition of the volumes.
      tidal_volume_l: {column: vol_exp_L, unit: L}
      breathing_frequency_per_min: {column: [t_exp_s, t_insp_s], unit: s}
`;

interface Facts {
  readonly test: string;
  readonly sex: string;
  readonly mass: number;
  readonly stature: number;
  readonly warmUp: number;
  readonly load: number;
  readonly recovery: number;
}

function facts(): Facts[] {
  const [head = "", ...rows] = readFileSync(`${DATA}/tests.csv`, "utf8").trim().split(/\r?\n/);
  const at = (name: string) => head.split(",").indexOf(name);
  return rows.map((line) => {
    const cells = line.split(",");
    const number = (name: string) => Number(cells[at(name)]);
    return {
      test: String(cells[at("test")]).padStart(2, "0"),
      sex: /^f|w/i.test(String(cells[at("sex")])) ? "female" : "male",
      mass: number("body_mass_kg"),
      stature: number("height_cm"),
      warmUp: number("warmup_start_s"),
      load: number("load_start_s"),
      recovery: number("recovery_start_s"),
    };
  });
}

const session = (f: Facts, id: string) => `waymark: session 1
client: "${id}"
date: 2021-06-01
purpose: baseline
size: {mass_kg: ${f.mass}, stature_cm: ${f.stature}}
incremental:
  mode: treadmill
  series: test.csv
  instrument: cart
  protocol: {kind: step, start_speed_km_h: 10.08, speed_step_km_h: 0.54, start_grade_pct: 1, stage_length_s: 30}
  phases: {rest_start_s: 0, warm_up_start_s: ${f.warmUp}, incremental_start_s: ${f.load}, recovery_start_s: ${f.recovery}}
  stop: {reason: exhaustion}
`;

describe.skipIf(!isThere)("real recordings (skipped where ../shared/data/ramp72 is absent)", () => {
  let root: string;
  const chosen = isThere ? facts().filter((_, i) => i % 8 === 0) : [];
  beforeAll(() => {
    root = mkdtempSync(join(tmpdir(), "real-"));
    writeFileSync(join(root, "lab.yaml"), LAB);
    for (const f of chosen) {
      const id = `c-${f.test}`;
      const visit = join(root, "clients", id, "2021-06-01-baseline");
      mkdirSync(visit, { recursive: true });
      // The data state no ages: a birth date of our own, used by no check below.
      writeFileSync(
        join(root, "clients", id, "client.yaml"),
        `waymark: client 1\nid: "${id}"\nbirth_date: 1991-01-01\nsex: ${f.sex}\n`,
      );
      writeFileSync(join(visit, "session.yaml"), session(f, id));
      copyFileSync(join(DATA, "tests", `${f.test}.csv`), join(visit, "test.csv"));
    }
    const run = spawnSync(process.execPath, [resolve("dist/cli/main.js"), "build", "--no-pdf"], {
      cwd: root,
      encoding: "utf8",
    });
    expect(run.stderr).not.toMatch(/^error /m);
    expect(run.status).toBe(0);
  }, 120_000);
  afterAll(() => rmSync(root, { recursive: true, force: true }));

  it("each give a report with figures", () => {
    expect(chosen.length).toBeGreaterThanOrEqual(8);
    for (const { test } of chosen) {
      const html = readFileSync(join(root, `clients/c-${test}/2021-06-01-baseline/report.html`), "utf8");
      expect(html.match(/<figure/g)?.length ?? 0, test).toBeGreaterThanOrEqual(3);
      expect(html.replace(/base64,[\w+/=]*/g, "")).not.toMatch(/NaN|undefined|\[object/);
    }
  });

  it("give peaks that fit the facts of the data's README (63.4 ± 6.7, 48.0 to 76.3 mL/kg/min), and honest thresholds", () => {
    const peaks: number[] = [];
    for (const { test } of chosen) {
      const results = readResults(
        readFileSync(join(root, `clients/c-${test}/2021-06-01-baseline/results.yaml`), "utf8"),
      );
      const entry = (id: string) => results.entries.find((e) => e.id === id);
      const peak = entry("vo2_peak_per_mass");
      if (peak?.kind !== "quantity") throw new Error(`no peak in test ${test}`);
      peaks.push(peak.value);
      for (const threshold of ["vt1", "vt2"]) {
        const id = `${threshold}_percent_of_peak`;
        const share = entry(id);
        if (share?.kind === "quantity")
          expect(share.value > 40 && share.value < 96, `${test} ${id} ${share.value}`).toBe(true);
        else expect(entry(`${threshold}_vo2`)?.kind, `${test} ${id}`).toBe("not given");
      }
      // No heart rate was recorded: it is withheld, and nothing else is.
      expect(entry("heart_rate_peak")?.kind ?? "not given", test).toBe("not given");
    }
    const mean = peaks.reduce((a, b) => a + b, 0) / peaks.length;
    expect(mean).toBeGreaterThan(57);
    expect(mean).toBeLessThan(69);
    expect(Math.min(...peaks)).toBeGreaterThan(45);
    expect(Math.max(...peaks)).toBeLessThan(80);
  });
});
