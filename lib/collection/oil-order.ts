import {
  ALIKE_BY_VOLUME,
  massAndVolumeRuling,
  oilGPer100cm3,
  type OilRatioStatement,
} from "../formulation/oil-by-volume.ts";
import { certain } from "../quantities/at.ts";
import { isKnown, type Figure } from "../quantities/figure.ts";
import { ends, type Quantity } from "../quantities/interval.ts";
import { remembered } from "../quantities/remembered.ts";
import { firstInWindow } from "./first-in-window.ts";
import type { InRange } from "./in-range.ts";
import { slugOrder } from "../quantities/name-order.ts";

/** What of a sheet its place by oil goes by. */
type OilInRange = Pick<InRange, "slug" | "name" | "family" | "oil">;

/** A colour's oil beside that of the others. */
export interface OilBeside {
  /** Where it stands, from 1, among so many, where each that stands in one order stands in both. */
  readonly places?: { readonly mass: number; readonly volume: number; readonly of: number };
  /** What differs from it by mass alone. */
  readonly byMassAlone?: OilRatioStatement;
}

/** Decimals that ratios of oil are told to: what is told of a colour then moves no sooner than its sentence. */
const RATIO_DECIMALS = 1;

/** Of every colour by its slug. */
export function oilBeside(sheets: readonly OilInRange[]): ReadonlyMap<string, OilBeside> {
  const byMass = leanestFirst(sheets, ({ oil }) => middleOfOil(oil.oilIndexGPer100g));
  const byVolume = leanestFirst(sheets, ({ oil }) => middleOfOil(oil.oilGPer100cm3));
  const [masses, volumes] = [byMass, byVolume].map(
    (order) => new Map(order.map(({ slug }, i) => [slug, i + 1] as const)),
  );
  const areRanked = byMass.length >= 2 && byMass.length === byVolume.length;
  return new Map(
    sheets.map((sheet): [string, OilBeside] => {
      const [mass, volume] = [masses?.get(sheet.slug), volumes?.get(sheet.slug)];
      const byMassAlone = oilByMassAlone(sheet, sheets);
      return [
        sheet.slug,
        {
          ...(areRanked &&
            mass !== undefined &&
            volume !== undefined && { places: { mass, volume, of: byMass.length } }),
          ...(byMassAlone !== undefined && { byMassAlone: asTold(byMassAlone) }),
        },
      ];
    }),
  );
}

function asTold({ values, ...statement }: OilRatioStatement): OilRatioStatement {
  const told = (ratio: number): number => Number(ratio.toFixed(RATIO_DECIMALS));
  const { massRatio, volumeRatio } = values;
  return {
    ...statement,
    values: { ...values, massRatio: told(massRatio), volumeRatio: told(volumeRatio) },
  };
}

/** A range ranked by oil, leanest first; equals go by slug. A colour whose oil is not known has no place. */
export function leanestFirst<One extends { readonly slug: string }>(
  all: readonly One[],
  oilOf: (one: One) => number | undefined,
): One[] {
  return all
    .flatMap((one) => {
      const oil = oilOf(one);
      return oil === undefined ? [] : [{ one, oil }];
    })
    .sort((one, other) => one.oil - other.oil || slugOrder(one.one.slug, other.one.slug))
    .map(({ one }) => one);
}

/** Where oil stands among the others': an estimate at the middle of its ratio, since oil figures differ by ratios. */
export function middleOfOil(figure: Figure<Quantity>): number | undefined {
  if (!isKnown(figure)) return undefined;
  const [lower, upper] = ends(figure.value);
  return Math.sqrt(lower * upper);
}

/**
 * The colour of the range, of the same family if one will do, that differs most in oil by mass while alike by
 * volume, as a statement that names both; undefined where there is none. Estimates are left out.
 */
export function oilByMassAlone(
  sheet: OilInRange,
  sheets: readonly OilInRange[],
): OilRatioStatement | undefined {
  return (
    (sheet.family === undefined
      ? undefined
      : mostByMassAlone(sheet, extremesOfFamily(sheets, sheet.family))) ??
    mostByMassAlone(sheet, extremesOfFamily(sheets, ""))
  );
}

function mostByMassAlone(
  sheet: OilInRange,
  extremes: ReadonlyMap<string, readonly OilInRange[]>,
): OilRatioStatement | undefined {
  const own = weighedOil(sheet);
  if (own === undefined) return undefined;
  let found: { readonly ratio: number; readonly statement: OilRatioStatement } | undefined;
  for (const other of extremes.get(sheet.slug) ?? []) {
    const its = other.slug === sheet.slug ? undefined : weighedOil(other);
    if (its === undefined) continue;
    const { massRatio: ratio, statement } = massAndVolumeRuling(own, its);
    if (statement.rule !== "oil-differs-by-mass-alone" || ratio <= (found?.ratio ?? 0)) continue;
    const [more, less] =
      own.oilIndexGPer100g > its.oilIndexGPer100g ? [sheet, other] : [other, sheet];
    found = {
      ratio,
      statement: {
        ...statement,
        values: { ...statement.values, more: more.name, less: less.name },
      },
    };
  }
  return found?.statement;
}

/**
 * By slug, the leanest and the fattest by mass of those that are alike by volume, the earlier in
 * the range first; of one family, or of all by "".
 */
const extremesOfFamily = remembered(
  (sheets: readonly OilInRange[], family: string): ReadonlyMap<string, readonly OilInRange[]> => {
    const weighed = sheets
      .flatMap((sheet, nth) => {
        const oil = family === "" || sheet.family === family ? weighedOil(sheet) : undefined;
        if (oil === undefined) return [];
        return {
          sheet,
          nth,
          oilIndex: oil.oilIndexGPer100g,
          byVolume: oilGPer100cm3(oil.oilIndexGPer100g, oil.densityGPerCm3),
        };
      })
      .toSorted((one, other) => one.byVolume - other.byVolume);
    type Weighed = (typeof weighed)[number];
    const areAlike = ({ byVolume: one }: Weighed, { byVolume: other }: Weighed): boolean =>
      Math.max(one, other) / Math.min(one, other) <= ALIKE_BY_VOLUME;
    const leanest = firstInWindow(
      weighed,
      areAlike,
      (one, other) => one.oilIndex - other.oilIndex || one.nth - other.nth,
    );
    const fattest = firstInWindow(
      weighed,
      areAlike,
      (one, other) => other.oilIndex - one.oilIndex || one.nth - other.nth,
    );
    return new Map(
      weighed.map(({ sheet }, i) => [
        sheet.slug,
        [certain(leanest[i]), certain(fattest[i])]
          .toSorted((one, other) => one.nth - other.nth)
          .map((one) => one.sheet),
      ]),
    );
  },
);

function weighedOil({
  oil: { oilIndexGPer100g, pigmentDensityGPerCm3 },
}: OilInRange): { readonly oilIndexGPer100g: number; readonly densityGPerCm3: number } | undefined {
  if (!isKnown(oilIndexGPer100g) || !isKnown(pigmentDensityGPerCm3)) return undefined;
  const [oilIndex, density] = [oilIndexGPer100g.value, pigmentDensityGPerCm3.value];
  return typeof oilIndex === "number" && typeof density === "number"
    ? { oilIndexGPer100g: oilIndex, densityGPerCm3: density }
    : undefined;
}
