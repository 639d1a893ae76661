import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { LICENCES_FILE, licencesText, shippedPackages } from "../support/licences.ts";

/**
 * Licences that let a workshop use and pass on the program without giving anything away: permissive
 * ones, and those that ask for the source of the part itself alone (MPL-2.0, LGPL of a library that
 * is a file of its own, OFL of a font).
 */
const ALLOWED: ReadonlySet<string> = new Set([
  "MIT",
  "ISC",
  "0BSD",
  "BSD-2-Clause",
  "BSD-3-Clause",
  "Apache-2.0",
  "BlueOak-1.0.0",
  "Python-2.0",
  "PSF-2.0",
  "OFL-1.1",
  "MPL-2.0",
  "LGPL-3.0-or-later",
  "(MIT OR Apache-2.0)",
  "Apache-2.0 AND LGPL-3.0-or-later",
  "Apache-2.0 AND LGPL-3.0-or-later AND MIT",
]);

test("every package that ships has a licence of a known kind", () => {
  const packages = shippedPackages();
  expect(packages.length).toBeGreaterThan(100);
  expect(packages.filter(({ licence }) => !ALLOWED.has(licence))).toEqual([]);
});

test("the list that ships is today's: npm run licences writes it", () => {
  expect(readFileSync(join(import.meta.dirname, "../..", LICENCES_FILE), "utf8")).toBe(
    licencesText(),
  );
});

test("a QR code brings one package and not twenty-eight", () => {
  const names = shippedPackages().map(({ name }) => name);
  expect(names).toContain("qr");
  for (const gone of ["qrcode", "yargs", "pngjs", "dijkstrajs"]) expect(names).not.toContain(gone);
});
