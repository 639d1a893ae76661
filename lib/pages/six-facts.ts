import { isKnown, type Known, type StandingKind } from "../quantities/figure.ts";
import { at } from "../quantities/at.ts";
import { ends, midpoint, type Quantity } from "../quantities/interval.ts";
import { standingView, standingWord } from "../present/standing-view.ts";
import { lightfastnessWord } from "../present/lightfastness-word.ts";
import { statedText } from "../present/stated-text.ts";
import { classText, valueText } from "../present/figure-text.ts";
import { upperFirst } from "../words/letter-case.ts";
import type { FactView, StandingView } from "../present/views.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import { evidenceOf } from "../sheet/figure-places.ts";
import { shownStrength } from "../collection/shown-strength.ts";
import type { Sheet } from "../sheet/sheet.ts";
import type { PageContext } from "./page-context.ts";
import { glazesThoughItHides, isMoreThanACoat } from "./hiding-film.ts";
import { lightMasstone } from "./light-masstone.ts";
import { NO_VALUE } from "../words/no-value.ts";
import { quantityText } from "../words/number-text.ts";
import type { PartsToParts } from "../words/pages/sheet-page.ts";
import type { Words } from "../words/words.ts";
import { wordedSheet } from "./worded-sheet.ts";
import { strengthReferenceName } from "./strength-reference.ts";

/** Whether it lasts, hides, dries, how strong it is, how much oil it takes, and whether it is safe: a word each. */
export function sixFacts(worded: SheetTexts, context: PageContext): SheetFact[] {
  const { sheet } = worded;
  return [
    lasts(worded, context),
    hides(worded, context),
    dries(worded, context),
    strength(worded, context),
    oil(worded, context),
    safety(sheet, context),
  ];
}

type FactKey = keyof Words["pages"]["sheetPage"]["facts"];

/** One of the six, told from the others by its key. */
interface SheetFact extends FactView {
  readonly key: FactKey;
}

interface Told {
  readonly key: FactKey;
  readonly href: string;
  readonly word: string | undefined;
  readonly detail?: string | undefined;
  readonly brief?: string | undefined;
  /** In place of a word: why there is none, where that is not for want of knowing, or what is known without it. */
  readonly without?: string | undefined;
  readonly standing: StandingView;
}

function fact(
  { words }: PageContext,
  { key, href, word, detail, brief, without, standing }: Told,
): SheetFact {
  const name = words.pages.sheetPage.facts[key];
  if (word === undefined)
    return {
      key,
      name,
      href,
      word: NO_VALUE,
      detail: without ?? words.pages.sheetPage.detail.unknown,
      standing: without === undefined ? standingWord("not stated", words) : standing,
    };
  return {
    key,
    name,
    href,
    word,
    ...(detail !== undefined && { detail }),
    ...(brief !== undefined && { brief }),
    standing,
  };
}

function lasts({ sheet: { permanence } }: SheetTexts, context: PageContext): SheetFact {
  const { words } = context;
  const { category, expectation, reasons } = permanence;
  const light = lightfastnessWord(permanence, words);
  const isByPigment = !isKnown(category) && reasons.every(({ rule }) => rule !== "weaker-in-tints");
  return fact(context, {
    key: "lasts",
    href: "#permanence",
    word: light && upperFirst(light.word),
    detail: isByPigment ? words.pages.sheetPage.detail.expected : light?.detail,
    brief: light?.brief,
    standing: standingView(isKnown(category) ? category : expectation, words),
  });
}

