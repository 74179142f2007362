/** Critical power or speed from several bouts: every model, and the one that is followed. */
import type { Cell, Column } from "../../kernel/measure.js";
import type { Notebook, Ref } from "../../kernel/notebook.js";
import type { Visit } from "../../kernel/visit.js";
import { attempt } from "../found-or-withheld.js";
import * as critical from "./critical-rate.js";

const MODELS = ["hyperbolic", "work-time", "inverse-time"] as const satisfies readonly critical.CriticalModel[];

export function criticalPower(book: Notebook, visit: Visit): void {
  const block = visit.session.critical_power;
  if (block === undefined) return;
  const power = block.bouts.every((b) => b.power_w !== undefined);
  const distance = block.bouts.every((b) => b.distance_m !== undefined);
  if (!power && !distance) {
    book.withhold("critical_power", "each bout needs its power, or each its distance");
    return;
  }
  const bouts = block.bouts.map(
    (b): critical.Bout => ({ time: b.duration_s, rate: power ? (b.power_w ?? 0) : (b.distance_m ?? 0) / b.duration_s }),
  );
  const [rate, capacity] = power
    ? (["critical_power", "work_above_critical_power"] as const)
    : (["critical_speed", "distance_above_critical_speed"] as const);
  // W and kJ, or km/h and m
  const scale = power
    ? { rate: 1, capacity: 1e-3, unit: "W", amount: "kJ" }
    : { rate: 3.6, capacity: 1, unit: "km/h", amount: "m" };
  writeBouts(book, bouts, power, visit);

  const outcomes = MODELS.map((model) => ({ model, outcome: attempt(() => critical.criticalRate(model, bouts)) }));
  const columns: Column[] = [
    { key: "model", title: "Model" },
    { key: "rate", title: power ? "Critical power" : "Critical speed", unit: scale.unit, decimals: power ? 0 : 2 },
    { key: "rate_error", title: "Standard error", unit: scale.unit, decimals: power ? 1 : 2 },
    { key: "capacity", title: power ? "W′" : "D′", unit: scale.amount, decimals: power ? 1 : 0 },
    { key: "capacity_error", title: "Standard error", unit: scale.amount, decimals: power ? 1 : 0 },
    { key: "because", title: "Not given because" },
  ];
  const rows = outcomes.map(({ model, outcome }): Cell[] => {
    if (outcome.because !== undefined) return [model, null, null, null, null, outcome.because];
    const { value: v } = outcome;
    return [
      model,
      v.rate * scale.rate,
      v.rateError * scale.rate,
      v.capacity * scale.capacity,
      v.capacityError * scale.capacity,
      null,
    ];
  });
  const inputs: Ref[] = [{ name: "bouts", value: bouts.length, unit: "" }];
  book.table("critical_power_models", columns, rows, critical.info, inputs);
  const chosen = outcomes.find(({ model }) => model === visit.choices.critical_power_model)?.outcome;
  if (chosen === undefined || chosen.because !== undefined) {
    for (const id of [rate, capacity] as const) book.withhold(id, chosen?.because ?? "no such model");
    return;
  }
  const few =
    bouts.length === 3 ? ", from three bouts, which leave one degree of freedom: the true error is larger" : "";
  const from = `fit of the ${visit.choices.critical_power_model} model${few}`;
  const more = (typical: number) => ({
    error: { typical, from },
    note: `model: ${visit.choices.critical_power_model}`,
  });
  const { value } = chosen;
  book.found(rate, value.rate * scale.rate, critical.info, inputs, more(value.rateError * scale.rate));
  book.found(
    capacity,
    value.capacity * scale.capacity,
    critical.info,
    inputs,
    more(value.capacityError * scale.capacity),
  );
}

function writeBouts(book: Notebook, bouts: readonly critical.Bout[], power: boolean, visit: Visit): void {
  const columns: Column[] = [
    { key: "duration_s", title: "Time", unit: "s", decimals: 0 },
    power
      ? { key: "power_w", title: "Power", unit: "W", decimals: 0 }
      : { key: "speed_km_h", title: "Speed", unit: "km/h", decimals: 2 },
  ];
  const rows = [...bouts].sort((a, b) => a.time - b.time).map((b): Cell[] => [b.time, power ? b.rate : b.rate * 3.6]);
  book.table("critical_power_bouts", columns, rows, critical.info, [
    { name: "from", value: `${visit.file} critical_power.bouts`, unit: "" },
  ]);
}
