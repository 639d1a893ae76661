import { labelSizes } from "../hazard/label/label-sizes.ts";
import { BLEED_MM } from "./card-plan.ts";
import { flowed, type Column, type FlowItem } from "./package-flow.ts";
import { labelSymbol, type LabelSymbol } from "./label-symbol.ts";
import { BLACK, inkOf, MM_PER_PT, type Tagged } from "./mark.ts";
import type { LabelCautions, PackageLabelContent } from "./package-label-content.ts";
import type { PackageSize } from "./package-size.ts";
import type { Language } from "../records/schema/terms.ts";
import { SANS_X_HEIGHT } from "./print-font.ts";
import { measureText } from "./print-document.ts";
import { setRuns, sizesDown } from "./set-runs.ts";

/** One piece of label, at real size. */
export interface LabelFace {
  readonly blocks: readonly Tagged[];
}

export interface LaidLabel {
  readonly slug: string;
  readonly name: string;
  /** Of a tube one; of a jar its front and its back. */
  readonly faces: readonly LabelFace[];
  /** Statements that are not on it, as its size allows. */
  readonly leftOut: readonly string[];
  /** Side of the red frames [mm]; absent without pictograms. */
  readonly pictogramMm?: number;
  readonly xHeightMm: number;
}

/** How a label is tried, from roomy to tight. */
interface Attempt {
  readonly pictogramMm: number;
  readonly xHeightMm: number;
  /** Largest name [pt]. */
  readonly namePt: number;
  /** Contents, price and lot in one line. */
  readonly runIn: boolean;
  /** Share of the width that name and facts take, of a label that has all on one side. */
  readonly front: number;
  /** Columns of statements. */
  readonly columns: number;
  /** Where the symbol stands, of a label that has all on one side. */
  readonly place: (typeof PLACES)[number];
  /** Whether no word may be broken. */
  readonly areWordsWhole: boolean;
}

/** From the edge to anything that may not be cut, and between columns [mm]. */
const SAFE_MM = 2;
const BETWEEN_MM = 2.4;
/** Between two paragraphs, a little more than between two lines [mm]. */
const PARAGRAPH_MM = 1.1;
/** Of the paint's band, as a share of the height, and its reach [mm]. */
const BAND = { share: 0.17, least: 6, most: 14 };
/** Of a jar's front: more of it is paint. */
const JAR_BAND_SHARE = 0.4;
/** Roomy letters against the least. */
const ROOMY = 1.2;
const PLACES = ["under the statements", "under the facts", "between"] as const;
const FRONTS = [0.44, 0.5, 0.38, 0.32, 0.26] as const;

/**
 * A label laid out: whole statements first, where they find room, then, of a size that is to be
 * reduced, without those that a small package may leave out; roomy letters and pictograms first,
 * then the least that the law allows. Nothing else is ever cut.
 * @param mostXHeightMm letters no larger, so that the labels of a sheet are alike.
 * @returns undefined where it does not fit.
 */
export function packageLabel(
  content: PackageLabelContent,
  size: PackageSize,
  mostXHeightMm = Infinity,
): LaidLabel | undefined {
  const whole: readonly string[] = [];
  for (const leftOut of size.isReduced && content.mayLeaveOut.length > 0
    ? [whole, content.mayLeaveOut]
    : [whole]) {
    const cautions = content.cautions.map((one) => without(one, leftOut));
    for (const attempt of attempts(size)) {
      if (attempt.xHeightMm > mostXHeightMm) continue;
      const faces = (size.kind === "tube" ? tubeFaces : jarFaces)(
        { ...content, cautions },
        size,
        attempt,
      );
      if (faces !== undefined)
        return {
          slug: content.slug,
          name: content.name,
          faces,
          leftOut,
          ...(content.pictograms.length === 0 ? {} : { pictogramMm: attempt.pictogramMm }),
          xHeightMm: attempt.xHeightMm,
        };
    }
  }
  return undefined;
}

function without(cautions: LabelCautions, leftOut: readonly string[]): LabelCautions {
  return {
    ...cautions,
    statements: cautions.statements.filter(
      ({ code }) => code === undefined || !leftOut.includes(code),
    ),
  };
}

function attempts({ ml, xHeightMm }: PackageSize): Attempt[] {
  const { pictogramMm, leastPictogramMm } = labelSizes(ml);
  const types = [
    { pictogramMm, xHeightMm: ROOMY * xHeightMm, namePt: 15, runIn: false },
    { pictogramMm, xHeightMm, namePt: 14, runIn: false },
    { pictogramMm: leastPictogramMm, xHeightMm, namePt: 14, runIn: false },
    { pictogramMm: leastPictogramMm, xHeightMm, namePt: 9, runIn: true },
  ];
  // Smaller letters come before a broken word, smaller pictograms do not.
  return [types.slice(0, 2), types.slice(2)].flatMap((alike) =>
    [true, false].flatMap((areWordsWhole) =>
      alike.flatMap((type) =>
        [1, 2, 3].flatMap((columns) =>
          FRONTS.flatMap((front) =>
            PLACES.map((place) => ({ ...type, front, columns, place, areWordsWhole })),
          ),
        ),
      ),
    ),
  );
}

