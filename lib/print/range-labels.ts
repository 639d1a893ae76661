import { labelSizes, LETTERS_FROM } from "../hazard/label/label-sizes.ts";
import { madeStep } from "../kept/kept-steps.ts";
import type { PageContext } from "../pages/page-context.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import type { Words } from "../words/words.ts";
import { foldOutPages, type LaidLabel } from "./laid-label.ts";
import type { LabelRun } from "./labels-pdf.ts";
import {
  packageLabelContent,
  type LabelRefusal,
  type PackageLabelContent,
} from "./package-label-content.ts";
import { packageLabel, SYMBOL_PLACES, type SymbolPlace } from "./package-label-layout.ts";
import { largerTubes, type PackageSize } from "./package-size.ts";

/** Labels of a range with what is to be said of them, a line each. */
export interface RangeLabels {
  readonly runs: readonly LabelRun[];
  /** Of labels that are printed: smaller than asked for, something left out, no number to print. */
  readonly remarks: readonly string[];
  /** Of labels that are not. */
  readonly refusals: readonly string[];
  /** Of these, whose size has no room for what they say. */
  readonly noRoom: readonly NoRoom[];
}

/** A colour whose label a size has no room for. */
export interface NoRoom {
  /** Name of the size. */
  readonly size: string;
  readonly colour: string;
  /** Of how many pages a fold-out label is that holds it; 0 where none does. */
  readonly foldOutPages: number;
}

/**
 * The labels of some colours in some sizes: of each colour those of the sizes that it is put up in.
 * @param lotNumber of the lot that is filled, where it is not the one on sale.
 */
export function rangeLabels(
  sheets: readonly SheetTexts[],
  sizes: readonly PackageSize[],
  context: PageContext,
  lotNumber?: string,
): RangeLabels {
  const [ofSizes, remarks]: [string[], string[]] = [[], []];
  const refusals: string[] = [];
  const noRoom: NoRoom[] = [];
  const runs = sizes.map((size): LabelRun => {
    const { tried, symbolPlace } = triedInPlaces(sheets, size, context, lotNumber);
    if (tried.some(({ label }) => label.isClassified)) ofSizes.push(...sizeRemarks(size, context));
    const found = tried.flatMap(({ colour, who, label }): FoundLabel[] => {
      if ("refusal" in label) {
        refusals.push(context.words.pages.labelRemarks.refused(who, label.refusal));
        const { foldOutPages: pages } = label;
        if (pages !== undefined) noRoom.push({ size: size.name, colour, foldOutPages: pages });
        return [];
      }
      remarks.push(...label.remarks.map((line) => `${who}${context.words.colon}${line}`));
      return [label];
    });
    return { size, labels: lettersAlike(found, size, symbolPlace, context) };
  });
  return {
    runs: runs.filter(({ labels }) => labels.length > 0),
    remarks: [...ofSizes, ...remarks],
    refusals,
    noRoom,
  };
}

interface TriedLabels {
  readonly symbolPlace: SymbolPlace;
  readonly tried: readonly {
    readonly colour: string;
    readonly who: string;
    readonly label: FoundLabel | RefusedLabel;
  }[];
}

/** Labels with their symbols all in one place: in the second only where the first leaves more of them without room, or as many and more of them crowded. */
function triedInPlaces(
  sheets: readonly SheetTexts[],
  size: PackageSize,
  context: PageContext,
  lotNumber: string | undefined,
): TriedLabels {
  const triedIn = (symbolPlace: SymbolPlace): TriedLabels => ({
    symbolPlace,
    tried: sheets.flatMap((worded) => {
      const label = triedLabel(worded, size, symbolPlace, context, lotNumber);
      const colour = worded.sheet.name;
      return label === undefined ? [] : [{ colour, who: `${colour}, ${size.name}`, label }];
    }),
  });
  const [first, second] = SYMBOL_PLACES[size.kind];
  const inFirst = triedIn(first);
  if (size.symbol === "none" || inFirst.tried.every(({ label }) => faults(label, size) === 0))
    return inFirst;
  const inSecond = triedIn(second);
  const sum = ({ tried }: TriedLabels): number =>
    tried.reduce((all, { label }) => all + faults(label, size), 0);
  return sum(inSecond) < sum(inFirst) ? inSecond : inFirst;
}

