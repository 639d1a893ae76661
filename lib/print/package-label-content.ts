import type { PictogramCode } from "../hazard/classify/hazard-class.ts";
import { SMALL_PACKAGE_ML } from "../hazard/label/small-package.ts";
import type { PaintColour } from "../blocks/block.ts";
import { paintColour } from "../pages/screen-swatch.ts";
import { pigmentLine, vehicleLine } from "../pages/label-text.ts";
import type { PageContext } from "../pages/page-context.ts";
import { labelModel, type LabelModel } from "../present/label-model.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import { statementText } from "../present/statement-text.ts";
import { lotOnSale } from "../sheet/lots/lot-on-sale.ts";
import type { WorkshopRecord } from "../records/schema/workshop.ts";
import { given } from "../quantities/given.ts";
import type { Language } from "../quantities/languages.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { WORDS, wordsIn } from "../words/languages.ts";
import { typesetText, unbrokenNumber } from "../words/typeset-text.ts";
import { priceText } from "../present/price-text.ts";
import type { OwnWords } from "../words/words.ts";
import type { PackageSize } from "./package-size.ts";
import { leadingLanguage, sheetNamedIn } from "./sheet-in-language.ts";

/** What a label to stick says, worded and complete; how it is laid out is another matter. */
export interface PackageLabelContent {
  readonly slug: string;
  readonly name: string;
  readonly swatch?: PaintColour;
  /** Pigments, vehicle, lightfastness: a line each, in each language that words it otherwise. */
  readonly facts: readonly LabelLine[];
  /** "40 ml" */
  readonly contents: string;
  /** "Lot BB-2602", or a blank to write on. */
  readonly lot: string;
  readonly price?: string;
  readonly ean?: string;
  /** Of the sheet, for a QR code. */
  readonly address?: string;
  readonly pictograms: readonly { readonly code: PictogramCode; readonly name: string }[];
  /** Signal word and statements of one language together, as CLP, Article 32(3) has it. */
  readonly cautions: readonly LabelCautions[];
  /** Statements that a package of this size may leave out where the whole can be had in no other way. */
  readonly mayLeaveOut: readonly string[];
  /** Name, address, telephone, contact. */
  readonly supplier: string;
  readonly ufi?: string;
  /** That there is more inside, of a label that is folded out: one a language. */
  readonly inside: readonly LabelLine[];
  /** One a language; none of a paint whose rags keep cool. */
  readonly rags: readonly LabelLine[];
  /** One a language; none of a paint that is one. */
  readonly demonstration: readonly LabelLine[];
}

/** A line of ours, worded by no law. */
export interface LabelLine {
  readonly language: Language;
  readonly text: string;
}

export interface LabelCautions {
  readonly language: Language;
  readonly signalWord?: string;
  readonly statements: readonly { readonly code?: string; readonly text: string }[];
}

/** Why a colour gets no label: one line. */
export interface LabelRefusal {
  readonly refusal: string;
}

/**
 * What the label of a colour in a size says, or why there is none.
 * @param lotNumber of the lot that is filled; without it the one on sale.
 */
export function packageLabelContent(
  worded: SheetTexts,
  size: PackageSize,
  context: PageContext,
  lotNumber?: string,
): PackageLabelContent | LabelRefusal {
  const {
    words,
    records: { workshop, colours },
  } = context;
  const { cautions } = worded.sheet;
  const leading = leadingLanguage(size.languages, words.language);
  const sheet = sheetNamedIn(worded.sheet, leading, context.records);
  const labels = size.languages.map((language) => labelModel(cautions, language, words));
  const refusal = refusalOf(labels, worded.sheet, context);
  if (refusal !== undefined) return { refusal };
  const colour = colours.get(sheet.slug);
  const own = colour?.sizes.find(({ ml }) => ml === size.ml);
  const swatch = paintColour(sheet.notations.masstone);
  const price = priceOrCode(worded, size, context, WORDS[leading]);
  const lot = lotNumber ?? (colour && lotOnSale(colour, context.records));
  const { siteAddress } = workshop;
  const inEach = (text: (pages: OwnWords["pages"]) => string): LabelLine[] =>
    size.languages.map((language) => ({ language, text: text(WORDS[language].pages) }));
  return {
    slug: sheet.slug,
    name: typesetText(sheet.name),
    ...(swatch !== undefined && { swatch }),
    facts: size.languages
      .flatMap((language) => factLines(worded.sheet, language, context))
      .filter(isNew)
      .map((line) => ({ ...line, text: typesetText(line.text) })),
    contents: `${words.numbers.decimal(size.ml, Number.isInteger(size.ml) ? 0 : 1)}\u00a0ml`,
    lot: lotLine(size.languages, leading, lot),
    ...(price !== undefined && { price }),
    ...(own?.ean !== undefined && { ean: own.ean }),
    ...(siteAddress !== undefined && {
      address: new URL(`colours/${sheet.slug}/`, siteAddress.replace(/\/?$/, "/")).href,
    }),
    pictograms: cautions.pictograms.map((code) => ({
      code: code as PictogramCode,
      name: WORDS[leading].pictograms[code] ?? code,
    })),
    cautions: labels
      .map(cautionsOf)
      .filter(({ signalWord, statements }) => signalWord !== undefined || statements.length > 0),
    mayLeaveOut:
      size.ml <= SMALL_PACKAGE_ML ? (cautions.smallPackage?.values.statements ?? []) : [],
    supplier: supplierLine(workshop),
    ...(cautions.ufi !== undefined && { ufi: `UFI: ${cautions.ufi}` }),
    inside: inEach(({ packageLabels }) => packageLabels.foldOut.inside),
    rags:
      sheet.vehicle === undefined || sheet.vehicle.oil !== undefined
        ? inEach(({ cards }) => cards.ragShort)
        : [],
    demonstration: workshop.demonstration === true ? inEach((pages) => pages.demonstration) : [],
  };
}

