import { isPictogramCode } from "../hazard/classify/hazard-class.ts";
import type { LabelView, StatementView } from "../present/handling-views.ts";
import type { Flow, Piece } from "./layout-tree.ts";
import { shifted, type Tagged } from "./mark.ts";
import {
  bold,
  LEAST_PT,
  linkRun,
  list,
  paragraph,
  quiet,
  runningHead,
  sans,
  smallPt,
  subHeading,
  type PaperStyle,
} from "./paper-style.ts";
import { pictogramFigure } from "./pictogram-figure.ts";
import { setRuns, type Run } from "./set-runs.ts";

const GAP_MM = 2.5;

/** How a sheet of a size of text prints the elements. */
export function labelLook({ sizePt, isSpare }: Pick<PaperStyle, "sizePt" | "isSpare">): LabelLook {
  if (isSpare === true) return { sideMm: 10, sizePt, wordPt: sizePt + 3, leading: 1.2 };
  const text = Math.max(LEAST_PT + 0.5, sizePt);
  return { sideMm: 12, sizePt: text, wordPt: text + 3 };
}

/** That of a drier or of dry pigment: wherever it goes on over, its heading is said again, so that no warning is taken for the paint's. */
export function partLabelFlow(label: LabelView, style: PaperStyle): Flow[] {
  return [
    {
      kind: "group",
      tag: "Sect",
      runningHead: { piece: runningHead(label.heading, style), at: "column" },
      children: [...labelFlow(label, style), ...furtherLanguages(label, style)],
    },
  ];
}

/** A label in the page's language: its elements, its class, precautions. */
export function labelFlow(label: LabelView, style: PaperStyle): Flow[] {
  const { hazard, classification, precautionary, dataSheet } = label;
  const small = { sizePt: smallPt(style) };
  return [
    subHeading(label.heading, style),
    ...label.remarks.map((remark) => paragraph(sans(remark), style)),
    ...(hazard === undefined
      ? []
      : [labelElements(hazard, style, { ...labelLook(style), isRunIn: isAllRunIn(style) })]),
    ...(classification === undefined ? [] : [paragraph(sans(classification), style, small)]),
    ...(precautionary.length === 0 ? [] : precautions(label, style)),
    ...(dataSheet === undefined
      ? []
      : [paragraph([linkRun(dataSheet, style, "sans")], style, small)]),
  ];
}

function precautions(
  { precautionary, precautionaryHeading }: LabelView,
  style: PaperStyle,
): Flow[] {
  const isRunIn = style.isOneLanguage === true || isAllRunIn(style);
  if (!isRunIn)
    return [subHeading(precautionaryHeading, style), statementList(precautionary, style)];
  return style.isSpare === true
    ? [
        runInStatements(precautionary, style, {
          before: `${precautionaryHeading}${style.words.colon}`,
        }),
      ]
    : [subHeading(precautionaryHeading, style), runInStatements(precautionary, style)];
}

/** Whether even the statements of what is sold are run in. */
function isAllRunIn({ isDense = false }: PaperStyle): boolean {
  return isDense;
}

/** The same label in those of the workshop's other languages that have no sheet of their own. */
export function furtherLanguages({ languages }: LabelView, style: PaperStyle): Flow[] {
  if (style.isOneLanguage === true) return [];
  return (languages?.list ?? [])
    .filter(({ language }) => style.ownSheets?.includes(language) !== true)
    .flatMap(({ language, name, signalWord, statements }): Flow[] => [
      subHeading(
        signalWord === undefined ? name : `${name}${style.words.colon}${signalWord}`,
        style,
      ),
      runInStatements(statements, style, { language }),
    ]);
}

function statementList(
  statements: readonly StatementView[],
  style: PaperStyle,
  language?: string,
): Flow {
  return list(
    statements.map((statement) => {
      const own = statement.language ?? language;
      return {
        runs: statementRuns(statement),
        ...(own !== undefined && { language: own }),
      };
    }),
    style,
    { sizePt: smallPt(style), marker: "" },
  );
}

/** One behind another where room is scarce and all are in one language. */
function runInStatements(
  statements: readonly StatementView[],
  style: PaperStyle,
  { language, before = "" }: { readonly language?: string; readonly before?: string } = {},
): Flow {
  return style.isRunIn === true &&
    statements.every((one) => (one.language ?? language) === language)
    ? paragraph([...bold(before), ...statements.flatMap(sentenceRuns)], style, {
        sizePt: smallPt(style),
        beforeMm: 0.5,
        ...(language !== undefined && { language }),
      })
    : statementList(statements, style, language);
}

function statementRuns({ code, text, remark }: StatementView): Run[] {
  return [
    ...(code === undefined ? [] : bold(`${code} `)),
    ...sans(text),
    ...(remark === undefined ? [] : quiet(` (${remark})`)),
  ];
}

