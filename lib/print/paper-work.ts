import { deserialize, serialize } from "node:v8";
import { inflateRawSync } from "node:zlib";
import type { BenchView, SheetView } from "../blocks/page-kinds.ts";
import type { Language } from "../records/schema/terms.ts";
import type { WorkshopRecord } from "../records/schema/workshop.ts";
import { WORDS } from "../words/languages.ts";
import type { LaidCard } from "./card-layout.ts";
import type { CardSize } from "./card-size.ts";
import { cardsPdf } from "./cards-pdf.ts";
import type { PaperSize } from "./layout-tree.ts";
import type { PhotographOnPaper } from "./paper-photographs.ts";
import { measureText } from "./print-document.ts";
import { FACES } from "./print-font.ts";
import { rangePdf } from "./range-pdf.ts";
import {
  laidOutSheet,
  type LaidOutSheet,
  type PagesToPrint,
  type PaperContext,
} from "./sheet-paper.ts";
import { sheetPdf } from "./sheet-pdf.ts";

/** Papers as they are asked of a thread: of plain data, words by their language, layouts as bytes. */

/** What papers say beside what they are made of. */
export interface SaidOnPaper {
  readonly workshop: WorkshopRecord;
  readonly date: string | undefined;
  readonly language: Language;
}

/** What a sheet is made of. */
export interface PagesOnPaper {
  readonly slug: string;
  /** Both pages, as JSON that is deflated. */
  readonly pages: Uint8Array;
  readonly caution: string;
  readonly said: SaidOnPaper;
  readonly paper: PaperSize;
  /** Those that the pages show. */
  readonly photographs: readonly PhotographOnPaper[];
}

export interface SheetOnPaper extends PagesOnPaper {
  /** As laid out before. */
  readonly laidOut?: Uint8Array;
}

export interface SheetPaper {
  readonly laidOut: Uint8Array;
  readonly pdf: Uint8Array;
}

export interface RangeOnPaper {
  readonly families: readonly {
    readonly name: string;
    readonly sheets: readonly {
      readonly slug: string;
      readonly caution: string;
      readonly laidOut: Uint8Array;
    }[];
  }[];
  readonly said: SaidOnPaper;
  readonly paper: PaperSize;
  readonly photographs: readonly PhotographOnPaper[];
}

export interface CardsOnPaper {
  readonly laid: readonly LaidCard[];
  readonly size: CardSize;
  readonly said: Pick<SaidOnPaper, "date" | "language"> & { readonly workshop: string };
}

/** Opens what every paper is set in, before the first of them is asked for. */
export function readyForPaper(): null {
  for (const face of FACES) measureText("a", face, 1);
  return null;
}

/** A sheet laid out, for the range. */
export function layoutOnPaper(asked: PagesOnPaper): Uint8Array {
  return shared(serialize(laidOutSheet(pagesOf(asked), asked.paper)));
}

/** A sheet's PDF, and its layout for the range. */
export function sheetOnPaper({ laidOut: before, ...asked }: SheetOnPaper): SheetPaper {
  const pages = pagesOf(asked);
  const layout = before === undefined ? laidOutSheet(pages, asked.paper) : layoutOf(before);
  return {
    laidOut: before ?? shared(serialize(layout)),
    pdf: sheetPdf(pages, asked.paper, layout),
  };
}

function pagesOf({ slug, pages, caution, said, photographs }: PagesOnPaper): PagesToPrint {
  const { sheet, bench } = JSON.parse(inflateRawSync(pages).toString()) as {
    readonly sheet: SheetView;
    readonly bench: BenchView;
  };
  return { slug, sheet, bench, caution, context: contextOf(said, photographs) };
}

/** The range of sheets that are laid out. */
export function rangeOnPaper({ families, said, paper, photographs }: RangeOnPaper): Uint8Array {
  const context = contextOf(said, photographs);
  return rangePdf(
    families.map(({ name, sheets }) => ({
      name,
      sheets: sheets.map(({ slug, caution, laidOut }) => ({
        slug,
        caution,
        laidOut: layoutOf(laidOut),
      })),
    })),
    context,
    paper,
  );
}

export function cardsOnPaper({
  laid,
  size,
  said: { workshop, date, language },
}: CardsOnPaper): Uint8Array {
  return cardsPdf(laid, size, { workshop, date, words: WORDS[language] }).bytes;
}

/** Bytes that other threads read where they lie: a layout goes back to whoever asked, and from there to the range. */
function shared(bytes: Uint8Array): Uint8Array {
  const own = new Uint8Array(new SharedArrayBuffer(bytes.length));
  own.set(bytes);
  return own;
}

function layoutOf(bytes: Uint8Array): LaidOutSheet {
  return deserialize(bytes) as LaidOutSheet;
}

function contextOf(
  { workshop, date, language }: SaidOnPaper,
  photographs: readonly PhotographOnPaper[],
): PaperContext {
  return { words: WORDS[language], date, records: { workshop, photographs } };
}
