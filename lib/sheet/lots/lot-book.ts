/** All lots of a colour, held against its standard and each other. */
import { xyzToLab } from "../../colorimetry/lab.ts";
import { tristimulus } from "../../colorimetry/tristimulus.ts";
import { controlChart, type ControlChart } from "../../lots/control-chart.ts";
import { corrections, type Candidate, type Correction } from "../../lots/correction.ts";
import { CUSTOMARY_TOLERANCES, type Tolerances } from "../../lots/judgement.ts";
import {
  absorptionUncertainty,
  benchOf,
  letDownPair,
  lotAgainstStandard,
  readAlike,
  type LotComparison,
  type LotFigures,
  type WorkshopSpread,
} from "../../lots/lot-against-standard.ts";
import { absorptionOf } from "../../lots/let-down-absorption.ts";
import { paintCoefficients, whiteCoefficients } from "../../lots/paint-coefficients.ts";
import { lotStrength } from "../../lots/lot-strength.ts";
import { replicateSpread } from "../../lots/replicate-spread.ts";
import type { Measurement } from "../../optics/fit/measurement.ts";
import type { Spectrum } from "../../quantities/spectrum.ts";
import type { Colour, Lot, Records, TintReading } from "../../records/records.ts";
import { isSpectrum, opticsReading } from "../tints/optics-reading.ts";
import { whiteColour } from "../tints/drawdown-set.ts";

export interface JudgedLot {
  readonly lot: Lot;
  readonly comparison: LotComparison;
  /**
   * Of a lot that is near or fails, the best first; none that does not at least halve what is off. Worked out when
   * they are asked for: a sheet never does.
   */
  readonly corrections: () => readonly Correction[];
}

export interface LotBook {
  readonly colour: Colour;
  /** The retained standard, where the record names one. */
  readonly standard?: Lot;
  /** In order of date, the standard left out. */
  readonly lots: readonly JudgedLot[];
  /** Not made yet. */
  readonly planned: readonly Lot[];
  readonly tolerances: Tolerances;
  /** Strength [%] of every lot that was let down, the standard among them, in order of date. */
  readonly chart?: { readonly chart: ControlChart; readonly points: readonly ChartPoint[] };
}

export interface ChartPoint {
  readonly lot: Lot;
  readonly strengthPercent: number;
}

const MOST_CORRECTIONS = 3;

/** Books of all colours that have lots, by slug, and the replicate spread of the whole workshop. */
export function lotBooks(records: Records): {
  readonly books: ReadonlyMap<string, LotBook>;
  readonly spread: WorkshopSpread;
} {
  const spread = workshopSpread(records);
  const books = [...records.colours.values()].flatMap((colour): [string, LotBook][] => {
    const own = lotsOf(colour.slug, records);
    return own.length === 0 ? [] : [[colour.slug, lotBook(colour, own, spread, records)]];
  });
  return { books: new Map(books), spread };
}

export function lotsOf(colour: string, { lots }: Records): Lot[] {
  return [...lots.values()].filter(({ record }) => record.colour === colour);
}

/** What its lots may differ by: the colour's own word, else the workshop's, else what is customary. */
export function tolerancesOf({ record }: Colour, { workshop }: Records): Tolerances {
  const stated = Object.fromEntries(
    Object.entries({ ...workshop.tolerances, ...record.tolerances }).filter(
      ([, value]) => value !== undefined,
    ),
  );
  return { ...CUSTOMARY_TOLERANCES, ...stated };
}

