import { Matrix, solve } from "ml-matrix";
import { p3LightToXyz, xyzToP3Light, type Light } from "../colorimetry/display-p3.ts";
import { xyzToLab } from "../colorimetry/lab.ts";
import { WHITE_POINTS, type Lab, type Xyz } from "../colorimetry/viewing.ts";
import { domainError } from "../diagnostics/diagnostic.ts";
import { at } from "../quantities/at.ts";

/** A patch of known colour as a camera saw it. */
export interface KnownPatch {
  readonly name: string;
  /** Mean light of the camera's three channels, 0 to 1. */
  readonly seen: Light;
  /** Under D65, 2 degree. */
  readonly known: Xyz;
}

/**
 * How a camera's light is turned into colour: a factor a channel, a matrix of nine, or a matrix on
 * root-polynomials of the second or third degree, which keep their colour when the light changes.
 */
export type CorrectionForm = "gains" | "linear" | "root-polynomial 2" | "root-polynomial 3";
export const CORRECTION_FORMS: readonly CorrectionForm[] = [
  "gains",
  "linear",
  "root-polynomial 2",
  "root-polynomial 3",
];

/** Patches that each takes: more than it has terms, since one is left out at a time. */
export const LEAST_PATCHES: Readonly<Record<CorrectionForm, number>> = {
  gains: 2,
  linear: 5,
  "root-polynomial 2": 9,
  "root-polynomial 3": 18,
};

/** A fitted correction. */
export interface ColourCorrection {
  readonly form: CorrectionForm;
  /** What light is raised to before the rest: a camera's own tone curve, as far as one number tells it. */
  readonly tone: number;
  /** Terms by three, row by row. */
  readonly matrix: readonly Light[];
}

/** Tone curves tried; with few patches there is none to be told. */
const TONES = Array.from({ length: 19 }, (_, i) => 0.6 + 0.05 * i);
const LEAST_PATCHES_FOR_TONE = 6;
const NO_TONE: readonly number[] = [1];

/** Known colours of less light weigh no more than this one, Y 1 of white. */
const DARKEST = 0.02;

/**
 * The correction of a form that comes nearest to some patches, by least squares in light; a patch
 * counts by the slope of L*, so that a step in the dark weighs as much as one that looks alike in
 * the light. The tone curve is the one of {@link TONES} that leaves least.
 * @throws RangeError for fewer patches than the form has terms.
 * @source finlayson-2015 : equations 4 and 6
 */
export function fittedCorrection(
  patches: readonly KnownPatch[],
  form: CorrectionForm,
  tones: readonly number[] = patches.length < LEAST_PATCHES_FOR_TONE ? NO_TONE : TONES,
): ColourCorrection {
  if (!(patches.length >= LEAST_PATCHES[form] - 1))
    throw domainError(
      `patches of a ${form} correction`,
      patches.length,
      `${LEAST_PATCHES[form] - 1} or more`,
    );
  const wanted = patches.map(({ known }) => screenLight(known));
  const weights = patches.map(({ known }) => Math.max(known.Y / 100, DARKEST) ** (-2 / 3));
  let best: { readonly correction: ColourCorrection; readonly misses: number } | undefined;
  for (const tone of tones) {
    const correction = { form, tone, matrix: matrixOf(patches, wanted, weights, form, tone) };
    const misses = patches.reduce((sum, { seen }, i) => {
      const got = correctedLight(correction, seen);
      return (
        sum +
        got.reduce(
          (own, channel, j) => own + (at(weights, i) * (channel - at(at(wanted, i), j))) ** 2,
          0,
        )
      );
    }, 0);
    if (best === undefined || misses < best.misses) best = { correction, misses };
  }
  if (best === undefined) throw domainError("tone curves to try", 0, "one or more");
  return best.correction;
}

function matrixOf(
  patches: readonly KnownPatch[],
  wanted: readonly Light[],
  weights: readonly number[],
  form: CorrectionForm,
  tone: number,
): readonly Light[] {
  const rows = patches.map(({ seen }, i) =>
    termsOf(form, toned(seen, tone)).map((term) => term * at(weights, i)),
  );
  const targets = wanted.map((light, i) => light.map((channel) => channel * at(weights, i)));
  if (form === "gains") {
    const gain = (j: number): number =>
      rows.reduce((sum, row, i) => sum + at(row, j) * at(at(targets, i), j), 0) /
      Math.max(
        rows.reduce((sum, row) => sum + at(row, j) ** 2, 0),
        Number.MIN_VALUE,
      );
    return [
      [gain(0), 0, 0],
      [0, gain(1), 0],
      [0, 0, gain(2)],
    ];
  }
  const found = solve(new Matrix(rows), new Matrix(targets), true);
  return found.to2DArray().map(([r = NaN, g = NaN, b = NaN]): Light => [r, g, b]);
}

function toned([r, g, b]: Light, tone: number): Light {
  return [Math.max(r, 0) ** tone, Math.max(g, 0) ** tone, Math.max(b, 0) ** tone];
}

/** Terms of a form, each of the first degree in light: twice the light gives twice the colour. */
function termsOf(form: CorrectionForm, [r, g, b]: Light): number[] {
  if (form === "gains" || form === "linear") return [r, g, b];
  const second = [r, g, b, Math.sqrt(r * g), Math.sqrt(g * b), Math.sqrt(r * b)];
  if (form === "root-polynomial 2") return second;
  return [
    ...second,
    ...[r * g * g, g * b * b, r * b * b, g * r * r, b * g * g, b * r * r, r * g * b].map(Math.cbrt),
  ];
}

/** Light of Display P3 for the light that a camera saw. */
export function correctedLight({ form, tone, matrix }: ColourCorrection, seen: Light): Light {
  const terms = termsOf(form, toned(seen, tone));
  let [red, green, blue] = [0, 0, 0];
  // Every pixel of a photograph goes through here.
  for (let i = 0; i < terms.length; i++) {
    const term = at(terms, i);
    const [r, g, b] = at(matrix, i);
    red += term * r;
    green += term * g;
    blue += term * b;
  }
  return [red, green, blue];
}

/** L*a*b* under D65, 2 degree, of light of Display P3; light that no surface sends is black. */
export function labOfLight(light: Light): Lab {
  const [x, y, z] = p3LightToXyz(light);
  const { X, Y, Z } = WHITE_POINTS["D65/2"];
  return xyzToLab(
    {
      X: Math.max(0, (x / SCREEN_WHITE[0]) * X),
      Y: Math.max(0, y * Y),
      Z: Math.max(0, (z / SCREEN_WHITE[2]) * Z),
    },
    "D65/2",
  );
}

/** White of Display P3, which differs from CIE's D65 in the fourth digit: a neutral stays neutral. */
const SCREEN_WHITE = p3LightToXyz([1, 1, 1]);

/** Light of Display P3 of a colour under D65, 2 degree. */
export function screenLight({ X, Y, Z }: Xyz): Light {
  const white = WHITE_POINTS["D65/2"];
  return xyzToP3Light([
    (X / white.X) * SCREEN_WHITE[0],
    Y / white.Y,
    (Z / white.Z) * SCREEN_WHITE[2],
  ]);
}
