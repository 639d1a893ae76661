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
  const targets = wanted.map((light, i) => light.map((channel) => channel * at(weights, i)));
  let best: { readonly correction: ColourCorrection; readonly misses: number } | undefined;
  for (const tone of tones) {
    const rows = patches.map((patch, i) =>
      termsOf(patch, form, tone).map((term) => term * at(weights, i)),
    );
    const matrix = matrixOf(rows, targets, form);
    const misses = missedBy(rows, targets, matrix);
    if (best === undefined || misses < best.misses)
      best = { correction: { form, tone, matrix }, misses };
  }
  if (best === undefined) throw domainError("tone curves to try", 0, "one or more");
  return best.correction;
}

type Rows = readonly (readonly number[])[];

function matrixOf(rows: Rows, targets: Rows, form: CorrectionForm): readonly Light[] {
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
  const own = (values: Rows): Matrix => new Matrix(values.map((row) => [...row]));
  const found = solve(own(rows), own(targets), true);
  return found.to2DArray().map(([r = NaN, g = NaN, b = NaN]): Light => [r, g, b]);
}

/** Sum of the squares that rows miss their targets by. */
function missedBy(rows: Rows, targets: Rows, matrix: readonly Light[]): number {
  let sum = 0;
  for (const [i, row] of rows.entries())
    for (const [j, target] of at(targets, i).entries()) {
      let got = 0;
      for (const [k, term] of row.entries()) got += term * at(at(matrix, k), j);
      sum += (got - target) ** 2;
    }
  return sum;
}

/** Light of levels that channels come in, as a tone curve makes it, and its roots, whose products a correction's terms are. */
interface TonedLevels {
  readonly light: Float64Array;
  readonly square: Float64Array;
  readonly cube: Float64Array;
}

function tonedLevels(lights: ArrayLike<number>, tone: number): TonedLevels {
  const light = Float64Array.from(lights, (own) => Math.max(own, 0) ** tone);
  return { light, square: light.map(Math.sqrt), cube: light.map(Math.cbrt) };
}

const MOST_TERMS = 13;

/**
 * Terms of a form for three levels, each of the first degree in light: twice the light gives twice the colour.
 * @returns how many there are.
 */
function termsInto(
  into: Float64Array,
  form: CorrectionForm,
  { light, square, cube }: TonedLevels,
  [red, green, blue]: readonly [number, number, number],
): number {
  into[0] = light[red] ?? 0;
  into[1] = light[green] ?? 0;
  into[2] = light[blue] ?? 0;
  if (form === "gains" || form === "linear") return 3;
  const [r, g, b] = [square[red] ?? 0, square[green] ?? 0, square[blue] ?? 0];
  into[3] = r * g;
  into[4] = g * b;
  into[5] = r * b;
  if (form === "root-polynomial 2") return 6;
  const [cr, cg, cb] = [cube[red] ?? 0, cube[green] ?? 0, cube[blue] ?? 0];
  into[6] = cr * cg * cg;
  into[7] = cg * cb * cb;
  into[8] = cr * cb * cb;
  into[9] = cg * cr * cr;
  into[10] = cb * cg * cg;
  into[11] = cb * cr * cr;
  into[12] = cr * cg * cb;
  return MOST_TERMS;
}

const TERMS = new WeakMap<KnownPatch, Map<string, readonly number[]>>();

/** Terms of a patch, worked out once for all fits that it goes into. */
function termsOf(patch: KnownPatch, form: CorrectionForm, tone: number): readonly number[] {
  const known = TERMS.get(patch) ?? new Map<string, readonly number[]>();
  TERMS.set(patch, known);
  const key = `${form} ${tone}`;
  const own = known.get(key);
  if (own !== undefined) return own;
  const into = new Float64Array(MOST_TERMS);
  const count = termsInto(into, form, tonedLevels(patch.seen, tone), [0, 1, 2]);
  const terms = [...into.subarray(0, count)];
  known.set(key, terms);
  return terms;
}

/** Light of Display P3 for the light that a camera saw. */
export function correctedLight(correction: ColourCorrection, seen: Light): Light {
  const { correct } = levelCorrection(correction, seen);
  const [red = 0, green = 0, blue = 0] = correct(0, 1, 2, 1);
  return [red, green, blue];
}

/** A correction of a picture's pixels, whose channels are stored as levels. */
export interface LevelCorrection {
  /**
   * Light of Display P3 for three levels, written over by the next.
   * @param share what is to be corrected, in terms of {@link tonedShare}.
   */
  readonly correct: (red: number, green: number, blue: number, share: number) => Float64Array;
  /** A share of light as it comes through the tone curve: a factor of the whole, each term being of the first degree. */
  readonly tonedShare: (share: number) => number;
}

/** {@link correctedLight} of many pixels: powers and roots are taken once a level. @param lights of each level that a channel is stored as. */
export function levelCorrection(
  { form, tone, matrix }: ColourCorrection,
  lights: ArrayLike<number>,
): LevelCorrection {
  const levels = tonedLevels(lights, tone);
  const factors = Float64Array.from(matrix.flat());
  const terms = new Float64Array(MOST_TERMS);
  const light = new Float64Array(3);
  return {
    tonedShare: (share) => share ** tone,
    correct: (r, g, b, share) => {
      const count = termsInto(terms, form, levels, [r, g, b]);
      light.fill(0);
      for (let i = 0; i < count; i++) {
        const term = (terms[i] ?? 0) * share;
        for (let j = 0; j < 3; j++) light[j] = (light[j] ?? 0) + term * (factors[3 * i + j] ?? 0);
      }
      return light;
    },
  };
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
