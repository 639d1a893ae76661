import { cardSentence } from "../words/card-sentence.ts";
import { cautionLine } from "../pages/caution-line.ts";
import { coloursLetDownIn } from "../pages/colours-tinted-with.ts";
import { poisonCentreLine } from "../pages/safety-blocks.ts";
import { madeOf } from "../pages/made-of.ts";
import { wholeAddress, type PageContext } from "../pages/page-context.ts";
import { paintColour, tintColour } from "../pages/screen-swatch.ts";
import { offerViews } from "../pages/sheet-page.ts";
import { isMoreThanACoat } from "../pages/hiding-film.ts";
import { middleToneFact, sixFacts, strengthBeside } from "../pages/six-facts.ts";
import { labelModel, type LabelLine } from "../present/label-model.ts";
import { statementText } from "../present/statement-text.ts";
import { sheetTexts, type SheetTexts } from "../present/sheet-texts.ts";
import type { FactView } from "../present/views.ts";
import type { Language } from "../quantities/languages.ts";
import { lotOnSale } from "../sheet/lots/lot-on-sale.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { upperFirst } from "../words/letter-case.ts";
import { WORDS, wordsIn } from "../words/languages.ts";
import type { Words } from "../words/words.ts";
import { leadingLanguage, sheetNamedIn } from "./sheet-in-language.ts";
import { NO_VALUE } from "../words/no-value.ts";
import {
  CARD_FACTS,
  type CardContent,
  type CardFact,
  type CardLabel,
  type CardRags,
  type CardStatement,
  type CardTint,
} from "./card-content.ts";

/**
 * The card of a sheet, from what its page is made of: label and rags in each of its languages, all
 * else in the one that leads.
 * @param languages of the card, one at the least.
 */
export function cardOfSheet(
  worded: SheetTexts,
  context: PageContext,
  languages: readonly Language[],
): CardContent {
  const { words, records } = context;
  const leading = leadingLanguage(languages, words.language);
  if (leading === words.language) return cardInWords(worded, context, languages);
  const ledBy = wordsIn(leading, records.knowledge.said);
  const named = sheetNamedIn(worded.sheet, leading, records);
  return cardInWords(sheetTexts(named, ledBy), { ...context, words: ledBy }, languages);
}

function cardInWords(
  worded: SheetTexts,
  context: PageContext,
  languages: readonly Language[],
): CardContent {
  const { words, records } = context;
  const { workshop } = records;
  const { sheet } = worded;
  const colour = records.colours.get(sheet.slug);
  const lot = colour && lotOnSale(colour, records);
  const masstone = paintColour(sheet.notations.masstone);
  const [lasts, hides, dries] = sixFacts(worded, context);
  const facts = [lasts, hides, dries, middleToneFact(worded, context)];
  const address = wholeAddress(context, `colours/${sheet.slug}/`);
  return {
    slug: sheet.slug,
    name: sheet.name,
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
    ...(masstone !== undefined && { masstone }),
    tints: cardTints(sheet, words),
    sentence: sentenceOf(sheet, context),
    facts: Object.fromEntries(
      CARD_FACTS.map((name, i) => [name, cardFact(facts[i], i)]),
    ) as CardContent["facts"],
    ...(masstone !== undefined && isMoreThanACoat(sheet)
      ? { masstoneNote: words.pages.cards.thickLayer }
      : {}),
    label: cardLabel(sheet, words, languages),
    // Of an oil that is not on record nobody can say that its rags keep cool.
    ...(sheet.vehicle === undefined || sheet.vehicle.oil !== undefined
      ? { rags: cardRags(languages) }
      : {}),
    sizes: offerViews(sheet, words).filter(({ size }) => size !== undefined),
    ...(address !== undefined && { address }),
    ...layersOf(sheet, words),
    ...strengthOf(worded, context),
    poisonCentre: poisonCentreLine(workshop.poisonCentre, words),
    deference: cautionLine(context),
    drawdownNote: words.pages.cards.drawdown,
    ...(lot !== undefined && { lot: words.pages.cards.lot(lot) }),
    imprint: [
      ...(sheet.cautions.ufi === undefined ? [] : [`UFI: ${sheet.cautions.ufi}`]),
      workshop.name,
      ...(workshop.contact === undefined ? [] : [workshop.contact]),
      ...(workshop.demonstration === true ? [words.pages.demonstration] : []),
    ],
  };
}

