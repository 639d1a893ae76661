import { isPictogramCode } from "../hazard/classify/hazard-class.ts";
import type { HazardView, LabelView, StatementView } from "../present/handling-views.ts";
import type { PrintedView } from "./sheet-paper.ts";
import type { Flow, PaperMark, Piece, Tagged } from "./layout-tree.ts";
import { setRuns, type PaperRun } from "./paper-run.ts";
import {
  GREY,
  list,
  paragraph,
  section,
  sectionHeading,
  shifted,
  smallPt,
  subHeading,
  type PaperStyle,
} from "./paper-style.ts";
import { pictogramBlock } from "./pictogram-block.ts";

const GAP = 2.5;

/** Label elements on the first screen, in full; then what nothing is known of, and rags. */
export function hazardBand(
  { hazard, unknownHazard, ragLine }: PrintedView,
  style: PaperStyle,
): Flow[] {
  const said = hazard?.statements.some(({ text }) => text === unknownHazard) === true;
  return [
    ...(hazard === undefined
      ? []
      : [labelElements(hazard, style, { sideMm: 15, sizePt: 8.5, beforeMm: 4 })]),
    ...(unknownHazard === undefined || said
      ? []
      : [
          paragraph([{ text: unknownHazard, face: "sans bold" }], style, {
            sizePt: 8.5,
            beforeMm: 2,
          }),
        ]),
    ...(ragLine === undefined
      ? []
      : [paragraph([{ text: ragLine, face: "sans" }], style, { sizePt: 8, beforeMm: 2 })]),
  ];
}

interface LabelLook {
  readonly sideMm: number;
  readonly sizePt: number;
  readonly beforeMm: number;
}

/** Pictograms on the left, signal word and statements beside them, what the label rests on below. */
function labelElements(
  { signalWord, pictograms, statements, basis }: HazardView,
  style: PaperStyle,
  { sideMm, sizePt, beforeMm }: LabelLook,
): Piece {
  const perRow = Math.max(
    1,
    Math.min(pictograms.length, Math.floor((style.widthMm * 0.35) / sideMm)),
  );
  const figures = pictograms.flatMap(({ code, name }, i): Tagged[] => {
    if (!isPictogramCode(code)) return [];
    const { alt, marks } = pictogramBlock(code, name, {
      xMm: (i % perRow) * (sideMm + 1),
      yMm: Math.floor(i / perRow) * (sideMm + 1),
      sideMm,
    });
    return [{ tag: "Figure", ...(alt === undefined ? {} : { alt }), marks }];
  });
  const x = figures.length === 0 ? 0 : perRow * (sideMm + 1) + GAP;
  let y = 0;
  const line = (
    tag: "P" | "LBody",
    runs: readonly PaperRun[],
    size: number,
    language?: string,
  ): Tagged => {
    const set = setRuns(runs, { widthMm: style.widthMm - x, sizePt: size, leadingPt: size * 1.28 });
    const marks: PaperMark[] = set.marks.map((mark) => shifted(mark, x, y));
    y += set.heightMm + 0.3;
    return { tag, marks, ...(language === undefined ? {} : { language }) };
  };
  const word: Tagged[] =
    signalWord === undefined
      ? []
      : [line("P", [{ text: signalWord, face: "sans bold" }], sizePt + 3)];
  const items = statements.map((statement): Tagged => ({
    tag: "LI",
    children: [line("LBody", statementRuns(statement), sizePt, statement.language)],
  }));
  const rests = line("P", [{ text: basis, face: "sans", ink: GREY }], Math.max(7, sizePt - 1));
  const rows = Math.ceil(figures.length / perRow);
  return {
    kind: "piece",
    heightMm: Math.max(y, figures.length === 0 ? 0 : rows * (sideMm + 1)),
    beforeMm,
    content: {
      tag: "Div",
      children: [
        ...figures,
        ...word,
        ...(items.length === 0 ? [] : [{ tag: "L" as const, children: items }]),
        rests,
      ],
    },
  };
}

