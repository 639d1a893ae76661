import { deserialize, serialize } from "node:v8";
import { inflateRawSync } from "node:zlib";
import type { BenchView, SheetView } from "../blocks/page-kinds.ts";
import type { Language } from "../quantities/languages.ts";
import type { WorkshopRecord } from "../records/schema/workshop.ts";
import { WORDS } from "../words/languages.ts";
import { CardTooLarge } from "./card-fault.ts";
import { laidOutCard, type CardToLayOut, type LaidCard } from "./card-layout.ts";
import type { CardSize } from "./card-size.ts";
import { cardsPdf } from "./cards-pdf.ts";
import { WORDS as SHAPED } from "./kept-words.ts";
import type { PaperSize } from "./layout-tree.ts";
import type { PhotographOnPaper } from "./paper-photographs.ts";
import { unpackedText, type PackedPages } from "./packed-pages.ts";
import { measureText } from "./print-document.ts";
import { FACES } from "./print-font.ts";
import { rangePdf } from "./range-pdf.ts";
import { laidOutSheet, type PagesToPrint, type PaperContext } from "./sheet-paper.ts";
import { sheetLeaves, sheetPdf, type SheetLeaves } from "./sheet-pdf.ts";

/** Papers as they are asked of a thread: of plain data, words by their language, leaves as bytes. */

/** What papers say beside what they are made of. */
export interface SaidOnPaper {
  readonly workshop: WorkshopRecord;
  readonly date: string | undefined;
  readonly language: Language;
}

/** What a sheet is made of. */
export interface PagesOnPaper {
  readonly slug: string;
  readonly pages: PackedPages;
  readonly caution: string;
  readonly said: SaidOnPaper;
  readonly paper: PaperSize;
  /** Those that the pages show, by hash. */
  readonly photographs: ReadonlyMap<string, Uint8Array>;
}

export interface SheetPaper {
  /** For the range. */
  readonly leaves: Uint8Array;
  readonly pdf: Uint8Array;
}

export interface RangeOnPaper {
  readonly families: readonly {
    readonly name: string;
    readonly sheets: readonly {
      readonly slug: string;
      readonly caution: string;
      readonly leaves: Uint8Array;
    }[];
  }[];
  readonly said: SaidOnPaper;
  readonly paper: PaperSize;
}

export interface CardsOnPaper {
  /** {@link LaidCard}s as V8 serializes them, deflated. */
  readonly laid: Uint8Array;
  readonly size: CardSize;
  readonly said: Pick<SaidOnPaper, "date" | "language"> & { readonly workshop: string };
}

/** Opens what every paper is set in, before the first of them is asked for. @param words of a run before, as {@link wordsOnPaper} gave them. */
export function readyForPaper(words: Uint8Array | null): null {
  if (words !== null) SHAPED.beginWith(words);
  for (const face of FACES) measureText("a", face, 1);
  return null;
}

/** Words that were shaped here, and all that were known before; null where none is new. */
export function wordsOnPaper(): Uint8Array | null {
  return SHAPED.toKeep() ?? null;
}

/** A sheet's leaves, for the range. */
export function leavesOnPaper(asked: PagesOnPaper): Uint8Array {
  const pages = pagesOf(asked);
  return shared(serialize(sheetLeaves(pages, asked.paper, laidOutSheet(pages, asked.paper))));
}

/** A sheet's PDF, and its leaves for the range. */
export function sheetOnPaper(asked: PagesOnPaper): SheetPaper {
  const pages = pagesOf(asked);
  const layout = laidOutSheet(pages, asked.paper);
  return {
    leaves: shared(serialize(sheetLeaves(pages, asked.paper, layout))),
    pdf: sheetPdf(pages, asked.paper, layout),
  };
}

function pagesOf({ slug, pages, caution, said, photographs }: PagesOnPaper): PagesToPrint {
  return {
    slug,
    sheet: JSON.parse(unpackedText(pages.sheet)) as SheetView,
    bench: JSON.parse(unpackedText(pages.bench)) as BenchView,
    caution,
    context: contextOf(said, photographs),
  };
}

/** The range of sheets that are drawn. */
export function rangeOnPaper({ families, said, paper }: RangeOnPaper): Uint8Array {
  return rangePdf(
    families.map(({ name, sheets }) => ({
      name,
      sheets: sheets.map(({ slug, caution, leaves }) => ({
        slug,
        caution,
        ...(deserialize(leaves) as SheetLeaves),
      })),
    })),
    contextOf(said, new Map()),
    paper,
  );
}

/** A {@link LaidCard} as V8 serializes it; null where its size cannot hold it. */
export function cardOnPaper(asked: CardToLayOut): Uint8Array | null {
  try {
    return serialize(laidOutCard(asked));
  } catch (error) {
    if (error instanceof CardTooLarge) return null;
    throw error;
  }
}

export function cardsOnPaper({
  laid,
  size,
  said: { workshop, date, language },
}: CardsOnPaper): Uint8Array {
  const cards = deserialize(inflateRawSync(laid)) as LaidCard[];
  return cardsPdf(cards, size, { workshop, date, words: WORDS[language] }).bytes;
}

/** Bytes that other threads read where they lie: leaves go back to whoever asked, and from there to the range. */
function shared(bytes: Uint8Array): Uint8Array {
  const own = new Uint8Array(new SharedArrayBuffer(bytes.length));
  own.set(bytes);
  return own;
}

function contextOf(
  { workshop, date, language }: SaidOnPaper,
  pictures: PagesOnPaper["photographs"],
): PaperContext {
  const photographs = [...pictures].map(([hash, bytes]): PhotographOnPaper => ({
    pictures: { hash, paper: { bytes: () => bytes } },
  }));
  return { words: WORDS[language], date, records: { workshop, photographs } };
}
