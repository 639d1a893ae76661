/** What takes the place of a colour that some may not use: nearest tubes and recipes, and what changes with each. */
import type { Block } from "../blocks/block.ts";
import { madeStep } from "../kept/kept-steps.ts";
import { madeAside, readAsPart, readOnce, type RememberedReads } from "../kept/reads.ts";
import { linksOf, statement, tableOf } from "../blocks/section-blocks.ts";
import { deltaE00 } from "../colorimetry/difference.ts";
import type { FoundMix } from "../mixing/finding/found-mixes.ts";
import { byOrder, judgedMix, paintPasses, type MixLimits } from "../mixing/finding/judged-mix.ts";
import { remembered } from "../quantities/remembered.ts";
import { isStatement } from "../quantities/statement.ts";
import { readTarget, type Target } from "../mixing/finding/target.ts";
import { addressOf } from "../mixing/mix-address.ts";
import type { MixingPaint } from "../mixing/mixing-paint.ts";
import { laddersIn, mixableColours, type MixingRange } from "../mixing/mixing-range.ts";
import { volumeMix } from "../mixing/prediction/mass-mix.ts";
import { cellSwatch } from "../plots/small-swatch.ts";
import type { ScreenColour } from "../plots/screen-colour.ts";
import { differenceText, driesText, hidesText, lastsText } from "../present/mix-facts-text.ts";
import { mixPartsText, toSmallest } from "../present/mix-parts-text.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import { keptMixes } from "./kept-mixes.ts";
import { metalsIn } from "./mixing-data.ts";
import { mixingOf } from "./mixing-ways.ts";
import type { PageContext, PagePlace } from "./page-context.ts";
import { NO_VALUE } from "../words/no-value.ts";
import { wordedSheet } from "./worded-sheet.ts";

/** Metals that customers ask to do without. */
const AVOIDED = ["lead", "cadmium"];
const SINGLES_MOST = 2;
const RECIPES_MOST = 4;
/**
 * What lies farther off [Delta-E00] takes nobody's place: the middle distance of neighbouring ISCC-NBS names, so that
 * it mostly goes by another name. Our own limit.
 */
const REPLACES_TO = 6;

/** None for a colour that is made and that nobody has to do without, or that was not read. */
export function replacementBlocks(
  slug: string,
  context: PageContext,
  { root }: PagePlace,
): Block[] {
  const text = context.words.pages.mixing.recipes.replaces;
  const found = replacements(slug, context);
  const chosen = chosenReplacement(slug, context, root);
  if (found === undefined) return chosen;
  const { name, metals, discontinued, isUnclassifiedLeftOut, rows } = found;
  const { columns } = text;
  const isNone = rows.length === 1;
  const more = {
    text: text.more,
    href: `${root}bench/recipes/?${[`colour=${slug}`, ...metals.map((metal) => `metal=${metal}`)].join("&")}`,
  };
  return [
    ...chosen,
    statement(
      discontinued === undefined
        ? text.because(name, metals, isNone)
        : text.discontinued(name, context.words.date(discontinued), isNone),
      "lead",
    ),
    isNone
      ? statement(isUnclassifiedLeftOut ? text.noneKnown : text.none)
      : tableOf({
          caption: text.caption(name),
          columns: [columns.what, columns.difference, columns.lasts, columns.dries, columns.hides],
          rows: rows.map(({ what, href, cells, screen }) => [
            {
              text: what,
              ...(href !== undefined && { href: `${root}${href}` }),
              swatch: cellSwatch(screen),
            },
            ...cells,
          ]),
          note: text.note,
        }),
    ...linksOf([more]),
  ];
}

/** The colour that the workshop itself puts in the place of one that is made no more. */
function chosenReplacement(slug: string, { records, words }: PageContext, root: string): Block[] {
  const replacedBy = records.colours.get(slug)?.record.replacedBy;
  const other = replacedBy === undefined ? undefined : records.colours.get(replacedBy);
  if (other === undefined) return [];
  const text = words.pages.former.replacedBy(other.record.name);
  return linksOf([{ text, href: `${root}colours/${other.slug}/` }]);
}

interface Row {
  readonly what: string;
  readonly href?: string;
  readonly cells: readonly string[];
  readonly screen?: ScreenColour;
}

interface Replacements {
  /** Of the paint whose place is to be taken. */
  readonly name: string;
  readonly metals: readonly string[];
  readonly discontinued?: string;
  /** Whether paints were left out of which nobody knows what is in them. */
  readonly isUnclassifiedLeftOut: boolean;
  /** The colour itself first. */
  readonly rows: readonly Row[];
}

