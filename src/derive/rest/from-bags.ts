/** Resting values from Douglas bags: a series with one row a bag and no clock. */
import type { MeasureId } from "../../kernel/measures.js";
import type { Notebook, Ref } from "../../kernel/notebook.js";
import type { Series } from "../../kernel/series.js";
import type { Visit } from "../../kernel/visit.js";
import { foundOrWithheld } from "../found-or-withheld.js";
import { exchange } from "../gas/exchange.js";
import * as bags from "./bag-mean.js";

export const holdsBags = (series: Series): boolean => series.channels.bag_volume_l !== undefined;

/** Writes resting_vo2, resting_vco2 and resting_ventilation, or why there are none. */
export function restFromBags(book: Notebook, visit: Visit, series: Series): void {
  const { room, rest } = visit.session;
  const gas = exchange({ series, room, choices: visit.choices, gasTemperatureC: rest?.gas_temperature_c });
  const seconds = series.channels.bag_duration_s;
  const write = (id: MeasureId, xs: Float64Array, scale: number, refused: string | undefined) => {
    const whole = Array.from(xs, (x, i) => [x * scale, seconds?.[i] ?? Number.NaN] as const).filter(
      ([x]) => !Number.isNaN(x),
    );
    const inputs: Ref[] = [
      { name: "series", value: series.file, unit: "" },
      { name: "bags", value: whole.length, unit: "" },
    ];
    if (refused !== undefined || whole.length < xs.length)
      book.withhold(id, refused ?? `${xs.length - whole.length} of ${xs.length} bags have no value`);
    else
      foundOrWithheld(
        book,
        id,
        bags.info,
        inputs,
        () =>
          bags.bagMean(
            whole.map(([x]) => x),
            whole.map(([, s]) => s),
          ),
        {
          note: "steadiness cannot be judged inside a bag",
        },
      );
  };
  write("resting_vo2", gas.vo2, 1000, gas.refused.vo2);
  write("resting_vco2", gas.vco2, 1000, gas.refused.vco2);
  write("resting_ventilation", gas.ve, 1, gas.refused.ve);
  for (const id of ["rest_trace", "rest_window"] as const)
    book.withhold(id, "gas was collected in bags, which hold no course");
}
