import { readFileSync } from "node:fs";
import { join } from "node:path";
import { BUNDLE } from "./beside-program.ts";

let parts: ReadonlyMap<string, string> | undefined;

/**
 * The hash of a module with all that it imports and the versions of the packages, as the
 * bundle's import graph has them: what the module makes is the same while this is.
 * @param module by its path below the package: `lib/sheet/colour-sheet.ts`.
 * @returns undefined of sources that run as they are, whose graph nobody has written down
 * @throws RangeError for what is no module of the program
 */
export function programPart(module: string): string | undefined {
  if (BUNDLE === undefined) return undefined;
  parts ??= new Map(
    Object.entries(
      JSON.parse(readFileSync(join(BUNDLE, "modules.json"), "utf8")) as Record<string, string>,
    ),
  );
  const part = parts.get(module);
  if (part === undefined) throw new RangeError(`The program has no module ${module}`);
  return part;
}
