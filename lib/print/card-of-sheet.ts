import type { PictogramCode } from "../hazard/classify/hazard-class.ts";
import { poisonCentreLine } from "../pages/handling-section.ts";
import { coloursLetDownIn } from "../pages/colours-tinted-with.ts";
import { madeOf } from "../pages/made-of.ts";
import { comparableColour, comparableTint } from "../pages/screen-swatch.ts";
import type { PageContext } from "../pages/page-context.ts";
import { decimalText } from "../words/number-text.ts";
import { upperFirst } from "../words/letter-case.ts";
import { labelModel, type LabelLine } from "../present/label-model.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import type { Words } from "../words/words.ts";
import type { Language } from "../records/schema/terms.ts";
import type { AtLightness, EqualLightness, Sheet, TintSection } from "../sheet/sheet.ts";
import type { CardContent, CardLabel, CardStatement, CardSwatch } from "./card-content.ts";
import { cardFacts } from "./card-facts.ts";
import { comparableLab, printedLab } from "./printed-lab.ts";

/** The card of a sheet. @param languages of the label's statements, the leading one first. */
export function cardOfSheet(
  worded: SheetTexts,
  context: PageContext,
  languages: readonly Language[],
): CardContent {
  const {
    words,
    records: { workshop },
  } = context;
  const { sheet } = worded;
  const masstone = masstoneSwatch(sheet, words);
  const tints = cardTints(sheet);
  return {
    slug: sheet.slug,
    name: sheet.name,
    family: sheet.family,
    madeOf: madeOf(sheet, words, "")
      .map(({ text, index }) => (index === true ? text.replaceAll(" ", "\u00a0") : text))
      .join(""),
    indexNames: [
      ...new Set(
        sheet.pigments.map(
          ({ colourIndexName, name }) => colourIndexName?.replaceAll(" ", "\u00a0") ?? name,
        ),
      ),
    ].join(", "),
    ...(masstone === undefined ? {} : { masstone }),
    tints: tints.map((tint) => tintSwatch(tint, words)).filter((swatch) => swatch !== undefined),
    sentence: cardSentence(sheet, tints, context),
    facts: cardFacts(worded, context),
    label: cardLabel(sheet, words, languages),
    // Of an oil that is not on record nobody can say that its rags keep cool.
    ...(sheet.vehicle === undefined || sheet.vehicle.oil !== undefined
      ? { rags: words.pages.ragLine }
      : {}),
    sizes: sizes(sheet, context),
    ...(workshop.siteAddress === undefined
      ? {}
      : {
          address: new URL(`colours/${sheet.slug}/`, workshop.siteAddress.replace(/\/?$/, "/"))
            .href,
        }),
    poisonCentre: poisonCentreLine(workshop.poisonCentre, words.pages.handling),
    deference: words.pages.cautionLine,
    drawdownNote: words.pages.cards.drawdown,
    imprint: [
      ...(sheet.cautions.ufi === undefined ? [] : [`UFI: ${sheet.cautions.ufi}`]),
      workshop.name,
      ...(workshop.contact === undefined ? [] : [workshop.contact]),
      ...(workshop.demonstration === true ? [words.pages.demonstration] : []),
    ],
  };
}

function masstoneSwatch({ notations: { masstone } }: Sheet, words: Words): CardSwatch | undefined {
  const printed = masstone && comparableLab(masstone);
  const screen = comparableColour(masstone);
  if (masstone === undefined || printed === undefined || screen === undefined) return undefined;
  return {
    ...printed,
    screen,
    caption: words.pages.cards.masstone,
    standing: printed.approximate ? "estimated" : masstone.standing,
  };
}

/** One tint of a card: in which white, at which lightness. */
interface CardTint {
  readonly section: TintSection;
  readonly level: EqualLightness;
  readonly at: AtLightness;
}

/** Lightnesses in the order in which a card wants them: a middle grey tells most. */
const LEVELS: readonly EqualLightness[] = ["50", "70", "30"];

/** The first two whites at a lightness that both reach; of a single white, two of its lightnesses. */
function cardTints({ tints }: Sheet): CardTint[] {
  const at = (section: TintSection, level: EqualLightness): CardTint[] => {
    const tint = section.atL[level];
    return tint === undefined ? [] : [{ section, level, at: tint }];
  };
  const pairs = LEVELS.map((level) => tints.flatMap((section) => at(section, level)).slice(0, 2));
  const both = pairs.find((pair) => pair.length === 2);
  if (both !== undefined) return both;
  const [first] = pairs.find((pair) => pair.length === 1) ?? [];
  return first === undefined
    ? []
    : LEVELS.flatMap((level) => at(first.section, level))
        .slice(0, 2)
        .toSorted((one, other) => Number(other.level) - Number(one.level));
}