function hides(worded: SheetTexts, context: PageContext): SheetFact {
  const { optics } = worded.sheet;
  const { opacityClass, hidingFilmUm } = optics;
  const { asDrawn, detail } = context.words.pages.sheetPage;
  // What a drawdown of unknown thickness tells of hiding, where there is one.
  const drawn = optics.reasons.find(({ rule }) => Object.hasOwn(asDrawn, rule));
  if (!isKnown(opacityClass) && drawn !== undefined)
    return fact(context, {
      key: "hides",
      href: "#painting",
      word: asDrawn[drawn.rule],
      detail: detail.asDrawn,
      standing: standingWord("measured", context.words),
    });
  const film = statedText(worded, "optics.hidingFilmUm", context.words);
  return fact(context, {
    key: "hides",
    href: "#painting",
    // Films that told no class hide by their darkness.
    without: film && detail.byDarkness(detail.film(film)),
    word: isKnown(opacityClass)
      ? upperFirst(
          classText(opacityClass, (each) => context.words.terms[each] ?? each, context.words),
        )
      : undefined,
    detail: hidingDetail(worded, context),
    standing: standingView(isKnown(opacityClass) ? opacityClass : hidingFilmUm, context.words),
  });
}

/**
 * What film hides black and white: of every colour said alike. A dark paint is classed by how much it
 * scatters, since its contrast ratio says nothing of that, and may glaze although a thin film of it hides.
 */
function hidingDetail(worded: SheetTexts, context: PageContext): string | undefined {
  const { opacityClass, contrastRatio, scatteringPower } = worded.sheet.optics;
  const { detail } = context.words.pages.sheetPage;
  const film = statedText(worded, "optics.hidingFilmUm", context.words);
  const judgedBy = isKnown(opacityClass) ? evidenceOf(opacityClass) : [];
  const isDark = judgedBy.includes(scatteringPower);
  if (!isDark && !judgedBy.includes(contrastRatio)) return undefined;
  if (isMoreThanACoat(worded.sheet)) return detail.never;
  if (film !== undefined)
    return glazesThoughItHides(worded.sheet)
      ? detail.byDarkness(detail.film(film))
      : detail.film(film);
  if (isDark) return detail.byDarkness(detail.filmUnknown);
  const ratio = statedText(worded, "optics.contrastRatio", context.words);
  return ratio === undefined ? undefined : detail.contrast(ratio);
}

/** How fast it dries, as "Slowly"; where its days reach into several classes by their names, "Medium or slow". */
export function driesWord(dryingClass: Known<string>, words: Words): string {
  return dryingClass.reaches === undefined
    ? at(words.pages.sheetPage.dries, dryingClass.value)
    : upperFirst(classText(dryingClass, (each) => words.terms[each] ?? each, words));
}

function dries(worded: SheetTexts, context: PageContext): SheetFact {
  const { drying } = worded.sheet;
  const { detail } = context.words.pages.sheetPage;
  const days = statedText(worded, "drying.touchDryDays", context.words);
  const told =
    days === undefined
      ? undefined
      : detail.days(days, statedText(worded, "drying.throughDryDays", context.words));
  const tried = isKnown(drying.touchDryDays) && drying.touchDryDays.standing === "measured";
  const inDoubt = drying.reasons.some(({ rule }) => rule === "film-wet-beyond-record");
  return fact(context, {
    key: "dries",
    href: "#painting",
    word: isKnown(drying.class) ? driesWord(drying.class, context.words) : undefined,
    detail: told !== undefined && tried ? detail[inDoubt ? "trialInDoubt" : "trial"](told) : told,
    brief: days,
    standing: standingView(drying.touchDryDays, context.words),
  });
}