/** What weighs more than all labels that are crowded, and what weighs more than one. */
const WITHOUT_ROOM = 1e6;
const SMALL_PICTOGRAMS = 2;

/** What is to be said against a label's layout: without room it is none; narrow columns and small pictograms are the lesser evil. */
function faults(label: FoundLabel | RefusedLabel, { ml }: PackageSize): number {
  if ("refusal" in label) return label.foldOutPages === undefined ? 0 : WITHOUT_ROOM;
  const { crowding = 0, pictogramMm = Infinity } = label.laid;
  return crowding + (pictogramMm < labelSizes(ml).pictogramMm ? SMALL_PICTOGRAMS : 0);
}

/** Why there is no label; with `foldOutPages`, because it finds no room. */
type RefusedLabel = LabelRefusal & OfClassified & Partial<Pick<NoRoom, "foldOutPages">>;

interface FoundLabel extends OfClassified {
  readonly content: PackageLabelContent;
  readonly laid: LaidLabel;
  readonly remarks: readonly string[];
}

interface OfClassified {
  /** Whether the law asks anything of its size: a label without hazards may be of any. */
  readonly isClassified: boolean;
}

const MODULES = ["lib/print/range-labels.ts", "lib/words/languages.ts"];

/** The label of a colour in a size, or why there is none; nothing of a size that it is not put up in. */
function triedLabel(
  worded: SheetTexts,
  size: PackageSize,
  symbolPlace: SymbolPlace,
  context: PageContext,
  lotNumber: string | undefined,
): FoundLabel | RefusedLabel | undefined {
  const { slug } = worded.sheet;
  const name = `labels of ${lotNumber ?? "the lot on sale"}, ${JSON.stringify(size)}, symbol ${symbolPlace}, told in ${context.words.language}`;
  return madeStep(context.steps, { modules: MODULES, name, of: slug }, () => {
    const offered = context.records.colours.get(slug)?.sizes ?? [];
    if (!offered.some(({ ml }) => ml === size.ml)) return undefined;
    const content = packageLabelContent(worded, size, context, lotNumber);
    if ("refusal" in content) return { ...content, isClassified: false };
    const isClassified = content.cautions.length > 0;
    const laid = packageLabel(content, size, { symbolPlace });
    return laid === undefined
      ? { ...tooSmall(content, size, context), isClassified }
      : { content, laid, isClassified, remarks: labelRemarks(laid, content, size, context) };
  });
}

/** Labels of one size in letters of one height: the roomiest that all of them hold. */
function lettersAlike(
  found: readonly FoundLabel[],
  size: PackageSize,
  symbolPlace: SymbolPlace,
  { kept }: Pick<PageContext, "kept">,
): LaidLabel[] {
  const mostXHeightMm = Math.min(...found.map(({ laid }) => laid.xHeightMm));
  return found.map(({ content, laid }) =>
    laid.xHeightMm > mostXHeightMm
      ? (kept(
          {
            modules: ["lib/print/package-label-layout.ts"],
            inputs: { content, size, mostXHeightMm, symbolPlace },
          },
          () => packageLabel(content, size, { mostXHeightMm, symbolPlace }),
        ) ?? laid)
      : laid,
  );
}

