import { MADE_EACH_TIME, type Keep } from "../kept/kept-result.ts";
import type { KeptSteps, Step } from "../kept/kept-steps.ts";
import { readBy } from "../kept/reads.ts";
import { surfaceTrial } from "../optics/fit/surface-trial.ts";
import { fittedColours } from "../optics/fit/fitted-colour.ts";
import type { Records } from "../records/records.ts";
import { colourSheet } from "./colour-sheet.ts";
import { packedSheet, unpackedSheet, type PackedSheet } from "./kept-sheet.ts";
import { drawdownSet } from "./tints/drawdown-set.ts";
import type { Sheet } from "./sheet.ts";
import type { Fits } from "./tints/strength.ts";

/**
 * Every colour's sheet, in order of slug. Fits come first, because strength is reckoned against another colour's.
 * @param kept sheets of earlier builds, by what they read of these very records and fits.
 */
export function allSheets(
  records: Records,
  fits: Fits = allFits(records),
  kept?: KeptSteps,
): Sheet[] {
  const made = [...records.colours.values()].map((colour) => {
    const step: Step = {
      modules: ["lib/sheet/colour-sheet.ts", "lib/sheet/kept-sheet.ts"],
      name: `sheet ${colour.slug}`,
    };
    const found = kept?.found(step) as PackedSheet | undefined;
    if (found !== undefined) return { step, sheet: unpackedSheet(found) };
    const { value: sheet, names } = readBy(() => colourSheet(colour, fits, records));
    return { step, sheet, names };
  });
  for (const { step, sheet, names } of made)
    if (names !== undefined) kept?.keep(step, names, packedSheet(sheet));
  return made.map(({ sheet }) => sheet);
}

/** K and S of every colour by slug, or why there are none: all at once, since colours read alike share a surface. */
export function allFits(records: Records, kept: Keep = MADE_EACH_TIME): Fits {
  const sets = new Map(
    [...records.colours.values()].map((colour) => [colour.slug, drawdownSet(colour, records)]),
  );
  return kept({ modules: ["lib/optics/fit/fitted-colour.ts"], inputs: sets }, () =>
    fittedColours(sets, {}, (...inputs) =>
      kept({ modules: ["lib/optics/fit/surface-trial.ts"], inputs }, () => surfaceTrial(...inputs)),
    ),
  );
}
