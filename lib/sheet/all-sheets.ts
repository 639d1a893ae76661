import type { ColourFit, FitRefusal } from "../optics/colour-fit.ts";
import { fittedColour } from "../optics/fitted-colour.ts";
import type { Records } from "../records/records.ts";
import { colourSheet } from "./colour-sheet.ts";
import { drawdownSet } from "./drawdown-set.ts";
import type { Sheet } from "./sheet.ts";

/** Every colour's sheet, in order of slug. Fits come first, because strength is reckoned against another colour's. */
export function allSheets(records: Records): Sheet[] {
  const colours = [...records.colours.values()];
  const fits = new Map<string, ColourFit | FitRefusal>(colours.map((colour) => [colour.slug, fittedColour(drawdownSet(colour, records))]));
  return colours.map((colour) => colourSheet(colour, fits, records));
}
