import type { Block, PaintColour, SectionBlock } from "../blocks/block.ts";
import type { BenchView, SheetView } from "../blocks/page-kinds.ts";
import type { PageContext } from "../pages/page-context.ts";
import type { Records } from "../records/records.ts";
import type { OwnWords } from "../words/words.ts";
import { sectionFlow } from "./block-flow.ts";
import type { Flow, PaperSize, Piece } from "./layout-tree.ts";
import { leastMm, RECKONED_PT, takenBy, type Taken } from "./least-height.ts";
import { inkOf, type Ink } from "./mark.ts";
import type { PhotographOnPaper } from "./paper-photographs.ts";
import {
  chainsOf,
  pageCount,
  placedChains,
  placedPieces,
  type Column,
  type PlacedPiece,
} from "./paper-columns.ts";
import { linkRun, paragraph, quiet, smallPt, type PaperStyle } from "./paper-style.ts";
import { sheetHead } from "./sheet-head.ts";

export const MARGIN = { side: 15, top: 13, bottom: 19 } as const;
/** Of a dense sheet: as near to the edge as printers reach, and to the foot as its rule allows. */
const DENSE_MARGIN = { side: 12, top: 10, bottom: 17 } as const;
const COLUMNS = 2;
const GUTTER_MM = 6;
/** Between the first screen and the columns below it. */
const BELOW_HEAD_MM = 5;

/** What papers say and show beside the pages that they are made of. */
export interface PaperContext extends Pick<PageContext, "date"> {
  readonly words: OwnWords;
  readonly records: Pick<Records, "workshop"> & {
    readonly photographs: readonly PhotographOnPaper[];
  };
}

/** A colour's pages, for the painter and for the bench: all that its sheet on paper is made from. */
export interface PagesToPrint {
  readonly slug: string;
  readonly sheet: SheetView;
  readonly bench: BenchView;
  /** What goes before all that is said of hazards, at the foot of every page. */
  readonly caution: string;
  readonly context: PaperContext;
}

/** The same of a site, whose pages are filled when they are looked into. */
export interface SheetToPrint extends PagesToPrint {
  /** The hash of both pages, which may be known without filling them. */
  readonly key: () => string;
}

/** A sheet with a place for everything, before it is drawn. */
export interface LaidOutSheet {
  readonly flow: readonly Flow[];
  readonly placed: ReadonlyMap<Piece, PlacedPiece>;
  readonly pages: number;
  readonly fit: PaperFit;
  /** What lists and foots say of it. */
  readonly listed: ListedSheet;
}

export interface ListedSheet extends Pick<SheetView, "name" | "madeOf" | "offer"> {
  readonly masstone: Pick<SheetView["masstone"], "colour">;
  readonly revision: string;
}

/** Size of the text in the columns [pt], and which blocks of the bench page are left to the site. */
export interface PaperFit {
  readonly sizePt: number;
  readonly without: readonly Block["kind"][];
  /** Statements of further languages, and of the dry pigments, run in; lines and rows of tables closer together. */
  readonly isTight?: boolean;
  /** Less space above sections and paragraphs as well. */
  readonly isClose?: boolean;
  /** Swatches lower, and the paint's own statements run in too. */
  readonly isDense?: boolean;
  /** Figures run in as well, each with its name and standing, in place of tables. */
  readonly isSpare?: boolean;
}

/** What the bench page only explains. */
const EXPLAINS = ["table", "terms", "list", "plots", "statement"] as const;

const CLOSE = { isTight: true, isClose: true } as const;

/** From roomy to tight: first the type gives way, then what the bench only explains, then the space between lines and statements, then the height of swatches; a caution, and what a painter reads, never. */
export const FITS: readonly PaperFit[] = [
  ...[9, 8.5, 8].map(fitWithout()),
  ...[8.5, 8, 7.5].map(fitWithout("table", "terms")),
  ...[8, 7.5].map(fitWithout("table", "terms", "list")),
  ...[8, 7.5].map(fitWithout("table", "terms", "list", "plots")),
  ...[8, 7.5, 7].map((sizePt) => ({ sizePt, without: EXPLAINS })),
  ...[7.5, 7].map((sizePt) => ({ sizePt, without: EXPLAINS, isTight: true })),
  ...[7.5, 7].map((sizePt) => ({ sizePt, without: EXPLAINS, ...CLOSE })),
  ...[7.5, 7].map((sizePt) => ({ sizePt, without: EXPLAINS, ...CLOSE, isDense: true })),
  ...[7.5, 7].map((sizePt) => ({
    sizePt,
    without: EXPLAINS,
    ...CLOSE,
    isDense: true,
    isSpare: true,
  })),
];

