import { createHash } from "node:crypto";
import { mkdirSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { build } from "esbuild";
import type { LiveSite } from "./live-site.ts";
import { PACKAGE_ROOT } from "./package-root.ts";

type LiveModule = {
  readonly liveSite: (
    contentDir: string,
    date: string | undefined,
    claims?: "error" | "warning",
  ) => LiveSite;
};

/**
 * lib/ as it is on disk now. A module that Node has imported never changes again,
 * so each edit is bundled into a file named by its content, below the package so
 * that its dependencies are found.
 */
export async function freshLib(): Promise<LiveModule> {
  const {
    outputFiles: [bundle],
  } = await build({
    entryPoints: [join(PACKAGE_ROOT, "lib", "site", "live-site.ts")],
    bundle: true,
    write: false,
    format: "esm",
    platform: "node",
    target: "node20",
    packages: "external",
    logLevel: "silent",
  });
  if (bundle === undefined) throw new Error("The bundle of lib/site/live-site.ts is empty");
  const folder = join(PACKAGE_ROOT, ".cache", "live");
  mkdirSync(folder, { recursive: true });
  const file = join(
    folder,
    `${createHash("sha256").update(bundle.contents).digest("hex").slice(0, 16)}-${process.pid}.mjs`,
  );
  writeFileSync(file, bundle.contents);
  try {
    return (await import(pathToFileURL(file).href)) as LiveModule;
  } finally {
    rmSync(file, { force: true });
  }
}
