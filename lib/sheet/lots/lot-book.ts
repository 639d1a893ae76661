/** All lots of a colour, held against its standard and each other. */
import { readOnce, readWhenAsked, type RememberedReads } from "../../kept/reads.ts";
import { spectrumLab } from "../../colorimetry/spectrum-lab.ts";
import type { Charted } from "../../lots/chart-signals.ts";
import { controlChart, type ControlChart } from "../../lots/control-chart.ts";
import type { Correction } from "../../lots/correction.ts";
import type { Tolerances } from "../../lots/judgement.ts";
import {
  isWhollyCompared,
  lotAgainstStandard,
  type LotComparison,
  type LotFigures,
} from "../../lots/lot-against-standard.ts";
import type { WorkshopSpread } from "../../lots/difference-uncertainty.ts";
import { commonBench, onBench } from "../../lots/read-alike.ts";
import { lotStrength } from "../../lots/lot-strength.ts";
import { replicateSpread } from "../../lots/replicate-spread.ts";
import type { Measurement } from "../../optics/fit/measurement.ts";
import { remembered } from "../../quantities/remembered.ts";
import { grouped } from "../../quantities/grouped.ts";
import type { Colour, Lot, Records } from "../../records/records.ts";
import { isSpectrum, opticsReading } from "../tints/optics-reading.ts";
import { whiteColour } from "../tints/drawdown-set.ts";
import { effectInWhite } from "../pigments/special-effects.ts";
import { tolerancesOf } from "./colour-tolerances.ts";
import { lotCorrections } from "./lot-corrections.ts";
import { readSpectra } from "./read-spectra.ts";
import { standardLetDowns } from "../../records/standard-let-downs.ts";

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
  /** Lots with a point in one of the charts, in order of date. */
  readonly charted: readonly Lot[];
  /** Of what was read of two lots at least: strength, then differences from the standard. */
  readonly charts: readonly LotsInTime[];
}

/** One figure over the lots of a colour. */
export interface LotsInTime {
  readonly of: Charted;
  readonly chart: ControlChart;
  readonly points: readonly ChartPoint[];
}

export interface ChartPoint {
  readonly lot: Lot;
  readonly value: number;
}

const CHARTED: readonly Charted[] = ["strength", "letDown", "masstone"];

const SPREADS: RememberedReads<Records, WorkshopSpread> = new WeakMap();
const BOOKS: RememberedReads<Records, LotBook | undefined> = new WeakMap();

/** The replicate spread of the whole workshop. */
export function spreadOf(records: Records): WorkshopSpread {
  return readOnce(SPREADS, records, "", () => workshopSpread(records));
}

/** The book of a colour; undefined where it has no lots. */
export function bookOf(slug: string, records: Records): LotBook | undefined {
  return readOnce(BOOKS, records, slug, () => {
    const [colour, own] = [records.colours.get(slug), lotsOf(slug, records)];
    return colour === undefined || own.length === 0
      ? undefined
      : lotBook(colour, own, spreadOf(records), records);
  });
}

/** Books of all colours that have lots, in order of slug. */
export function lotBooks(records: Records): LotBook[] {
  return [...records.colours.keys()].flatMap((slug) => bookOf(slug, records) ?? []);
}

/** Lots of a colour, the oldest first. */
export function lotsOf(colour: string, { lots }: Records): readonly Lot[] {
  return lotsByColour(lots).get(colour) ?? [];
}

const lotsByColour = remembered((lots: Records["lots"]) =>
  grouped([...lots.values()].map((lot) => [lot.record.colour, lot])),
);

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
  const whites = whitesOf(colour, standard, records);
  const lots = made
    .filter((lot) => lot !== standard)
    .map((lot): JudgedLot => {
      const figures = lotFigures(lot);
      const beside = standardBeside(against, lot);
      const comparison = lotAgainstStandard(beside, figures, whites, tolerances, spread, (white) =>
        effectInWhite(colour, white, records),
      );
      return {
        lot,
        comparison,
        corrections: readWhenAsked(() =>
          comparison.verdict !== "pass" && isWhollyCompared(comparison)
            ? lotCorrections(colour, lot, figures, beside, whites, records)
            : [],
        ),
      };
    });
  const points = CHARTED.map((of) => ({
    of,
    points: made.flatMap((lot): ChartPoint[] => {
      // The standard's strength is 100 %; a difference from itself would say nothing.
      if (lot === standard) return of === "strength" ? [{ lot, value: 100 }] : [];
      const value = chartedValue(of, lots.find((one) => one.lot === lot)?.comparison);
      return value === undefined ? [] : [{ lot, value }];
    }),
  })).filter((series) => series.points.length > 1);
  return {
    colour,
    ...(standard !== undefined && { standard }),
    lots,
    planned: own.filter(({ record }) => record.planned === true),
    tolerances,
    charted: made.filter((lot) =>
      points.some((series) => series.points.some((one) => one.lot === lot)),
    ),
    charts: points.map(({ of, points: found }) => ({
      of,
      points: found,
      chart: controlChart(
        found.map(({ value }) => value),
        of,
      ),
    })),
  };
}

