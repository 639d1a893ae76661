import type { Light } from "../colorimetry/display-p3.ts";
import { labUnder } from "../colorimetry/lab-under.ts";
import { labToXyz } from "../colorimetry/lab.ts";
import { tristimulus } from "../colorimetry/tristimulus.ts";
import type { Lab, Xyz } from "../colorimetry/viewing.ts";
import {
  correctedLight,
  labOfLight,
  levelCorrection,
  type ColourCorrection,
  type KnownPatch,
} from "../patches/colour-correction.ts";
import { lightFall, type BareSpot, type LightFall } from "../patches/even-light.ts";
import {
  MOST_MEDIAN_DELTA_E00,
  triedCorrection,
  type TriedCorrection,
} from "../patches/left-out.ts";
import type { Point, Quadrilateral } from "../patches/quadrilateral.ts";
import { isStatement } from "../quantities/statement.ts";
import { cornersOf } from "../records/known-colours.ts";
import type { KnownColours } from "../records/photographs.ts";
import type { LabReading, SpectrumReading } from "../records/records.ts";
import type { Box } from "../records/schema/photograph.ts";
import type { PhotographCorrection } from "../records/taken-photograph.ts";
import { eachPixel, fallShares } from "./each-pixel.ts";
import { lightOfStored, seenLight } from "./seen-light.ts";
import type { UprightPixels } from "./upright-pixels.ts";

/** Of a picture: what it came to, and how its pixels follow; `fix` is absent where it is not corrected. */
export interface CorrectedPhotograph {
  readonly correction: PhotographCorrection;
  readonly fix?: { readonly fall: LightFall; readonly correction: ColourCorrection };
}

/**
 * A photograph's colours by its known patches: light evened by the bare ground, then a correction
 * whose form is chosen, and whose worth is told, by patches left out.
 * @returns undefined where fewer than two patches can be seen as they are.
 */
export function photographCorrection(
  picture: UprightPixels,
  { patches, bare }: KnownColours,
  paint: Box | undefined,
): CorrectedPhotograph | undefined {
  const fall = lightFall(bare.flatMap((box) => spotsOf(picture, box)));
  const seen = patches.map(({ name, corners, reading }) => ({
    name,
    known: knownXyz(reading),
    ...seenLight(picture, corners),
    even: fall(...middleOf(corners)),
  }));
  const usable = seen.flatMap(({ name, known, light, isClipped, even }): KnownPatch[] =>
    isClipped || known === undefined ? [] : [{ name, known, seen: evened(light, even) }],
  );
  if (usable.length < 2) return undefined;
  const tried = triedCorrection(usable);
  const isUsed = tried.medianDeltaE00 <= MOST_MEDIAN_DELTA_E00;
  const corner = (x: number, y: number): number =>
    fall(x * picture.cameWidthPx, y * picture.cameHeightPx);
  const falls = [corner(0, 0), corner(1, 0), corner(0, 1), corner(1, 1)];
  return {
    correction: {
      patches: usable.length,
      clipped: seen.flatMap(({ name, isClipped }) => (isClipped ? [name] : [])),
      medianDeltaE00: tried.medianDeltaE00,
      largestDeltaE00: tried.worst.deltaE00,
      worst: tried.worst.name,
      suspected: tried.suspected.map(({ name, deltaE00 }) => ({ name, deltaE00 })),
      isUsed,
      ...(bare.length > 0 && { lightShare: Math.min(...falls) / Math.max(...falls) }),
      ...(isUsed && paint !== undefined && { colour: colourOf(picture, paint, fall, tried) }),
    },
    ...(isUsed && { fix: { fall, correction: tried.correction } }),
  };
}

function colourOf(
  picture: UprightPixels,
  paint: Box,
  fall: LightFall,
  { correction, leftOut }: TriedCorrection,
): NonNullable<PhotographCorrection["colour"]> {
  const corners = cornersOf(paint);
  const { light } = seenLight(picture, corners, 0.9);
  const lab = labOfLight(correctedLight(correction, evened(light, fall(...middleOf(corners)))));
  const spread = (axis: keyof Lab): number =>
    RANGE * Math.sqrt(leftOut.reduce((sum, { miss }) => sum + miss[axis] ** 2, 0) / leftOut.length);
  return { lab, range: { L: spread("L"), a: spread("a"), b: spread("b") } };
}

/** Of the root mean square of what patches left out were missed by: nineteen cases of twenty lie within. */
const RANGE = 2;

/** Tiles of a bare part, each a spot. */
const TILES = 4;

function spotsOf(picture: UprightPixels, [left, top, right, bottom]: Box): BareSpot[] {
  const [width, height] = [(right - left) / TILES, (bottom - top) / TILES];
  return Array.from({ length: TILES * TILES }, (_, i) => {
    const [x, y] = [left + (i % TILES) * width, top + Math.floor(i / TILES) * height];
    const { light } = seenLight(picture, cornersOf([x, y, x + width, y + height]), 1);
    return { at: [x + width / 2, y + height / 2], light: (light[0] + light[1] + light[2]) / 3 };
  });
}

function middleOf(corners: Quadrilateral): Point {
  const mean = (axis: 0 | 1): number => corners.reduce((sum, one) => sum + one[axis], 0) / 4;
  return [mean(0), mean(1)];
}

function evened([r, g, b]: Light, even: number): Light {
  return [r / even, g / even, b / even];
}

/** Under D65 to the 2 degree observer, as screens show colours. */
export function knownXyz(reading: SpectrumReading | LabReading): Xyz | undefined {
  if (reading.form === "spectrum") return tristimulus(reading.spectrum, "D65/2");
  const under = labUnder(reading.lab, reading.viewing, "D65/2");
  return isStatement(under) ? undefined : labToXyz(under.lab, "D65/2");
}

/** A picture with each pixel corrected. */
export function correctedPixels(
  picture: UprightPixels,
  { fall, correction }: NonNullable<CorrectedPhotograph["fix"]>,
): UprightPixels {
  const { correct, tonedShare } = levelCorrection(correction, lightOfStored());
  const shares = fallShares(picture, fall, [0, 0], (even) => tonedShare(1 / even));
  return eachPixel(picture, shares, correct);
}

/** A point of a record that lies outside its picture. */
export function outsidePicture(
  { known, paint }: { readonly known: KnownColours | undefined; readonly paint: Box | undefined },
  { cameWidthPx, cameHeightPx }: UprightPixels,
): string | undefined {
  const points = [
    ...(known?.patches.flatMap(({ corners }) => corners) ?? []),
    ...(known?.bare.flatMap(cornersOf) ?? []),
    ...(paint === undefined ? [] : cornersOf(paint)),
  ];
  const outside = points.find(([x, y]) => x > cameWidthPx || y > cameHeightPx);
  return outside === undefined
    ? undefined
    : `The point ${Math.round(outside[0])}, ${Math.round(outside[1])} lies outside the picture, which is ${cameWidthPx} by ${cameHeightPx} pixels the right way up`;
}
