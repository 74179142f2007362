/** Station pressure, temperature and humidity belong to every gas measurement, also where the instrument converts by itself. */
import type { MeasureId } from "../../kernel/measures.js";
import type { Rule } from "../../kernel/rule.js";
import { notRecorded } from "../finding.js";

const AFFECTED = ["vo2_peak", "resting_vo2"] as const satisfies readonly MeasureId[];

export const rule: Rule = {
  id: "room-recorded",
  revision: 1,
  title: "Record of the room's air",
  section: "validity",
  source: {
    authors: "Johns DP, Hartley MF, Burns G, Thompson BR",
    year: 2004,
    title: "Variation in barometric pressure in Melbourne does not significantly affect the BTPS correction factor",
    journal: "Respirology 9(3):406–408",
    doi: "10.1111/j.1440-1843.2004.00613.x",
    where: "a fixed pressure is licensed for BTPS only; by hand, 10 mmHg move STPD volumes by 1.4 %",
    verified: "seen",
  },
  judge: ({ visit, value }) => {
    const affects = AFFECTED.filter((id) => value(id) !== undefined);
    if (affects.length === 0) return [];
    const room = visit.session.room;
    const absent = [
      room?.pressure_mmhg === undefined && "station pressure",
      room?.temperature_c === undefined && "temperature",
      room?.humidity_pct === undefined && "humidity",
    ].filter((x) => x !== false);
    if (absent.length === 0) return [];
    const because = "Ten mmHg of pressure move uptake by 1.4 %: nobody can check the conversion without these.";
    return [notRecorded(absent.join(", "), because, affects)];
  },
};