/** Beside the reference where it is of one kind with it; else the white that it takes, which is no strength, since a dark colour takes much of it; of a white, what it does to the reference. */
function strength(worded: SheetTexts, context: PageContext): SheetFact {
  const { sheet } = worded;
  const { words, records } = context;
  const { sheetPage } = words.pages;
  const { detail } = sheetPage;
  const reference = records.workshop.strengthReference;
  const name = strengthReferenceName(context);
  const href = "#whites";
  const whitening = whiteningParts(sheet.slug, context);
  if (whitening !== undefined)
    return fact(context, {
      key: "whitens",
      href,
      word: sheetPage.whitens(whitening.text),
      detail: sheetPage.whitensDetail(name, whitening.by),
      standing: standingView(whitening.figure, words),
    });
  const parts = partsOfWhite(worded, context);
  const own = shownStrength(sheet);
  const toMiddle = parts && detail.parts(parts.mix, parts.white, parts.by);
  if (own !== undefined) {
    const percent = statedText(worded, own.path, words) ?? "";
    const isReference = reference === sheet.slug;
    return fact(context, {
      key: "strength",
      href,
      word: isReference
        ? percent
        : own.by === "volume"
          ? sheetPage.strengthOf(percent, name)
          : sheetPage.strengthByWeight(percent, name),
      detail: isReference
        ? [detail.reference, toMiddle].filter((told) => told !== undefined).join(words.semicolon)
        : toMiddle,
      standing: standingView(own.figure, words),
    });
  }
  if (parts !== undefined)
    return fact(context, {
      key: "middleTone",
      href,
      word: sheetPage.mixedWithWhite(parts.mix),
      detail: sheetPage.withWhite(parts.white, parts.by),
      standing: standingView(parts.figure, words),
    });
  if (sheet.family === "extender")
    return fact(context, {
      key: "strength",
      href,
      word: sheetPage.noStrength,
      detail: detail.lengthens,
      standing: standingWord("estimated", words),
    });
  const light = lightMasstone(sheet);
  return fact(context, {
    key: "strength",
    href,
    word: undefined,
    without: light && detail.lighter,
    standing: standingView(light ?? sheet.optics.tintingStrength, words),
  });
}

/**
 * How much of it and of white make a middle tone, of every colour alike; of a white, how much of it
 * brings the strength reference there.
 */
export function middleToneFact(worded: SheetTexts, context: PageContext): FactView {
  const { sheet } = worded;
  const { words } = context;
  const { sheetPage, cards } = words.pages;
  const told = { key: "middleTone", href: "#whites" } as const;
  const whitening = whiteningParts(sheet.slug, context);
  if (whitening !== undefined)
    return fact(context, {
      ...told,
      word: cards.whitens(whitening.text, strengthReferenceName(context)),
      standing: standingView(whitening.figure, words),
    });
  const parts = partsOfWhite(worded, context);
  if (parts === undefined && sheet.family === "extender")
    return fact(context, {
      ...told,
      word: sheetPage.noStrength,
      brief: sheetPage.detail.lengthens,
      standing: standingWord("derived", words),
    });
  const light = lightMasstone(sheet);
  return fact(context, {
    ...told,
    word: parts && sheetPage.mixedWithWhite(parts.mix),
    without: light && sheetPage.detail.lighter,
    standing: standingView(parts?.figure ?? light ?? sheet.optics.tintingStrength, words),
  });
}

/** "31 % as strong as Lamp Black", where it is of one kind with the reference: by it two hues are not told apart. */
export function strengthBeside(worded: SheetTexts, context: PageContext): string | undefined {
  const { sheet } = worded;
  const { words, records } = context;
  const own = shownStrength(sheet);
  if (own === undefined || records.workshop.strengthReference === sheet.slug) return undefined;
  const percent = statedText(worded, own.path, words);
  return percent && words.pages.cards.asStrongAs(percent, strengthReferenceName(context));
}

interface Parts {
  /** Parts of the white to one of the colour. */
  readonly text: string;
  /** The same as it is mixed: of a colour that takes less white than that, so many parts of it to one. */
  readonly mix: PartsToParts;
  readonly white: string;
  readonly figure: Known<Quantity>;
  readonly by: "volume" | "weight";
}

/** White that a colour takes to a middle tone, in the first white that says. */
function partsOfWhite(worded: SheetTexts, { words }: PageContext): Parts | undefined {
  for (const { white } of worded.sheet.tints) {
    const parts = partsIn(white.slug, worded, words);
    if (parts !== undefined) return { ...parts, white: white.name };
  }
  return undefined;
}

