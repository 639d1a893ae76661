import { isKnown } from "../quantities/figure.ts";
import { given } from "../quantities/given.ts";
import type { ShownCell, ShownColour } from "../present/comparison-types.ts";
import { statedText } from "../present/stated-text.ts";
import { statementText } from "../present/statement-text.ts";
import { standingView } from "../present/standing-view.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import { codedText } from "../present/label-model.ts";
import { upperFirst } from "../words/letter-case.ts";
import { comparedColour } from "../collection/compared-colour.ts";
import {
  LIGHTNESS_KEYS,
  type EqualLightness,
  type TintSection,
} from "../sheet/tints/tint-figures.ts";
import { saidOfEveryPaint } from "../hazard/markets/market-statements.ts";
import { hazardView } from "./label-view.ts";
import { rememberedOfTwo } from "../quantities/remembered.ts";
import { ownColour } from "./screen-swatch.ts";
import type { PageContext } from "./page-context.ts";
import { sixFacts, whiteningParts } from "./six-facts.ts";
import { pigmentName } from "./pigment-name.ts";
import { strengthReferenceName } from "./strength-reference.ts";
import type { SheetPath } from "../sheet/sheet-path.ts";

/** What a comparison shows of one colour: what is compared, and beside each its finished text, its standing, its small print. */
export const shownColour = rememberedOfTwo(
  (worded: SheetTexts, context: PageContext): ShownColour => {
    const { sheet } = worded;
    const whitening = whiteningParts(sheet.slug, context);
    // By weight two whites compare otherwise than as they are squeezed out.
    const compared = comparedColour(
      sheet,
      whitening?.by === "volume" ? whitening.figure : undefined,
    );
    const masstone = ownColour(sheet.notations.masstone);
    const cells = cellsOf(worded, context);
    return {
      ...compared,
      address: `colours/${sheet.slug}/`,
      ...indexOf(sheet),
      ...(masstone !== undefined && { masstone }),
      whites: sheet.tints.map(({ white, atL }) => ({
        slug: white.slug,
        name: white.name,
        tints: Object.fromEntries(
          levelsOf(atL).flatMap((level) => {
            const colour = ownColour(atL[level]);
            return colour === undefined ? [] : [[level, colour]];
          }),
        ),
      })),
      // A cell stands where there is something to compare, and nowhere else.
      cells: Object.fromEntries(
        Object.entries(cells).filter(([key]) => compared.amounts[key] !== undefined),
      ),
    };
  },
);

/** Colour Index names of its pigments; nothing where one has none. */
function indexOf({ pigments }: SheetTexts["sheet"]): { readonly index?: string } {
  const names = pigments.map(({ colourIndexName }) => colourIndexName);
  return names.includes(undefined) ? {} : { index: names.join(", ") };
}

function cellsOf(worded: SheetTexts, context: PageContext): Record<string, ShownCell> {
  const { sheet } = worded;
  const { words, records } = context;
  const text = words.pages.compare.cells;
  const figure = (path: SheetPath, note?: string): ShownCell =>
    figureCell(worded, path, context, note);
  const facts = sixFacts(worded, context);
  const fact = (name: "lasts" | "hides" | "whitens"): ShownCell => {
    const { word, detail, standing } = facts.find(({ key }) => key === name) ?? {
      word: "",
      standing: undefined,
    };
    return {
      text: word,
      ...(standing !== undefined && { standing }),
      ...(detail !== undefined && { note: detail }),
    };
  };
  const gloss = sheet.oil.gloss60;
  return {
    ...Object.fromEntries(
      sheet.tints.flatMap((tint) => [
        [`white.${tint.white.slug}`, tintCell(tint, worded, context)],
        [`parts.${tint.white.slug}`, figure(`tints.${tint.white.slug}.strengthParts.byVolume`)],
      ]),
    ),
    masstone: figure("notations.masstone.munsell.text"),
    strength: figure(
      "optics.tintingStrengthByVolume",
      records.workshop.strengthReference === sheet.slug
        ? text.isReference
        : text.strength(strengthReferenceName(context)),
    ),
    whitens: fact("whitens"),
    opacity: fact("hides"),
    oilByMass: figure("oil.oilIndexGPer100g", plainText(worded, "oil.oilIndexClass", context)),
    oilByVolume: figure("oil.oilGPer100cm3"),
    finish: figure(
      "oil.finish",
      isKnown(gloss) ? text.gloss(plainText(worded, "oil.gloss60", context) ?? "") : undefined,
    ),
    drying: figure("drying.touchDryDays", plainText(worded, "drying.class", context)),
    lightfastness: fact("lasts"),
    label: labelCell(worded, context),
    sale: saleCell(worded, context),
    pigments: {
      items: sheet.pigments.map((pigment) => {
        const share = `pigments.${pigment.slug}.massFraction` as const;
        return sheet.pigments.length > 1 && isKnown(pigment.massFraction)
          ? text.share(pigmentName(pigment), plainText(worded, share, context) ?? "")
          : pigmentName(pigment);
      }),
    },
    vehicle: { text: sheet.vehicle?.name ?? "" },
    dispersion: { text: sheet.dispersion === undefined ? "" : text.dispersion[sheet.dispersion] },
  };
}

