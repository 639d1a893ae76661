import { contentHash } from "../kept/content-hash.ts";
import { madeStep, type KeptSteps, type Step } from "../kept/kept-steps.ts";
import { certain } from "../quantities/at.ts";
import { isAsset } from "./site-assets.ts";
import type { DataFile } from "./site.ts";

/**
 * Some files of data with the hash of each, whose texts are made when they are asked for: one that
 * the earlier output has need not be made. Whoever lets the files go lets their texts go.
 * @param of the step's name, and what it is taken of.
 */
export function dataFilesOf(
  steps: KeptSteps | undefined,
  of: Omit<Step, "modules">,
  made: () => readonly DataFile[],
): readonly DataFile[] {
  if (steps === undefined) return made();
  const step: Step = { modules: ["lib/site/site-of-records.ts"], ...of };
  let texts: ReadonlyMap<string, string> | undefined;
  const makeTexts = (): ReadonlyMap<string, string> =>
    (texts ??= new Map(made().map(({ path, text }) => [path, text])));
  const listed = madeStep(steps, step, () =>
    [...makeTexts()].map(([path, text]) => ({
      path,
      hash: contentHash([text]).toString("base64url"),
      // An asset goes out under a name that its text gives it.
      ...(isAsset(path) && { asset: text }),
    })),
  );
  return listed.map(({ path, hash, asset }) => ({
    path,
    hash,
    get text() {
      return asset ?? certain(makeTexts().get(path));
    },
  }));
}
