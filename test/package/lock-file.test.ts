import { readFileSync } from "node:fs";
import { expect, test } from "vitest";

interface LockedPackage {
  readonly version?: string;
  readonly integrity?: string;
  readonly hasInstallScript?: boolean;
}

const { packages } = JSON.parse(readFileSync("package-lock.json", "utf8")) as {
  readonly packages: Readonly<Record<string, LockedPackage>>;
};
const locked = Object.entries(packages).filter(([path]) => path !== "");

/** What stands in for an audit where the registry answers none: nothing is installed but what was looked at, byte for byte. */
test("every package of the lock file is held to its version and its SHA-512", () => {
  expect(locked.length).toBeGreaterThan(100);
  for (const [path, { version, integrity }] of locked) {
    expect(version, path).toMatch(/^\d+\.\d+\.\d+/);
    expect(integrity, path).toMatch(/^sha512-[\w+/]{86}==$/);
  }
});

test("no package but esbuild brings a script that runs when it is installed", () => {
  const scripted = locked.filter(([, { hasInstallScript }]) => hasInstallScript === true);
  expect(scripted.map(([path]) => path)).toEqual(["node_modules/esbuild"]);
});