/** Once round: the paint as a band at the top, name and facts at the left, what the law asks for beside them. */
function tubeFaces(
  content: PackageLabelContent,
  size: PackageSize,
  attempt: Attempt,
): LabelFace[] | undefined {
  const { widthMm, heightMm, overlapMm } = size;
  const bandMm = Math.min(BAND.most, Math.max(BAND.least, BAND.share * heightMm));
  const [topMm, bottomMm] = [bandMm + SAFE_MM, heightMm - SAFE_MM];
  const insideMm = widthMm - overlapMm - 2 * SAFE_MM;
  const frontMm = attempt.front * insideMm;
  const symbol = labelSymbol(content, size);
  const { place } = attempt;
  const betweenMm = place === "between" && symbol !== undefined ? symbol.widthMm + BETWEEN_MM : 0;
  const takenMm = symbol === undefined ? 0 : symbol.heightMm + SAFE_MM / 2;
  const cautionsFrom = SAFE_MM + frontMm + BETWEEN_MM + betweenMm;
  const columns = columnsOf(
    { xMm: cautionsFrom, topMm, widthMm: SAFE_MM + insideMm - cautionsFrom, bottomMm },
    attempt.columns,
  );
  const last = columns.at(-1);
  const symbolMm = {
    "under the facts": frontMm,
    "under the statements": last?.widthMm ?? 0,
    between: bottomMm - topMm < (symbol?.heightMm ?? 0) ? 0 : Infinity,
  }[place];
  if (last === undefined || (symbol !== undefined && symbol.widthMm > symbolMm)) return undefined;
  const facts = frontItems(content, attempt, frontMm);
  const law = cautionItems(content, attempt);
  if (attempt.areWordsWhole && (widestWordMm(facts) > frontMm || widestWordMm(law) > last.widthMm))
    return undefined;
  const front = flowed(facts, [
    {
      xMm: SAFE_MM,
      topMm,
      widthMm: frontMm,
      bottomMm: bottomMm - (place === "under the facts" ? takenMm : 0),
    },
  ]);
  const cautions = flowed(
    law,
    columns.map((column) =>
      column === last && place === "under the statements"
        ? { ...column, bottomMm: bottomMm - takenMm }
        : column,
    ),
  );
  if (front === undefined || cautions === undefined) return undefined;
  const symbolAt = {
    "under the facts": SAFE_MM,
    "under the statements": last.xMm,
    between: SAFE_MM + frontMm + BETWEEN_MM,
  }[place];
  return [
    {
      blocks: [
        ...band(content, widthMm, bandMm),
        ...front,
        ...cautions,
        ...symbolBlocks(symbol, symbolAt, bottomMm),
      ],
    },
  ];
}

/** The front with paint, name and facts; the back with what the law asks for. */
function jarFaces(
  content: PackageLabelContent,
  size: PackageSize,
  attempt: Attempt,
): LabelFace[] | undefined {
  if (attempt.front !== FRONTS[0] || attempt.place !== PLACES[0]) return undefined;
  const { widthMm, heightMm } = size;
  const insideMm = widthMm - 2 * SAFE_MM;
  const bandMm = JAR_BAND_SHARE * heightMm;
  const bottomMm = heightMm - SAFE_MM;
  const symbol = labelSymbol(content, size);
  const front = flowed(frontItems(content, attempt, insideMm), [
    { xMm: SAFE_MM, topMm: bandMm + SAFE_MM, widthMm: insideMm, bottomMm },
  ]);
  const columns = columnsOf(
    { xMm: SAFE_MM, topMm: SAFE_MM, widthMm: insideMm, bottomMm },
    attempt.columns,
  );
  const last = columns.at(-1);
  if (symbol !== undefined && (last === undefined || symbol.widthMm > last.widthMm))
    return undefined;
  const back = flowed(
    cautionItems(content, attempt),
    columns.map((column) =>
      column === last && symbol !== undefined
        ? { ...column, bottomMm: bottomMm - symbol.heightMm - SAFE_MM / 2 }
        : column,
    ),
  );
  if (front === undefined || back === undefined) return undefined;
  return [
    { blocks: [...band(content, widthMm, bandMm), ...front] },
    {
      blocks: [
        ...back,
        ...symbolBlocks(
          symbol,
          last === undefined || symbol === undefined ? 0 : last.xMm + last.widthMm - symbol.widthMm,
          bottomMm,
        ),
      ],
    },
  ];
}

function symbolBlocks(
  symbol: LabelSymbol | undefined,
  xMm: number,
  bottomMm: number,
): readonly Tagged[] {
  return symbol?.blocksAt(xMm, bottomMm - symbol.heightMm) ?? [];
}

