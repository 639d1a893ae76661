import { isPictogramCode } from "../hazard/classify/hazard-class.ts";
import type { HazardView, LabelView, StatementView } from "../present/handling-views.ts";
import type { Flow, Piece } from "./layout-tree.ts";
import { GREY, shifted, type Tagged } from "./mark.ts";
import {
  bold,
  LEAST_PT,
  linkRun,
  list,
  paragraph,
  quiet,
  sans,
  smallPt,
  subHeading,
  type PaperStyle,
} from "./paper-style.ts";
import { pictogramFigure } from "./pictogram-figure.ts";
import { setRuns, type Run } from "./set-runs.ts";

const GAP_MM = 2.5;

/** A whole label: its elements, its class, precautions, and the same in the workshop's other languages. */
export function labelFlow(label: LabelView, style: PaperStyle): Flow[] {
  const { hazard, classification, precautionary, languages, dataSheet } = label;
  const small = { sizePt: smallPt(style) };
  const statements = (list_: readonly StatementView[], language?: string): Flow =>
    list(
      list_.map((statement) => {
        const own = statement.language ?? language;
        return {
          runs: statementRuns(statement),
          ...(own === undefined ? {} : { language: own }),
        };
      }),
      style,
      { ...small, marker: "" },
    );
  return [
    subHeading(label.heading, style),
    ...label.remarks.map((remark) => paragraph(sans(remark), style)),
    ...(hazard === undefined ? [] : [labelElements(hazard, style)]),
    ...(classification === undefined ? [] : [paragraph(sans(classification), style, small)]),
    ...(precautionary.length === 0
      ? []
      : [subHeading(label.precautionaryHeading, style), statements(precautionary)]),
    ...(dataSheet === undefined
      ? []
      : [paragraph([linkRun(dataSheet, style, "sans")], style, small)]),
    ...(languages?.list ?? []).flatMap(({ language, name, signalWord, statements: own }): Flow[] => [
      subHeading(signalWord === undefined ? name : `${name}: ${signalWord}`, style),
      statements(own, language),
    ]),
  ];
}

export function statementRuns({ code, text, remark }: StatementView): Run[] {
  return [
    ...(code === undefined ? [] : bold(`${code} `)),
    ...sans(text),
    ...(remark === undefined ? [] : quiet(` (${remark})`)),
  ];
}

/** Side of a pictogram [mm]. */
const SIDE_MM = 12;

/** Pictograms on the left, signal word and statements beside them, what the label rests on below. */
export function labelElements(
  { signalWord, pictograms, statements, basis }: HazardView,
  style: PaperStyle,
): Piece {
  const sizePt = Math.max(LEAST_PT + 0.5, style.sizePt);
  const codes = pictograms.flatMap(({ code, name }) =>
    isPictogramCode(code) ? [{ code, name }] : [],
  );
  const perRow = Math.max(
    1,
    Math.min(codes.length, Math.floor((style.widthMm * 0.35) / SIDE_MM)),
  );
  const figures = codes.map(({ code, name }, i) =>
    pictogramFigure(code, name, {
      xMm: (i % perRow) * (SIDE_MM + 1),
      yMm: Math.floor(i / perRow) * (SIDE_MM + 1),
      sideMm: SIDE_MM,
    }),
  );
  const x = figures.length === 0 ? 0 : perRow * (SIDE_MM + 1) + GAP_MM;
  let y = 0;
  const line = (tag: "P" | "LBody", runs: readonly Run[], size: number, language?: string): Tagged => {
    const set = setRuns(runs, { widthMm: style.widthMm - x, sizePt: size, leading: 1.28 });
    const marks = set.marks.map((mark) => shifted(mark, x, y));
    y += set.heightMm + 0.3;
    return { tag, marks, ...(language === undefined ? {} : { language }) };
  };
  const word =
    signalWord === undefined ? [] : [line("P", bold(signalWord), sizePt + 3)];
  const items = statements.map((statement): Tagged => ({
    tag: "LI",
    children: [line("LBody", statementRuns(statement), sizePt, statement.language)],
  }));
  const rests = line("P", [{ text: basis, face: "sans", ink: GREY }], smallPt(style));
  const rows = Math.ceil(figures.length / perRow);
  return {
    kind: "piece",
    heightMm: Math.max(y, figures.length === 0 ? 0 : rows * (SIDE_MM + 1)),
    beforeMm: 1.5,
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
