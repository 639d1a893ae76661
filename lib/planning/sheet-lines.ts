/** The lines of a sheet, a figure each: how firm they are, and what of another state of the sheet they gain. */
import { isFigure, isKnown, type Figure } from "../quantities/figure.ts";
import { isInterval } from "../quantities/interval.ts";
import { figureEntries } from "../sheet/figure-entries.ts";
import { evidenceOf } from "../sheet/figure-places.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { mayBeGiven } from "./measurement.ts";

export type Gain = "cleared" | "firmer" | "added";

export interface GainedLine {
  readonly path: string;
  readonly gain: Gain;
}

/** The lines of a sheet as it would be that gain on the sheet as it is; none where there is no such sheet. */
export function gainedLines(before: Sheet | undefined, after: Sheet | undefined): GainedLine[] {
  if (before === undefined || after === undefined) return [];
  const was = linesOf(before);
  return [...linesOf(after)].flatMap(([path, line]) => {
    const found = gain(was.get(path), line);
    return found === undefined ? [] : [{ path, gain: found }];
  });
}

type Line = "not stated" | "estimated" | "firm";

function linesOf(sheet: Sheet): ReadonlyMap<string, Line> {
  return new Map(figureEntries(sheet).map(({ path, figure }) => [path, lineOf(figure)]));
}

function lineOf(figure: Figure): Line {
  if (!isKnown(figure)) return "not stated";
  return figure.restsOn === "estimated" || isInterval(figure.value) ? "estimated" : "firm";
}

function gain(was: Line | undefined, is: Line): Gain | undefined {
  if (is === "not stated") return undefined;
  if (was === undefined) return "added";
  if (was === "not stated") return "cleared";
  return was === "estimated" && is === "firm" ? "firmer" : undefined;
}

/** Parts of a path up to a table, and those of a figure that stands in none: `pigments.NAME.densityGPerCm3`. */
const [TABLE_PARTS, PLAIN_PARTS] = [2, 3] as const;

/** What a line of a colour's sheet is told as: `fill.fillings` of all its cells; of a pigment the same on all sheets. */
export function matterOf(slug: string, path: string): string {
  const parts = path.split(".");
  if (parts.length > PLAIN_PARTS) return [slug, ...parts.slice(0, TABLE_PARTS)].join(".");
  return parts[0] === "pigments" ? path : `${slug}.${path}`;
}

/** A line that is not firm: what it asks for, and the figures without firm ground that it rests on and a measurement may give, itself among them. */
interface OpenLine {
  readonly path: string;
  readonly wanting: readonly string[];
  readonly restsOn: readonly string[];
}

/** Every line of a sheet that is not firm and that a measurement may help: of a range these are many, and held as long as it is looked through. */
export function openLines(sheet: Sheet): OpenLine[] {
  const entries = figureEntries(sheet);
  const paths = new Map<Figure, string>(entries.map(({ figure, path }) => [figure, path]));
  const grounds = (figure: Figure, found: Set<Figure>): Set<Figure> => {
    if (found.has(figure) || lineOf(figure) === "firm") return found;
    found.add(figure);
    for (const input of evidenceOf(figure)) if (isFigure(input)) grounds(input, found);
    return found;
  };
  return entries
    .filter(({ figure }) => lineOf(figure) !== "firm")
    .map(({ path, figure }) => ({
      path,
      wanting: isKnown(figure) ? [] : figure.wanting,
      restsOn: [...grounds(figure, new Set())]
        .flatMap((ground) => paths.get(ground) ?? [])
        .filter(mayBeGiven),
    }))
    .filter(({ wanting, restsOn }) => wanting.length + restsOn.length > 0);
}
