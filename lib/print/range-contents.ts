import type { Flow, PaperSize, Piece } from "./layout-tree.ts";
import { GREY, N6, shifted, type Tagged } from "./mark.ts";
import { pageCount, placedPieces, type PlacedPiece } from "./paper-columns.ts";
import {
  bold,
  paragraph,
  prose,
  quiet,
  runningHead,
  sans,
  wholeParagraph,
  type PaperStyle,
} from "./paper-style.ts";
import { swatchMarks } from "./paper-swatch.ts";
import { setRuns, type Run, type RunSetting, type SetRuns } from "./set-runs.ts";
import { MARGIN, type PaperContext, type PagesToPrint } from "./sheet-paper.ts";
import type { SheetLeaves } from "./sheet-pdf.ts";

/** A sheet of the range, already drawn. */
export interface RangeSheet extends Pick<PagesToPrint, "slug" | "caution">, SheetLeaves {}

export interface FamilySheets {
  readonly name: string;
  readonly sheets: readonly RangeSheet[];
}

/** The contents of the range with a place for everything, before they are drawn. */
export interface RangeContents {
  readonly flow: readonly Flow[];
  readonly placed: ReadonlyMap<Piece, PlacedPiece>;
  readonly pages: number;
}

/**
 * Cover and contents in one: the workshop, then every colour by family with its masstone, what it is made of, its sizes and prices, and its page.
 * @param pageOf asked when a line is drawn, since where a sheet begins follows from how many pages the contents take.
 */
export function rangeContents(
  families: readonly FamilySheets[],
  pageOf: (slug: string) => number,
  context: PaperContext,
  paper: PaperSize,
): RangeContents {
  const flow = contentsFlow(families, pageOf, context, paper);
  const placed = placedPieces(flow, (page) => ({
    page,
    xMm: MARGIN.side,
    topMm: MARGIN.top + 4,
    bottomMm: paper.heightMm - MARGIN.bottom,
  }));
  return {
    flow,
    placed: new Map(placed.map((place) => [place.piece, place])),
    pages: pageCount(placed),
  };
}

function contentsFlow(
  families: readonly FamilySheets[],
  pageOf: (slug: string) => number,
  { words, records: { workshop }, date }: PaperContext,
  paper: PaperSize,
): Flow[] {
  const style: PaperStyle = {
    widthMm: paper.widthMm - 2 * MARGIN.side,
    sizePt: 9.5,
    paints: new Map(),
    words: words.pages.sheetPaper,
  };
  const {
    demonstration,
    sheetPaper: { range: text },
  } = words.pages;
  const count = families.reduce((sum, { sheets }) => sum + sheets.length, 0);
  const dated = date === undefined ? "" : ` ${words.date(date)}.`;
  return [
    paragraph(bold(workshop.name), style, { sizePt: 10, beforeMm: 0 }),
    wholeParagraph(prose(text.title), style, {
      tag: "H1",
      sizePt: 30,
      leading: 1.15,
      beforeMm: 2,
    }),
    paragraph(prose(`${text.lead(count)}${dated}`), style, { sizePt: 11 }),
    ...(workshop.about === undefined
      ? []
      : [
          paragraph(
            prose(workshop.about),
            { ...style, widthMm: style.widthMm * 0.75 },
            { sizePt: 10, beforeMm: 3 },
          ),
        ]),
    ...(workshop.demonstration === true
      ? [paragraph(quiet(demonstration), style, { sizePt: 8.5, beforeMm: 3 })]
      : []),
    wholeParagraph(bold(text.contents), style, {
      tag: "H2",
      sizePt: 13,
      beforeMm: 7,
      keepWithNext: true,
    }),
    {
      kind: "group",
      tag: "TOC",
      children: families.map(({ name, sheets }): Flow => ({
        kind: "group",
        tag: "TOCI",
        runningHead: { piece: runningHead(text.continued(name), style), at: "page" },
        children: [
          wholeParagraph(quiet(name), style, { sizePt: 8.5, beforeMm: 3.5, keepWithNext: true }),
          {
            kind: "group",
            tag: "TOC",
            children: sheets.map((sheet, i) =>
              contentsLine(
                sheet,
                () => pageOf(sheet.slug),
                style,
                isKept(i, sheets.length) && { keepWithNext: true },
              ),
            ),
          },
        ],
      })),
    },
  ];
}

