/** Takes away what a killed program has left: files begun beside their target, whose writer is gone. */
import { rmSync } from "node:fs";
import { join } from "node:path";
import { list } from "./files.js";
import { isRunning } from "./lock.js";
import type { Practice } from "./practice.js";

const BEGUN = /^\.(\d+)-[0-9a-f]{8}\.part$/;

export function sweepFolder(root: string, folder: string): void {
  for (const { name, folder: isFolder } of list(root, folder)) {
    const writer = BEGUN.exec(name)?.[1];
    if (!isFolder && writer !== undefined && !isRunning(Number(writer)))
      rmSync(join(root, folder, name), { force: true });
  }
}

/** Everywhere in a practice where a build writes. */
export function sweepPractice({ root, clients }: Practice): void {
  const own = list(root, ".waymark")
    .filter((entry) => entry.folder)
    .map((entry) => `.waymark/${entry.name}`);
  for (const folder of [".", ".waymark", ...own, "clients"]) sweepFolder(root, folder);
  for (const client of clients)
    for (const folder of [client.path, ...client.visits.map((visit) => visit.path)]) sweepFolder(root, folder);
}
