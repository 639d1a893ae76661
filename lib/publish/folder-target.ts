import { cpSync, mkdirSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { codeOf } from "../diagnostics/error-code.ts";
import { OutputFault } from "../site/output-fault.ts";
import { buildFolder, refuseForeignFolder } from "../site/output-folder.ts";
import { MANIFEST, outputManifest } from "../site/output-manifest.ts";
import type { PublishTarget } from "./publish-target.ts";

/** A folder of this machine: written beside and exchanged in one step; what no publish wrote in it stays. @throws OutputFault for a folder of somebody else's */
export function folderTarget(dir: string, contentDir: string): PublishTarget {
  refuseForeignFolder(dir, contentDir);
  return {
    read: async (path) => {
      try {
        return await Promise.resolve(readFileSync(join(dir, path)));
      } catch (error) {
        if (["ENOENT", "ENOTDIR"].includes(codeOf(error))) return undefined;
        throw new OutputFault(`${join(dir, path)} can't be read: ${(error as Error).message}`);
      }
    },
    ship: async ({ outputDir }) => {
      const files = outputManifest(outputDir)?.files ?? new Set<string>();
      const folder = buildFolder(dir, contentDir);
      try {
        for (const path of new Set([...files, MANIFEST])) {
          const place = join(folder.dir, path);
          mkdirSync(dirname(place), { recursive: true });
          cpSync(join(outputDir, path), place);
        }
        const left = await Promise.resolve(folder.publish());
        if (left !== undefined) process.stderr.write(`${left}\n`);
      } finally {
        folder.discard();
      }
    },
  };
}
