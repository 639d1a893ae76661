import { deflateRawSync, inflateRawSync } from "node:zlib";
import { contentHash } from "../kept/content-hash.ts";
import { madeStep, type KeptSteps, type Step } from "../kept/kept-steps.ts";
import { readAgain, readBy, type Read } from "../kept/reads.ts";
import { certain } from "../quantities/at.ts";
import { isAsset } from "./site-assets.ts";
import type { DataFile } from "./site.ts";

/**
 * Some files of data with the hash of each, whose texts are made when they are asked for: one that
 * the earlier output has need not be made. Texts that were made to be hashed wait packed until they
 * are written: those of a large range would take more memory than its sheets.
 * @param of the step's name, and what it is taken of.
 */
export function dataFilesOf(
  steps: KeptSteps | undefined,
  of: Omit<Step, "modules">,
  made: () => readonly DataFile[],
): readonly DataFile[] {
  if (steps === undefined) return made();
  const step: Step = { modules: ["lib/site/site-of-records.ts"], ...of };
  const packed = new Map<string, Buffer>();
  const listed = madeStep(steps, step, () =>
    made().map(({ path, text }) => {
      // An asset goes out under a name that its text gives it.
      if (isAsset(path)) return { path, hash: hashOf(text), asset: text };
      packed.set(path, deflateRawSync(text, { level: 1 }));
      return { path, hash: hashOf(text) };
    }),
  );
  return listed.map(({ path, hash, asset }) => ({
    path,
    hash,
    get text() {
      if (asset !== undefined) return asset;
      const own = packed.get(path);
      return own === undefined ? madeAgain(path, made) : inflateRawSync(own).toString();
    },
  }));
}

function hashOf(text: string): string {
  return contentHash([text]).toString("base64url");
}

/** Files of the step that was asked for last: all of a step are written one after another. */
let latest:
  | { readonly made: () => readonly DataFile[]; readonly read: Read<readonly DataFile[]> }
  | undefined;

function madeAgain(path: string, made: () => readonly DataFile[]): string {
  if (latest?.made !== made) latest = { made, read: readBy(made) };
  return certain(readAgain(latest.read).find((file) => file.path === path)).text;
}
