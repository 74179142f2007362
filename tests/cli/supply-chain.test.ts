/** What is installed with the program: licences that allow it, a lock file for any registry, nothing run on installing, Node 20.19. */
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";

interface Locked {
  readonly version?: string;
  readonly resolved?: string;
  readonly integrity?: string;
  readonly dev?: boolean;
  readonly optional?: boolean;
  readonly link?: boolean;
  readonly hasInstallScript?: boolean;
  readonly license?: string;
  readonly engines?: { readonly node?: string } | readonly string[];
}
interface Lock {
  readonly lockfileVersion: number;
  readonly packages: Readonly<Record<string, Locked>>;
}
const text = readFileSync("package-lock.json", "utf8");
const packages = Object.entries((JSON.parse(text) as Lock).packages).filter(([path]) => path !== "");
const production = packages.filter(([, one]) => one.dev !== true);

/** Permissive licences, which ask for no more than to be named (SPDX identifiers). */
const ALLOWED = [
  "MIT",
  "ISC",
  "BSD-2-Clause",
  "BSD-3-Clause",
  "Apache-2.0",
  "0BSD",
  "BlueOak-1.0.0",
  "Python-2.0",
  "Unlicense",
  "MIT AND Zlib",
  "(MIT AND Zlib)",
];

const licenceOf = (path: string, one: Locked): string => {
  if (one.license !== undefined) return one.license;
  const manifest = join(path, "package.json");
  if (!existsSync(manifest)) return "not installed";
  const { license, licenses } = JSON.parse(readFileSync(manifest, "utf8")) as {
    license?: string;
    licenses?: { type: string }[];
  };
  return license ?? licenses?.[0]?.type ?? "none";
};

/** Whether a range of versions ("^18 || >=20", "20 || >=22", ">= 12.4.0") takes in a version. */
function takesIn(range: string, version: readonly number[]): boolean {
  const numbers = (part: string) =>
    part.split(".").map((x) => (/^[x*]$/i.test(x) || x === "" ? Number.NaN : Number(x)));
  const compare = (to: readonly number[]) => {
    for (const [i, x] of to.entries()) {
      if (Number.isNaN(x)) return 0;
      if (version[i] !== x) return (version[i] ?? 0) < x ? -1 : 1;
    }
    return 0;
  };
  const same = (to: readonly number[], places: number) =>
    to.slice(0, places).every((x, i) => Number.isNaN(x) || version[i] === x);
  return range.split("||").some((choice) =>
    choice
      .trim()
      .replace(/([<>=~^]+)\s+/g, "$1")
      .split(/\s+/)
      .every((part) => {
        const [, sign = "", rest = ""] = /^([<>=~^]*)v?(.*)$/.exec(part) ?? [];
        const to = numbers(rest);
        if (sign === ">=") return compare(to) >= 0;
        if (sign === ">") return compare(to) > 0;
        if (sign === "<") return compare(to) < 0;
        if (sign === "<=") return compare(to) <= 0;
        if (sign === "^") return compare(to) >= 0 && same(to, 1);
        if (sign === "~") return compare(to) >= 0 && same(to, 2);
        return same(to, to.length);
      }),
  );
}

describe("what is installed", () => {
  it("bears licences that allow it", () => {
    const refused = production.filter(([path, one]) => !ALLOWED.includes(licenceOf(path, one)));
    expect(refused.map(([path, one]) => `${path}: ${licenceOf(path, one)}`)).toEqual([]);
    expect(production.length).toBeGreaterThan(10);
  });

  it("is pinned, each with a digest, and from no registry in particular", () => {
    expect(text).not.toMatch(/"resolved":/);
    expect(JSON.stringify(JSON.parse(text), (key, value) => (key === "funding" ? undefined : value))).not.toMatch(
      /https?:/,
    );
    const loose = packages.filter(
      ([, one]) => one.link !== true && (one.version === undefined || !/^sha512-/.test(one.integrity ?? "")),
    );
    expect(loose.map(([path]) => path)).toEqual([]);
  });

  it("runs nothing on installing: npm ci --ignore-scripts is enough", () => {
    expect(production.filter(([, one]) => one.hasInstallScript === true).map(([path]) => path)).toEqual([]);
    const own = JSON.parse(readFileSync("package.json", "utf8")) as { scripts: Record<string, string> };
    for (const name of ["preinstall", "install", "postinstall", "prepare"]) expect(own.scripts[name]).toBeUndefined();
  });

  it("works with Node 20.19, as the program says of itself", () => {
    expect(takesIn(">=20.19", [20, 19, 0])).toBe(true);
    expect(takesIn("^18.18.0 || >=21", [20, 19, 0])).toBe(false);
    expect(takesIn("20 || >=22", [20, 19, 0])).toBe(true);
    expect(takesIn(">= 22.1", [20, 19, 0])).toBe(false);
    const refusing = production.filter(([, one]) => {
      const engines = one.engines;
      const range = Array.isArray(engines) ? undefined : (engines as { node?: string } | undefined)?.node;
      return range !== undefined && !takesIn(range, [20, 19, 0]);
    });
    expect(refusing.map(([path, one]) => `${path}: ${JSON.stringify(one.engines)}`)).toEqual([]);
  });
});
