import { byFamily } from "../pages/catalogue-pages.ts";
import type { PageContext } from "../pages/page-context.ts";
import { N6 } from "./card-plan.ts";
import { drawFlow } from "./draw-flow.ts";
import { placedPieces } from "./paper-columns.ts";
import { piecesOf, type Flow, type PaperSize, type Piece } from "./layout-tree.ts";
import { measureText } from "./print-document.ts";
import { setRuns } from "./paper-run.ts";
import { GREY, paragraph, shifted, type PaperStyle } from "./paper-style.ts";
import { swatchMarks, paintInk } from "./paper-swatch.ts";
import { addPage, printDocument, printedBytes } from "./print-document.ts";
import { drawFooter, drawSheet } from "./sheet-pdf.ts";
import { MARGIN, type LaidOutSheet, type SheetToPrint } from "./sheet-paper.ts";

/** A sheet of the range, already laid out. */
export interface RangeSheet extends SheetToPrint {
  readonly laidOut: LaidOutSheet;
}

/** All sheets in one file: contents that lead to them, bookmarks by family, pages numbered through. */
export function rangePdf(
  sheets: readonly RangeSheet[],
  context: PageContext,
  paper: PaperSize,
): Uint8Array {
  const {
    words,
    records: { workshop },
    date,
  } = context;
  const text = words.pages.sheetPaper;
  const families = byFamily(sheets.map(({ page }) => page.worded)).map(([family, members]) => ({
    name: words.families[family],
    sheets: members.flatMap((worded) => sheets.filter(({ page }) => page.worded === worded)),
  }));
  const style = { widthMm: paper.widthMm - 2 * MARGIN.side, sizePt: 9.5 };
  // The numbers in the contents need its own length, which they do not change.
  const contentsPages = placedContents(
    contents(families, () => 0, context, style),
    paper,
  ).pages;
  const starts = new Map<string, number>();
  let next = contentsPages;
  for (const { sheets: own } of families) {
    for (const { page, laidOut } of own) {
      starts.set(page.worded.sheet.slug, next);
      next += laidOut.pages;
    }
  }
  const total = next;
  const title = words.pages.title(text.range.title, workshop.name);
  const document = printDocument({
    title,
    author: workshop.name,
    subject: text.range.lead(sheets.length),
    language: words.language,
    date,
  });
  const { pdf } = document;
  const root = pdf.struct("Document");
  pdf.addStructure(root);

  const flow = contents(families, (slug) => (starts.get(slug) ?? 0) + 1, context, style);
  let current = -1;
  drawFlow(document, root, flow, {
    placed: placedContents(flow, paper).placed,
    turnTo: (page) => {
      while (current < page) {
        current++;
        addPage(document, paper.widthMm, paper.heightMm);
        if (current === 0) bookmark(pdf.outline, text.range.contents);
        drawFooter(
          document,
          paper,
          [words.pages.cautionLine, title],
          text.pageOf(current + 1, total),
        );
      }
    },
  });
  for (const { name, sheets: own } of families) {
    let family: PDFKit.PDFOutline | undefined;
    for (const sheet of own) {
      const part = pdf.struct("Sect");
      root.add(part);
      const start = starts.get(sheet.page.worded.sheet.slug) ?? 0;
      drawSheet(
        document,
        part,
        sheet,
        sheet.laidOut,
        paper,
        (page) => text.pageOf(start + page + 1, total),
        (anchor, yPt) => {
          pdf.addNamedDestination(anchor, "XYZ", 0, yPt, null);
          family ??= bookmark(pdf.outline, name);
          bookmark(family, sheet.view.name);
        },
      );
      part.end();
    }
  }
  root.end();
  return printedBytes(document);
}

/** Leads to the page that is being drawn, the whole of it. */
function bookmark(parent: PDFKit.PDFOutline, title: string): PDFKit.PDFOutline {
  return parent.addItem(title, { expanded: true, fit: true } as { expanded: boolean });
}

interface FamilySheets {
  readonly name: string;
  readonly sheets: readonly RangeSheet[];
}

function placedContents(
  flow: readonly Flow[],
  paper: PaperSize,
): {
  readonly placed: ReadonlyMap<Piece, ReturnType<typeof placedPieces>[number]>;
  readonly pages: number;
} {
  const placed = placedPieces(piecesOf(flow), (index) => ({
    page: index,
    xMm: MARGIN.side,
    topMm: MARGIN.top + 4,
    bottomMm: paper.heightMm - MARGIN.bottom,
  }));
  return {
    placed: new Map(placed.map((place) => [place.piece, place])),
    pages: (placed.at(-1)?.page ?? 0) + 1,
  };
}

