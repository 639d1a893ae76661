import { labelSizes, LETTERS_FROM } from "../hazard/label/label-sizes.ts";
import { madeStep } from "../kept/kept-steps.ts";
import type { PageContext } from "../pages/page-context.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import { foldOutPages, type LaidLabel } from "./laid-label.ts";
import type { LabelRun } from "./labels-pdf.ts";
import {
  packageLabelContent,
  type LabelRefusal,
  type PackageLabelContent,
} from "./package-label-content.ts";
import { packageLabel } from "./package-label-layout.ts";
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
    const tried = sheets.flatMap((worded) => {
      const label = triedLabel(worded, size, context, lotNumber);
      const colour = worded.sheet.name;
      return label === undefined ? [] : [{ colour, who: `${colour}, ${size.name}`, label }];
    });
    if (tried.some(({ label }) => label.isClassified)) ofSizes.push(...sizeRemarks(size));
    const found = tried.flatMap(({ colour, who, label }): FoundLabel[] => {
      if ("refusal" in label) {
        refusals.push(`${who}: no label. ${label.refusal}`);
        const { foldOutPages: pages } = label;
        if (pages !== undefined) noRoom.push({ size: size.name, colour, foldOutPages: pages });
        return [];
      }
      remarks.push(...label.remarks.map((line) => `${who}: ${line}`));
      return [label];
    });
    return { size, labels: lettersAlike(found, size, context) };
  });
  return {
    runs: runs.filter(({ labels }) => labels.length > 0),
    remarks: [...ofSizes, ...remarks],
    refusals,
    noRoom,
  };
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
  context: PageContext,
  lotNumber: string | undefined,
): FoundLabel | RefusedLabel | undefined {
  const { slug } = worded.sheet;
  const name = `labels of ${lotNumber ?? "the lot on sale"}, ${JSON.stringify(size)}`;
  return madeStep(context.steps, { modules: MODULES, name, of: slug }, () => {
    const offered = context.records.colours.get(slug)?.sizes ?? [];
    if (!offered.some(({ ml }) => ml === size.ml)) return undefined;
    const content = packageLabelContent(worded, size, context, lotNumber);
    if ("refusal" in content) return { ...content, isClassified: false };
    const isClassified = content.cautions.length > 0;
    const laid = packageLabel(content, size);
    return laid === undefined
      ? { ...tooSmall(content, size), isClassified }
      : { content, laid, isClassified, remarks: labelRemarks(laid, content, size) };
  });
}

/** Labels of one size in letters of one height: the roomiest that all of them hold. */
function lettersAlike(
  found: readonly FoundLabel[],
  size: PackageSize,
  { kept }: Pick<PageContext, "kept">,
): LaidLabel[] {
  const mostXHeightMm = Math.min(...found.map(({ laid }) => laid.xHeightMm));
  return found.map(({ content, laid }) =>
    laid.xHeightMm > mostXHeightMm
      ? (kept(
          {
            modules: ["lib/print/package-label-layout.ts"],
            inputs: { content, size, mostXHeightMm },
          },
          () => packageLabel(content, size, mostXHeightMm),
        ) ?? laid)
      : laid,
  );
}