function statementRuns({ code, text, remark }: StatementView): PaperRun[] {
  return [
    ...(code === undefined ? [] : [{ text: `${code} `, face: "sans bold" as const }]),
    { text, face: "sans" },
    ...(remark === undefined ? [] : [{ text: ` (${remark})`, face: "sans" as const, ink: GREY }]),
  ];
}

/** With a full stop, where another statement follows in the same line. */
function closed(statement: StatementView): StatementView {
  return /[.!?]$/.test(statement.text) ? statement : { ...statement, text: `${statement.text}.` };
}

/** Handling in full: precautions, the label in the workshop's other languages, the dry pigments, the studio, markets. */
export function handlingOnPaper({ handling }: PrintedView, style: PaperStyle): Flow {
  const { label, maker, parts, studio, markets } = handling;
  const small = { sizePt: smallPt(style) };
  const sans = (text: string): PaperRun[] => [{ text, face: "sans" }];
  return section([
    sectionHeading(handling.heading, style),
    ...label.remarks.map((remark) => paragraph(sans(remark), style)),
    ...(label.classification === undefined ? [] : [paragraph(sans(label.classification), style)]),
    ...maker.map(({ text, quote, link }) =>
      paragraph(
        sans(
          [
            text,
            ...(quote === undefined ? [] : [`\u201c${quote}\u201d`]),
            ...(link === undefined ? [] : [`${link.text}: ${link.href}`]),
          ]
            .filter((part) => part !== "")
            .join(" "),
        ),
        style,
        small,
      ),
    ),
    ...(label.precautionary.length === 0
      ? []
      : [
          subHeading(label.precautionaryHeading, style),
          list(label.precautionary.map(statementRuns), style, { ...small, marker: "" }),
        ]),
    ...(label.languages?.list ?? []).flatMap(
      ({ language, name, signalWord, statements }): Flow[] => [
        subHeading(signalWord === undefined ? name : `${name}: ${signalWord}`, style),
        list(statements.map(statementRuns), style, { ...small, language, marker: "" }),
      ],
    ),
    ...parts.flatMap((part) => partOnPaper(part, style)),
    subHeading(handling.studioHeading, style),
    ...(studio.length === 0
      ? []
      : [
          list(
            studio.map(({ operation, cautions }) => [
              { text: `${operation}: `, face: "sans bold" },
              { text: cautions.flatMap(({ sentences }) => sentences).join(" "), face: "sans" },
            ]),
            style,
            { ...small, marker: "" },
          ),
        ]),
    paragraph(sans(handling.studioGeneral.text), style, small),
    ...(markets.length === 0
      ? []
      : [
          subHeading(handling.marketsHeading, style),
          list(
            markets.map(({ market, lines }) => [
              { text: `${market}: `, face: "sans bold" },
              { text: lines.map(({ text }) => text).join(" "), face: "sans" },
            ]),
            style,
            { ...small, marker: "" },
          ),
        ]),
    paragraph(sans(handling.poisonCentre), style, { ...small, beforeMm: 2 }),
    paragraph([{ text: handling.deference, face: "sans bold" }], style, small),
  ]);
}

/** A dry pigment, drier or thinner: its label in a paragraph. */
function partOnPaper(
  { heading, remarks, hazard, precautionary }: LabelView,
  style: PaperStyle,
): Flow[] {
  const statements = [...(hazard?.statements ?? []), ...precautionary];
  const signal = hazard?.signalWord;
  return [
    subHeading(signal === undefined ? heading : `${heading}: ${signal}`, style),
    ...remarks.map((remark) =>
      paragraph([{ text: remark, face: "sans" }], style, { sizePt: smallPt(style) }),
    ),
    ...(statements.length === 0
      ? []
      : [
          paragraph(
            statements.flatMap((statement, i) => [
              ...(i === 0 ? [] : [{ text: " ", face: "sans" as const }]),
              ...statementRuns(closed(statement)),
            ]),
            style,
            { sizePt: smallPt(style) },
          ),
        ]),
  ];
}
