/** What is known of a mix beside its colour, from the tubes that it is made of. */
import { at } from "../../quantities/at.ts";
import { daysOfParts, type PartAlone } from "../../drying/days-of-parts.ts";
import type { Interval } from "../../quantities/interval.ts";
import { partsOf, type Mix } from "../mix.ts";
import type { MixingPaint } from "../mixing-paint.ts";
import type { MixingRange } from "../mixing-range.ts";
import { volumeMix } from "./mass-mix.ts";

export interface MixFacts {
  /** The weakest of its paints; `unknown` are those of which nothing is known. */
  readonly lightfastness: {
    readonly rank?: number;
    readonly text?: string;
    readonly of?: string;
    readonly unknown: readonly string[];
  };
  /** Days to touch dry, an estimate; undefined where one of its paints is not known. */
  readonly dryingDays?: Interval;
  readonly dryingUnknown: readonly string[];
  readonly signal: "Danger" | "Warning" | null;
  readonly statements: readonly string[];
  readonly warningUnknown: readonly string[];
  readonly metals: readonly string[];
  /** Of 10 ml; undefined where a price or a density is not known. */
  readonly pricePer10Ml?: number;
  /** Paints that are not sold to everybody. */
  readonly restricted: readonly string[];
}

const PRICE_ML = 10;

/** @param mass by mass of paint, colours of no part left out. */
export function mixFacts(mass: Mix, range: MixingRange): MixFacts {
  const parts = partsOf(mass).flatMap(({ slug, parts: share }) => {
    const paint = range.paint(slug);
    return paint === undefined ? [] : [{ paint, mass: share }];
  });
  const paints = parts.map(({ paint }) => paint);
  const volume = volumeMix(mass, range);
  const shares = volume && volumeShares(volume);
  const price = shares && priceOf(shares, range);
  const drying = dryingOf(parts);
  return {
    lightfastness: weakest(paints),
    ...(drying.days !== undefined && { dryingDays: drying.days }),
    dryingUnknown: drying.unknown,
    signal: paints.some(({ facts }) => facts.warning.signal === "Danger")
      ? "Danger"
      : paints.some(({ facts }) => facts.warning.signal === "Warning")
        ? "Warning"
        : null,
    statements: [...new Set(paints.flatMap(({ facts }) => facts.warning.statements))],
    warningUnknown: named(paints.filter(({ facts }) => facts.warning.isUnknown)),
    metals: [...new Set(paints.flatMap(({ facts }) => facts.metals))],
    ...(price !== undefined && { pricePer10Ml: price }),
    restricted: named(paints.filter(({ facts }) => facts.isRestricted)),
  };
}

function weakest(paints: readonly MixingPaint[]): MixFacts["lightfastness"] {
  const unknown = named(paints.filter(({ facts }) => facts.lightfastness === undefined));
  const [last] = paints
    .flatMap(({ name, facts: { lightfastness } }) =>
      lightfastness === undefined ? [] : [{ name, ...lightfastness }],
    )
    .toSorted((one, other) => other.rank - one.rank);
  return last === undefined
    ? { unknown }
    : { rank: last.rank, text: last.text, of: last.name, unknown };
}

function dryingOf(parts: readonly { readonly paint: MixingPaint; readonly mass: number }[]): {
  readonly days?: Interval;
  readonly unknown: readonly string[];
} {
  const unknown = named(
    parts.filter(({ paint }) => paint.facts.drying === undefined).map(({ paint }) => paint),
  );
  if (unknown.length > 0) return { unknown };
  const pigment = pigmentMasses(parts);
  const total = pigment?.reduce((sum, one) => sum + one, 0);
  const alone = parts.flatMap(({ paint }, i): PartAlone[] => {
    const { drying } = paint.facts;
    if (drying === undefined) return [];
    const share = pigment && total && at(pigment, i) / total;
    return [
      {
        name: paint.name,
        touchDryDays: drying.days,
        isTried: drying.isTried,
        massFraction: share,
        fullFromMassFraction: drying.fullFrom,
      },
    ];
  });
  const [only] = parts;
  return {
    unknown,
    days:
      parts.length === 1 && only?.paint.facts.drying !== undefined
        ? only.paint.facts.drying.days
        : daysOfParts(alone).touchDryDays,
  };
}

/** Pigment in the mass of each; undefined where one paint's share of it is not known. */
function pigmentMasses(
  parts: readonly { readonly paint: MixingPaint; readonly mass: number }[],
): number[] | undefined {
  const masses = parts.flatMap(({ paint: { pigmentMassFraction }, mass }) =>
    pigmentMassFraction === undefined ? [] : [mass * pigmentMassFraction],
  );
  return masses.length < parts.length ? undefined : masses;
}

interface Share {
  readonly slug: string;
  readonly share: number;
}

function volumeShares(volume: Mix): Share[] {
  const parts = partsOf(volume);
  const total = parts.reduce((sum, part) => sum + part.parts, 0);
  return parts.map(({ slug, parts: own }) => ({ slug, share: own / total }));
}

function priceOf(shares: readonly Share[], range: MixingRange): number | undefined {
  let sum = 0;
  for (const { slug, share } of shares) {
    const price = range.paint(slug)?.facts.pricePerMl;
    if (price === undefined) return undefined;
    sum += PRICE_ML * share * price;
  }
  return sum;
}

function named(paints: readonly MixingPaint[]): string[] {
  return paints.map(({ name }) => name);
}
