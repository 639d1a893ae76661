/** What a lot that is off could be brought back with, of all that the workshop has read. */
import { corrections, type Candidate, type Correction } from "../../lots/correction.ts";
import { absorptionOf } from "../../lots/let-down-absorption.ts";
import {
  letDownPair,
  type LetDownReading,
  type LotFigures,
} from "../../lots/lot-against-standard.ts";
import { absorptionUncertainty } from "../../lots/difference-uncertainty.ts";
import { benchOf, commonBench, onBench } from "../../lots/read-alike.ts";
import { otherWhite, type LetDownInBoth, type OtherWhite } from "../../lots/other-white.ts";
import {
  paintCoefficients,
  whiteCoefficients,
  type PaintCoefficients,
} from "../../lots/paint-coefficients.ts";
import { commonGrid } from "../../optics/fit/common-grid.ts";
import type { Measurement } from "../../optics/fit/measurement.ts";
import type { Colour, Lot, Records, TintReading } from "../../records/records.ts";
import { effectOfPigments } from "../pigments/special-effects.ts";
import { paintOfWhite } from "../record-inputs.ts";
import { whiteColour } from "../tints/drawdown-set.ts";
import { isSpectrum, opticsReading } from "../tints/optics-reading.ts";
import { filmedPaint } from "./filmed-paint.ts";
import { readSpectra } from "./read-spectra.ts";
import { weighedInG } from "../../records/made-of.ts";

const MOST_CORRECTIONS = 3;
/** What every reading covers: no paint that could be added falls out by the ends of its own. */
const SEEN = { startNm: 400, stepNm: 1, count: 301 };
/** Of a lot [1]: less is what was lost, and not left. Our own limit. */
const LEFT_FROM = 0.05;

/**
 * The best corrections of a lot, the nearest to the standard first.
 * @param figures of the lot. @param standard what it is held against. @param whites the standard's, as read, by slug.
 * @returns none where masstone, let-down and white of both were not all read alike.
 */
export function lotCorrections(
  colour: Colour,
  lot: Lot,
  figures: LotFigures,
  standard: LotFigures,
  whites: ReadonlyMap<string, Measurement>,
  records: Records,
): Correction[] {
  const pair = letDownPair(standard, figures);
  const white = pair === undefined ? undefined : whites.get(pair.of.white);
  if (
    pair === undefined ||
    white === undefined ||
    figures.masstone === undefined ||
    standard.masstone === undefined
  )
    return [];
  const read = [
    pair.of.reading,
    pair.lot.reading,
    white,
    figures.masstone,
    standard.masstone,
  ] as const;
  const met = commonBench(...read);
  const grid = met && commonGrid([met.grid, SEEN]);
  const bench = met && grid && { ...met, grid };
  const [of, lots, ofWhites, masstones, standards] = read.map(
    (one) => bench && onBench(one, bench),
  );
  if (
    bench === undefined ||
    of === undefined ||
    lots === undefined ||
    ofWhites === undefined ||
    masstones === undefined ||
    standards === undefined
  )
    return [];
  const theta = (reading: Measurement): number[] => absorptionOf(reading, bench.surface);
  const massRatio = ratioOf(pair.of.massRatio);
  const ofWhite = theta(ofWhites);
  const [masstone, letDown] = [theta(masstones), theta(lots)];
  return corrections(
    {
      paint: paintCoefficients(masstone, letDown, ofWhite, massRatio),
      masstone,
      letDown,
      standard: { masstone: theta(standards), letDown: theta(of) },
      white: ofWhite,
      massRatio,
      bench,
      uncertainty: absorptionUncertainty(pair.lot.reading),
    },
    candidates(colour, lot, { like: { ...pair.of, reading: of }, ofWhite, theta, records }),
    MOST_CORRECTIONS,
  );
}

/** How the standard's let-down was made and read: K and S of all that is added are in units of its white's S. */
interface Matter {
  readonly like: LetDownReading;
  readonly ofWhite: readonly number[];
  readonly theta: (reading: Measurement) => number[];
  readonly records: Records;
}

/** The standard's white, the workshop's other whites, every extender and colour that was read alike, and the colour's other lots. */
export function candidates(colour: Colour, lot: Lot, matter: Matter): Candidate[] {
  const { like, ofWhite, records } = matter;
  const white = whiteColour(like.white, records);
  const others = otherWhites(matter);
  return [
    { slug: white.slug, name: white.name, kind: "white", paint: whiteCoefficients(ofWhite) },
    ...[...others].map(([slug, { paint, spread }]): Candidate => ({
      slug,
      name: whiteColour(slug, records).name,
      kind: "white",
      paint,
      spread,
    })),
    ...[...records.colours.values()]
      .filter(
        (other) =>
          other.slug !== colour.slug &&
          other.slug !== like.white &&
          !others.has(other.slug) &&
          effectOfPigments(other, records) === undefined,
      )
      .flatMap((other) => addedColour(other, others, matter)),
    ...[...records.lots.values()]
      .filter((other) => other !== lot && other.record.colour === colour.slug)
      .flatMap((other): Candidate[] => {
        const paint = paintInWhite(other.masstone, other.letDowns, matter);
        const mostShare = mostShareOf(other, lot);
        if (paint === undefined || mostShare === 0) return [];
        return [
          {
            slug: other.slug,
            name: other.record.number,
            kind: "lot",
            paint,
            ...(mostShare !== undefined && { mostShare }),
          },
        ];
      }),
  ];
}