/** What does not fit, the smallest tube on which it would, and what the law has for the rest. */
function tooSmall(
  content: PackageLabelContent,
  size: PackageSize,
): Required<Omit<RefusedLabel, "isClassified">> {
  const { widthMm, heightMm, languages, xHeightMm } = size;
  const larger = largerTubes({ ...size, isReduced: false, isFoldOut: false }).find(
    (tube) => packageLabel(content, tube) !== undefined,
  );
  const isHeldReduced =
    !size.isReduced &&
    packageLabel(content, { ...size, isReduced: true, isFoldOut: false }) !== undefined;
  const foldedOut = size.isFoldOut
    ? undefined
    : packageLabel(content, { ...size, isReduced: false, isFoldOut: true });
  const refusal = [
    `${widthMm} x ${heightMm} mm are too small for it in ${IN_ENGLISH.list.format(languages.map(languageName))} with letters of ${xHeightMm} mm: ${
      larger === undefined
        ? "nor does any tube to 200 ml"
        : `the smallest tube that would hold it is one of ${larger.ml} ml, ${larger.widthMm} x ${larger.heightMm} mm`
    }`,
    otherWays(content, size),
    ...(foldedOut === undefined
      ? []
      : [
          `With foldOut: true of this label in workshop.yaml it is printed as a fold-out label of ${foldOutPages(foldedOut)} pages`,
        ]),
    ...(isHeldReduced
      ? [
          `Where none of these can be had, give this label reduced: true in workshop.yaml: it is then printed without ${content.mayLeaveOut.join(", ")} (1.5.2)`,
        ]
      : []),
  ].join(". ");
  return { refusal, foldOutPages: foldedOut === undefined ? 0 : foldOutPages(foldedOut) };
}

/** What may bear what finds no room. The law asks nothing of the size of a label without hazards. */
function otherWays({ cautions }: PackageLabelContent, { isFoldOut, paper }: PackageSize): string {
  if (cautions.length === 0)
    return "It bears no hazards, so that no law sets its letters: fewer languages of this label or a lower xHeightMm may find room";
  return isFoldOut
    ? `A fold-out label on ${paper} does not hold it either; a tie-on tag or a box may bear the whole instead (CLP, Annex I, 1.5.1)`
    : "A fold-out label, a tie-on tag or a box may bear the whole instead (CLP, Annex I, 1.5.1)";
}

const IN_ENGLISH = {
  names: new Intl.DisplayNames("en", { type: "language" }),
  list: new Intl.ListFormat("en-GB"),
};

function languageName(language: string): string {
  return IN_ENGLISH.names.of(language) ?? language;
}

function labelRemarks(
  laid: LaidLabel,
  { ean, address }: PackageLabelContent,
  { ml, symbol }: PackageSize,
): string[] {
  const { leftOut, pictogramMm } = laid;
  const wanted = labelSizes(ml).pictogramMm;
  const pages = foldOutPages(laid);
  return [
    ...(pages === 0
      ? []
      : [
          `as a fold-out label of ${pages} pages (CLP, Annex I, 1.2.1.6): cut at the marks, fold in turn, the first fold backwards, stick down the last page alone and hold the front page with a strip that can be lifted; whether the authority of the country of sale wants the whole surface used first is to be asked there`,
        ]),
    ...(leftOut.length === 0
      ? []
      : [
          `without ${leftOut.join(", ")}, which a package of ${ml} ml may leave out where no fold-out label, tie-on tag or box can bear the whole (CLP, Article 29 and Annex I, 1.5.2)`,
        ]),
    ...(pictogramMm === undefined || pictogramMm >= wanted
      ? []
      : [`pictograms of ${pictogramMm} mm, as ${wanted} mm found no room`]),
    ...(symbol === "ean" && ean === undefined
      ? ["no EAN is recorded of this size, so its label has none"]
      : []),
    ...(symbol === "qr" && address === undefined
      ? ["workshop.yaml gives no siteAddress, so the label has no QR code"]
      : []),
  ];
}

function sizeRemarks({ name, ml, widthMm, heightMm, xHeightMm }: PackageSize): string[] {
  const {
    labelMm: [short, long],
    xHeightMm: least,
  } = labelSizes(ml);
  return [
    ...(Math.min(widthMm, heightMm) < short || Math.max(widthMm, heightMm) < long
      ? [
          `${name}: ${widthMm} x ${heightMm} mm is less than the ${short} x ${long} mm that the label of a classified paint has where that is possible (CLP, Annex I, 1.2.1.4)`,
        ]
      : []),
    ...(xHeightMm < least
      ? [
          `${name}: letters of ${xHeightMm} mm are below the ${least} mm that Regulation (EU) 2024/2865 asks for from ${LETTERS_FROM}`,
        ]
      : []),
  ];
}
