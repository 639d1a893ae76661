import { MADE_EACH_TIME, type Keep } from "../kept/kept-result.ts";
import { surfaceTrial } from "../optics/fit/surface-trial.ts";
import { fittedColours } from "../optics/fit/fitted-colour.ts";
import type { Records } from "../records/records.ts";
import { colourSheet } from "./colour-sheet.ts";
import { drawdownSet } from "./tints/drawdown-set.ts";
import type { Sheet } from "./sheet.ts";
import type { Fits } from "./tints/strength.ts";

/** Every colour's sheet, in order of slug. Fits come first, because strength is reckoned against another colour's. */
export function allSheets(records: Records, fits: Fits = allFits(records)): Sheet[] {
  return [...records.colours.values()].map((colour) => colourSheet(colour, fits, records));
}

/** K and S of every colour by slug, or why there are none: all at once, since colours read alike share a surface. */
export function allFits(records: Records, kept: Keep = MADE_EACH_TIME): Fits {
  return fittedColours(
    new Map(
      [...records.colours.values()].map((colour) => [colour.slug, drawdownSet(colour, records)]),
    ),
    {},
    (...inputs) =>
      kept({ modules: ["lib/optics/fit/surface-trial.ts"], inputs }, () => surfaceTrial(...inputs)),
  );
}
