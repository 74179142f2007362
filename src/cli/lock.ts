/**
 * One build at a time in a practice. The lock names the process that holds it; a lock whose process is gone (power
 * cut, kill -9) is taken over.
 */
import { closeSync, mkdirSync, openSync, readFileSync, rmSync, writeSync } from "node:fs";
import { join } from "node:path";
import { Unreadable } from "./files.js";

/** Takes the lock; the result gives it back. Throws Unreadable when another build is running. */
export function lockPractice(root: string): () => void {
  mkdirSync(join(root, ".waymark"), { recursive: true });
  const path = join(root, ".waymark", "lock");
  for (let attempt = 0; attempt < 3; attempt++) {
    try {
      const handle = openSync(path, "wx");
      writeSync(handle, String(process.pid));
      closeSync(handle);
      return () => rmSync(path, { force: true });
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== "EEXIST")
        throw new Unreadable(
          ".waymark/lock",
          `cannot be made (${(error as NodeJS.ErrnoException).code})`,
          "A build needs to write in the practice folder.",
        );
      if (isRunning(holder(path)))
        throw new Unreadable(
          ".waymark/lock",
          `another build is running here (process ${holder(path)})`,
          "Wait for it to end. If there is none, delete .waymark/lock.",
        );
      rmSync(path, { force: true });
    }
  }
  throw new Unreadable(".waymark/lock", "is taken and given back all the time", "Try again.");
}

function holder(path: string): number {
  try {
    return Number(readFileSync(path, "utf8"));
  } catch {
    return 0;
  }
}

function isRunning(pid: number): boolean {
  if (!Number.isInteger(pid) || pid <= 0) return false;
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === "EPERM";
  }
}