/** Before the name of a colour whose replacements are told as a part by themselves. */
export const REPLACEMENTS_ROOT = "replacements";

const KNOWN: RememberedReads<PageContext["sheets"], Replacements | undefined> = new WeakMap();

/**
 * Whoever asks has read what they are, and none of the paints that they were looked for among: a
 * paint that moves, and takes nobody's place, fills no page again.
 */
function replacements(slug: string, context: PageContext): Replacements | undefined {
  const step = { modules: MODULES, name: "replacements", of: slug };
  return readOnce(
    KNOWN,
    context.sheets,
    slug,
    readAsPart(`${REPLACEMENTS_ROOT}/${slug}`, () =>
      madeStep(context.steps, step, () => worked(slug, context)),
    ),
  );
}

/** A part of that name as it is now. */
export function replacementsPart(name: string, context: PageContext): unknown {
  const [, slug = "", most, white = ""] = name.split("/");
  return madeAside(() =>
    most === undefined
      ? replacements(slug, context)
      : searchedAmong(slug, white, Number(most) as SearchedMost, context),
  );
}

const MODULES = ["lib/pages/replacement-blocks.ts", "lib/words/languages.ts"];

function worked(slug: string, context: PageContext): Replacements | undefined {
  const own = wordedSheet(slug, context);
  const metals = own === undefined ? [] : avoidedIn(own);
  const discontinued = context.records.colours.get(slug)?.record.discontinued;
  // Most colours need none, and the range is not asked for them.
  if (metals.length === 0 && discontinued === undefined) return undefined;
  const range = mixingOf(context);
  const paint = range.paint(slug);
  const target = targetOf(range, slug);
  if (paint === undefined || target === undefined) return undefined;
  const limits = limitsOf(metals);
  const text = context.words.pages.mixing.recipes.replaces;
  const itself: Row = {
    what: paint.name,
    cells: [text.itself, ...paintCells(paint)],
    ...(paint.screen !== undefined && { screen: paint.screen }),
  };
  return {
    name: paint.name,
    metals,
    ...(discontinued !== undefined && { discontinued }),
    isUnclassifiedLeftOut:
      metals.length > 0 &&
      range.data.paints.some((other) => other.slug !== paint.slug && other.facts.warning.isUnknown),
    rows: [
      itself,
      ...singles(paint, target, limits, range, context),
      ...recipes(paint, target, limits, range, context),
    ],
  };
}

/** What a sheet's paint holds that customers ask to do without. */
function avoidedIn({ sheet }: SheetTexts): readonly string[] {
  const held: readonly string[] = metalsIn(sheet);
  return AVOIDED.filter((metal) => held.includes(metal));
}

/** What takes the place of a paint with one of the metals holds none of them. */
function limitsOf(metals: readonly string[]): MixLimits {
  return { withoutMetals: metals.length === 0 ? [] : AVOIDED, isUnlabelled: false };
}

/** A paint's own colour, which all who look for another are held against. */
const targetOf = remembered((range: MixingRange, slug: string): Target | undefined => {
  const reading = range.masstone(slug);
  return reading && readTarget(range.paint(slug)?.name ?? slug, "range", reading);
});

/** Other tubes by themselves, as they were read. */
function singles(
  paint: MixingPaint,
  target: Target,
  limits: MixLimits,
  range: MixingRange,
  { words }: PageContext,
): Row[] {
  const near = range.data.paints.flatMap((other) => {
    if (other.slug === paint.slug || other.kind !== paint.kind) return [];
    const own = targetOf(range, other.slug);
    if (own === undefined || !paintPasses(other, limits)) return [];
    return {
      other,
      difference: deltaE00(own.lab, target.lab),
      p68: Math.hypot(own.p68, target.p68),
    };
  });
  return near
    .filter(({ difference }) => difference <= REPLACES_TO)
    .toSorted((one, other) => one.difference - other.difference)
    .slice(0, SINGLES_MOST)
    .map(({ other, difference, p68 }) => ({
      what: other.name,
      href: `colours/${other.slug}/`,
      cells: [differenceText(difference, p68, words.numbers), ...paintCells(other)],
      ...(other.screen !== undefined && { screen: other.screen }),
    }));
}

const SEARCHED: RememberedReads<PageContext["sheets"], readonly string[]> = new WeakMap();

/** The colours that recipes of so many are looked for among: a part, of which none of the others is read. */
function searchedAmong(
  slug: string,
  white: string,
  coloursMost: SearchedMost,
  context: PageContext,
): readonly string[] {
  const name = `${REPLACEMENTS_ROOT}/${slug}/${coloursMost}/${white}`;
  const step = {
    modules: MODULES,
    name: "colours that replacements are looked for among",
    of: name,
  };
  return readOnce(
    SEARCHED,
    context.sheets,
    name,
    readAsPart(name, () =>
      madeStep(context.steps, step, () => nearestOfRange(slug, white, coloursMost, context)),
    ),
  );
}