function lotBook(
  colour: Colour,
  own: readonly Lot[],
  spread: WorkshopSpread,
  records: Records,
): LotBook {
  const standard = own.find(({ slug }) => slug === colour.record.standard);
  const made = own.filter(({ record }) => record.planned !== true);
  const tolerances = tolerancesOf(colour, records);
  const against = standardFigures(colour, standard);
  const whites = whitesOf(colour, records);
  const lots = made
    .filter((lot) => lot !== standard)
    .map((lot): JudgedLot => {
      const figures = lotFigures(lot);
      const comparison = lotAgainstStandard(against, figures, whites, tolerances, spread);
      return {
        lot,
        comparison,
        corrections: () =>
          comparison.verdict === "pass" || comparison.remarks.length > 0
            ? []
            : lotCorrections(colour, lot, figures, against, whites, records),
      };
    });
  const points = made.flatMap((lot): ChartPoint[] => {
    if (lot === standard) return [{ lot, strengthPercent: 100 }];
    const judged = lots.find((one) => one.lot === lot)?.comparison;
    return judged?.letDown === undefined || judged.remarks.length > 0
      ? []
      : [{ lot, strengthPercent: judged.letDown.strength.weightedPercent }];
  });
  return {
    colour,
    ...(standard === undefined ? {} : { standard }),
    lots,
    planned: own.filter(({ record }) => record.planned === true),
    tolerances,
    ...(points.length < 2
      ? {}
      : {
          chart: { points, chart: controlChart(points.map((point) => point.strengthPercent)) },
        }),
  };
}

/** The colour's own readings, and of the retained standard what only a lot tells. */
function standardFigures(colour: Colour, standard: Lot | undefined): LotFigures {
  const oilIndex = colour.record.oilIndexGPer100g;
  const value = typeof oilIndex === "object" ? oilIndex.value : oilIndex;
  const density = standard?.record.densityGPerCm3;
  return {
    ...spectra(colour.masstone, colour.tints),
    ...(typeof value === "number" ? { oilIndexGPer100g: value } : {}),
    ...(density === undefined ? {} : { densityGPerCm3: density }),
  };
}

function lotFigures({ record, masstone, letDowns }: Lot): LotFigures {
  const pigmentG = record.pigments.reduce((sum, { massG }) => sum + massG, 0);
  return {
    ...spectra(masstone, letDowns),
    ...(record.finenessOfGrindUm === undefined ? {} : { finenessUm: record.finenessOfGrindUm }),
    ...(record.oil === undefined ? {} : { oilIndexGPer100g: (100 * record.oil.massG) / pigmentG }),
    ...(record.densityGPerCm3 === undefined ? {} : { densityGPerCm3: record.densityGPerCm3 }),
  };
}

function spectra(
  masstone: Colour["masstone"],
  tints: readonly TintReading[],
): Pick<LotFigures, "masstone" | "letDowns"> {
  return {
    ...(masstone !== undefined && isSpectrum(masstone)
      ? { masstone: opticsReading(masstone) }
      : {}),
    letDowns: tints.flatMap(({ white, massRatio, ratioKind, reading }) =>
      isSpectrum(reading) ? [{ white, massRatio, ratioKind, reading: opticsReading(reading) }] : [],
    ),
  };
}

function whitesOf({ tints }: Colour, records: Records): ReadonlyMap<string, Measurement> {
  return new Map(
    [...new Set(tints.map(({ white }) => white))].flatMap((slug) => {
      const { masstone } = whiteColour(slug, records);
      return masstone === undefined ? [] : [[slug, opticsReading(masstone)] as const];
    }),
  );
}

function lotCorrections(
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
    standard.masstone === undefined ||
    ![white, figures.masstone, standard.masstone, pair.lot.reading].every((reading) =>
      readAlike(reading, pair.of.reading),
    )
  )
    return [];
  const bench = benchOf(pair.of.reading);
  const theta = (reading: Measurement): number[] => absorptionOf(reading, bench.surface);
  const massRatio = ratioOf(pair.of.massRatio);
  const ofWhite = theta(white);
  const [masstone, letDown] = [theta(figures.masstone), theta(pair.lot.reading)];
  return corrections(
    {
      paint: paintCoefficients(masstone, letDown, ofWhite, massRatio),
      masstone,
      letDown,
      standard: { masstone: theta(standard.masstone), letDown: theta(pair.of.reading) },
      white: ofWhite,
      massRatio,
      bench,
      uncertainty: absorptionUncertainty(pair.lot.reading),
    },
    candidates(colour, lot, pair.of, ofWhite, theta, records),
    MOST_CORRECTIONS,
  );
}

