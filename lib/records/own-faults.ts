import type { z } from "zod";
import type { HazardKnowledge } from "../hazard/hazard-knowledge.ts";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import type { Knowledge } from "../knowledge/pigment-knowledge.ts";
import { keysOf } from "../quantities/members.ts";
import { colourChangeFaults, rubOutMethodFaults, valueFaults } from "./amount-faults.ts";
import { claimFaults, claimsFound, type ClaimsFound } from "./claim-faults.ts";
import type { Faults } from "./fault.ts";
import {
  componentMetalFaults,
  matteGlossFaults,
  metalFaults,
  quartzFaults,
} from "./figure-slips.ts";
import { harmonisedFaults } from "./harmonised-hazards.ts";
import { arsenicFaults, benchTestFaults, labelFaults, substanceFaults } from "./hazard-faults.ts";
import { labelLanguages } from "./label-languages.ts";
import { dryingTrialFaults, paintReachFaults, partsSumFaults } from "./paint-faults.ts";
import { type FileParsers, type ParsedFiles } from "./parsed-files.ts";
import type { Parsed } from "./parsed-record.ts";
import { PIGMENT_RULES } from "./pigment-faults.ts";
import { quartzHazardFaults } from "./quartz-hazard.ts";
import type { RECORD_SCHEMAS, RecordFolder } from "./schema/record-schemas.ts";
import type { WorkshopRecord } from "./schema/workshop.ts";
import { statedLightfastness } from "./stated-lightfastness.ts";
import { casNumberFaults, componentFaults, constitutionFaults } from "./substance-numbers.ts";
import { exposureFallFaults, trialReadingFaults } from "./trial-faults.ts";
import { flashFaults, usualFilmFaults, viscosityFaults } from "./unit-slips.ts";
import { ratioFaults, turnedRangeFaults } from "./vehicle-and-price-faults.ts";
import { densityFaults, drierFaults, oilFaults } from "./vehicle-faults.ts";

/** What a record is held against beside itself. */
interface Beside {
  /** YYYY-MM-DD, after which no record is dated; without it dates are not held against any. */
  readonly today: string | undefined;
  readonly knowledge: Knowledge;
  readonly hazard: HazardKnowledge;
  readonly claims: ClaimsFound;
}

/** What is wrong with a record by itself: it is handed that one, and sees no other. */
export type OwnRule<R> = (record: Parsed<R>, beside: Beside) => Faults;

type OwnRules = { readonly workshop: readonly OwnRule<WorkshopRecord>[] } & {
  readonly [F in RecordFolder]: readonly OwnRule<z.output<(typeof RECORD_SCHEMAS)[F]>>[];
};

const OF_SUBSTANCES = [
  componentFaults,
  componentMetalFaults,
  substanceFaults,
  turnedRangeFaults,
  valueFaults,
  claimFaults,
];

/** By what a record is: a folder of them, or workshop.yaml. */
const RULES: OwnRules = {
  workshop: [usualFilmFaults, valueFaults, claimFaults],
  pigments: [
    ...PIGMENT_RULES,
    constitutionFaults,
    casNumberFaults,
    statedLightfastness,
    rubOutMethodFaults,
    metalFaults,
    quartzFaults,
    arsenicFaults,
    benchTestFaults,
    quartzHazardFaults,
    harmonisedFaults,
    ...OF_SUBSTANCES,
  ],
  vehicles: [densityFaults, oilFaults, drierFaults, flashFaults, viscosityFaults, ...OF_SUBSTANCES],
  colours: [
    paintReachFaults,
    partsSumFaults,
    ratioFaults,
    dryingTrialFaults,
    exposureFallFaults,
    colourChangeFaults,
    matteGlossFaults,
    labelFaults,
    turnedRangeFaults,
    valueFaults,
    claimFaults,
  ],
  lots: [valueFaults],
  trials: [trialReadingFaults, valueFaults],
  sources: [valueFaults],
  answers: [valueFaults, claimFaults],
};

/**
 * What is wrong with each record by itself, so that of a file which nobody edited nothing is looked for again.
 * @param follows what follows from a file's text, kept by who parses it.
 */
export function ownFaults(
  files: ParsedFiles,
  known: Omit<Beside, "claims">,
  follows: FileParsers["follows"],
): Diagnostic[] {
  const languages = labelLanguages(files.workshop?.record ?? {});
  const beside = { ...known, claims: claimsFound(languages, known.hazard.forbiddenWords) };
  const name = JSON.stringify(["faults", known.today, languages]);
  const { workshop } = files;
  return keysOf(RULES).flatMap((kind) =>
    (kind === "workshop" ? (workshop === undefined ? [] : [workshop]) : [...files[kind].values()])
      // Rules and records of one kind go together, which the compiler does not follow.
      .flatMap((record) =>
        follows(record.file, name, () =>
          RULES[kind].flatMap((rule) => [...(rule as OwnRule<unknown>)(record, beside)]),
        ),
      ),
  );
}