/** Fits that leave the same to the site, in any size. */
function fitWithout(...without: PaperFit["without"]): (sizePt: number) => PaperFit {
  return (sizePt) => ({ sizePt, without });
}

/** Blocks that are left to the site, the fewest kept first: where these go over, they do so with more. */
const LEFT_OUT = [...new Set(FITS.map(({ without }) => without))].toReversed();

const MOST_PAGES = 2;
const TIGHT_LEADING = 1.2;
const TIGHT_ROW_PAD_MM = { tight: 0.2, dense: 0.1 } as const;
const SPACING = { close: 0.5, dense: 0.3 } as const;

/**
 * A sheet on one or two pages; on a third, in roomy type, only where its cautions and figures find no room in two.
 * @param fits from roomy to tight
 */
export function laidOutSheet(
  printed: PagesToPrint,
  paper: PaperSize,
  fits: readonly PaperFit[] = FITS,
): LaidOutSheet {
  const sheet: PagesToPrint = {
    ...printed,
    sheet: { ...printed.sheet, sections: apart(printed.sheet.sections) },
    bench: { ...printed.bench, sections: apart(printed.bench.sections) },
  };
  const head = placedHead(sheet, paper, false);
  const denseHead = onceMade(() => placedHead(sheet, paper, true));
  const styleOf = columnStyles(head.style, paper, sheet.bench.canonical);
  const atFit = (fit: PaperFit): TriedSheet =>
    triedSheet(
      bodyOf(sheet, fit, styleOf(fit)),
      fit.isDense === true ? denseHead() : head,
      paper,
      fit,
    );
  const room = roomBelow(head, paper);
  const taken = new Map<PaperFit["without"], Taken>();
  const takenWithout = (without: PaperFit["without"]): Taken => {
    const fit = { sizePt: RECKONED_PT, without };
    const known = taken.get(without) ?? takenBy(bodyOf(sheet, fit, styleOf(fit)));
    taken.set(without, known);
    return known;
  };
  const tried = triedFits(
    fits,
    atFit,
    ({ sizePt, without, isTight = false }) =>
      !isTight &&
      LEFT_OUT.some(
        (kinds) =>
          kinds.length >= without.length &&
          leastMm(takenWithout(kinds), sizePt, room.columns) > room.heightMm,
      ),
  );
  const least = Math.min(...tried.map(({ pages }) => pages));
  const chosen = tried.find(({ pages }) => pages === least);
  if (chosen === undefined)
    throw new RangeError("The list of fits is empty; right would be at least one");
  const { body, head: chosenHead, pages, fit } = chosen;
  const placed = balanced(chosen, paper.heightMm - marginOf(fit).bottom) ?? chosen.placed;
  return {
    flow: [...chosenHead.flow, ...body],
    placed: new Map([...chosenHead.placed, ...placed].map((place) => [place.piece, place])),
    pages,
    fit,
    listed: listedSheet(printed),
  };
}

/** Of a sheet in a fit, from the edges of its paper to all that stands in its columns [mm]. */
export function marginOf({
  isDense = false,
}: Pick<PaperFit, "isDense">): typeof MARGIN | typeof DENSE_MARGIN {
  return isDense ? DENSE_MARGIN : MARGIN;
}

/** Between the margins of a sheet in a fit [mm]. */
function setWidthMm({ widthMm }: PaperSize, fit: Pick<PaperFit, "isDense">): number {
  return widthMm - 2 * marginOf(fit).side;
}

/** What is made when it is first asked for. */
function onceMade<T>(make: () => T): () => T {
  let made: T | undefined;
  return () => (made ??= make());
}

/**
 * Fits from roomy to tight down to the first that goes on as many pages as a sheet should have. What
 * is certain to go over is passed by, unless nothing goes and the least pages are to be had.
 */
function triedFits(
  fits: readonly PaperFit[],
  atFit: (fit: PaperFit) => TriedSheet,
  isPassedBy: (fit: PaperFit) => boolean,
): TriedSheet[] {
  const tried = new Map<PaperFit, TriedSheet>();
  const isFound = (fit: PaperFit): boolean => {
    const one = atFit(fit);
    tried.set(fit, one);
    return one.pages <= MOST_PAGES;
  };
  if (!fits.some((fit) => !isPassedBy(fit) && isFound(fit)))
    fits.some((fit) => !tried.has(fit) && isFound(fit));
  return fits.flatMap((fit) => tried.get(fit) ?? []);
}