/** The white, every colour that was let down in it and read alike, and the colour's other lots. */
function candidates(
  colour: Colour,
  lot: Lot,
  like: LotFigures["letDowns"][number],
  ofWhite: readonly number[],
  theta: (reading: Measurement) => number[],
  records: Records,
): Candidate[] {
  const paintOf = (
    masstone: Colour["masstone"],
    tints: readonly TintReading[],
  ): Candidate["paint"] | undefined => {
    const { masstone: own, letDowns } = spectra(masstone, tints);
    const tint = letDowns
      .filter(
        ({ white, ratioKind, reading }) =>
          white === like.white && ratioKind === like.ratioKind && readAlike(reading, like.reading),
      )
      .toSorted(
        (one, other) =>
          apart(one.massRatio, like.massRatio) - apart(other.massRatio, like.massRatio),
      )[0];
    return own === undefined || tint === undefined || !readAlike(own, like.reading)
      ? undefined
      : paintCoefficients(theta(own), theta(tint.reading), ofWhite, ratioOf(tint.massRatio));
  };
  const white = whiteColour(like.white, records);
  return [
    { slug: white.slug, name: white.name, kind: "white", paint: whiteCoefficients(ofWhite) },
    ...[...records.colours.values()].flatMap((other): Candidate[] => {
      const paint =
        other === colour || other.slug === like.white
          ? undefined
          : paintOf(other.masstone, other.tints);
      return paint === undefined
        ? []
        : [
            {
              slug: other.slug,
              name: other.record.name,
              kind: other.record.family === "extender" ? "extender" : "colour",
              paint,
            },
          ];
    }),
    ...lotsOf(colour.slug, records).flatMap((other): Candidate[] => {
      const paint = other === lot ? undefined : paintOf(other.masstone, other.letDowns);
      return paint === undefined
        ? []
        : [{ slug: other.slug, name: other.record.number, kind: "lot", paint }];
    }),
  ];
}

function ratioOf(massRatio: string): number {
  const [colour = NaN, white = NaN] = massRatio.split(":").map(Number);
  return colour / white;
}

function apart(one: string, other: string): number {
  return Math.abs(Math.log(ratioOf(one) / ratioOf(other)));
}

/** What drawdowns of one lot, made again, differ by: in Delta-E*ab, and in strength [%] beside their mean. */
function workshopSpread(records: Records): WorkshopSpread {
  const sets = [...records.lots.values()].flatMap(({ letDowns }) =>
    letDowns.flatMap(({ replicates, reading, white }) =>
      replicates.length < 2 || !isSpectrum(reading)
        ? []
        : [{ replicates, reading: opticsReading(reading), white }],
    ),
  );
  const axes = sets.flatMap(({ replicates }) => {
    const labs = replicates.map(labOf);
    return [labs.map(({ L }) => L), labs.map(({ a }) => a), labs.map(({ b }) => b)];
  });
  const one = replicateSpread(axes);
  const strength = replicateSpread(
    sets.map(({ replicates, reading, white }) => {
      const { masstone } = whiteColour(white, records);
      const own = masstone === undefined ? undefined : opticsReading(masstone);
      return replicates.map(
        (spectrum) =>
          lotStrength(
            reading,
            { ...reading, spectrum },
            own !== undefined && readAlike(own, reading) ? own : undefined,
            benchOf(reading),
          ).weightedPercent,
      );
    }),
  );
  return {
    ...(one === undefined
      ? {}
      : {
          colour: {
            // Three axes, each with a third of the degrees.
            standardDeviation: one.standardDeviation * Math.sqrt(3),
            degrees: one.degrees / 3,
          },
        }),
    ...(strength === undefined ? {} : { strengthPercent: strength }),
  };
}

function labOf(spectrum: Spectrum): ReturnType<typeof xyzToLab> {
  return xyzToLab(tristimulus(spectrum, "D65/10"), "D65/10");
}
