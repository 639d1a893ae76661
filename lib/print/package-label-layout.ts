import { labelSizes } from "../hazard/label/label-sizes.ts";
import { at } from "../quantities/at.ts";
import { foldOutLabel } from "./fold-out-layout.ts";
import { flowed, lettersInLine, type FlowItem, type LineKeeping } from "./package-flow.ts";
import type { LabelFace, LaidLabel } from "./laid-label.ts";
import { cornerSymbol, labelSymbol, type LabelSymbol } from "./label-symbol.ts";
import type { LabelCautions, PackageLabelContent } from "./package-label-content.ts";
import type { PackageSize } from "./package-size.ts";
import {
  asProse,
  band,
  bandHeightMm,
  BETWEEN_MM,
  columnsOf,
  leading,
  LEAST_BAND_MM,
  nameItem,
  PARAGRAPH_MM,
  SAFE_MM,
  sizeOfXHeightPt,
  SUBJECT_MM,
} from "./package-label-parts.ts";
import type { Language } from "../quantities/languages.ts";

/** How a label is tried, from roomy to tight. */
interface Attempt extends LineKeeping {
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
  /** Of the paint, once round a tube or on the front of a jar [mm]. */
  readonly bandMm: number;
}

/** Where the symbol of a label stands, the place that is tried first: in a lower corner; of a jar at the right of its back, or of its front. */
export const SYMBOL_PLACES = {
  tube: ["right", "left"],
  jar: ["right", "front"],
} as const;

export type SymbolPlace = (typeof SYMBOL_PLACES)[PackageSize["kind"]][number];

/** What labels of a sheet have alike. */
export interface AlikeLabels {
  /** Letters no larger. */
  readonly mostXHeightMm?: number;
  readonly symbolPlace?: SymbolPlace;
}

/** Of a jar's front: more of it is paint; where room is scarce, less. */
const JAR_BAND_SHARES = [0.4, 0.28] as const;
/** Roomy letters against the least. */
const ROOMY = 1.2;
const FRONTS = [0.44, 0.5, 0.38, 0.32, 0.26] as const;
/** Letters in a line of statements: with fewer it is read slowly, and with half as many hardly. */
const EASY_LINE = 24;
/** What weighs how much against a layout: columns narrower than such a line, or than half of it, and less of the paint. */
const CROWDING = { narrow: 1, half: 6, lowBand: 1.2 };
/** Between those, and narrower: of what finds room in none of them, since no word is broken. */
const FURTHER_FRONTS = [0.47, 0.41, 0.35, 0.29, 0.23] as const;

/**
 * A label laid out: whole statements first, where they find room, then, of a size that is to be
 * reduced, without those that a small package may leave out, and of one that may be folded out,
 * on pages; roomy letters and pictograms first, then the least that the law allows. Nothing else
 * is ever cut.
 * @returns undefined where it does not fit.
 */
export function packageLabel(
  content: PackageLabelContent,
  size: PackageSize,
  { mostXHeightMm = Infinity, symbolPlace = SYMBOL_PLACES[size.kind][0] }: AlikeLabels = {},
): LaidLabel | undefined {
  const whole: readonly string[] = [];
  for (const leftOut of size.isReduced && content.mayLeaveOut.length > 0
    ? [whole, content.mayLeaveOut]
    : [whole]) {
    const cautions = content.cautions.map((one) => without(one, leftOut));
    for (const attempt of attempts(size)) {
      if (attempt.xHeightMm > mostXHeightMm) continue;
      const faces = (size.kind === "tube" ? tubeFaces : jarFaces)({ ...content, cautions }, size, {
        ...attempt,
        symbolPlace,
      });
      if (faces !== undefined)
        return {
          slug: content.slug,
          name: content.name,
          faces,
          leftOut,
          ...(content.pictograms.length > 0 && { pictogramMm: attempt.pictogramMm }),
          xHeightMm: attempt.xHeightMm,
          ...(cautions.length > 0 && { crowding: crowding(attempt, size) }),
        };
    }
  }
  return size.isFoldOut
    ? foldOutLabel(content, size, mostXHeightMm, (outside, attempt) =>
        jarFront(outside, size, { ...attempt, runIn: true, bandMm: at(bandsMm(size), 0) }),
      )
    : undefined;
}

