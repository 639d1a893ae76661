import { execFileSync } from "node:child_process";
import { existsSync, mkdirSync, readdirSync, readFileSync, symlinkSync } from "node:fs";
import { dirname, join } from "node:path";

export const ROOT = join(import.meta.dirname, "../..");

/** What npm packs, as a tarball in a folder. */
export function packed(folder: string): string {
  execFileSync("npm", ["pack", "--silent", "--pack-destination", folder], { cwd: ROOT });
  return join(folder, readdirSync(folder).find((name) => name.endsWith(".tgz")) ?? "");
}

interface Lock {
  readonly packages: Readonly<
    Record<string, { readonly dev?: boolean; readonly optional?: boolean }>
  >;
}

/** Folders of node_modules that an install of the package alone would bring: what only tests and lint need is left out. */
function runtimeModules(): string[] {
  const { packages } = JSON.parse(readFileSync(join(ROOT, "package-lock.json"), "utf8")) as Lock;
  return Object.entries(packages)
    .filter(
      ([path, { dev }]) =>
        /^node_modules\/(?:@[^/]+\/)?[^/]+$/.test(path) &&
        dev !== true &&
        existsSync(join(ROOT, path)),
    )
    .map(([path]) => path);
}

export interface Installed {
  readonly home: string;
  readonly bin: string;
  readonly packageDir: string;
}

/** The tarball unpacked into a node_modules of its own in an empty folder, dependencies linked from this checkout: what `npm install` makes, without a network. */
export function installed(tarball: string, home: string): Installed {
  for (const path of runtimeModules()) {
    mkdirSync(dirname(join(home, path)), { recursive: true });
    symlinkSync(join(ROOT, path), join(home, path));
  }
  const packageDir = join(home, "node_modules", "mullstone");
  mkdirSync(packageDir);
  execFileSync("tar", ["-xzf", tarball, "-C", packageDir, "--strip-components=1"]);
  return { home, packageDir, bin: join(packageDir, "lib", "mullstone.js") };
}
