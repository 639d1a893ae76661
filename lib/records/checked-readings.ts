import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import type { Knowledge } from "../knowledge/pigment-knowledge.ts";
import { colourFaults } from "./colour-faults.ts";
import { drawdownFaults } from "./drawdown-faults.ts";
import { glossSteps } from "./gloss-steps.ts";
import type { ParsedFiles } from "./parsed-files.ts";
import { strengthsInWhites } from "./range-faults.ts";
import { conditionFaults } from "./reading-conditions.ts";
import type { ReadColour, Reading } from "./records.ts";

/** What a colour's readings tell beside its whites and pigments, whatever else the workshop has. */
export interface CheckedReadings {
  readonly faults: readonly Diagnostic[];
  /** Its apparent strength in each of its whites [1]. */
  readonly inWhite: ReadonlyMap<string, number>;
}

/** What it may ask for. */
interface Beside {
  readonly files: ParsedFiles;
  /** The masstone of a white, by its slug. */
  readonly whites: (slug: string) => Reading | undefined;
  readonly knowledge: Knowledge;
}

export function checkedReadings(
  colour: ReadColour,
  { files, whites, knowledge }: Beside,
): CheckedReadings {
  return {
    faults: [
      ...drawdownFaults(colour, whites, (slug) => isExtender(slug, files, knowledge)),
      ...conditionFaults(colour),
      ...glossSteps(colour, whites),
      ...colourFaults(colour, files, knowledge),
    ],
    inWhite: strengthsInWhites(colour, whites),
  };
}

/** Whether a paint, or the pigment that a let-down names in its place, is an extender. */
function isExtender(slug: string, files: ParsedFiles, knowledge: Knowledge): boolean {
  const colour = files.colours.get(slug)?.record;
  const pigment = files.pigments.get(colour?.pigments[0]?.pigment ?? slug)?.record;
  const family =
    colour?.family ?? pigment?.family ?? knowledge.pigment(pigment?.colourIndexName).family;
  return family === "extender";
}
