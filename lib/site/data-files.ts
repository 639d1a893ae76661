import { contentHash } from "../kept/content-hash.ts";
import { madeStep, type KeptSteps, type Step } from "../kept/kept-steps.ts";
import { readAgain, readBy, type Read } from "../kept/reads.ts";
import { certain } from "../quantities/at.ts";
import { isAsset } from "./site-assets.ts";
import type { DataFile } from "./site.ts";

/**
 * Some files of data with the hash of each, whose texts are made when they are asked for: one that
 * the earlier output has need not be made. Texts once made are let go for the next step's: those of
 * a large range would take more memory than its sheets.
 * @param of the step's name, and what it is taken of.
 */
export function dataFilesOf(
  steps: KeptSteps | undefined,
  of: Omit<Step, "modules">,
  made: () => readonly DataFile[],
): readonly DataFile[] {
  if (steps === undefined) return made();
  const all = (): readonly DataFile[] => {
    if (latest?.made !== made) latest = { made, read: readBy(made) };
    return readAgain(latest.read);
  };
  const step: Step = { modules: ["lib/site/site-of-records.ts"], ...of };
  const listed = madeStep(steps, step, () =>
    all().map(({ path, text }) => ({
      path,
      hash: contentHash([text]).toString("base64url"),
      // An asset goes out under a name that its text gives it.
      ...(isAsset(path) ? { asset: text } : {}),
    })),
  );
  return listed.map(({ path, hash, asset }) => ({
    path,
    hash,
    get text() {
      return asset ?? certain(all().find((file) => file.path === path)).text;
    },
  }));
}

/** Files of the step that was asked for last: all of a step are written one after another. */
let latest:
  | { readonly made: () => readonly DataFile[]; readonly read: Read<readonly DataFile[]> }
  | undefined;