function without(cautions: LabelCautions, leftOut: readonly string[]): LabelCautions {
  return {
    ...cautions,
    statements: cautions.statements.filter(
      ({ code }) => code === undefined || !leftOut.includes(code),
    ),
  };
}

/** Large pictograms before small ones; of each, what crowds the least, then roomy letters before the least. */
function attempts(size: PackageSize): Attempt[] {
  const { ml, xHeightMm } = size;
  const { pictogramMm, leastPictogramMm } = labelSizes(ml);
  const [bandMm, lowBandMm] = bandsMm(size);
  const least = { xHeightMm, namePt: 14, runIn: false, bandMm };
  const tight = { xHeightMm, namePt: 9, runIn: true };
  const types = [
    { ...least, pictogramMm, xHeightMm: ROOMY * xHeightMm, namePt: 15 },
    { ...least, pictogramMm },
    { ...tight, pictogramMm, bandMm: lowBandMm },
    { ...least, pictogramMm: leastPictogramMm },
    { ...tight, pictogramMm: leastPictogramMm, bandMm },
    { ...tight, pictogramMm: leastPictogramMm, bandMm: lowBandMm },
  ];
  const tries = (of: readonly (typeof types)[number][], fronts: readonly number[]): Attempt[] =>
    of.flatMap((type) =>
      [true, false].flatMap((areLinesKept) =>
        // In one column nothing goes on over.
        (areLinesKept ? [1, 2, 3] : [2, 3]).flatMap((columns) =>
          fronts.map((front) => ({ ...type, front, columns, areLinesKept })),
        ),
      ),
    );
  const all = [...tries(types, FRONTS), ...tries(types.slice(-1), FURTHER_FRONTS)].map(
    (attempt) => ({ attempt, crowding: crowding(attempt, size) }),
  );
  return all
    .toSorted(
      (one, other) =>
        other.attempt.pictogramMm - one.attempt.pictogramMm || one.crowding - other.crowding,
    )
    .map(({ attempt }) => attempt);
}

/** Of the paint, as usual and where room is scarce [mm]. */
function bandsMm({ kind, heightMm }: PackageSize): readonly [number, number] {
  const [share, lowShare] = JAR_BAND_SHARES;
  return kind === "jar"
    ? [share * heightMm, lowShare * heightMm]
    : [bandHeightMm(heightMm), LEAST_BAND_MM];
}

/** How hard a try makes it: 0 of columns whose lines are read with ease and a band as usual. */
function crowding({ columns, front, xHeightMm, bandMm }: Attempt, size: PackageSize): number {
  const { kind, widthMm, overlapMm } = size;
  const insideMm = widthMm - overlapMm - 2 * SAFE_MM;
  const areaMm = kind === "jar" ? insideMm : (1 - front) * insideMm - BETWEEN_MM;
  const columnMm = (areaMm - (columns - 1) * BETWEEN_MM) / columns;
  const letters = lettersInLine(columnMm, sizeOfXHeightPt(xHeightMm));
  const narrow =
    letters >= EASY_LINE ? 0 : letters >= EASY_LINE / 2 ? CROWDING.narrow : CROWDING.half;
  return narrow + (bandMm < bandsMm(size)[0] ? CROWDING.lowBand : 0);
}

/** Once round: the paint as a band at the top, name and facts at the left, what the law asks for beside them. */
function tubeFaces(
  content: PackageLabelContent,
  size: PackageSize,
  attempt: Attempt & Required<Pick<AlikeLabels, "symbolPlace">>,
): LabelFace[] | undefined {
  const { widthMm, heightMm, overlapMm } = size;
  const { bandMm } = attempt;
  const area = {
    xMm: SAFE_MM,
    topMm: bandMm + SAFE_MM,
    widthMm: widthMm - overlapMm - 2 * SAFE_MM,
    bottomMm: heightMm - SAFE_MM,
  };
  const frontMm = attempt.front * area.widthMm;
  const besideMm = frontMm + BETWEEN_MM;
  const side = attempt.symbolPlace === "left" ? "left" : "right";
  const corner = cornerSymbol(labelSymbol(content, size), side, area);
  const front = flowed(frontItems(content, attempt, frontMm), [
    corner.above({ ...area, widthMm: frontMm }),
  ]);
  if (front === undefined) return undefined;
  const cautions = flowed(
    cautionItems(content, attempt),
    columnsOf(
      { ...area, xMm: area.xMm + besideMm, widthMm: area.widthMm - besideMm },
      attempt.columns,
    ).map(corner.above),
    attempt,
  );
  if (cautions === undefined) return undefined;
  return [
    {
      blocks: [
        ...band(content, { rightMm: widthMm, heightMm: bandMm }),
        ...front,
        ...cautions,
        ...corner.blocks,
      ],
    },
  ];
}