function layersOf({ drying }: Sheet, words: Words): Pick<CardContent, "layers"> {
  const said = drying.layering.map((line) => statementText(line, words)).join(" ");
  if (said === "") return {};
  const name = words.pages.sheetPage.lines.layers;
  return { layers: `${name}${words.colon}${words.lowerFirst(said)}` };
}

function strengthOf(worded: SheetTexts, context: PageContext): Pick<CardContent, "strength"> {
  const { words } = context;
  const said = strengthBeside(worded, context);
  const name = words.pages.sheetPage.facts.strength;
  return said === undefined ? {} : { strength: `${name}${words.colon}${said}.` };
}

function cardRags(languages: readonly Language[]): CardRags {
  return {
    full: inEach(languages, ({ ragLine }) => ragLine),
    lead: inEach(languages, ({ cards }) => cards.ragLead),
    short: inEach(languages, ({ cards }) => cards.ragShort),
  };
}

function inEach(languages: readonly Language[], said: (pages: Words["pages"]) => string): string {
  return languages.map((language) => said(WORDS[language].pages)).join(" ");
}

/** A fact in a few words; that it is an estimate or a supplier's word is said, but where its words say so themselves, as of its lasting. */
function cardFact(fact: FactView | undefined, i: number): CardFact {
  if (fact === undefined) throw new RangeError("A card states a fact that its sheet has not");
  const { name, word, detail, brief, standing } = fact;
  if (word === NO_VALUE) return { name, text: upperFirst(detail ?? standing.word) };
  const isNews = i > 0 && (standing.kind === "estimated" || standing.kind === "stated");
  return {
    name,
    text: [word, ...(brief === undefined ? [] : [brief]), ...(isNews ? [standing.word] : [])].join(
      ", ",
    ),
  };
}

/** The tints at one lightness, at most three: a middle grey tells most; else the one that most whites reach. */
function cardTints({ tints }: Sheet, words: Words): CardTint[] {
  const { levels } = words.pages.sheetPage;
  const { white: short, tint: caption } = words.pages.cards;
  const reached = (["50", "70", "30"] as const).map((level) =>
    tints.flatMap(({ white, atL }): CardTint[] => {
      const colour = tintColour(level, atL[level]);
      return colour === undefined
        ? []
        : [{ colour, white: short(white.name), caption: caption(white.name, levels[level]) }];
    }),
  );
  const most = Math.max(...reached.map(({ length }) => length));
  return (reached.find(({ length }) => length === most) ?? []).slice(0, 3);
}

/** Of the whites that it was let down in; of a white, that others are let down in it. */
function sentenceOf(sheet: Sheet, context: PageContext): string {
  const { words } = context;
  const { cards: text, sheetPage } = words.pages;
  const told = cardSentence(
    sheet.tints.map(({ white, sentence }) => ({
      white: white.name,
      ruling: sentence,
      ...(white.colourIndexName !== undefined && { colourIndexName: white.colourIndexName }),
    })),
    words.tints,
  );
  if (told !== undefined) return told;
  if (sheet.family === "extender") return text.extender;
  const letDown = coloursLetDownIn(sheet.slug, context);
  return letDown.length > 0 ? text.isWhite(letDown.length) : sheetPage.notTried;
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
    overleaf: inEach(languages, ({ cards }) => cards.overleaf),
    pictograms: cautions.pictograms.map((code) => ({
      code,
      name: words.pictograms[code] ?? code,
    })),
    statements: cardStatements(labels.map((label) => label.hazards)),
    precautions: cardStatements(labels.map(({ precautions }) => precautions)),
    ...(notices.length > 0 && { notice: notices.join(" ") }),
    ...(own.signalWord === undefined && own.hazards.length === 0
      ? {}
      : {
          basis:
            cautions.basis === "worked out"
              ? words.pages.cards.basisWorkedOut(
                  words.factWords[cautions.frame] ?? cautions.frame,
                  words.factWords[cautions.edition] ?? cautions.edition,
                )
              : text.basisStated(
                  words.factWords[cautions.frame] ?? cautions.frame,
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
      ...(code !== undefined && { code }),
      texts: lines
        .filter(
          ({ language }, at) => lines.findIndex((other) => other.language === language) === at,
        )
        .map(({ language, text }) => ({ language, text })),
    };
  });
}
