import { massAndVolumeRuling, type OilRatioStatement } from "../formulation/oil-by-volume.ts";
import { isKnown, type Figure } from "../quantities/figure.ts";
import { ends, type Quantity } from "../quantities/interval.ts";
import type { Sheet } from "../sheet/sheet.ts";

/** A range ranked by oil, leanest first: to a mass of pigment and to a volume of it. A colour whose oil is not known stands in neither. */
export interface OilOrder {
  readonly byMass: readonly Sheet[];
  readonly byVolume: readonly Sheet[];
}

export function oilOrder(sheets: readonly Sheet[]): OilOrder {
  return {
    byMass: ordered(sheets, ({ oil }) => oil.oilIndexGPer100g),
    byVolume: ordered(sheets, ({ oil }) => oil.oilGPer100cm3),
  };
}

/** An estimate stands at the middle of its ratio, since oil figures differ by ratios; equals go by slug. */
function ordered(sheets: readonly Sheet[], figureOf: (sheet: Sheet) => Figure<Quantity>): Sheet[] {
  return sheets
    .flatMap((sheet) => {
      const figure = figureOf(sheet);
      return isKnown(figure) ? [{ sheet, oil: middle(figure.value) }] : [];
    })
    .sort((one, other) => one.oil - other.oil || (one.sheet.slug < other.sheet.slug ? -1 : 1))
    .map(({ sheet }) => sheet);
}

function middle(quantity: Quantity): number {
  const [lower, upper] = ends(quantity);
  return Math.sqrt(lower * upper);
}

/**
 * The colour of the range, of the same family if one will do, that differs most in oil by mass while alike by
 * volume, as a statement that names both; undefined where there is none. Estimates are left out.
 */
export function oilByMassAlone(
  sheet: Sheet,
  sheets: readonly Sheet[],
): OilRatioStatement | undefined {
  const family = sheets.filter(
    (other) => other.family !== undefined && other.family === sheet.family,
  );
  return mostByMassAlone(sheet, family) ?? mostByMassAlone(sheet, sheets);
}

function mostByMassAlone(sheet: Sheet, sheets: readonly Sheet[]): OilRatioStatement | undefined {
  const own = weighedOil(sheet);
  if (own === undefined) return undefined;
  let found: { readonly ratio: number; readonly statement: OilRatioStatement } | undefined;
  for (const other of sheets) {
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

function weighedOil({
  oil: { oilIndexGPer100g, pigmentDensityGPerCm3 },
}: Sheet): { readonly oilIndexGPer100g: number; readonly densityGPerCm3: number } | undefined {
  if (!isKnown(oilIndexGPer100g) || !isKnown(pigmentDensityGPerCm3)) return undefined;
  const [oilIndex, density] = [oilIndexGPer100g.value, pigmentDensityGPerCm3.value];
  return typeof oilIndex === "number" && typeof density === "number"
    ? { oilIndexGPer100g: oilIndex, densityGPerCm3: density }
    : undefined;
}