/** All columns below the first screen, on as many pages as a sheet should have. */
interface Room {
  readonly columns: number;
  readonly heightMm: number;
}

function roomBelow(head: PlacedHead, paper: PaperSize): Room {
  const at = columnsBelow(head, paper)(-1, 0);
  let [columns, heightMm] = [0, 0];
  for (; at(columns).page < MOST_PAGES; columns++)
    heightMm += at(columns).bottomMm - at(columns).topMm;
  return { columns, heightMm };
}

function listedSheet({ sheet, bench: { revision } }: PagesToPrint): ListedSheet {
  const { name, madeOf, offer, masstone } = sheet;
  return {
    name,
    madeOf,
    offer,
    revision,
    masstone: masstone.colour === undefined ? {} : { colour: masstone.colour },
  };
}

interface TriedSheet {
  readonly head: PlacedHead;
  readonly body: readonly Flow[];
  readonly columns: (lastPage: number, lastBottom: number) => (index: number) => Column;
  readonly placed: readonly PlacedPiece[];
  readonly pages: number;
  readonly fit: PaperFit;
}

interface PlacedHead {
  readonly flow: readonly Flow[];
  readonly placed: readonly PlacedPiece[];
  readonly style: PaperStyle;
}

function placedHead(sheet: PagesToPrint, paper: PaperSize, isDense: boolean): PlacedHead {
  const style: PaperStyle = {
    widthMm: setWidthMm(paper, { isDense }),
    sizePt: 9,
    paints: paintsOf(sheet),
    words: sheet.context.words.pages.sheetPaper,
    ownSheets: sheet.context.records.workshop.pageLanguages ?? ["en"],
    ...(isDense && { isDense }),
    ...(sheet.sheet.canonical !== undefined && { address: sheet.sheet.canonical }),
  };
  const flow = sheetHead(sheet, style);
  const margin = marginOf({ isDense });
  return {
    flow,
    style,
    placed: placedPieces(flow, (page) => ({
      page,
      xMm: margin.side,
      topMm: margin.top,
      bottomMm: paper.heightMm - margin.bottom,
    })),
  };
}

/** Every paint of a sheet's blocks by the sRGB that its pictures show it in. */
function paintsOf({ sheet, bench }: PagesToPrint): ReadonlyMap<string, Ink> {
  const paints = new Map<string, Ink>();
  const visit = (value: unknown): void => {
    if (typeof value !== "object" || value === null) return;
    if ("hex" in value && "lab" in value) {
      const colour = value as PaintColour;
      paints.set(colour.hex.toLowerCase(), inkOf(colour));
    } else for (const part of Object.values(value)) visit(part);
  };
  visit([sheet.masstone, sheet.tints, sheet.sections, bench.sections]);
  return paints;
}

/** How the columns of one try are set. */
interface ColumnStyles {
  readonly painter: PaperStyle;
  readonly bench: PaperStyle;
}

/** One style for all tries that set their columns alike, so that a block is laid out in it once. */
function columnStyles(
  head: PaperStyle,
  paper: PaperSize,
  benchAddress: string | undefined,
): (fit: PaperFit) => ColumnStyles {
  const known = new Map<string, ColumnStyles>();
  return ({ sizePt, isTight = false, isClose = false, isDense = false, isSpare = false }) => {
    const key = `${sizePt} ${isTight} ${isClose} ${isDense} ${isSpare}`;
    const painter: PaperStyle = {
      ...head,
      widthMm: columnMm({ widthMm: setWidthMm(paper, { isDense }) }),
      sizePt,
      ...(isTight
        ? {
            isRunIn: true,
            leading: TIGHT_LEADING,
            rowPadMm: TIGHT_ROW_PAD_MM[isDense ? "dense" : "tight"],
          }
        : {}),
      ...(isClose && { spacing: SPACING[isDense ? "dense" : "close"] }),
      ...(isDense && { isDense }),
      ...(isSpare && { isSpare }),
    };
    const styles = known.get(key) ?? {
      painter,
      bench: {
        ...painter,
        isOneLanguage: true,
        ...(benchAddress !== undefined && { address: benchAddress }),
      },
    };
    known.set(key, styles);
    return styles;
  };
}