/** What does not fit, the smallest tube on which it would, and what the law has for the rest. */
function tooSmall(
  content: PackageLabelContent,
  size: PackageSize,
  { words }: Pick<PageContext, "words">,
): Required<Omit<RefusedLabel, "isClassified">> {
  const said = words.pages.labelRemarks;
  const { widthMm, heightMm, languages, xHeightMm } = size;
  const larger = largerTubes({ ...size, isReduced: false, isFoldOut: false }).find((tube) =>
    isHeld(content, tube),
  );
  const isHeldReduced =
    !size.isReduced && isHeld(content, { ...size, isReduced: true, isFoldOut: false });
  const foldedOut = size.isFoldOut
    ? undefined
    : packageLabel(content, { ...size, isReduced: false, isFoldOut: true });
  const refusal = [
    said.tooSmall(
      measures([widthMm, heightMm], words),
      words.listed(languages.map((language) => languageName(language, words))),
      words.numbers.plain(xHeightMm),
      larger === undefined
        ? said.noTube
        : said.largerTube(
            words.numbers.plain(larger.ml),
            measures([larger.widthMm, larger.heightMm], words),
          ),
    ),
    otherWays(content, size, said),
    ...(foldedOut === undefined ? [] : [said.wouldFoldOut(foldOutPages(foldedOut))]),
    ...(isHeldReduced ? [said.wouldReduce(content.mayLeaveOut.join(", "))] : []),
  ].join(". ");
  return { refusal, foldOutPages: foldedOut === undefined ? 0 : foldOutPages(foldedOut) };
}

/** Whether a label is, with its symbol in whichever place. */
function isHeld(content: PackageLabelContent, size: PackageSize): boolean {
  return SYMBOL_PLACES[size.kind].some(
    (symbolPlace) => packageLabel(content, size, { symbolPlace }) !== undefined,
  );
}

/** What may bear what finds no room. The law asks nothing of the size of a label without hazards. */
function otherWays(
  { cautions }: PackageLabelContent,
  { isFoldOut, paper }: PackageSize,
  said: Words["pages"]["labelRemarks"],
): string {
  if (cautions.length === 0) return said.noHazards;
  return isFoldOut ? said.elsewhereFolded(paper) : said.elsewhere;
}

function measures(sidesMm: readonly number[], { numbers }: Words): string {
  return sidesMm.map(numbers.plain).join(" x ");
}

/** A language by its name in the words' own. */
function languageName(language: string, words: Words): string {
  return new Intl.DisplayNames(words.language, { type: "language" }).of(language) ?? language;
}

function labelRemarks(
  laid: LaidLabel,
  { ean, address }: PackageLabelContent,
  { ml, symbol }: PackageSize,
  { words }: Pick<PageContext, "words">,
): string[] {
  const said = words.pages.labelRemarks;
  const { plain } = words.numbers;
  const { leftOut, pictogramMm } = laid;
  const wanted = labelSizes(ml).pictogramMm;
  const pages = foldOutPages(laid);
  return [
    ...(pages === 0 ? [] : [said.foldedOut(pages)]),
    ...(leftOut.length === 0 ? [] : [said.leftOut(leftOut.join(", "), plain(ml))]),
    ...(pictogramMm === undefined || pictogramMm >= wanted
      ? []
      : [said.smallPictograms(plain(pictogramMm), plain(wanted))]),
    ...(symbol === "ean" && ean === undefined ? [said.noEan] : []),
    ...(symbol === "qr" && address === undefined ? [said.noAddress] : []),
  ];
}

function sizeRemarks(
  { name, ml, widthMm, heightMm, xHeightMm }: PackageSize,
  { words }: Pick<PageContext, "words">,
): string[] {
  const said = words.pages.labelRemarks;
  const { labelMm, xHeightMm: least } = labelSizes(ml);
  const [short, long] = labelMm;
  return [
    ...(Math.min(widthMm, heightMm) < short || Math.max(widthMm, heightMm) < long
      ? [said.smallLabel(measures([widthMm, heightMm], words), measures(labelMm, words))]
      : []),
    ...(xHeightMm < least
      ? [
          said.smallLetters(
            words.numbers.plain(xHeightMm),
            words.numbers.plain(least),
            words.date(LETTERS_FROM),
          ),
        ]
      : []),
  ].map((line) => `${name}${words.colon}${line}`);
}
