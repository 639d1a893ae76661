/** How far predictions lie from the measured oil paints: each let-down left out, and mixtures with black. */
import { deltaE00 } from "../../lib/colorimetry/difference.ts";
import { labToLch } from "../../lib/colorimetry/lab.ts";
import type { Lab } from "../../lib/colorimetry/viewing.ts";
import { spectrumLab } from "../../lib/colorimetry/spectrum-lab.ts";
import { fittedColours } from "../../lib/optics/fit/fitted-colour.ts";
import type { ColourFit } from "../../lib/optics/fit/colour-fit.ts";
import type { FitChoices } from "../../lib/optics/fit/fit-problem.ts";
import type { DrawdownSet, Tint } from "../../lib/optics/fit/drawdown.ts";
import type { Doubts, PredictionUncertainty } from "../../lib/optics/fit/prediction-uncertainty.ts";
import { mixedTint, mixture } from "../../lib/optics/mixtures/mixture.ts";
import { ladderModel, predictedTint } from "../../lib/optics/tints/ladder.ts";
import { hueTurn } from "../../lib/optics/tints/hue-word.ts";
import { isStatement } from "../../lib/quantities/statement.ts";
import { MEASURED_PAINTS, measuredPaint, type MeasuredPaint } from "./measured-paints.ts";
import { rememberedFit, rememberedTrial } from "./remembered-fits.ts";

export const WHITE = "zinc white";
const BLACK = "bone black";

/** Masstone and let-downs in zinc white by id; of bone black, 07F stands for the masstone. */
export const LADDERS: readonly (readonly [string, ...string[]])[] = [
  ["01A", "01B", "01C"],
  ["02A", "02B", "02C"],
  ["03A", "03B", "03C"],
  ["04A", "04B", "04C", "04F"],
  ["05A", "05B", "05C"],
  ["06A", "06B", "06C"],
  ["07F", "07C", "07D", "07E"],
  ["09A", "09B", "09C"],
  ["10A", "10B", "10C"],
  ["11A", "11B", "11C"],
  ["12A", "12B", "12C"],
  ["13A", "13B", "13C", "13F", "13G"],
  ["14A", "14B", "14C"],
  ["15A", "15B", "15C"],
];
/** Three eosin lakes and emerald green: their masstone is a film. */
export const NOT_HIDING = /^(?:01|02|03|10)/;

/** Whether the fit is handed films over black and white; a site hands it none. */
export type Path = "without films" | "with films";

export interface PredictionError {
  readonly id: string;
  readonly hides: boolean;
  readonly deltaE00: number;
  readonly uncertainty: PredictionUncertainty;
  /** What the law goes by: Delta-E00 to the nearest drawdown, and what widens it. */
  readonly distance: number;
  readonly doubts: Doubts;
  /** Of a mixture, what errors of K, S and parts move beside the law, Delta-E00. */
  readonly own: number;
  /** As read, and as predicted (D65/10). */
  readonly read: Lab;
  readonly predicted: Lab;
  /** The colour's masstone as read. */
  readonly masstone: Lab;
}

/** Every let-down predicted without it, against its reading over white. */
export function leftOutErrors(path: Path, choices: FitChoices = {}): PredictionError[] {
  return LADDERS.flatMap((ids) =>
    tintsOf(ids, path).map((left): PredictionError => {
      const ladder = ladderModel(fittedWithout(ids, left.id, path, choices), WHITE);
      const { lab, nearest, uncertainty } = predictedTint(ladder, left.massRatio);
      const read = labOfPaint(left.id);
      return {
        id: left.id,
        hides: !NOT_HIDING.test(left.id),
        deltaE00: deltaE00(read, lab),
        uncertainty,
        distance: nearest.deltaE00,
        doubts: ladder.doubts,
        own: 0,
        read,
        predicted: lab,
        masstone: labOfPaint(ids[0]),
      };
    }),
  );
}

/** Every mixture of a colour with bone black and no white, from the two colours' let-downs. */
export function blackMixtureErrors(path: Path): PredictionError[] {
  const ladders = new Map(LADDERS.map((ids) => [ids[0].slice(0, 2), ids] as const));
  const fits = fittedColours(
    new Map([...ladders].map(([colour, ids]) => [colour, setOf(ids, path, false)] as const)),
  );
  const mixed = [...MEASURED_PAINTS.values()].filter(
    ({ id, parts }) =>
      parts.size === 2 && parts.has(BLACK) && !parts.has(WHITE) && fits.has(id.slice(0, 2)),
  );
  return mixed.map(({ id, parts }): PredictionError => {
    const black = parts.get(BLACK) ?? NaN;
    const made = mixture([
      { ladder: ladderModel(fitted(fits.get(id.slice(0, 2))), WHITE), parts: 1 - black },
      { ladder: ladderModel(fitted(fits.get("07")), WHITE), parts: black },
    ]);
    if (isStatement(made)) throw new Error(`No mixture ${id}: ${made.rule}`);
    const { lab, uncertainty, nearestDeltaE00, doubts, ownDeltaE00 } = mixedTint(made, Infinity);
    const read = labOfPaint(id);
    return {
      id,
      hides: true,
      deltaE00: deltaE00(read, lab),
      uncertainty,
      distance: nearestDeltaE00,
      doubts,
      own: ownDeltaE00,
      read,
      predicted: lab,
      masstone: labOfPaint(ladders.get(id.slice(0, 2))?.[0] ?? id),
    };
  });
}