/** Why a colour gets no label: it may not be sold, or a line is missing that the law asks for. */
function refusalOf(
  labels: readonly LabelModel[],
  { cautions }: Sheet,
  { words: { pages }, records: { workshop } }: PageContext,
): string | undefined {
  const said = pages.labelRemarks;
  const [gap] = labels.flatMap(({ gaps }) => gaps);
  if (cautions.unknown.length > 0 || gap !== undefined)
    return gap?.text ?? pages.paint.labelText.notForSale;
  const isClassified = labels.some(
    ({ signalWord, hazards }) => signalWord !== undefined || hazards.length > 0,
  );
  const [missing, ...others] = (["address", "telephone"] as const).filter(
    (key) => workshop[key] === undefined,
  );
  if (isClassified && missing !== undefined)
    return said.noSupplier[others.length > 0 ? "both" : missing];
  const untranslated = labels.find(({ hazards, precautions }) =>
    [...hazards, ...precautions].some(({ isMissing }) => isMissing),
  )?.language;
  return untranslated && said.noText(pages.handling.languageNames[untranslated] ?? untranslated);
}

/** Signal word and statements of one language. */
function cautionsOf({
  language,
  signalWord,
  substances,
  hazards,
  precautions,
  metals,
}: LabelModel): LabelCautions {
  const lines = given([substances, ...hazards, ...precautions, ...metals]);
  return {
    language,
    ...(signalWord !== undefined && { signalWord }),
    statements: lines.map(({ code, text }) => ({
      ...(code !== undefined && { code }),
      text: typesetText(text),
    })),
  };
}

function supplierLine({ name, address, telephone, contact }: WorkshopRecord): string {
  const lines = [name, address, telephone && unbrokenNumber(telephone), contact];
  return typesetText(lines.filter((line) => line !== undefined).join(", "));
}

/** "Lot / Charge: BB-2602", or a blank to write on. */
function lotLine(
  languages: readonly Language[],
  leading: Language,
  lot: string | undefined,
): string {
  const text = WORDS[leading].pages.paint.labelText;
  const nouns = [leading, ...languages].map(
    (language) => /^[^\s:]+/.exec(WORDS[language].pages.paint.labelText.lot)?.[0] ?? "",
  );
  return text.lot.replace(/^[^\s:]+/, [...new Set(nouns)].join(" / ")) + (lot ?? text.blank);
}

/** Pigments, vehicle and lightfastness in a language. */
function factLines(
  named: Sheet,
  language: Language,
  { records }: Pick<PageContext, "records">,
): LabelLine[] {
  const words = wordsIn(language, records.knowledge.said);
  const { labelText: text } = words.pages.paint;
  const sheet = sheetNamedIn(named, language, records);
  return [
    (sheet.pigments.length === 1 ? text.pigment : text.pigments) +
      sheet.pigments.map((pigment) => pigmentLine(unbroken(pigment))).join(", "),
    ...(sheet.vehicle === undefined ? [] : [vehicleLine(sheet, words)]),
    statementText(sheet.permanence.label, words),
  ].map((line) => ({ language, text: line }));
}

/** Two languages may word a line alike: once is enough. */
function isNew({ text }: LabelLine, i: number, lines: readonly LabelLine[]): boolean {
  return lines.findIndex((other) => other.text === text) === i;
}

/** A price only where the sheet has one: a tube is seen in every market. */
function priceOrCode(
  { sheet: { slug, offer } }: SheetTexts,
  size: PackageSize,
  { records }: PageContext,
  words: OwnWords,
): string | undefined {
  if (size.price === "none") return undefined;
  const own = records.colours.get(slug)?.sizes.find(({ ml }) => ml === size.ml);
  if (size.price === "code")
    return own?.code === undefined ? undefined : words.pages.packageLabels.code(own.code);
  const offered = offer?.sizes.find(({ ml }) => ml === size.ml);
  return offered && priceText(offered, offer?.currency, words)?.text;
}

/** A pigment whose Colour Index name is not parted at the end of a line. */
function unbroken(pigment: SheetTexts["sheet"]["pigments"][number]): typeof pigment {
  const { colourIndexName } = pigment;
  return colourIndexName === undefined
    ? pigment
    : { ...pigment, colourIndexName: colourIndexName.replaceAll(" ", "\u00a0") };
}
