/**
 * The air a session states: station pressure, room temperature and humidity, and what the client breathed in.
 * Nothing here has a default. What a conversion needs and the session lacks is named, so that the report can say so.
 */
import type { Choices } from "../../kernel/generated/choices.js";
import type { Room } from "../../kernel/generated/session.js";

export interface Inspired {
  readonly fio2: number;
  readonly fico2: number;
  /** "room air 0.2093/0.0003 by the laboratory's choice", "as stated". */
  readonly from: string;
}
export type Known<T> = { readonly value: T } | { readonly missing: string };

/** Fractions of dry inspired gas, or what is missing. */
export function inspiredGas(room: Room | undefined, choices: Choices): Known<Inspired> {
  if (room?.fio2 !== undefined) {
    const fico2 = room.fico2 ?? (room.co2_ppm === undefined ? undefined : room.co2_ppm / 1e6);
    if (fico2 === undefined) return { missing: "the inspired carbon dioxide fraction (room.fico2) is not stated" };
    return { value: { fio2: room.fio2, fico2, from: "as stated" } };
  }
  if (room?.inspired_gas === "room air") {
    const [fio2, fico2] = choices.room_air.split("/").map(Number) as [number, number];
    return { value: { fio2, fico2, from: `room air ${choices.room_air} by the laboratory's choice` } };
  }
  return { missing: "the session does not state what was breathed in (room.inspired_gas)" };
}

/** Station pressure in mmHg, or what is missing. */
export function stationPressure(room: Room | undefined): Known<number> {
  return room?.pressure_mmhg === undefined
    ? { missing: "station pressure (room.pressure_mmhg) is not stated, and there is no default" }
    : { value: room.pressure_mmhg };
}
