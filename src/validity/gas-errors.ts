/** Errors of a gas analyser against gases of known composition. */
import type { CalibrationCheck } from "../kernel/generated/session.js";
import type { Findings } from "../kernel/rule.js";
import { instrumentOf } from "./instrument.js";

export interface GasError {
  readonly gas: string;
  readonly name: "oxygen" | "carbon dioxide";
  /** Read minus true, as a fraction. */
  readonly error: number;
}

export function gasErrors(check: CalibrationCheck): GasError[] {
  return (check.gas ?? []).flatMap((g): GasError[] => [
    ...(g.o2_true === undefined || g.o2_read === undefined
      ? []
      : [{ gas: g.gas, name: "oxygen" as const, error: g.o2_read - g.o2_true }]),
    ...(g.co2_true === undefined || g.co2_read === undefined
      ? []
      : [{ gas: g.gas, name: "carbon dioxide" as const, error: g.co2_read - g.co2_true }]),
  ]);
}

/** Largest accepted error as a fraction: the laboratory's own, else 0.10 % absolute. */
export const gasLimit = (findings: Findings, instrument: string): number =>
  instrumentOf(findings, instrument)?.calibration_limits?.gas_fraction ?? 0.001;