/** How much of another lot can be in this one [1], by what its tubes have left of it; undefined where its record does not say. */
function mostShareOf({ record }: Lot, lot: Lot): number | undefined {
  const { yieldG, tubes } = record;
  if (yieldG === undefined || tubes === undefined) return undefined;
  if (tubes.some(({ massG }) => massG === undefined)) return undefined;
  const filledG = tubes.reduce((sum, { count, massG = 0 }) => sum + count * massG, 0);
  const leftG = yieldG - filledG;
  // What the slab and the cans keep of a lot that is filled is none that can be weighed out.
  if (!(leftG > LEFT_FROM * yieldG)) return 0;
  return leftG / (leftG + (lot.record.yieldG ?? weighedInG(lot.record)));
}

/** A colour by its let-down in the standard's white, else in another of known scattering, else by its films beside a white's. */
function addedColour(
  colour: Colour,
  others: ReadonlyMap<string, OtherWhite>,
  matter: Matter,
): Candidate[] {
  const { like, ofWhite, theta, records } = matter;
  const { slug, record, masstone, tints } = colour;
  const named = {
    slug,
    name: record.name,
    kind: record.family === "extender" ? ("extender" as const) : ("colour" as const),
  };
  const own = paintInWhite(masstone, tints, matter);
  if (own !== undefined) return [{ ...named, paint: own }];
  const ways = [
    { like, ofWhite, scattering: 1, spread: 0 },
    ...[...others].map(([white, { paint, scattering, spread }]) => ({
      like: { ...like, white },
      ofWhite: paint.K.map((value) => value / scattering),
      scattering,
      spread,
    })),
  ];
  const [found] = ways.flatMap((way): Candidate[] => {
    const letDown = paintInWhite(masstone, tints, { ...matter, ...way });
    const added =
      letDown === undefined
        ? filmedPaint(colour, way.like, theta, records)
        : { paint: letDown, spread: 0 };
    if (added === undefined) return [];
    return [
      {
        ...named,
        paint: scaledPaint(added.paint, way.scattering),
        spread: Math.hypot(added.spread, way.spread),
      },
    ];
  });
  return found === undefined ? [] : [found];
}

function scaledPaint({ K, S }: PaintCoefficients, by: number): PaintCoefficients {
  return { K: K.map((value) => value * by), S: S.map((value) => value * by) };
}

/** Whites that were read alike, and in which something was let down that was let down in the standard's as well. */
function otherWhites(matter: Matter): ReadonlyMap<string, OtherWhite> {
  const { like, theta, records } = matter;
  const colours = [...records.colours.values()].filter(
    (colour) => effectOfPigments(colour, records) === undefined,
  );
  const slugs = new Set(colours.flatMap(({ tints }) => tints.map(({ white }) => white)));
  return new Map(
    [...slugs]
      .filter((slug) => slug !== like.white)
      .flatMap((slug): [string, OtherWhite][] => {
        const paint = paintOfWhite(slug, records);
        if (paint !== undefined && effectOfPigments(paint, records) !== undefined) return [];
        const { masstone } = whiteColour(slug, records);
        const own =
          masstone && isSpectrum(masstone) ? likeRead(opticsReading(masstone), like) : undefined;
        if (own === undefined) return [];
        const inBoth = colours.flatMap(({ masstone: alone, tints }): LetDownInBoth[] => {
          const paint = paintInWhite(alone, tints, matter);
          const letDown = nearestLetDown(alone, tints, { ...like, white: slug });
          return paint === undefined || letDown === undefined
            ? []
            : [{ paint, letDown: theta(letDown.reading), massRatio: ratioOf(letDown.massRatio) }];
        });
        const found = otherWhite(theta(own), inBoth);
        return found === undefined ? [] : [[slug, found]];
      }),
  );
}

/** K and S by masstone and the let-down in the matter's white that is nearest in ratio. */
function paintInWhite(
  masstone: Colour["masstone"],
  tints: readonly TintReading[],
  { like, ofWhite, theta }: Matter,
): PaintCoefficients | undefined {
  const { masstone: read } = readSpectra(masstone, tints);
  const own = read && likeRead(read, like);
  const letDown = nearestLetDown(masstone, tints, like);
  return own === undefined || letDown === undefined
    ? undefined
    : paintCoefficients(theta(own), theta(letDown.reading), ofWhite, ratioOf(letDown.massRatio));
}

function nearestLetDown(
  masstone: Colour["masstone"],
  tints: readonly TintReading[],
  like: LetDownReading,
): LetDownReading | undefined {
  return readSpectra(masstone, tints)
    .letDowns.flatMap((one): LetDownReading[] => {
      if (one.white !== like.white || one.ratioKind !== like.ratioKind) return [];
      const reading = likeRead(one.reading, like);
      return reading === undefined ? [] : [{ ...one, reading }];
    })
    .toSorted(
      (one, other) => apart(one.massRatio, like.massRatio) - apart(other.massRatio, like.massRatio),
    )[0];
}

/** As the standard's let-down is taken; undefined where it was read in another geometry, or over fewer wavelengths. */
function likeRead<M extends Measurement>(reading: M, like: LetDownReading): M | undefined {
  return onBench(reading, benchOf(like.reading));
}

/** Colour to white by mass [1]. */
function ratioOf(massRatio: string): number {
  const [colour = NaN, white = NaN] = massRatio.split(":").map(Number);
  return colour / white;
}

function apart(one: string, other: string): number {
  return Math.abs(Math.log(ratioOf(one) / ratioOf(other)));
}
