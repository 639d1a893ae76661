import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { gridOf, isConvex, type Quadrilateral } from "../patches/quadrilateral.ts";
import { errorAt } from "./fault.ts";
import type { KnownColours, PatchReadings } from "./photographs.ts";
import type { Reading } from "./records.ts";
import type { ColourRecord } from "./schema/colour.ts";
import type { Box, PhotographRecord } from "./schema/photograph.ts";
import type { RecordPath, YamlRecord } from "./yaml-record.ts";

interface Place {
  readonly yaml: YamlRecord;
  readonly path: RecordPath;
}

type Patch = KnownColours["patches"][number];

/** A correction takes two patches at least: one is left out to see what the other is worth. */
const LEAST_PATCHES = 2;

/** The patches of a photograph with their readings; what can't be one is complained of. */
export function knownColours(
  { correctedBy }: PhotographRecord,
  readings: PatchReadings,
  diagnostics: Diagnostic[],
  { yaml, path }: Place,
): KnownColours | undefined {
  if (correctedBy === undefined) return undefined;
  const complain = (at: RecordPath, message: string, expected: string): void => {
    diagnostics.push(
      errorAt(yaml.place([...path, ...at]), "records/photograph-patches", {
        message,
        expected,
      }),
    );
  };
  const { chart, swatches = [], bare = [] } = correctedBy;
  const wanted = swatches.length + (chart === undefined ? 0 : chart.across * chart.down);
  if (wanted < LEAST_PATCHES)
    complain(
      [],
      `A photograph is corrected by ${LEAST_PATCHES} known patches or more, and here ${wanted === 1 ? "is one" : "is none"}`,
      "a chart, or two swatches",
    );
  return {
    patches: [
      ...(chart === undefined ? [] : chartPatches(chart, readings, complain, { yaml, path })),
      ...swatches.flatMap((swatch, i) => swatchPatch(swatch, i, readings, complain)),
    ],
    bare,
  };
}

type Complain = (at: RecordPath, message: string, expected: string) => void;
type Chart = NonNullable<NonNullable<PhotographRecord["correctedBy"]>["chart"]>;
type Swatch = NonNullable<NonNullable<PhotographRecord["correctedBy"]>["swatches"]>[number];

function chartPatches(
  { corners, across, down, columns, ...form }: Chart,
  { resolve }: PatchReadings,
  complain: Complain,
  { yaml, path }: Place,
): Patch[] {
  if (columns.length !== across * down) {
    complain(
      ["chart", "columns"],
      `A chart of ${across} by ${down} patches has ${across * down} columns, and here are ${columns.length}`,
      `${across * down} columns`,
    );
    return [];
  }
  if (!isConvex(corners)) {
    complain(
      ["chart", "corners"],
      "The corners of a chart go round it from the top left, as a clock does, and these do not",
      "top left, top right, bottom right, bottom left",
    );
    return [];
  }
  const grid = gridOf(corners, across, down);
  return columns.flatMap((column, i) => {
    const own = grid[i];
    const reading = resolve({ ...form, column }, yaml, [...path, "chart"]);
    return own === undefined || reading === undefined || reading.form === "chip"
      ? []
      : [{ name: column, corners: own, reading }];
  });
}

function swatchPatch(
  { at, colour: slug, white, massRatio }: Swatch,
  i: number,
  { colours, isFaulty }: PatchReadings,
  complain: Complain,
): Patch[] {
  // What could not be read was told already.
  if (isFaulty(slug)) return [];
  const colour = colours.find((one) => one.slug === slug);
  const name = [slug, ...(white === undefined ? [] : [`${massRatio ?? ""} ${white}`])].join(" ");
  const reading = colour && readingOf(colour, white, massRatio);
  if (reading === undefined && colour !== undefined && isAskedFor(colour.record, white, massRatio))
    return [];
  if (reading === undefined || reading.form === "chip") {
    complain(
      ["swatches", i, "colour"],
      reading === undefined
        ? `${colour === undefined ? `There is no ${slug} in colours/` : `${name} was not read`}, and a swatch is a drawdown that was`
        : `${name} was matched to a chip by eye, and a swatch is read by an instrument`,
      "a colour of colours/ whose masstone, or let-down, was read",
    );
    return [];
  }
  return [{ name, corners: cornersOf(at), reading }];
}

function readingOf(
  { masstone, tints }: PatchReadings["colours"][number],
  white: string | undefined,
  massRatio: string | undefined,
): Reading | undefined {
  return white === undefined
    ? masstone
    : tints.find((tint) => tint.white === white && tint.massRatio === massRatio)?.reading;
}

/** Whether a record asks for a drawdown's reading, or leaves that to its standard. */
function isAskedFor(
  { masstone, tints, standard }: ColourRecord,
  white: string | undefined,
  massRatio: string | undefined,
): boolean {
  if (white === undefined) return masstone !== undefined || standard !== undefined;
  return tints === undefined
    ? standard !== undefined
    : tints.some((tint) => tint.white === white && tint.massRatio === massRatio);
}

export function cornersOf([left, top, right, bottom]: Box): Quadrilateral {
  return [
    [left, top],
    [right, top],
    [right, bottom],
    [left, bottom],
  ];
}
