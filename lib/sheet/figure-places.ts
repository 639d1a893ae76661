import { inputsOf, isFigure, type Figure, type FigurePath } from "../quantities/figure.ts";
import { figureEntries } from "./figure-entries.ts";
import type { Sheet } from "./sheet.ts";

interface Place {
  readonly colour: string;
  readonly path: FigurePath;
}

const PLACES = new WeakMap<Figure, Place>();

/** Notes where the figures of a colour's sheet, or of a part of it, stand; of two places the first. */
export function placeFigures(colour: string, sheet: Partial<Sheet>): void {
  for (const { path, figure } of figureEntries(sheet)) {
    if (!PLACES.has(figure)) PLACES.set(figure, { colour, path });
  }
}

/**
 * Paths of the figures that a figure was made from, as the evidence on a colour's sheet
 * prints them: another sheet's by its colour. A figure that stands on no sheet is printed as
 * what it was made from.
 */
export function inputPaths(figure: Figure, colour: string): FigurePath[] {
  return inputsOf(figure).flatMap((input) => {
    if (!isFigure(input)) return [];
    const place = PLACES.get(input);
    if (place === undefined) return inputPaths(input, colour);
    return [place.colour === colour ? place.path : `colours.${place.colour}.${place.path}`];
  });
}