/** How much of a white brings the strength reference to a middle grey. */
export function whiteningParts(white: string, context: PageContext): Parts | undefined {
  const reference = wordedSheet(context.records.workshop.strengthReference ?? "", context);
  const parts = reference === undefined ? undefined : partsIn(white, reference, context.words);
  return parts === undefined ? undefined : { ...parts, white };
}

/** As paint is squeezed out, by volume; by weight where a density is not known. */
function partsIn(
  white: string,
  worded: SheetTexts,
  words: PageContext["words"],
): Omit<Parts, "white"> | undefined {
  const parts = worded.sheet.tints.find((tint) => tint.white.slug === white)?.strengthParts;
  for (const [key, by] of [
    ["byVolume", "volume"],
    ["byMass", "weight"],
  ] as const) {
    const figure = parts?.[key];
    if (figure === undefined || !isKnown(figure)) continue;
    const { row } = worded.leaf(`tints.${white}.strengthParts.${key}`);
    const text = valueText(row, figure, words);
    const mix =
      midpoint(figure.value) < 1
        ? { colour: toOneOfWhite(figure, words), white: "1" }
        : { colour: "1", white: text };
    return { text, mix, figure, by };
  }
  return undefined;
}

/** Parts of a colour to one of white, in two digits as the parts of white are. */
function toOneOfWhite(
  { value }: Known<Quantity>,
  { numbers, about }: PageContext["words"],
): string {
  const [least, most] = ends(value);
  return quantityText(
    least === most ? 1 / least : [1 / most, 1 / least],
    (parts) => numbers.significant(parts, 2),
    about,
  );
}

function oil(worded: SheetTexts, context: PageContext): SheetFact {
  const { oilIndexClass } = worded.sheet.oil;
  const { oil: wordings, estimatedOil, detail } = context.words.pages.sheetPage;
  const grams = statedText(worded, "oil.oilIndexGPer100g", context.words);
  return fact(context, {
    key: "oil",
    href: "#painting",
    word: isKnown(oilIndexClass)
      ? upperFirst(classText(oilIndexClass, (each) => at(wordings, each), context.words))
      : grams === undefined
        ? undefined
        : estimatedOil,
    detail: grams === undefined ? undefined : detail.oil(grams),
    standing: standingView(worded.sheet.oil.oilIndexGPer100g, context.words),
  });
}

/** Whether rags with it may burn: of an oil that is not on record nobody can say that they keep cool. */
export function mayHoldDryingOil({ vehicle }: Pick<Sheet, "vehicle">): boolean {
  return vehicle === undefined || vehicle.oil !== undefined;
}

function safety(sheet: Sheet, context: PageContext): SheetFact {
  const { cautions } = sheet;
  const { facts, safe, detail } = context.words.pages.sheetPage;
  const isUnknown = cautions.unknown.length > 0;
  const needsCare =
    cautions.hazardStatements.length + cautions.supplemental.length > 0 ||
    cautions.notClassified.length > 0;
  const kind: StandingKind =
    cautions.basis === "worked out" ? "derived" : isUnknown ? "not stated" : "stated";
  return {
    key: "safety",
    name: facts.safety,
    href: "#handling",
    word:
      cautions.signalWord !== null
        ? safe[cautions.signalWord]
        : isUnknown
          ? safe.unknown
          : needsCare
            ? safe.care
            : safe.none,
    detail: isUnknown
      ? detail.unknownHazard(cautions.unknown)
      : cautions.signalWord !== null || needsCare
        ? detail.seeLabel
        : detail.noWarning({
            freedByAcid: cautions.studio.some(({ rule }) => rule === "no-acid"),
            ofDryingOil: mayHoldDryingOil(sheet),
          }),
    standing: standingWord(kind, context.words),
  };
}