/** A statement closed as a sentence, to be followed by others. */
function sentenceRuns(statement: StatementView, i: number): Run[] {
  return [
    ...(i === 0 ? [] : sans(" ")),
    ...statementRuns(statement),
    ...(/[.!?]$/.test(statement.text) ? [] : sans(".")),
  ];
}

/** The elements of a label, whatever it is printed on. */
export interface LabelElements {
  readonly signalWord?: string;
  readonly pictograms: readonly { readonly code: string; readonly name: string }[];
  readonly statements: readonly StatementView[];
  /** What it rests on. */
  readonly basis?: string;
}

export interface LabelLook {
  /** Of a pictogram. */
  readonly sideMm: number;
  readonly sizePt: number;
  readonly wordPt: number;
  /** Between the lines, in sizes of the type, where not as usual. */
  readonly leading?: number;
  /** Word and statements in one paragraph. */
  readonly isRunIn?: boolean;
}

/** Least width for words beside the pictograms [mm]. */
const BESIDE_LEAST_MM = 15;

/**
 * Pictograms, signal word and statements, and what the label rests on: the words beside the
 * pictograms or below them, whichever is less high.
 */
export function labelElements(
  elements: LabelElements,
  { widthMm }: Pick<PaperStyle, "widthMm">,
  look: LabelLook,
): Piece {
  const pictograms = elements.pictograms.flatMap(({ code, name }) =>
    isPictogramCode(code) ? [{ code, name }] : [],
  );
  const stepMm = look.sideMm + 1;
  const wordsLeftMm = pictograms.length * stepMm + GAP_MM;
  const perRow = Math.min(pictograms.length, Math.max(1, Math.floor((widthMm + 1) / stepMm)));
  const wordsBelowMm = perRow === 0 ? 0 : Math.ceil(pictograms.length / perRow) * stepMm;
  const below = labelWords(elements, { xMm: 0, yMm: wordsBelowMm, widthMm }, look);
  const beside =
    pictograms.length === 0 || wordsLeftMm > widthMm - BESIDE_LEAST_MM
      ? undefined
      : labelWords(elements, { xMm: wordsLeftMm, yMm: 0, widthMm: widthMm - wordsLeftMm }, look);
  const besideMm = Math.max(beside?.bottomMm ?? Infinity, stepMm);
  const isBeside = besideMm <= below.bottomMm;
  const { tagged } = beside !== undefined && isBeside ? beside : below;
  return {
    kind: "piece",
    heightMm: isBeside ? besideMm : below.bottomMm,
    beforeMm: 1.5,
    content: {
      tag: "Div",
      children: [
        ...pictograms.map(({ code, name }, i) => {
          const column = isBeside ? i : i % perRow;
          const row = isBeside ? 0 : Math.floor(i / perRow);
          return pictogramFigure(code, name, {
            xMm: column * stepMm,
            yMm: row * stepMm,
            sideMm: look.sideMm,
          });
        }),
        ...tagged,
      ],
    },
  };
}

/** The words of the elements down from a place, and how far down these go [mm]. */
function labelWords(
  { signalWord, statements, basis }: LabelElements,
  { xMm, yMm, widthMm }: { readonly xMm: number; readonly yMm: number; readonly widthMm: number },
  { sizePt, wordPt, leading = 1.28, isRunIn = false }: LabelLook,
): { readonly tagged: readonly Tagged[]; readonly bottomMm: number } {
  let y = yMm;
  const line = (
    tag: "P" | "LBody",
    runs: readonly Run[],
    size: number,
    language?: string,
  ): Tagged => {
    const set = setRuns(runs, { widthMm, sizePt: size, leading });
    const marks = set.marks.map((mark) => shifted(mark, xMm, y));
    y += set.heightMm + 0.3;
    return { tag, marks, ...(language !== undefined && { language }) };
  };
  const hasWord = signalWord !== undefined && signalWord !== "";
  const word = hasWord && !isRunIn ? [line("P", bold(signalWord), wordPt)] : [];
  const own = isRunIn
    ? [
        line(
          "P",
          [
            ...(hasWord ? bold(`${signalWord}.`) : []),
            ...statements.flatMap((one, i) => sentenceRuns(one, i + (hasWord ? 1 : 0))),
          ],
          sizePt,
        ),
      ]
    : statements.length === 0
      ? []
      : [
          {
            tag: "L",
            children: statements.map((statement): Tagged => ({
              tag: "LI",
              children: [line("LBody", statementRuns(statement), sizePt, statement.language)],
            })),
          } as const,
        ];
  const rests =
    basis === undefined ? [] : [line("P", quiet(basis), Math.max(LEAST_PT, sizePt - 1))];
  return { tagged: [...word, ...own, ...rests], bottomMm: y };
}