/** The front with paint, name and facts; the back with what the law asks for. */
function jarFaces(
  content: PackageLabelContent,
  size: PackageSize,
  attempt: Attempt & Required<Pick<AlikeLabels, "symbolPlace">>,
): LabelFace[] | undefined {
  if (attempt.front !== FRONTS[0]) return undefined;
  const { widthMm, heightMm } = size;
  const area = {
    xMm: SAFE_MM,
    topMm: SAFE_MM,
    widthMm: widthMm - 2 * SAFE_MM,
    bottomMm: heightMm - SAFE_MM,
  };
  const symbol = labelSymbol(content, size);
  const isInFront = attempt.symbolPlace === "front";
  const corner = cornerSymbol(isInFront ? undefined : symbol, "right", area);
  const front = jarFront(content, size, attempt, isInFront ? symbol : undefined);
  if (front === undefined) return undefined;
  const back = flowed(
    cautionItems(content, attempt),
    columnsOf(area, attempt.columns).map(corner.above),
    attempt,
  );
  if (back === undefined) return undefined;
  return [front, { blocks: [...back, ...corner.blocks] }];
}

function jarFront(
  content: PackageLabelContent,
  { widthMm, heightMm }: PackageSize,
  attempt: Pick<Attempt, "xHeightMm" | "namePt" | "runIn" | "bandMm">,
  symbol?: LabelSymbol,
): LabelFace | undefined {
  const { bandMm } = attempt;
  const area = {
    xMm: SAFE_MM,
    topMm: bandMm + SAFE_MM,
    widthMm: widthMm - 2 * SAFE_MM,
    bottomMm: heightMm - SAFE_MM,
  };
  if (symbol !== undefined && area.topMm + symbol.heightMm > area.bottomMm) return undefined;
  const besideMm = area.widthMm - (symbol === undefined ? 0 : symbol.widthMm + BETWEEN_MM);
  const front = flowed(frontItems(content, attempt, besideMm), [{ ...area, widthMm: besideMm }]);
  const { blocks } = cornerSymbol(symbol, "right", area);
  return (
    front && {
      blocks: [...band(content, { rightMm: widthMm, heightMm: bandMm }), ...front, ...blocks],
    }
  );
}

function frontItems(
  { name, facts, contents, price, lot }: PackageLabelContent,
  { xHeightMm, namePt, runIn }: Pick<Attempt, "xHeightMm" | "namePt" | "runIn">,
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
    ...(language !== undefined && { language }),
  });
  return [
    nameItem(name, namePt, widthMm),
    ...facts.map(({ text, language }, i) =>
      item(text, i === 0 ? SUBJECT_MM : PARAGRAPH_MM, "sans", language),
    ),
    item(
      [
        contents,
        ...(price === undefined ? [] : [price]),
        ...(runIn ? [lot.replaceAll(" ", "\u00a0")] : []),
      ].join(" \u00b7 "),
      SUBJECT_MM,
      "sans bold",
    ),
    ...(runIn ? [] : [item(lot, PARAGRAPH_MM)]),
  ];
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
            leading({
              kind: "text" as const,
              text: signalWord ?? language.toUpperCase(),
              face: "sans bold" as const,
              sizePt,
              gapMm: SUBJECT_MM,
              language,
              whole: true,
            }),
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
              isProse: true,
            },
          ]),
    ]),
    ...[
      ...rags.map(asProse),
      ...(ufi === undefined ? [] : [{ text: ufi }]),
      { text: supplier },
      ...demonstration.map(asProse),
    ].map((line, i): FlowItem => ({
      kind: "text",
      ...line,
      face: "sans",
      sizePt,
      gapMm: i === 0 ? SUBJECT_MM : PARAGRAPH_MM,
    })),
  ];
}
