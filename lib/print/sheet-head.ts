import type { SheetView } from "../blocks/page-kinds.ts";
import type { FactView } from "../present/views.ts";
import { labelElements, labelLook, type LabelElements } from "./label-elements.ts";
import type { Flow, Piece } from "./layout-tree.ts";
import { GREY, shifted, type Tagged } from "./mark.ts";
import {
  bold,
  LEAST_PT,
  linkRun,
  paragraph,
  prose,
  quiet,
  sans,
  wholeParagraph,
  type PaperStyle,
} from "./paper-style.ts";
import type { PagesToPrint } from "./sheet-paper.ts";
import { setRuns, type Run } from "./set-runs.ts";
import { panelFigure } from "./tints-figure.ts";

/** Of a sheet as usual and where room is scarcest [pt]; and of what stays clear above lines. */
const NAME_PT = { roomy: 28, dense: 23 } as const;
const SENTENCE_PT = { roomy: 13, dense: 11 } as const;
const LESS = { roomy: 1, dense: 0.4 } as const;
const LABEL_PT = { roomy: 9, dense: 8 } as const;
const RAGS_PT = { roomy: 8, dense: 7.5 } as const;

/** The first screen across the page: name, made of, panel, sentence, sizes and prices, facts, hazard, rags. */
export function sheetHead({ slug, sheet, context }: PagesToPrint, style: PaperStyle): Flow[] {
  const {
    words: { pages: text, lowerFirst },
    records: { workshop },
  } = context;
  const maker: Run[] = [
    ...bold(`${workshop.name} \u2013 ${lowerFirst(text.sheetPaper.kind)}`),
    ...(workshop.demonstration === true ? quiet(`. ${text.demonstration}`) : []),
  ];
  const { masstone, tints, hazard, unknownHazard, ragLine } = sheet;
  const room = style.isDense === true ? "dense" : "roomy";
  const hasColour = masstone.colour !== undefined;
  return [
    paragraph(maker, style, { sizePt: LEAST_PT + 0.5, beforeMm: 0 }),
    wholeParagraph([linkRun({ text: sheet.name, href: style.address }, style, "serif")], style, {
      tag: "H1",
      sizePt: sheet.name.length > 42 ? 21 : NAME_PT[room],
      leading: 1.12,
      beforeMm: 2,
      anchor: slug,
    }),
    paragraph(
      sheet.madeOf.map((run) => linkRun(run, style, "serif")),
      style,
      { sizePt: 11, leading: 1.25, beforeMm: 0.8 },
    ),
    ...(hasColour || tints !== undefined
      ? [
          panelFigure(
            {
              ...(hasColour && { masstone }),
              ...(tints !== undefined && { tints }),
            },
            style,
          ),
        ]
      : [paragraph(prose(masstone.missing ?? ""), style, { sizePt: 10, beforeMm: 3 })]),
    paragraph(prose(sheet.sentence), style, {
      sizePt: SENTENCE_PT[room],
      leading: 1.28,
      beforeMm: 3 * LESS[room],
    }),
    ...(sheet.offer.length === 0 ? [] : [offerLine(sheet.offer, style)]),
    factsPiece(sheet.facts, style),
    ...(hazard === undefined
      ? []
      : [
          {
            ...labelElements(room === "dense" ? withoutBasis(hazard) : hazard, style, {
              ...labelLook({ sizePt: LABEL_PT[room] }),
              isRunIn: true,
            }),
            beforeMm: 4 * LESS[room],
          },
        ]),
    ...(unknownHazard === undefined
      ? []
      : [paragraph(bold(unknownHazard), style, { sizePt: 8.5, beforeMm: 2.5 * LESS[room] })]),
    ...(ragLine === undefined
      ? []
      : [paragraph(sans(ragLine), style, { sizePt: RAGS_PT[room], beforeMm: 2.5 * LESS[room] })]),
  ];
}

/** What a label rests on stands with the whole of it, below. */
function withoutBasis({ basis: _basis, ...elements }: LabelElements): LabelElements {
  return elements;
}

const PRICE_PT = 13;

/** Sizes with their prices in one line. */
function offerLine(offer: SheetView["offer"], style: PaperStyle): Flow {
  const runs = offer.flatMap(({ text, size, price, unitPrice }, i): Run[] => [
    ...(i === 0 ? [] : sans("\u2003\u2002 ")),
    ...(price === undefined
      ? sans(text)
      : [...bold(price), ...beside(size), ...beside(unitPrice && `(${unitPrice})`)]),
  ]);
  const hasPrice = offer.some(({ price }) => price !== undefined);
  return paragraph(runs, style, { sizePt: hasPrice ? PRICE_PT : 9, beforeMm: 2 });
}

/** Beside a price, smaller and quiet: its size, and what a litre costs. */
function beside(text: string | undefined): Run[] {
  return text === undefined
    ? []
    : [{ text: `\u00a0\u00a0${text}`, face: "sans", ink: GREY, scale: 0.65 }];
}

const FACT_GAP_MM = 3;

/** Each a word and a little more, side by side; how it is known stands there where that is news. */
function factsPiece(facts: readonly FactView[], { widthMm }: PaperStyle): Piece {
  const width = (widthMm - FACT_GAP_MM * (facts.length - 1)) / facts.length;
  let heightMm = 0;
  const children = facts.map(({ name, word, detail, standing }, i): Tagged => {
    const x = i * (width + FACT_GAP_MM);
    let y = 0;
    const line = (runs: readonly Run[], sizePt: number) => {
      const set = setRuns(runs, { widthMm: width, sizePt, leading: 1.22 });
      const marks = set.marks.map((mark) => shifted(mark, x, y));
      y += set.heightMm + 0.2;
      return marks;
    };
    const isNews = standing.kind === "stated" || standing.kind === "estimated";
    const label = line(quiet(name), 7.5);
    const body = [
      ...line(bold(word), 10),
      ...(detail === undefined ? [] : line(sans(detail), 7.5)),
      ...(isNews ? line(quiet(standing.word), 7.5) : []),
    ];
    heightMm = Math.max(heightMm, y);
    return {
      tag: "LI",
      children: [
        { tag: "Lbl", marks: label },
        { tag: "LBody", marks: body },
      ],
    };
  });
  return { kind: "piece", heightMm, beforeMm: 3.5, content: { tag: "L", children } };
}
