import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import type { HazardKnowledge } from "../hazard/hazard-knowledge.ts";
import type { Knowledge } from "../knowledge/pigment-knowledge.ts";
import { amountFaults } from "./amount-faults.ts";
import { claimFaults, claimsFound } from "./claim-faults.ts";
import { harmonisedFaults } from "./harmonised-hazards.ts";
import { hazardFaults } from "./hazard-faults.ts";
import { labelLanguages } from "./label-languages.ts";
import { byFolder, RECORD_FOLDERS, type FileParsers, type ParsedFiles } from "./parsed-files.ts";
import { pigmentFaults } from "./pigment-faults.ts";
import { quartzHazardFaults } from "./quartz-hazard.ts";
import { statedLightfastness } from "./stated-lightfastness.ts";
import { casNumberFaults, componentFaults, constitutionFaults } from "./substance-numbers.ts";
import { unitSlips } from "./unit-slips.ts";

/** What records are held against beside themselves. */
interface Beside {
  readonly today: string | undefined;
  readonly knowledge: Knowledge;
  readonly hazard: HazardKnowledge;
}

/**
 * What is wrong with each record by itself, whatever the others say. These rules are handed one
 * record and see no other, so that of a file which nobody edited nothing is looked for again.
 * @param follows what follows from a file's text, kept by who parses it.
 */
export function ownFaults(
  files: ParsedFiles,
  { today, knowledge, hazard }: Beside,
  follows: FileParsers["follows"],
): Diagnostic[] {
  const languages = labelLanguages(files.workshop?.record ?? {});
  const claims = claimsFound(languages, hazard.forbiddenWords);
  const faultsOf = (one: ParsedFiles): Diagnostic[] => [
    ...pigmentFaults(one, knowledge),
    ...constitutionFaults(one, knowledge),
    ...casNumberFaults(one, knowledge),
    ...statedLightfastness(one, knowledge),
    ...componentFaults(one),
    ...unitSlips(one),
    ...amountFaults(one, today),
    ...hazardFaults(one, hazard),
    ...quartzHazardFaults(one),
    ...harmonisedFaults(one, hazard),
    ...claimFaults(one, claims),
  ];
  const name = JSON.stringify(["faults", today, languages]);
  return eachAlone(files).flatMap(({ file, alone }) => follows(file, name, () => faultsOf(alone)));
}

/** Files that hold no record. */
const NO_FILES: ParsedFiles = {
  workshop: undefined,
  ...byFolder(() => new Map()),
  prices: undefined,
  readings: new Map(),
  faulty: new Set(),
};
/** Each record, and files that hold no other. */
function eachAlone(
  files: ParsedFiles,
): readonly { readonly file: string; readonly alone: ParsedFiles }[] {
  const { workshop } = files;
  return [
    ...(workshop === undefined ? [] : [{ file: workshop.file, alone: { ...NO_FILES, workshop } }]),
    ...RECORD_FOLDERS.flatMap((folder) =>
      [...files[folder]].map(([slug, one]) => ({
        file: one.file,
        alone: { ...NO_FILES, [folder]: new Map([[slug, one]]) },
      })),
    ),
  ];
}
