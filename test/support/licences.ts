import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";

const ROOT = join(import.meta.dirname, "../..");
export const LICENCES_FILE = "LICENCES.md";

interface LockedPackage {
  readonly version?: string;
  readonly license?: string;
  readonly dev?: boolean;
}

export interface ShippedPackage {
  readonly name: string;
  readonly version: string;
  readonly licence: string;
}

/** Every package that an installation brings, on one platform or another: all in the lock file that are not for tests alone. */
export function shippedPackages(): ShippedPackage[] {
  const { packages } = JSON.parse(readFileSync(join(ROOT, "package-lock.json"), "utf8")) as {
    packages: Readonly<Record<string, LockedPackage>>;
  };
  const found = Object.entries(packages)
    .filter(([path, { dev }]) => path !== "" && dev !== true)
    .map(([path, { version = "", license }]) => ({
      name: path.slice(path.lastIndexOf("node_modules/") + "node_modules/".length),
      version,
      licence: license ?? statedInItsFile(path),
    }));
  const unique = new Map(found.map((one) => [`${one.name} ${one.version}`, one]));
  return [...unique.values()].sort((a, b) =>
    a.name === b.name ? (a.version < b.version ? -1 : 1) : a.name < b.name ? -1 : 1,
  );
}

/** The first line of a package's LICENSE, where its package.json says nothing: "MIT License". */
function statedInItsFile(path: string): string {
  const file = join(ROOT, path, "LICENSE");
  const first = existsSync(file) ? readFileSync(file, "utf8").trim().split("\n")[0] : undefined;
  return first?.replace(/ License$/, "") ?? "not stated";
}

/** What LICENCES.md says: what is carried along in this package, and what is installed beside it. */
export function licencesText(): string {
  return `# Licences of what ships

Mullstone itself: MIT, see \`LICENSE\`. \`npm run licences\` writes this file, and a test holds it.

## Carried along in this package

| what | where | licence |
|---|---|---|
| CIE tables as tabulated by python-colormath | \`lib/colorimetry/standard-observers.ts\`, \`standard-illuminants.ts\` | BSD-3-Clause, notice in the files |
| spectra of lamps as tabulated by colour-science | \`lib/colorimetry/lamp-illuminants.ts\` | BSD-3-Clause, notice in the file |
| ISCC-NBS blocks | \`lib/colorimetry/iscc-nbs-blocks.ts\` | CC0-1.0 |
| Texts of hazard statements, from law of the European Union | \`lib/hazard/texts/\` | CC-BY-4.0, source in its README |

## Installed beside it

Binaries of sharp, esbuild and others are listed for every platform; an installation brings those of its own.

| package | version | licence |
|---|---|---|
${shippedPackages()
  .map(({ name, version, licence }) => `| ${name} | ${version} | ${licence} |`)
  .join("\n")}
`;
}