function nearestOfRange(
  slug: string,
  white: string,
  coloursMost: SearchedMost,
  context: PageContext,
): readonly string[] {
  const range = mixingOf(context);
  const [own, target] = [wordedSheet(slug, context), targetOf(range, slug)];
  if (own === undefined || target === undefined) return [];
  const metals = limitsOf(avoidedIn(own)).withoutMetals.join(" ");
  const near = nearestColours(
    usableColours(range, white, metals),
    white,
    target,
    range,
    SEARCHED_MOST[coloursMost],
  );
  return mixableColours(range, white)
    .map((one) => one.slug)
    .filter((one) => one !== slug && near.includes(one));
}

/** Recipes of two and of three are looked for among so many colours: their number grows with the square and the cube of these. Our own choice. */
const SEARCHED_MOST = { 2: 26, 3: 16 } as const;
type SearchedMost = keyof typeof SEARCHED_MOST;

/** All of a few colours; of many, those whose let-downs come nearest to the target. */
function nearestColours(
  slugs: readonly string[],
  white: string,
  { lab }: Target,
  range: MixingRange,
  most: number,
): string[] {
  if (slugs.length <= most) return [...slugs];
  const nearness = (slug: string): number => {
    const ladder = range.ladder(slug, white);
    if (isStatement(ladder)) return Infinity;
    const labs = [ladder.fit.masstone.lab, ...ladder.white.steps.map((step) => step.lab)];
    return Math.min(...labs.map((one) => deltaE00(one, lab)));
  };
  return slugs
    .map((slug) => ({ slug, nearness: nearness(slug) }))
    .toSorted((one, other) => one.nearness - other.nearness)
    .slice(0, most)
    .map(({ slug }) => slug);
}

/** Colours that mix in a white and hold none of some metals; the same for all that do without these. @param metals with spaces between. */
const usableColours = remembered((range: MixingRange, white: string, metals: string): string[] => {
  const limits = {
    withoutMetals: metals.split(" ").filter((one) => one !== ""),
    isUnlabelled: false,
  };
  return mixableColours(range, white)
    .filter((one) => paintPasses(one, limits))
    .map(({ slug }) => slug);
});

/** Pairs and, where none may be it, threes: in each white that may be used. */
function recipes(
  paint: MixingPaint,
  target: Target,
  limits: MixLimits,
  range: MixingRange,
  context: PageContext,
): Row[] {
  const { words, steps } = context;
  const text = words.pages.mixing;
  for (const coloursMost of [2, 3] as const) {
    const found = range.whites
      .filter((white) => paintPasses(white, limits))
      .flatMap(({ slug: white }, i): FoundMix[] => {
        const colours = searchedAmong(paint.slug, white, coloursMost, context);
        const wish = {
          target,
          white,
          colours,
          mustHold: [],
          coloursMost,
          without: [paint.slug],
          isWhiteFree: i === 0,
        };
        const search = { wish, colours, ladders: laddersIn(white, colours, range) };
        return keptMixes(`of ${coloursMost} in ${white} for ${paint.slug}`, search, steps);
      });
    const judged = found
      .toSorted((one, other) => one.deltaE00 - other.deltaE00)
      .slice(0, 2 * RECIPES_MOST)
      .map((one) => judgedMix(one, target, range))
      .toSorted(byOrder("fewest"));
    if (judged.some(({ isWithin }) => isWithin) || coloursMost === 3)
      return judged
        .filter((one) => one.deltaE00 <= REPLACES_TO)
        .slice(0, RECIPES_MOST)
        .map(({ mix, deltaE00: difference, p68, facts, opacity, shown }) => {
          const parts = toSmallest(volumeMix(mix, range) ?? mix);
          return {
            what: mixPartsText(parts, range, text, words.numbers),
            href: `bench/?${addressOf({ mix: parts, filmUm: Infinity, finish: "glossy", light: "daylight" })}`,
            cells: [
              differenceText(difference, p68, words.numbers),
              lastsText(facts, text),
              driesText(facts, text),
              hidesText(opacity, text, words.numbers),
            ],
            screen: shown,
          };
        });
  }
  return [];
}

/** As its own sheet says it. */
function paintCells({ facts }: MixingPaint): string[] {
  return [facts.lightfastness, facts.drying, facts.opacity].map((known) => known?.text ?? NO_VALUE);
}