/** Each block an object of its own: what is laid out of it has one place on the sheet. */
function apart(sections: readonly SectionBlock[]): SectionBlock[] {
  const own = (block: Block): Block =>
    block.kind === "group" || block.kind === "fold"
      ? { ...block, blocks: block.blocks.map(own) }
      : { ...block };
  return sections.map((section) => ({ ...section, blocks: section.blocks.map(own) }));
}

/** All that is set in columns below the first screen. */
function bodyOf(
  { sheet, bench, context: { words } }: PagesToPrint,
  fit: PaperFit,
  { painter: style, bench: benchStyle }: ColumnStyles,
): Flow[] {
  const benchAddress = bench.canonical;
  return [
    ...sectionFlow(sheet.sections, style),
    ...sectionFlow(
      bench.sections.map((section) => without(fit.without, section)),
      benchStyle,
    ),
    paragraph(quiet(words.pages.sheetPaper.painted), style, {
      sizePt: smallPt(style),
      beforeMm: 4 * (style.spacing ?? 1),
    }),
    ...(benchAddress === undefined
      ? []
      : [
          paragraph(
            [
              ...quiet(words.pages.sheetPaper.inFull),
              linkRun(
                { text: whole("../evidence/", benchAddress), href: "../evidence/" },
                { address: benchAddress },
                "sans bold",
              ),
            ],
            style,
            { sizePt: smallPt(style) },
          ),
        ]),
  ];
}

function triedSheet(
  body: readonly Flow[],
  head: PlacedHead,
  paper: PaperSize,
  fit: PaperFit,
): TriedSheet {
  const columns = columnsBelow(head, paper);
  const placed = placedPieces(body, columns(-1, 0));
  return { head, body, columns, placed, pages: pageCount(placed), fit };
}

/** Two columns a page below the first screen; those of one page may end higher up. */
function columnsBelow(head: PlacedHead, paper: PaperSize): TriedSheet["columns"] {
  const margin = marginOf(head.style);
  const bottom = paper.heightMm - margin.bottom;
  const widthMm = columnMm(head.style);
  const lastOfHead = head.placed.at(-1);
  const [headPage, headBottom] =
    lastOfHead === undefined
      ? [0, margin.top]
      : [lastOfHead.page, lastOfHead.yMm + lastOfHead.piece.heightMm];
  return (lastPage, lastBottom) => (index) => {
    const page = headPage + Math.floor(index / COLUMNS);
    return {
      page,
      xMm: margin.side + (index % COLUMNS) * (widthMm + GUTTER_MM),
      topMm: page === headPage ? headBottom + BELOW_HEAD_MM : margin.top,
      bottomMm: page === lastPage ? lastBottom : bottom,
    };
  };
}

function columnMm({ widthMm }: Pick<PaperStyle, "widthMm">): number {
  return (widthMm - GUTTER_MM) / 2;
}

function whole(href: string, address: string): string {
  return new URL(href, address).href;
}

/** Columns of the last page ending at about one height, tried in steps from the least that may hold all that stands there. */
function balanced(
  { body, columns, placed: unbalanced, pages }: TriedSheet,
  bottom: number,
): PlacedPiece[] | undefined {
  const last = pages - 1;
  const chains = chainsOf(body);
  const onLast = unbalanced.filter(({ page }) => page === last);
  const leastMm = onLast.reduce((sum, { piece }) => sum + piece.heightMm, 0) / COLUMNS;
  for (let lower = MARGIN.top + 10; lower < bottom; lower += 4) {
    const at = columns(last, lower);
    if (lower - at(COLUMNS * last).topMm < leastMm) continue;
    const placed = placedChains(chains, at);
    if (
      pageCount(placed) === pages &&
      placed.every(({ page, yMm, piece }) => page < last || yMm + piece.heightMm <= lower + 1e-6)
    )
      return placed;
  }
  return undefined;
}

/** A section of the bench page without blocks of some kinds; what nobody may miss is none of them. */
function without(kinds: PaperFit["without"], section: SectionBlock): SectionBlock {
  return { ...section, blocks: thinned(section.blocks, kinds) };
}

function thinned(blocks: readonly Block[], kinds: PaperFit["without"]): Block[] {
  return blocks.flatMap((block): Block[] =>
    kinds.includes(block.kind)
      ? []
      : block.kind === "group"
        ? [{ ...block, blocks: thinned(block.blocks, kinds) }]
        : [block],
  );
}