/** Cover and contents in one: the workshop, then every colour with its masstone, what it is made of, and its page. */
function contents(
  families: readonly FamilySheets[],
  pageOf: (slug: string) => number,
  { words, records: { workshop }, date }: PageContext,
  style: PaperStyle,
): Flow[] {
  const text = words.pages.sheetPaper;
  const count = families.reduce((sum, { sheets }) => sum + sheets.length, 0);
  return [
    paragraph([{ text: workshop.name, face: "sans bold" }], style, { sizePt: 10, beforeMm: 0 }),
    paragraph([{ text: text.range.title, face: "serif" }], style, {
      tag: "H1",
      sizePt: 30,
      leading: 1.15,
      beforeMm: 2,
    }),
    paragraph(
      [
        {
          text: `${text.range.lead(count)}${date === undefined ? "" : ` ${words.date(date)}.`}`,
          face: "serif",
        },
      ],
      style,
      { sizePt: 11, beforeMm: 1 },
    ),
    ...(workshop.about === undefined
      ? []
      : [
          paragraph(
            [{ text: workshop.about, face: "serif" }],
            { ...style, widthMm: style.widthMm * 0.75 },
            { sizePt: 10, beforeMm: 3 },
          ),
        ]),
    ...(workshop.demonstration === true
      ? [
          paragraph([{ text: words.pages.demonstration, face: "sans", ink: GREY }], style, {
            sizePt: 8,
            beforeMm: 3,
          }),
        ]
      : []),
    paragraph([{ text: text.range.contents, face: "sans bold" }], style, {
      tag: "H2",
      sizePt: 13,
      beforeMm: 8,
      keepWithNext: true,
    }),
    {
      kind: "group",
      tag: "TOC",
      children: families.flatMap(({ name, sheets }): Flow[] => [
        familyLine(name, style),
        ...sheets.map((sheet) => contentsLine(sheet, pageOf(sheet.page.worded.sheet.slug), style)),
      ]),
    },
  ];
}

function familyLine(name: string, style: PaperStyle): Piece {
  const own = paragraph([{ text: name, face: "sans", ink: GREY }], style, {
    sizePt: 8.5,
    beforeMm: 3.5,
    keepWithNext: true,
  });
  return { ...own, content: { tag: "TOCI", children: [{ ...own.content, tag: "P" }] } };
}

const SWATCH_MM = 9;
const NAME_SHARE = 0.4;

function contentsLine(
  {
    view,
    page: {
      worded: { sheet },
    },
  }: RangeSheet,
  page: number,
  style: PaperStyle,
): Piece {
  const { widthMm, sizePt } = style;
  const left = SWATCH_MM + 7;
  const leadingPt = sizePt * 1.3;
  const number = String(page);
  const nameWidth = (widthMm - left) * NAME_SHARE;
  const name = setRuns([{ text: view.name, face: "serif" }], {
    widthMm: nameWidth - 2,
    sizePt,
    leadingPt,
  });
  const made = setRuns(
    [{ text: view.madeOf.map(({ text }) => text).join(""), face: "sans", ink: GREY }],
    { widthMm: widthMm - left - nameWidth - 10, sizePt: sizePt - 1.5, leadingPt },
  );
  const heightMm = Math.max(name.heightMm, made.heightMm) + 1.2;
  const numberX = widthMm - measureText(number, "sans", sizePt);
  return {
    kind: "piece",
    heightMm,
    beforeMm: 0,
    content: {
      tag: "TOCI",
      children: [
        {
          tag: "Artifact",
          marks: [
            { kind: "box", xMm: 0, yMm: 0, widthMm: SWATCH_MM + 4, heightMm, ink: N6 },
            ...swatchMarks(
              paintInk(sheet.notations.masstone),
              { xMm: 2, yMm: 0.8, widthMm: SWATCH_MM, heightMm: heightMm - 1.6 },
              "",
              sizePt,
            ),
          ],
        },
        {
          tag: "P",
          marks: [
            ...name.marks.map((mark) => shifted(mark, left, 0.6)),
            ...made.marks.map((mark) => shifted(mark, left + nameWidth, 0.6)),
            {
              kind: "text",
              text: number,
              xMm: numberX,
              yMm: name.marks[0] === undefined ? 0 : name.marks[0].yMm + 0.6,
              face: "sans",
              sizePt,
            },
          ],
          links: [{ href: `#${sheet.slug}`, xMm: 0, yMm: 0, widthMm, heightMm }],
        },
        {
          tag: "Artifact",
          marks: [
            {
              kind: "line",
              fromMm: [left, heightMm],
              toMm: [widthMm, heightMm],
              widthPt: 0.25,
              ink: { grey: 0.75 },
            },
          ],
        },
      ],
    },
  };
}