function plainText(
  worded: SheetTexts,
  path: SheetPath,
  { words }: PageContext,
): string | undefined {
  const text = statedText(worded, path, words);
  return text && upperFirst(text);
}

function figureCell(
  worded: SheetTexts,
  path: SheetPath,
  context: PageContext,
  note?: string,
): ShownCell {
  const text = plainText(worded, path, context);
  if (text === undefined) return {};
  return {
    text,
    standing: standingView(worded.leaf(path).figure, context.words),
    ...(note !== undefined && { note }),
  };
}

function levelsOf(atL: TintSection["atL"]): EqualLightness[] {
  return LIGHTNESS_KEYS.filter((level) => atL[level] !== undefined);
}

/** The sentence of the white, and a* and b* at each lightness. */
function tintCell(
  { white, atL, sentence }: TintSection,
  worded: SheetTexts,
  context: PageContext,
): ShownCell {
  const text = context.words.pages.compare.cells;
  const [first] = levelsOf(atL);
  return {
    lead: statementText(sentence, context.words),
    atL: Object.fromEntries(
      levelsOf(atL).map((level) => {
        const [a, b] = (["a", "b"] as const).map(
          (axis) => plainText(worded, `tints.${white.slug}.atL.${level}.${axis}`, context) ?? "",
        );
        return [level, text.tint(a ?? "", b ?? "")];
      }),
    ),
    ...(first !== undefined && {
      standing: standingView(
        worded.leaf(`tints.${white.slug}.atL.${first}.b`).figure,
        context.words,
      ),
    }),
  };
}

/** Label elements in full, never fewer than the sheet has. */
function labelCell({ sheet: { cautions } }: SheetTexts, { words }: PageContext): ShownCell {
  const text = words.pages.compare.cells;
  const hazard = hazardView(cautions, cautions, words);
  const isUnknown = cautions.unknown.length > 0;
  if (hazard === undefined) return { text: isUnknown ? text.noData : text.nothingClassified };
  return {
    text: hazard.signalWord ?? (isUnknown ? text.noData : words.pages.sheetPage.safe.care),
    items: given([
      ...hazard.statements.map(codedText),
      hazard.pictograms.length > 0 && text.pictograms(hazard.pictograms.map(({ name }) => name)),
    ]),
  };
}

/** Where the markets forbid a sale, and where they ask something of it that they do not ask of every paint. */
function saleCell({ sheet: { cautions, slug } }: SheetTexts, { words }: PageContext): ShownCell {
  const text = words.pages.compare.cells;
  const markets = (effect: "forbidden unless" | "line") => [
    ...new Set(
      cautions.restrictions
        .filter((limit) => limit.effect === effect && !saidOfEveryPaint(limit.rule))
        .map(({ market }) => words.pages.handling.marketNames[market] ?? market),
    ),
  ];
  const forbidden = markets("forbidden unless");
  const asked = markets("line").filter((market) => !forbidden.includes(market));
  if (forbidden.length + asked.length === 0) return { text: text.noLimit };
  return {
    text: upperFirst(
      given([
        forbidden.length > 0 && text.limited(forbidden),
        asked.length > 0 && text.asked(asked),
      ]).join(words.semicolon),
    ),
    address: `colours/${slug}/#handling`,
  };
}
