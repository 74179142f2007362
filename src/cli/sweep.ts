/** Takes away what a killed program has left: files begun beside their target, whose writer is gone. */
import { rmSync } from "node:fs";
import { join } from "node:path";
import { list } from "./files.js";
import { isRunning } from "./lock.js";
import type { Practice } from "./practice.js";
import { inShard, type Shard } from "./shard.js";

const BEGUN = /^\.(\d+)-[0-9a-f]{8}\.part$/;

export function sweepFolder(root: string, folder: string): void {
  for (const { name, folder: isFolder } of list(root, folder)) {
    const writer = BEGUN.exec(name)?.[1];
    if (!isFolder && writer !== undefined && !isRunning(Number(writer)))
      rmSync(join(root, folder, name), { force: true });
  }
}

/** Everywhere a build writes; for a share, its clients alone: others may be at work, on other machines too. */
export function sweepPractice({ root, clients }: Practice, shard?: Shard): void {
  const own = list(root, ".waymark")
    .filter((entry) => entry.folder)
    .map((entry) => `.waymark/${entry.name}`);
  if (shard === undefined) for (const folder of [".", ".waymark", ...own, "clients"]) sweepFolder(root, folder);
  for (const client of clients.filter(({ id }) => shard === undefined || inShard(id, shard)))
    for (const folder of [client.path, ...client.visits.map((visit) => visit.path)]) sweepFolder(root, folder);
}
