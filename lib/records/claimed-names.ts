import { nearestHint } from "../diagnostics/nearest-word.ts";
import { warningAt, type Faults } from "./fault.ts";
import { isFaulty, type ParsedFiles } from "./parsed-files.ts";

/** Parts of a sheet that are lists of records, by the folder that these lie in. */
const FOLDERS = new Map<string, "pigments" | "vehicles">([
  ["pigments", "pigments"],
  ["additions", "vehicles"],
]);

/**
 * A claim that something is not in a tube holds for ever of what no record is called: a slip of a name would vouch
 * for what is in there by its right one.
 */
export function* claimedNames(files: ParsedFiles): Faults {
  for (const { record, yaml } of files.answers.values())
    for (const [i, claim] of (record.claims ?? []).entries()) {
      if (!("lacks" in claim)) continue;
      const { lacks } = claim;
      const folder = FOLDERS.get("every" in claim ? claim.every : partOf(claim.fact));
      if (folder === undefined || files[folder].has(lacks) || isFaulty(files, folder, lacks))
        continue;
      yield warningAt(yaml.place(["claims", i, "lacks"]), "records/claimed-name", {
        message: `There is no ${lacks} in ${folder}/, so this claim holds whatever is in the tubes`,
        actual: lacks,
        expected: `the name of a file in ${folder}/`,
        hint: nearestHint(lacks, files[folder].keys()),
      });
    }
}

/** `additions` of `lamp-black.additions`. */
function partOf(fact: string): string {
  return fact.slice(fact.indexOf(".") + 1);
}
