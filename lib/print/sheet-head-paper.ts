import { panelWords } from "../pages/sheet-panel.ts";
import type { FactView } from "../present/views.ts";
import type { PrintedView } from "./sheet-paper.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import type { Words } from "../words/words.ts";
import type { Flow, PaperMark, Piece, Tagged } from "./layout-tree.ts";
import { setRuns, type PaperRun } from "./paper-run.ts";
import { GREY, LEAST_PT, paragraph, prose, shifted, type PaperStyle } from "./paper-style.ts";
import { standingMarks } from "./standing-marks.ts";
import { hazardBand } from "./sheet-hazard-paper.ts";
import { panelFigure } from "./sheet-panel-figure.ts";

export interface SheetOnPaper {
  readonly view: PrintedView;
  readonly worded: SheetTexts;
  readonly words: Words;
  readonly workshop: string;
  readonly demonstration: string | undefined;
}

/** What a page's link becomes on paper: a whole address, where the site has one. */
export function wholeAddress(
  href: string | undefined,
  canonical: string | undefined,
): { readonly href?: string } {
  return href === undefined || canonical === undefined
    ? {}
    : { href: new URL(href, canonical).href };
}

/** The first screen across the page: name, made of, panel, sentence, facts, hazard. */
export function sheetHead(
  { view, worded, words, workshop, demonstration }: SheetOnPaper,
  style: PaperStyle,
): Flow[] {
  const panel = panelWords(worded, words);
  const made = view.madeOf.map(({ text, href }): PaperRun => ({
    text,
    face: "serif",
    ...wholeAddress(href, view.canonical),
  }));
  const maker: PaperRun[] = [
    { text: `${workshop} \u2013 ${words.pages.sheetPaper.kind.toLowerCase()}`, face: "sans bold" },
    ...(demonstration === undefined
      ? []
      : [{ text: `. ${demonstration}`, face: "sans" as const, ink: GREY }]),
  ];
  return [
    paragraph(maker, style, { sizePt: LEAST_PT + 0.5, leading: 1.25, beforeMm: 0 }),
    paragraph(
      [{ text: view.name, face: "serif", ...wholeAddress(view.canonical, view.canonical) }],
      style,
      {
        tag: "H1",
        sizePt: view.name.length > 42 ? 21 : 26,
        leading: 1.12,
        beforeMm: 2,
        anchor: worded.sheet.slug,
      },
    ),
    paragraph(made, style, { sizePt: 11, leading: 1.25, beforeMm: 0.8 }),
    panel === undefined
      ? paragraph(prose(view.noPanel ?? words.pages.sheet.noPanel), style, {
          sizePt: 10,
          beforeMm: 3,
        })
      : panelFigure(worded.sheet, panel, style.widthMm),
    paragraph(prose(view.sentence), style, { sizePt: 12, leading: 1.28, beforeMm: 3 }),
    facts(view.facts, style),
    ...hazardBand(view, style),
  ];
}

const FACT_GAP = 3;

/** Each a word, a little more, and how it is known, side by side. */
function facts(views: readonly FactView[], { widthMm }: PaperStyle): Piece {
  const width = (widthMm - FACT_GAP * (views.length - 1)) / views.length;
  let heightMm = 0;
  const children = views.map((fact, i): Tagged => {
    const x = i * (width + FACT_GAP);
    const line = (
      runs: readonly PaperRun[],
      sizePt: number,
      y: number,
      indent = 0,
    ): { marks: PaperMark[]; bottom: number } => {
      const set = setRuns(runs, { widthMm: width - indent, sizePt, leadingPt: sizePt * 1.22 });
      return {
        marks: set.marks.map((mark) => shifted(mark, x + indent, y)),
        bottom: y + set.heightMm,
      };
    };
    const name = line([{ text: fact.name, face: "sans", ink: GREY }], 7.5, 0);
    const word = line([{ text: fact.word, face: "sans bold" }], 10, name.bottom);
    const detail =
      fact.detail === undefined
        ? { marks: [], bottom: word.bottom }
        : line([{ text: fact.detail, face: "sans" }], 7.5, word.bottom + 0.2);
    const isNot = fact.standing.kind === "not stated";
    const standing = isNot
      ? { marks: [], bottom: detail.bottom }
      : line(
          [{ text: fact.standing.word, face: "sans", ink: GREY }],
          7.5,
          detail.bottom + 0.2,
          2.6,
        );
    heightMm = Math.max(heightMm, standing.bottom);
    return {
      tag: "LI",
      children: [
        { tag: "Lbl", marks: name.marks },
        {
          tag: "LBody",
          marks: [
            ...word.marks,
            ...detail.marks,
            ...(isNot ? [] : standingMarks(fact.standing.kind, x, detail.bottom + 2.45, 7.5)),
            ...standing.marks,
          ],
        },
      ],
    };
  });
  return { kind: "piece", heightMm, beforeMm: 3, content: { tag: "L", children } };
}
