import type { SheetPage } from "../pages/section-views.ts";
import type { SheetContent } from "../present/views.ts";
import { pageCount, placedPieces, type Column, type PlacedPiece } from "./paper-columns.ts";
import { piecesOf, type Flow, type Piece } from "./layout-tree.ts";
import type { PaperSize } from "./layout-tree.ts";
import { evidenceOnPaper, shortEvidence, type ShortEvidence } from "./sheet-evidence-paper.ts";
import { handlingOnPaper } from "./sheet-hazard-paper.ts";
import { sheetHead } from "./sheet-head-paper.ts";
import {
  sheetPictures,
  sheetSections,
  type PaperDetail,
  type SheetPictures,
} from "./sheet-sections-paper.ts";

export const MARGIN = { side: 15, top: 13, bottom: 19 } as const;
const GUTTER = 7;
/** Between the first screen and the columns below it. */
const BELOW_HEAD = 5;

/** A sheet with a place for everything, before it is drawn. */
export interface LaidOutSheet {
  readonly flow: readonly Flow[];
  readonly placed: ReadonlyMap<Piece, PlacedPiece>;
  readonly pages: number;
  readonly fit: PaperFit;
}

/** Parts of a sheet's page that paper leaves to the site. */
export const LEFT_TO_THE_SITE = ["jsonLd"] as const;
export type PrintedView = Omit<SheetContent, (typeof LEFT_TO_THE_SITE)[number]>;

export interface SheetToPrint {
  readonly view: PrintedView;
  readonly page: SheetPage;
}

/** Size of the text in the columns [pt], and how much is said in it. */
export interface PaperFit extends PaperDetail {
  readonly sizePt: number;
}

/** From roomy to tight: first the type gives way, then what only explains; never a caution. */
const FITS: readonly PaperFit[] = [
  ...[9, 8.5, 8, 7.5].map(
    (sizePt) => ({ sizePt, reasons: "all", tables: true, curves: "all" }) as const,
  ),
  ...[8, 7.5].map(
    (sizePt) => ({ sizePt, reasons: "advice", tables: true, curves: "all" }) as const,
  ),
  { sizePt: 7.5, reasons: "advice", tables: false, curves: "all" },
  { sizePt: 7.5, reasons: "advice", tables: false, curves: "trail" },
  { sizePt: 7.5, reasons: "none", tables: false, curves: "trail" },
  ...[7.5, 7].map(
    (sizePt) => ({ sizePt, reasons: "none", tables: false, curves: "none" }) as const,
  ),
];
const MOST_PAGES = 2;

/** A sheet on one or two pages; on more only where its cautions alone need them. */
export function laidOutSheet(sheet: SheetToPrint, paper: PaperSize): LaidOutSheet {
  let last: LaidOutSheet | undefined;
  const parts = preparedParts(sheet, paper);
  for (const fit of FITS) {
    last = laidOut(sheet, parts, paper, fit);
    if (last.pages <= MOST_PAGES) return last;
  }
  if (last === undefined)
    throw new RangeError("The list of fits is empty; right would be at least one");
  return last;
}

/** What is the same whatever is tried with the columns. */
interface PreparedParts {
  readonly head: readonly Flow[];
  readonly placedHead: readonly PlacedPiece[];
  readonly pictures: SheetPictures;
  readonly evidence: ShortEvidence;
}

function preparedParts({ view, page }: SheetToPrint, paper: PaperSize): PreparedParts {
  const {
    words,
    worded,
    context: {
      records: { workshop },
    },
  } = page;
  const demonstration = workshop.demonstration === true ? words.pages.demonstration : undefined;
  const head = sheetHead(
    { view, worded, words, workshop: workshop.name, demonstration },
    { widthMm: paper.widthMm - 2 * MARGIN.side, sizePt: 9 },
  );
  const placedHead = placedPieces(piecesOf(head), (index) => ({
    page: index,
    xMm: MARGIN.side,
    topMm: MARGIN.top,
    bottomMm: paper.heightMm - MARGIN.bottom,
  }));
  return { head, placedHead, pictures: sheetPictures(page), evidence: shortEvidence(page) };
}

function laidOut(
  { view, page }: SheetToPrint,
  { head, placedHead, pictures, evidence }: PreparedParts,
  paper: PaperSize,
  fit: PaperFit,
): LaidOutSheet {
  const style = { widthMm: (paper.widthMm - 2 * MARGIN.side - GUTTER) / 2, sizePt: fit.sizePt };
  const body: Flow[] = [
    ...sheetSections({ view, page, pictures, style, detail: fit }),
    handlingOnPaper(view, style),
    evidenceOnPaper(view, evidence, page.words, style),
  ];
  const bottom = paper.heightMm - MARGIN.bottom;
  const lastOfHead = placedHead.at(-1);
  const [headPage, headBottom] =
    lastOfHead === undefined
      ? [0, MARGIN.top]
      : [lastOfHead.page, lastOfHead.yMm + lastOfHead.piece.heightMm];
  const columns =
    (lastPage: number, lastBottom: number) =>
    (index: number): Column => {
      const at = headPage + Math.floor(index / 2);
      return {
        page: at,
        xMm: MARGIN.side + (index % 2) * (style.widthMm + GUTTER),
        topMm: at === headPage ? headBottom + BELOW_HEAD : MARGIN.top,
        bottomMm: at === lastPage ? lastBottom : bottom,
      };
    };
  const pieces = piecesOf(body);
  let placed = placedPieces(pieces, columns(-1, bottom));
  const pages = pageCount(placed);
  // Columns of the last page end at about one height.
  const top = pages - 1 === headPage ? headBottom + BELOW_HEAD : MARGIN.top;
  for (let lower = top + 10; lower < bottom; lower += 4) {
    const balanced = placedPieces(pieces, columns(pages - 1, lower));
    if (
      pageCount(balanced) > pages ||
      balanced.some(
        ({ page: at, yMm, piece }) => at === pages - 1 && yMm + piece.heightMm > lower + 1e-6,
      )
    )
      continue;
    placed = balanced;
    break;
  }
  return {
    flow: [...head, ...body],
    placed: new Map([...placedHead, ...placed].map((place) => [place.piece, place])),
    pages,
    fit,
  };
}
