import { noteRead } from "../kept/reads.ts";
import {
  inputsOf,
  isFigure,
  type Figure,
  type FigurePath,
  type Input,
} from "../quantities/figure.ts";
import { notesOn } from "../quantities/noted-on.ts";
import { memberName, pathBelow } from "./figure-path.ts";

/** Where a figure stands: on which colour's sheet, and where there. */
export interface Place {
  readonly colour: string;
  readonly path: FigurePath;
}

/** Apart, since a range has a million figures: a place of each by itself would be as many things more. */
const COLOURS = notesOn<Figure, string>();
const PATHS = notesOn<Figure, FigurePath>();

/** Notes where the figures of a colour's sheet, or of a part of it at a path, stand; of two places the first. */
export function placeFigures(colour: string, part: object, path: FigurePath = ""): void {
  if (isFigure(part)) {
    if (!PATHS.has(part)) keptPlace(part, { colour, path });
    return;
  }
  for (const [key, value] of Object.entries(part) as [string, unknown][])
    if (typeof value === "object" && value !== null) {
      const name = Array.isArray(part) ? memberName(value, Number(key)) : key;
      placeFigures(colour, value, pathBelow(path, name));
    }
}

/** Where a figure stands, once its sheet or its part of it is worked out. */
export function placeOf(figure: Figure): Place | undefined {
  const [colour, path] = [COLOURS.get(figure), PATHS.get(figure)];
  return colour === undefined || path === undefined ? undefined : { colour, path };
}

/** Notes where a figure that was kept stands. */
export function keptPlace(figure: Figure, { colour, path }: Place): void {
  COLOURS.set(figure, colour);
  PATHS.set(figure, path);
}

/** Of all figures of a sheet together, below its name: what they were made from, and where they stand. */
export const EVIDENCE = "evidence";

/** Notes that it was read what the figures of a colour's sheet were made from: who reads what they say has not read that. */
export function noteEvidence(colour: string): void {
  noteRead(`sheets/${colour}/${EVIDENCE}`);
}

/** What a figure of a finished sheet was made from, for whoever works no figure out. */
export function evidenceOf(figure: Figure): readonly Input[] {
  const colour = COLOURS.get(figure);
  if (colour !== undefined) noteEvidence(colour);
  return inputsOf(figure);
}

/**
 * Paths of the figures that a figure was made from, as the evidence on a colour's sheet
 * prints them: another sheet's by its colour. A figure that stands on no sheet is printed as
 * what it was made from.
 */
export function inputPaths(figure: Figure, colour: string): FigurePath[] {
  return pathsIn(evidenceOf(figure), colour);
}

/** The same of many figures of a colour's sheet: those made from one list of inputs are given one list of paths. */
export function inputPathsOn(colour: string): (figure: Figure) => readonly FigurePath[] {
  const known = new Map<readonly Input[], readonly FigurePath[]>();
  return (figure) => {
    const inputs = evidenceOf(figure);
    const paths = known.get(inputs) ?? pathsIn(inputs, colour);
    known.set(inputs, paths);
    return paths;
  };
}

function pathsIn(inputs: readonly Input[], colour: string): FigurePath[] {
  return inputs.flatMap((input) => {
    if (!isFigure(input)) return [];
    const place = placeOf(input);
    if (place === undefined) return inputPaths(input, colour);
    return [place.colour === colour ? place.path : `colours.${place.colour}.${place.path}`];
  });
}
