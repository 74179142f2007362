/**
 * Tells when a file of the practice that a report depends on has changed. Every folder is watched by itself: an editor
 * that saves by renaming would be lost with a watch on the file. What the build writes is passed over.
 */
import { type FSWatcher, statSync, watch } from "node:fs";
import { join } from "node:path";
import { list } from "../files.js";
import { OVERRIDE_FOLDERS } from "../override-files.js";
import { openPractice } from "../practice.js";

const SETTLE_MS = 25;
const POLL_MS = 400;
const PASSED_OVER = /^(\..*|.*~|.*\.part|results\.yaml|report.*\.(html|pdf))$/;

/** Calls `changed` once for events that come together; the result stops it. */
export function watchChanges(root: string, poll: boolean, changed: () => void): () => void {
  let timer: NodeJS.Timeout | undefined;
  const soon = () => {
    clearTimeout(timer);
    timer = setTimeout(changed, SETTLE_MS);
  };
  const stop = poll ? polled(root, soon) : watched(root, soon);
  return () => {
    clearTimeout(timer);
    stop();
  };
}

const folders = (root: string): string[] => {
  const { clients } = openPractice(root);
  return [
    "",
    "clients",
    "norms",
    "profiles",
    "retests",
    ...OVERRIDE_FOLDERS,
    ...clients.flatMap((c) => [
      c.path,
      ...list(root, c.path)
        .filter((e) => e.folder)
        .map((e) => `${c.path}/${e.name}`),
    ]),
  ];
};

function watched(root: string, soon: () => void): () => void {
  const watchers = new Map<string, FSWatcher>();
  const follow = () => {
    for (const folder of folders(root)) {
      if (watchers.has(folder)) continue;
      try {
        const watcher = watch(join(root, folder), (_event, name) => {
          if (name !== null && PASSED_OVER.test(name)) return;
          follow();
          soon();
        });
        watcher.on("error", () => {
          watcher.close();
          watchers.delete(folder);
        });
        watchers.set(folder, watcher);
      } catch {
        // a folder that is not there (yet): the one above tells when it comes
      }
    }
  };
  follow();
  return () => {
    for (const watcher of watchers.values()) watcher.close();
  };
}

/** For disks that tell nothing, such as a network share. */
function polled(root: string, soon: () => void): () => void {
  const look = () =>
    folders(root)
      .flatMap((folder) =>
        list(root, folder || ".")
          .filter((entry) => !entry.folder && !PASSED_OVER.test(entry.name))
          .map((entry) => {
            const stat = statSync(join(root, folder, entry.name), { throwIfNoEntry: false });
            return `${folder}/${entry.name} ${stat?.mtimeMs} ${stat?.size}`;
          }),
      )
      .join("\n");
  let before = look();
  const timer = setInterval(() => {
    const now = look();
    if (now !== before) soon();
    before = now;
  }, POLL_MS);
  return () => clearInterval(timer);
}
