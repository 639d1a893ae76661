import { saidOfEveryPaint } from "../hazard/markets/market-statements.ts";
import { EXPECTATIONS } from "../permanence/expected-lightfastness.ts";
import { isKnown, type Figure, type Standing } from "../quantities/figure.ts";
import type { Quantity } from "../quantities/interval.ts";
import type { Sheet } from "../sheet/sheet.ts";
import type { EqualLightness, TintSection } from "../sheet/tints/tint-figures.ts";
import type { MasstoneNotations } from "../sheet/notations/masstone-figures.ts";
import type { LabFigures } from "../sheet/notations/notation-figures.ts";
import { glossOfTint } from "./near-neutrals.ts";
import {
  comparedMasstone,
  largest,
  showsItsGround,
  type GlossInReading,
} from "./compared-masstone.ts";

/** A place in a*, b* with the larger of its standard uncertainties. */
export interface ComparedTint {
  readonly a: number;
  readonly b: number;
  readonly uncertainty?: number;
}

/**
 * One thing that colours are compared in, as plain data, so that a page can carry it:
 * a `number` with its standard uncertainty or an estimate's two ends; a masstone's place in L*a*b*
 * (`colour`, D65/10); a `tint`'s at equal lightness, both with whether gloss is in the reading; one `word` of a closed set or a name; a `set` of slugs or codes;
 * and `apart`, what is known in a way that cannot be held against the others, such as a chip matched by eye, or a film that shows its ground.
 */
export type ComparedAmount =
  | { readonly kind: "number"; readonly value: Quantity; readonly uncertainty?: number }
  | {
      readonly kind: "colour";
      readonly L: number;
      readonly a: number;
      readonly b: number;
      readonly gloss?: GlossInReading;
      readonly uncertainty?: number;
    }
  | {
      readonly kind: "tint";
      readonly atL: Readonly<Partial<Record<EqualLightness, ComparedTint>>>;
      readonly gloss?: GlossInReading;
    }
  | { readonly kind: "word"; readonly value: string; readonly standing?: Standing }
  | { readonly kind: "set"; readonly members: readonly string[] }
  | { readonly kind: "apart"; readonly isFilm?: true };

/** What a colour brings to a comparison; what its sheet does not state is not in it. Whites stand as `white.SLUG` and `parts.SLUG`. */
export interface ComparedColour {
  readonly slug: string;
  readonly name: string;
  readonly amounts: Readonly<Record<string, ComparedAmount>>;
}

/**
 * What a finished sheet brings to a comparison.
 * @param whitening of a white: how much of it by volume brings one of the strength reference to a middle grey.
 */
export function comparedColour(sheet: Sheet, whitening?: Figure<Quantity>): ComparedColour {
  const { optics, oil, drying, permanence, cautions } = sheet;
  const lightfastness = isKnown(permanence.category) ? permanence.category : permanence.expectation;
  const limits = cautions.restrictions
    .filter(({ rule }) => !saidOfEveryPaint(rule))
    .map(({ market, rule }) => `${market} ${rule}`);
  const amounts: Record<string, ComparedAmount | undefined> = {
    masstone: showsItsGround(sheet)
      ? { kind: "apart", isFilm: true }
      : masstone(sheet.notations.masstone),
    ...Object.fromEntries(sheet.tints.flatMap(inWhite)),
    strength: number(optics.tintingStrengthByVolume),
    whitens: whitening === undefined ? undefined : number(whitening),
    opacity: word(optics.opacityClass),
    oilByMass: number(oil.oilIndexGPer100g),
    oilByVolume: number(oil.oilGPer100cm3),
    finish: word(oil.finish),
    drying: number(drying.touchDryDays),
    lightfastness: isKnown(permanence.category)
      ? word(lightfastness, CATEGORY_WORDS)
      : word(lightfastness),
    label: {
      kind: "set",
      members: [
        cautions.signalWord ?? "",
        ...cautions.hazardStatements,
        ...cautions.supplemental,
        ...cautions.notClassified.flatMap(({ values: { metals } }) => metals),
        ...cautions.unknown.map((name) => `unknown ${name}`),
      ].filter((member) => member !== ""),
    },
    sale: { kind: "set", members: [...limits, ...cautions.notForSale] },
    pigments: { kind: "set", members: sheet.pigments.map(({ slug }) => slug) },
    vehicle: sheet.vehicle === undefined ? undefined : { kind: "word", value: sheet.vehicle.slug },
    dispersion:
      sheet.dispersion === undefined ? undefined : { kind: "word", value: sheet.dispersion },
  };
  return {
    slug: sheet.slug,
    name: sheet.name,
    amounts: Object.fromEntries(
      Object.entries(amounts).filter(
        (entry): entry is [string, ComparedAmount] => entry[1] !== undefined,
      ),
    ),
  };
}

function inWhite({
  white: { slug },
  atL,
  steps,
  strengthParts,
}: TintSection): (readonly [string, ComparedAmount | undefined])[] {
  const places = Object.entries(atL).flatMap(([level, at]) =>
    tint(at).map((place) => [level, place] as const),
  );
  return [
    [
      `white.${slug}`,
      {
        kind: "tint",
        atL: Object.fromEntries(places),
        gloss: glossOfTint({ steps }),
      },
    ],
    [`parts.${slug}`, strengthParts === undefined ? undefined : number(strengthParts.byVolume)],
  ];
}

/** A category and an expectation are compared by the word that both are read as. */
const CATEGORY_WORDS: Readonly<Record<string, string>> = Object.fromEntries(
  EXPECTATIONS.map(({ category, expectation }) => [category, expectation]),
);

function number(figure: Figure<Quantity> | Figure<number>): ComparedAmount | undefined {
  if (!isKnown<Quantity>(figure)) return undefined;
  return {
    kind: "number",
    value: figure.value,
    ...(figure.uncertainty !== undefined && { uncertainty: figure.uncertainty }),
  };
}

function word(
  figure: Figure<string>,
  words: Readonly<Record<string, string>> = {},
): ComparedAmount | undefined {
  return isKnown(figure)
    ? { kind: "word", value: words[figure.value] ?? figure.value, standing: figure.standing }
    : undefined;
}

function masstone(notations: MasstoneNotations | undefined): ComparedAmount | undefined {
  const compared = comparedMasstone(notations);
  if (compared === undefined)
    return notations?.munsell === undefined ? undefined : { kind: "apart" };
  const { lab, gloss, uncertainty } = compared;
  return { kind: "colour", ...lab, gloss, ...(uncertainty !== undefined && { uncertainty }) };
}

function tint({ a, b }: Pick<LabFigures, "a" | "b">): ComparedTint[] {
  return isKnown(a) && isKnown(b) ? [{ a: a.value, b: b.value, ...largest(a, b) }] : [];
}