/** Paint over the edge, so that no white shows where the knife strays; a white's own edge is a hairline. */
function band({ swatch, name }: PackageLabelContent, widthMm: number, bandMm: number): Tagged[] {
  if (swatch === undefined) return [];
  return [
    {
      tag: "Figure",
      alt: name,
      marks: [
        {
          kind: "box",
          xMm: -BLEED_MM,
          yMm: -BLEED_MM,
          widthMm: widthMm + 2 * BLEED_MM,
          heightMm: bandMm + BLEED_MM,
          ink: inkOf(swatch),
        },
        {
          kind: "line",
          fromMm: [-BLEED_MM, bandMm],
          toMm: [widthMm + BLEED_MM, bandMm],
          widthPt: 0.25,
          ink: BLACK,
        },
      ],
    },
  ];
}

/** The longest word that is not parted at a blank or a hyphen [mm]. */
function widestWordMm(items: readonly FlowItem[]): number {
  return Math.max(
    0,
    ...items.flatMap((item) =>
      item.kind === "text"
        ? item.text.split(/[ -]/).map((word) => measureText(word, item.face, item.sizePt))
        : [],
    ),
  );
}

function columnsOf(area: Column, count: number): Column[] {
  const widthMm = (area.widthMm - (count - 1) * BETWEEN_MM) / count;
  return Array.from({ length: count }, (_, i) => ({
    ...area,
    xMm: area.xMm + i * (widthMm + BETWEEN_MM),
    widthMm,
  }));
}

/** Size of letters [pt] whose lower-case x is so high, never less. */
export function sizeOfXHeightPt(xHeightMm: number): number {
  return Math.ceil((xHeightMm / SANS_X_HEIGHT / MM_PER_PT) * 20 - 1e-9) / 20;
}

function frontItems(
  { name, facts, contents, price, lot }: PackageLabelContent,
  { xHeightMm, namePt, runIn }: Attempt,
  widthMm: number,
): FlowItem[] {
  const sizePt = sizeOfXHeightPt(xHeightMm);
  const item = (
    text: string,
    gapMm: number,
    face: "sans" | "sans bold" = "sans",
    language?: Language,
  ): FlowItem => ({
    kind: "text",
    text,
    face,
    sizePt,
    gapMm,
    ...(language === undefined ? {} : { language }),
  });
  return [
    {
      kind: "text",
      tag: "H2",
      text: name,
      face: "sans bold",
      sizePt: nameSizePt(name, namePt, widthMm),
      gapMm: 0,
    },
    ...facts.map(({ text, language }, i) =>
      item(text, i === 0 ? 1.8 : PARAGRAPH_MM, "sans", language),
    ),
    item(
      [
        contents,
        ...(price === undefined ? [] : [price]),
        ...(runIn ? [lot.replaceAll(" ", "\u00a0")] : []),
      ].join(" \u00b7 "),
      1.8,
      "sans bold",
    ),
    ...(runIn ? [] : [item(lot, PARAGRAPH_MM)]),
  ];
}

/** As large as no word of it is broken and it takes two lines; a long name three. A name is a label element too: one face, without serifs. */
function nameSizePt(name: string, mostPt: number, widthMm: number): number {
  const sizes = sizesDown(mostPt, 8);
  const words = name.split(/[ -]/);
  const holds = (most: number) =>
    sizes.find(
      (sizePt) =>
        words.every((word) => measureText(word, "sans bold", sizePt) <= widthMm) &&
        setRuns([{ text: name, face: "sans bold" }], { widthMm, sizePt }).lines.length <= most,
    );
  return holds(2) ?? holds(3) ?? 8;
}

/** Pictograms, signal word and statements together, then who answers for them. */
function cautionItems(
  { pictograms, cautions, supplier, ufi, rags, demonstration }: PackageLabelContent,
  { pictogramMm, xHeightMm }: Attempt,
): FlowItem[] {
  const sizePt = sizeOfXHeightPt(xHeightMm);
  const several = cautions.length > 1;
  return [
    ...(pictograms.length === 0
      ? []
      : [{ kind: "pictograms" as const, pictograms, sideMm: pictogramMm, gapMm: 0 }]),
    ...cautions.flatMap(({ language, signalWord, statements }): FlowItem[] => [
      ...(signalWord === undefined && !several
        ? []
        : [
            {
              kind: "text" as const,
              text: signalWord ?? language.toUpperCase(),
              face: "sans bold" as const,
              sizePt,
              gapMm: 1.8,
              language,
              whole: true,
            },
          ]),
      ...(statements.length === 0
        ? []
        : [
            {
              kind: "text" as const,
              text: statements.map(({ text }) => text).join(" "),
              face: "sans" as const,
              sizePt,
              gapMm: PARAGRAPH_MM,
              language,
            },
          ]),
    ]),
    ...[
      ...rags,
      ...(ufi === undefined ? [] : [{ text: ufi }]),
      { text: supplier },
      ...demonstration,
    ].map((line, i): FlowItem => ({
      kind: "text",
      ...line,
      face: "sans",
      sizePt,
      gapMm: i === 0 ? 1.8 : PARAGRAPH_MM,
    })),
  ];
}
