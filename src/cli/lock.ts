/**
 * One build at a time in a practice. The lock names the process that holds it; a lock whose process is gone (power
 * cut, kill -9) is taken over.
 */
import { linkSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { diskWords, Unreadable } from "./files.js";

/** Takes the lock; the result gives it back. Throws Unreadable when another build is running. */
export function lockPractice(root: string): () => void {
  const path = join(root, ".waymark", "lock");
  for (let attempt = 0; attempt < 3; attempt++) {
    try {
      mkdirSync(join(root, ".waymark"), { recursive: true });
      place(path);
      return () => rmSync(path, { force: true });
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== "EEXIST")
        throw new Unreadable(
          ".waymark/lock",
          `cannot be made: ${diskWords(error)}`,
          "A build needs to write in the practice folder.",
        );
      if (isRunning(holder(path)))
        throw new Unreadable(
          ".waymark/lock",
          `another build is running here (process ${holder(path)})`,
          "Wait for it to end. If there is none, delete .waymark/lock.",
        );
      removeDead(path);
    }
  }
  throw new Unreadable(".waymark/lock", "is taken and given back all the time", "Try again.");
}

/** The lock appears with its holder's number in it, so that nobody takes it for one left behind. */
function place(path: string): void {
  const beside = `${path}.${process.pid}.new`;
  try {
    writeFileSync(beside, String(process.pid));
    linkSync(beside, path);
  } catch (error) {
    // Some file systems know no second name for a file.
    if (!["EPERM", "ENOTSUP", "EOPNOTSUPP", "ENOSYS"].includes((error as NodeJS.ErrnoException).code ?? ""))
      throw error;
    writeFileSync(path, String(process.pid), { flag: "wx" });
  } finally {
    rmSync(beside, { force: true });
  }
}

/** Two builds may find the same dead lock: the one that moves it aside too late puts the living one back. */
function removeDead(path: string): void {
  const aside = `${path}.${process.pid}`;
  try {
    renameSync(path, aside);
    if (isRunning(holder(aside))) linkSync(aside, path);
  } catch {
    // somebody else has moved it, or made a new one: the next attempt tells
  } finally {
    rmSync(aside, { force: true });
  }
}

function holder(path: string): number {
  try {
    return Number(readFileSync(path, "utf8"));
  } catch {
    return 0;
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
