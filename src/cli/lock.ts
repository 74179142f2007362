/**
 * One build at a time in a practice; shares of one division may go on beside each other, because no two of them have a
 * client in common. A lock names process and machine that hold it; one whose process is gone (power cut, kill -9) is taken over, one
 * of another machine (the practice lies on a shared disk) never is.
 */
import { linkSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { hostname } from "node:os";
import { join } from "node:path";
import { diskWords, Unreadable } from "./files.js";
import type { Shard } from "./shard.js";

const HOLDER = `${process.pid} ${hostname()}`;
const LOCK = /^lock(?:-(\d+)-of-(\d+))?$/;

/** Takes the lock of a whole build or of a share; the result gives it back. Throws Unreadable when another is in the way. */
export function lockPractice(root: string, shard?: Shard): () => void {
  const folder = join(root, ".waymark");
  const name = shard === undefined ? "lock" : `lock-${shard.number}-of-${shard.of}`;
  take(folder, name);
  const release = () => rmSync(join(folder, name), { force: true });
  // First taken, then looked around: of two that come at once, one at most goes on.
  for (const other of readdirSync(folder).filter((one) => one !== name && excludes(one, shard))) {
    const by = holder(join(folder, other));
    if (by !== undefined) {
      release();
      throw taken(other, by);
    }
    removeDead(join(folder, other));
  }
  return release;
}

/** Would a build with the lock of this name touch a client of this share? */
function excludes(name: string, shard: Shard | undefined): boolean {
  const match = LOCK.exec(name);
  return match !== null && (shard === undefined || Number(match[2]) !== shard.of);
}

function take(folder: string, name: string): void {
  const path = join(folder, name);
  for (let attempt = 0; attempt < 3; attempt++) {
    try {
      mkdirSync(folder, { recursive: true });
      place(path);
      return;
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== "EEXIST")
        throw new Unreadable(
          `.waymark/${name}`,
          `cannot be made: ${diskWords(error)}`,
          "A build needs to write in the practice folder.",
        );
      const by = holder(path);
      if (by !== undefined) throw taken(name, by);
      removeDead(path);
    }
  }
  throw new Unreadable(`.waymark/${name}`, "is taken and given back all the time", "Try again.");
}

const taken = (name: string, by: string) =>
  new Unreadable(
    `.waymark/${name}`,
    `another build is running here (${by})`,
    `Wait for it to end. If there is none, delete .waymark/${name}.`,
  );

/** The lock appears with its holder's number in it, so that nobody takes it for one left behind. */
function place(path: string): void {
  const beside = `${path}.${process.pid}.new`;
  try {
    writeFileSync(beside, HOLDER);
    linkSync(beside, path);
  } catch (error) {
    // Some file systems know no second name for a file.
    if (!["EPERM", "ENOTSUP", "EOPNOTSUPP", "ENOSYS"].includes((error as NodeJS.ErrnoException).code ?? ""))
      throw error;
    writeFileSync(path, HOLDER, { flag: "wx" });
  } finally {
    rmSync(beside, { force: true });
  }
}

/** Two builds may find the same dead lock: the one that moves it aside too late puts the living one back. */
function removeDead(path: string): void {
  const aside = `${path}.${process.pid}`;
  try {
    renameSync(path, aside);
    if (holder(aside) !== undefined) linkSync(aside, path);
  } catch {
    // somebody else has moved it, or made a new one: the next attempt tells
  } finally {
    rmSync(aside, { force: true });
  }
}

/** Who holds a lock, in words; undefined when nobody does. A dead one of another machine cannot be told from a living one. */
function holder(path: string): string | undefined {
  const [, pid, host] = /^(\d+)(?: (.+))?$/.exec(textOf(path)) ?? [];
  if (pid === undefined) return undefined;
  if (host !== undefined && host !== hostname()) return `process ${pid} on ${host}`;
  return isRunning(Number(pid)) ? `process ${pid}` : undefined;
}

function textOf(path: string): string {
  try {
    return readFileSync(path, "utf8");
  } catch {
    return "";
  }
}

export function isRunning(pid: number): boolean {
  if (!Number.isInteger(pid) || pid <= 0) return false;
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === "EPERM";
  }
}