/** Nothing of a let-down that was not read or made as it is written down. */
function chartedValue(of: Charted, comparison: LotComparison | undefined): number | undefined {
  if (of === "masstone") return comparison?.masstone?.deltaE00;
  const letDown = comparison?.letDown;
  if (letDown === undefined) return undefined;
  const { strength, difference } = letDown;
  return of === "strength" ? strength?.weightedPercent : difference.deltaE00;
}

/** The standard as it was read again beside the lot; what was not read again stands as it was. */
function standardBeside(standard: LotFigures, { standard: again }: Lot): LotFigures {
  if (again === undefined) return standard;
  const { masstone, letDowns } = readSpectra(again.masstone, again.letDowns);
  return {
    ...standard,
    ...(masstone !== undefined && { masstone }),
    letDowns: [...letDowns, ...standard.letDowns],
  };
}

/** The colour's own readings, and of the retained standard what only a lot tells, and what it was let down in besides. */
function standardFigures(colour: Colour, standard: Lot | undefined): LotFigures {
  const oilIndex = colour.record.oilIndexGPer100g;
  const value = typeof oilIndex === "object" ? oilIndex.value : oilIndex;
  const density = standard?.record.densityGPerCm3;
  return {
    ...readSpectra(colour.masstone, standardLetDowns(colour, standard)),
    ...(typeof value === "number" && { oilIndexGPer100g: value }),
    ...(density !== undefined && { densityGPerCm3: density }),
  };
}

function lotFigures({ record, masstone, letDowns }: Lot): LotFigures {
  const pigmentG = record.pigments.reduce((sum, { massG }) => sum + massG, 0);
  return {
    ...readSpectra(masstone, letDowns),
    ...(record.finenessOfGrindUm !== undefined && { finenessUm: record.finenessOfGrindUm }),
    ...(record.oil !== undefined && { oilIndexGPer100g: (100 * record.oil.massG) / pigmentG }),
    ...(record.densityGPerCm3 !== undefined && { densityGPerCm3: record.densityGPerCm3 }),
  };
}

function whitesOf(
  colour: Colour,
  standard: Lot | undefined,
  records: Records,
): ReadonlyMap<string, Measurement> {
  return new Map(
    [...new Set(standardLetDowns(colour, standard).map(({ white }) => white))].flatMap((slug) => {
      const { masstone } = whiteColour(slug, records);
      return masstone === undefined ? [] : [[slug, opticsReading(masstone)] as const];
    }),
  );
}

/** What drawdowns of one lot, made again, differ by: in Delta-E*ab, and in strength [%] beside their mean. */
function workshopSpread(records: Records): WorkshopSpread {
  const sets = [...records.lots.values()].flatMap(({ record, letDowns }) =>
    letDowns.flatMap(({ replicates, reading, white }) =>
      replicates.length < 2 || !isSpectrum(reading)
        ? []
        : [{ colour: record.colour, replicates, reading: opticsReading(reading), white }],
    ),
  );
  const axes = sets.flatMap(({ replicates }) => {
    const labs = replicates.map((one) => spectrumLab(one));
    return [labs.map(({ L }) => L), labs.map(({ a }) => a), labs.map(({ b }) => b)];
  });
  const one = replicateSpread(axes);
  const strength = replicateSpread(
    sets.map(({ colour, replicates, reading, white }) => {
      const paint = records.colours.get(colour);
      if (paint === undefined || effectInWhite(paint, white, records) !== undefined) return [];
      const { masstone } = whiteColour(white, records);
      const own = masstone && isSpectrum(masstone) ? opticsReading(masstone) : undefined;
      const isAlike = own?.geometry === reading.geometry;
      const bench = commonBench(reading, ...(own !== undefined && isAlike ? [own] : []));
      const mean = bench && onBench(reading, bench);
      if (bench === undefined || mean === undefined) return [];
      return replicates.flatMap((spectrum) => {
        const one = onBench({ ...reading, spectrum }, bench);
        return one === undefined
          ? []
          : [lotStrength(mean, one, own && onBench(own, bench), bench).weightedPercent];
      });
    }),
  );
  return {
    ...(one !== undefined && {
      colour: {
        // Three axes, each with a third of the degrees.
        standardDeviation: one.standardDeviation * Math.sqrt(3),
        degrees: one.degrees / 3,
      },
    }),
    ...(strength !== undefined && { strengthPercent: strength }),
  };
}
