import { MATCHES_TO, metamerism, type Metamerism } from "../colorimetry/metamerism.ts";
import type { JudgingObserver } from "../colorimetry/viewing.ts";
import { isKnown } from "../quantities/figure.ts";
import type { Quantity } from "../quantities/interval.ts";
import type { Spectrum } from "../quantities/spectrum.ts";
import type { Sheet } from "../sheet/sheet.ts";
import type { InRange } from "./in-range.ts";
import { comparedMasstone, showsItsGround, type GlossInReading } from "./compared-masstone.ts";
import { oilBeside, type OilBeside } from "./oil-order.ts";
import { spreadOf, type Spread } from "./spread.ts";
import { nearestColours, type LabEntry, type Neighbour } from "./lab-index.ts";
import { slugOrder } from "../quantities/name-order.ts";
import { grouped } from "../quantities/grouped.ts";

/** Finished sheets held against each other. */
export interface Collection {
  /** By slug: neighbours that pass for the same in daylight, and what lamplight does to the pair. */
  readonly inTwoLights: ReadonlyMap<string, readonly TwoLights[]>;
  /** By slug: the masstones near it in daylight (D65/10) and in one geometry, nearest first. */
  readonly nearest: ReadonlyMap<string, readonly Neighbour[]>;
  /** By the slug of a white: what was let down in it, in the order of the range. */
  readonly letDownIn: ReadonlyMap<string, readonly string[]>;
  /** By the slug of a pigment: what is made with it. */
  readonly ofPigment: ReadonlyMap<string, readonly string[]>;
  /** By slug: its oil beside that of the others. */
  readonly oil: ReadonlyMap<string, OilBeside>;
  /** By the path of a figure: undefined where no colour states it. */
  readonly spreads: Readonly<Record<keyof typeof SPREAD_OF, Spread | undefined>>;
}

/** Figures of which a page shows where its colour stands among the others. */
const SPREAD_OF = {
  "oil.oilIndexGPer100g": ({ oil }: InRange) => oil.oilIndexGPer100g,
  "drying.touchDryDays": ({ drying }: InRange) => drying.touchDryDays,
};

export interface TwoLights extends Metamerism {
  readonly slug: string;
}

const NEIGHBOURS = 6;

/** Farther than this [Delta-E00] two masstones are not near each other. Our own limit: no standard draws one. */
export const NEAR_TO = 5;

export function collectionOf(
  sheets: readonly InRange[],
  observer: JudgingObserver = "CIE 1964",
): Collection {
  const nearest = new Map([
    ...nearestAmong(sheets, "shut out"),
    ...nearestAmong(sheets, "included"),
  ]);
  const curves = new Map(
    sheets.flatMap(({ slug, notations: { masstone } }) =>
      masstone?.curve === undefined
        ? []
        : [[slug, masstone.glossExcludedCurve ?? masstone.curve] as const],
    ),
  );
  const spread = (path: keyof typeof SPREAD_OF): Spread | undefined =>
    spreadOf(
      sheets.flatMap((sheet): Quantity[] => {
        const figure = SPREAD_OF[path](sheet);
        return isKnown(figure) ? [figure.value] : [];
      }),
    );
  return {
    nearest,
    letDownIn: slugsBy(sheets, ({ tints }) => tints.map(({ white }) => white.slug)),
    ofPigment: slugsBy(sheets, ({ pigments }) => pigments.map(({ slug }) => slug)),
    oil: oilBeside(sheets),
    spreads: {
      "oil.oilIndexGPer100g": spread("oil.oilIndexGPer100g"),
      "drying.touchDryDays": spread("drying.touchDryDays"),
    },
    inTwoLights: new Map(
      sheets.map(({ slug }) => [slug, twoLights(slug, nearest.get(slug) ?? [], curves, observer)]),
    ),
  };
}

/** Of neighbours that can be held against each other in lamplight: those with a spectrum, alike in daylight. */
function twoLights(
  slug: string,
  neighbours: readonly Neighbour[],
  curves: ReadonlyMap<string, Spectrum>,
  observer: JudgingObserver,
): TwoLights[] {
  const own = curves.get(slug);
  return neighbours.flatMap((neighbour): TwoLights[] => {
    const other = curves.get(neighbour.slug);
    if (own === undefined || other === undefined || neighbour.deltaE00 > MATCHES_TO) return [];
    return [{ slug: neighbour.slug, ...metamerism(own, other, observer) }];
  });
}

/** Masstones that compare, in one geometry each; those of another geometry, and films that show their ground, are no neighbours. */
function nearestAmong(sheets: readonly InRange[], gloss: GlossInReading): [string, Neighbour[]][] {
  const entries = sheets.flatMap((sheet): LabEntry[] => {
    const masstone = comparedMasstone(sheet.notations.masstone);
    return masstone?.gloss === gloss && !showsItsGround(sheet)
      ? [{ slug: sheet.slug, lab: masstone.lab }]
      : [];
  });
  return [...nearestColours(entries, NEIGHBOURS)].map(([slug, neighbours]) => [
    slug,
    neighbours.filter(({ deltaE00 }) => deltaE00 <= NEAR_TO),
  ]);
}

/** Matches in daylight made of none of a colour's pigments: the same colour from another pigment. */
export function sameColourOtherPigment(
  sheet: Sheet,
  { nearest, ofPigment }: Collection,
): Neighbour[] {
  const ofOwn = new Set(sheet.pigments.flatMap(({ slug }) => ofPigment.get(slug) ?? []));
  return (nearest.get(sheet.slug) ?? []).filter(
    ({ slug, deltaE00 }) => deltaE00 <= MATCHES_TO && !ofOwn.has(slug),
  );
}

/** Colours that share a pigment: the same pigment in another colour. */
export function samePigmentOtherColour(sheet: Sheet, { ofPigment }: Collection): string[] {
  const slugs = new Set(sheet.pigments.flatMap(({ slug }) => ofPigment.get(slug) ?? []));
  slugs.delete(sheet.slug);
  return sheet.pigments.length > 1 ? [...slugs].sort(slugOrder) : [...slugs];
}

/** Sheets by what each of them has to do with. */
function slugsBy(
  sheets: readonly InRange[],
  keysOf: (sheet: InRange) => readonly string[],
): ReadonlyMap<string, readonly string[]> {
  return grouped(
    sheets.flatMap((sheet) => [...new Set(keysOf(sheet))].map((key) => [key, sheet.slug] as const)),
  );
}
