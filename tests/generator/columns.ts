/** Generated rows as typed arrays, 0 read as missing: what a threshold fit needs, without a file in between. */
import type { GasColumns } from "../../src/derive/thresholds/bins.js";
import type { Row } from "./breaths.js";

export function columnsOf(rows: readonly Row[]): GasColumns {
  const column = (pick: (row: Row) => number) =>
    Float64Array.from(rows, (row) => (pick(row) === 0 ? Number.NaN : pick(row)));
  return {
    n: rows.length,
    time: Float64Array.from(rows, (row) => row.time),
    vo2: column((row) => row.vo2),
    vco2: column((row) => row.vco2),
    ve: column((row) => row.ve),
    petO2: column((row) => row.peto2),
    petCO2: column((row) => row.petco2),
    heartRate: column((row) => row.hr),
    excluded: new Uint8Array(rows.length),
  };
}
