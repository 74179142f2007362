/**
 * A share of a practice for one of several machines. Clients are dealt out by a digest of their id, so the shares are
 * disjoint, together complete, and the same wherever and whenever they are asked for; a client is never split, because
 * a retest is compared with earlier visits.
 */
import { sha256 } from "./files.js";
import { WrongUse } from "./verb.js";

export interface Shard {
  /** 1 to `of`. */
  readonly number: number;
  readonly of: number;
}

/** "2/5" as a share. Throws WrongUse for anything else. */
export function readShard(text: string): Shard {
  const match = /^([1-9]\d{0,3})\/([1-9]\d{0,3})$/.exec(text);
  const [number, of] = [Number(match?.[1]), Number(match?.[2])];
  if (match === null || number > of)
    throw new WrongUse(`--shard wants a share like 2/5 (the second of five), not "${text}"`);
  return { number, of };
}

export const inShard = (clientId: string, shard: Shard): boolean =>
  Number.parseInt(sha256(clientId.normalize()).slice(0, 8), 16) % shard.of === shard.number - 1;