/** Lines of a family on one page where it is short; of a long one no line stands alone. */
const KEPT_LINES = 10;

function isKept(line: number, count: number): boolean {
  return line < count - 1 && (count <= KEPT_LINES || line === 0 || line === count - 2);
}

const SWATCH_MM = 12;
/** Columns of a line [mm], as shares of what is right of the swatch: name, made of, prices; the page number takes the rest. */
const SHARES = { name: 0.29, madeOf: 0.41, offer: 0.24 } as const;

function contentsLine(
  { slug, listed: sheet }: RangeSheet,
  page: () => number,
  style: PaperStyle,
  kept: false | Pick<Piece, "keepWithNext">,
): Piece {
  const { widthMm, sizePt } = style;
  const left = SWATCH_MM + 4;
  const room = widthMm - left;
  const set = (
    runs: readonly Run[],
    share: number,
    size: number,
    look: Pick<RunSetting, "align" | "isBalanced"> = {},
  ) => setRuns(runs, { widthMm: room * share - 3, sizePt: size, ...look });
  const name = set(prose(sheet.name), SHARES.name, sizePt);
  const made = set(
    quiet(
      sheet.madeOf
        .map(({ text, index }) => (index === true ? text.replaceAll(" ", "\u00a0") : text))
        .join(""),
    ),
    SHARES.madeOf,
    sizePt - 1.5,
    { isBalanced: true },
  );
  const offer = set(
    sheet.offer.flatMap(({ text, size, price, unitPrice }, i): Run[] => [
      ...(i === 0 ? [] : sans("   ")),
      ...(price === undefined
        ? [{ text, face: "sans", ink: GREY } as const]
        : [
            { text: `${size ?? ""}\u00a0\u00a0`, face: "sans", ink: GREY } as const,
            ...sans(price),
            ...(unitPrice === undefined
              ? []
              : [{ text: ` (${unitPrice})`, face: "sans", ink: GREY } as const]),
          ]),
    ]),
    SHARES.offer,
    sizePt - 1,
    { align: "right" },
  );
  // Smaller type begins lower, so that all stands on the baseline of the name.
  const baseline = ({ marks }: SetRuns): number => marks[0]?.yMm ?? 0;
  const below = (set: SetRuns): number => 0.7 + baseline(name) - baseline(set);
  const heightMm = 0.7 + Math.max(...[name, made, offer].map((set) => below(set) + set.heightMm));
  const at = (set: SetRuns, xMm: number) => set.marks.map((mark) => shifted(mark, xMm, below(set)));
  const numbered = (): SetRuns =>
    setRuns(sans(String(page())), { widthMm, sizePt, align: "right" });
  const content = (): Tagged => ({
    tag: "TOCI",
    children: [
      {
        tag: "Artifact",
        marks: [
          { kind: "box", xMm: 0, yMm: 0, widthMm: SWATCH_MM, heightMm, ink: N6 },
          ...swatchMarks(
            sheet.masstone.colour === undefined ? {} : { colour: sheet.masstone.colour },
            { xMm: 0, yMm: 0, widthMm: SWATCH_MM, heightMm },
            sizePt,
          ),
          {
            kind: "line",
            fromMm: [left, heightMm],
            toMm: [widthMm, heightMm],
            widthPt: 0.25,
            ink: { grey: 0.75 },
          },
        ],
      },
      {
        tag: "P",
        marks: [
          ...at(name, left),
          ...at(made, left + room * SHARES.name),
          ...at(offer, left + room * (SHARES.name + SHARES.madeOf) + 3),
          ...at(numbered(), 0),
        ],
        links: [{ href: `#${slug}`, xMm: 0, yMm: 0, widthMm, heightMm }],
      },
    ],
  });
  return {
    kind: "piece",
    heightMm,
    beforeMm: 0,
    ...kept,
    get content() {
      return content();
    },
  };
}