function tintSwatch(
  { section: { white }, level, at }: CardTint,
  words: Words,
): CardSwatch | undefined {
  // Without a spectrum only a*, b* at that lightness are known, under D65 and the 10 degree observer.
  const printed = printedLab(
    at.glossExcluded?.lab ??
      at.lab ?? {
        "D65/10": { L: { ...at.a, value: Number(level) } as AtLightness["a"], a: at.a, b: at.b },
      },
  );
  const screen = comparableTint(at);
  if (printed === undefined || screen === undefined) return undefined;
  const name = upperFirst(white.name);
  return {
    ...printed,
    screen,
    caption: words.pages.cards.tint(name, level),
    white: name,
    level: words.pages.cards.level(level),
    standing: printed.approximate ? "estimated" : "derived",
  };
}

/** Of the whites that are shown; of a white, that others are let down in it. */
function cardSentence(
  sheet: Sheet,
  tints: readonly CardTint[],
  { words, sheets }: PageContext,
): string {
  const text = words.pages.cards;
  const shown = new Set(tints.map(({ section }) => section));
  const told = words.cardSentence(
    (shown.size > 0 ? [...shown] : sheet.tints).map(({ white, sentence }) => ({
      white: white.name,
      ruling: sentence,
      ...(white.colourIndexName === undefined ? {} : { colourIndexName: white.colourIndexName }),
    })),
  );
  if (told !== undefined) return told;
  if (sheet.family === "extender") return text.extender;
  const letDown = coloursLetDownIn(sheet.slug, sheets);
  return letDown.length > 0 ? text.isWhite(letDown.length) : text.noTint;
}

function cardLabel({ cautions }: Sheet, words: Words, languages: readonly Language[]): CardLabel {
  const text = words.pages.handling;
  const labels = languages.map((language) => labelModel(cautions, language, words));
  const own = labelModel(cautions, words.language, words);
  const notices = [
    ...new Set(
      [...own.gaps, ...labels.flatMap(({ metals }) => metals)].map(({ text: said }) => said),
    ),
  ];
  return {
    signalWords: [
      ...new Set(
        labels.flatMap((label) => (label.signalWord === undefined ? [] : [label.signalWord])),
      ),
    ],
    pictograms: cautions.pictograms.map((code) => ({
      code: code as PictogramCode,
      name: words.pictograms[code] ?? code,
    })),
    statements: cardStatements(labels.map((label) => label.hazards)),
    precautions: cardStatements(labels.map(({ precautions }) => precautions)),
    ...(notices.length === 0 ? {} : { notice: notices.join(" ") }),
    ...(own.signalWord === undefined && own.hazards.length === 0
      ? {}
      : {
          basis:
            cautions.basis === "worked out"
              ? words.pages.cards.basisWorkedOut(cautions.frame, cautions.edition)
              : text.basisStated(
                  cautions.frame,
                  cautions.maker === undefined ? "" : words.date(cautions.maker.date),
                ),
        }),
  };
}

/** The same lines in each language; one that stands in English for want of its own text is not printed twice. */
function cardStatements(labels: readonly (readonly LabelLine[])[]): CardStatement[] {
  const [first = []] = labels;
  return first.map(({ code }, i) => {
    const lines = labels.flatMap((label) => label[i] ?? []);
    return {
      ...(code === undefined ? {} : { code }),
      texts: lines
        .filter(
          ({ language }, at) => lines.findIndex((other) => other.language === language) === at,
        )
        .map(({ language, text }) => ({ language, text })),
    };
  });
}

/** As the sheet offers it: without a price where a market of the workshop forbids one. */
function sizes({ offer }: Sheet, { words }: PageContext): CardContent["sizes"] {
  const { ml: mlText } = words.pages.cards;
  return (offer?.sizes ?? []).map(({ ml, price }) => ({
    size: mlText(decimalText(ml, Number.isInteger(ml) ? 0 : 1)),
    ...(price === undefined || offer?.currency === undefined
      ? {}
      : { price: words.pages.handling.offer.price(price, offer.currency) }),
  }));
}
