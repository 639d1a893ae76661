import type { ColourFit, FitRefusal } from "../optics/colour-fit.ts";
import { notStated } from "../quantities/figure.ts";
import type { Colour, Records } from "../records/records.ts";
import type { OpticsSection } from "./sheet.ts";

/** Strength, hiding and opacity. */
export function opticsSection(colour: Colour, _fit: ColourFit | FitRefusal, _fits: ReadonlyMap<string, ColourFit | FitRefusal>, _records: Records): OpticsSection {
  const films = [`colours.${colour.slug}.films`];
  const none = notStated("no drawdown of known thickness over black and white", films);
  return { tintingStrength: notStated("no tint to compare", [`colours.${colour.slug}.tints`]), contrastRatio: none, hidingFilmUm: none, opacityClass: none, reasons: [] };
}