/** Changes from the masstone that are large enough to be seen: of chroma, and of hue where both are coloured. */
const SEEN = { chroma: 3, hueDegrees: 5, colouredFrom: 8 } as const;

/** Whether chroma and hue go the way that they were read to go; undefined where they hardly go anywhere. */
export function directions({ masstone, read, predicted }: PredictionError): {
  readonly chroma: boolean | undefined;
  readonly hue: boolean | undefined;
} {
  const [from, to, told] = [masstone, read, predicted].map(labToLch);
  if (from === undefined || to === undefined || told === undefined)
    throw new Error("Unreachable: three colours are three");
  const [seenTurn, toldTurn] = [hueTurn(from.h, to.h), hueTurn(from.h, told.h)];
  const isColoured = [from, to, told].every(({ C }) => C >= SEEN.colouredFrom);
  return {
    chroma:
      Math.abs(to.C - from.C) < SEEN.chroma
        ? undefined
        : Math.sign(told.C - from.C) === Math.sign(to.C - from.C),
    hue:
      !isColoured || Math.abs(seenTurn) < SEEN.hueDegrees
        ? undefined
        : Math.sign(toldTurn) === Math.sign(seenTurn),
  };
}

/** Value that a share of a list does not pass, straight between its neighbours. */
export function quantile(values: readonly number[], share: number): number {
  const sorted = values.toSorted((one, other) => one - other);
  const at = (sorted.length - 1) * share;
  const low = sorted[Math.floor(at)] ?? NaN;
  return low + (at - Math.floor(at)) * ((sorted[Math.ceil(at)] ?? NaN) - low);
}

/** How many lie within what is printed. */
export function covered(
  errors: readonly PredictionError[],
  printed: keyof PredictionUncertainty,
): number {
  return errors.filter(({ deltaE00, uncertainty }) => deltaE00 <= uncertainty[printed]).length;
}

/** The colour in a workshop of all others, fitted without one of its let-downs. */
export function fittedWithout(
  ids: readonly [string, ...string[]],
  left: string,
  path: Path,
  choices: FitChoices = {},
): ColourFit {
  const set = setOf(ids, path);
  const others = { ...set, tints: set.tints.filter(({ id }) => id !== left) };
  return fitted(allFits(others, ids, path, choices).get("judged"));
}

/** The judged colour in a workshop of all others, whose readings and left-out let-downs count too. */
export function allFits(
  judged: DrawdownSet,
  [masstone]: readonly string[],
  path: Path,
  choices: FitChoices,
) {
  const others = LADDERS.filter(([id]) => id !== masstone).map((ids): [string, DrawdownSet] => [
    ids[0],
    setOf(ids, path),
  ]);
  const readings = [...MEASURED_PAINTS.values()].map(({ id, overWhite }): [string, DrawdownSet] => [
    `reading ${id}`,
    { masstone: overWhite, whites: [], tints: [] },
  ]);
  return fittedColours(
    new Map<string, DrawdownSet>([["judged", judged], ...others, ...readings]),
    choices,
    rememberedTrial,
    rememberedFit,
  );
}

function fitted(
  fit: ReturnType<typeof fittedColours> extends Map<unknown, infer F> ? F | undefined : never,
): ColourFit {
  if (fit?.kind !== "fit") throw new Error(`No fit: ${JSON.stringify(fit)}`);
  return fit;
}

export function setOf(
  ids: readonly [string, ...string[]],
  path: Path,
  byMasstone = true,
): DrawdownSet {
  const masstone = measuredPaint(ids[0]);
  const white = measuredPaint("07A");
  return {
    masstone: masstone.overWhite,
    ...filmOf(masstone, path),
    whites: [{ slug: WHITE, masstone: white.overWhite, ...filmOf(white, path) }],
    tints: tintsOf(ids, path, byMasstone),
  };
}

function tintsOf(
  [masstone, ...ids]: readonly [string, ...string[]],
  path: Path,
  byMasstone = true,
): Tint[] {
  // 07F holds white: a let-down of it is so much of 07F and so much white beside it.
  const pure = byMasstone ? 1 - (measuredPaint(masstone).parts.get(WHITE) ?? 0) : 1;
  return ids.map((id) => {
    const paint = measuredPaint(id);
    const white = 1 - (1 - (paint.parts.get(WHITE) ?? NaN)) / pure;
    return {
      id,
      white: WHITE,
      massRatio: (1 - white) / white,
      ratioKind: "paint",
      reading: paint.overWhite,
      ...filmOf(paint, path),
    };
  });
}

function filmOf({ overBlack, overWhite, chartBlack, chartWhite }: MeasuredPaint, path: Path) {
  if (path === "without films") return {};
  return { film: { overBlack, overWhite, black: chartBlack, white: chartWhite } };
}

function labOfPaint(id: string): Lab {
  const { spectrum } = measuredPaint(id).overWhite;
  return spectrumLab(spectrum);
}
