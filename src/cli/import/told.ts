/** What the command line says of columns: --column CHANNEL=HEADER, --unit CHANNEL=UNIT, --condition CHANNEL=WORD. */
import { channelNames, isChannel, unitsOf } from "../../kernel/channel-units.js";
import { nearest } from "../../kernel/near.js";
import type { Channel, GasCondition } from "../../kernel/series.js";
import { type Flags, WrongUse } from "../verb.js";
import type { Told } from "./propose.js";
import type { Sniffed } from "./sniff.js";

const CONDITIONS: readonly string[] = ["ATPS", "BTPS", "STPD", "ATPD", "ambient"];
type Said = { header?: string; unit?: string; condition?: GasCondition };

export function toldBy(flags: Flags, sniffed: Sniffed): Told {
  const told: Partial<Record<Channel, Said>> = {};
  for (const [channel, header] of pairs(flags.column, "column")) {
    if (!sniffed.headers.includes(header)) {
      const near = nearest(header, sniffed.headers);
      throw new WrongUse(
        `the file has no column ${JSON.stringify(header)}${near ? `; did you mean ${JSON.stringify(near)}?` : `; it has ${sniffed.headers.join(", ")}`}`,
      );
    }
    told[channel] = { ...told[channel], header };
  }
  for (const [channel, unit] of pairs(flags.unit, "unit")) {
    if (!unitsOf(channel).includes(unit))
      throw new WrongUse(`${channel} is never in ${unit}; it may be in ${unitsOf(channel).join(", ")}`);
    told[channel] = { ...told[channel], unit };
  }
  for (const [channel, condition] of pairs(flags.condition, "condition")) {
    if (!CONDITIONS.includes(condition))
      throw new WrongUse(`${condition} is no gas condition; there are ${CONDITIONS.join(", ")}`);
    told[channel] = { ...told[channel], condition: condition as GasCondition };
  }
  return told;
}

function pairs(flag: Flags[string], name: string): [Channel, string][] {
  const words = (Array.isArray(flag) ? flag : []) as readonly string[];
  return words.map((word) => {
    const at = word.indexOf("=");
    const channel = word.slice(0, at);
    if (at < 1 || word.length === at + 1) throw new WrongUse(`--${name} takes CHANNEL=WORD, not ${word}`);
    if (!isChannel(channel)) {
      const near = nearest(channel, channelNames);
      throw new WrongUse(
        `there is no channel ${channel}${near ? `; did you mean ${near}?` : `; there are ${channelNames.join(", ")}`}`,
      );
    }
    return [channel, word.slice(at + 1)];
  });
}
