/** Deterministic ZIP files, and reading of ZIP files that others made: names are checked before anything is believed. */
import { strFromU8, unzipSync, type Zippable, zipSync } from "fflate";
import { Unreadable } from "./files.js";

/** ZIP cannot hold a date before 1980; this one says only that time is not part of the content. */
const NO_TIME = new Date(1980, 0, 1);
const LARGEST_UNPACKED = 1_000_000_000;

export function pack(files: Readonly<Record<string, Uint8Array>>): Uint8Array {
  const entries: Zippable = {};
  for (const name of Object.keys(files).sort())
    entries[name] = [files[name] as Uint8Array, { level: 9, mtime: NO_TIME, os: 3, attrs: 0o644 << 16 }];
  return zipSync(entries);
}

/** Files of an archive by name. Throws Unreadable for what is no ZIP, unpacks too large, or names a path outside itself. */
export function unpack(path: string, bytes: Uint8Array): Readonly<Record<string, Uint8Array>> {
  let total = 0;
  try {
    return unzipSync(bytes, {
      filter({ name, originalSize }) {
        if (name.startsWith("/") || name.includes("\\") || /^[a-z]:/i.test(name) || name.split("/").includes(".."))
          throw new Unreadable(
            path,
            `holds a file outside itself (${JSON.stringify(name)})`,
            "Do not unpack it; ask where it comes from.",
          );
        total += originalSize;
        if (total > LARGEST_UNPACKED)
          throw new Unreadable(
            path,
            "unpacks to more than 1 GB",
            "An archive of one client is far smaller; ask where it comes from.",
          );
        return !name.endsWith("/");
      },
    });
  } catch (error) {
    if (error instanceof Unreadable) throw error;
    throw new Unreadable(path, `is no ZIP file that can be read (${(error as Error).message})`, "Fetch it again.");
  }
}

export const textOf = (bytes: Uint8Array): string => strFromU8(bytes);
