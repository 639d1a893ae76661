import type { Language } from "../quantities/languages.ts";
import type { PageContext } from "../pages/page-context.ts";
import type { LaidOutCards } from "./laid-out-cards.ts";
import type { PageEntry } from "./page-entry.ts";
import type { SitePicture } from "../pictures/site-pictures.ts";
import type { RangeCards } from "../print/range-cards.ts";
import type { PackedPages } from "../print/packed-pages.ts";
import type { SheetToPrint } from "../print/sheet-paper.ts";

/** A sheet whose pages may be taken to another thread. */
export interface PackedSheet extends SheetToPrint {
  /** What both pages show, as JSON that is deflated. */
  readonly packed: () => PackedPages;
  /** Whether its record is another than when something of it was last kept. */
  readonly isEdited: boolean;
}

/** The sheets as paper takes them, in order of slug. */
export interface RangeToPrint {
  readonly sheets: readonly PackedSheet[];
  readonly cards: () => RangeCards;
  readonly laidOut: () => LaidOutCards;
  readonly context: PageContext;
}

/** One file of data that is written as it is. */
export interface DataFile {
  readonly path: string;
  readonly text: string;
  /** Of the text, where it is known without making that. */
  readonly hash?: string;
}

/** A file of bytes: a PDF, a photograph. */
export interface BinaryFile {
  readonly path: string;
  /** They may be made when they are asked for. */
  readonly bytes: Uint8Array;
  /** Of the bytes, where it is known without making them. */
  readonly fileHash?: string;
}

/** Everything that a build writes, but for styles and fonts. */
export interface Site {
  readonly pages: readonly PageEntry[];
  /** Keep what was worked out for it, once all of it is made. */
  readonly keepSteps?: () => void;
  /** Worked out one after another while they are gone through, which may be after the first pages: of none that has been passed anything is held. */
  readonly files: () => Iterable<DataFile>;
  /** One of each language, which tells of everything else and is written last. */
  readonly manifests: () => readonly DataFile[];
  /** Those of the files that pages load by names which change with what they hold. */
  readonly assets?: () => readonly DataFile[];
  readonly sheetCount: number;
  /** The folder of its host that it stands in, `/` unless said. */
  readonly base?: string;
  /** Whose words its scripts say; without it English. */
  readonly language?: Language;
  /** The same in other languages, each in a folder of its own; one whole site once {@link inOneFolder}. */
  readonly translated?: readonly { readonly folder: string; readonly site: Site }[];
  /** Where scripts that say words of another language go, by the folder of that language. */
  readonly scripts?: readonly { readonly folder: string; readonly language: Language }[];
  /** Pictures to pass on, which no build for the screen asks for. */
  readonly pictures?: () => readonly SitePicture[];
  /** What a build may put on paper. */
  readonly prints?: RangeToPrint;
  readonly papers?: readonly BinaryFile[];
  /** Photographs in their sizes, once for all languages. */
  readonly photographs?: readonly BinaryFile[];
}
