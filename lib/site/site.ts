import type { Language } from "../records/schema/terms.ts";
import type { PageContext } from "../pages/page-context.ts";
import type { AnyPageView } from "../blocks/page-kinds.ts";
import type { SiteView } from "../present/views.ts";
import type { LaidOutCards } from "./laid-out-cards.ts";
import type { RangeCards } from "../print/range-cards.ts";
import type { SitePicture } from "../pictures/site-pictures.ts";
import type { SheetToPrint } from "../print/sheet-paper.ts";

/** The sheets as paper takes them, in order of slug. */
export interface RangeToPrint {
  readonly sheets: readonly SheetToPrint[];
  readonly cards: RangeCards;
  readonly laidOut: () => LaidOutCards;
  readonly context: PageContext;
}

/** One page for Eleventy to render: templates/pages/every-page.njk picks the template of its kind. */
export interface PageEntry {
  /** Below the site's root: `colours/bone-black/index.html`. */
  readonly path: string;
  /** Of no use to whoever searches: not in the list for search engines. */
  readonly isUnlisted?: boolean;
  readonly site: SiteView;
  readonly view: AnyPageView;
}

/** One file of data that is written as it is. */
export interface DataFile {
  readonly path: string;
  readonly text: string;
}

/** A file of bytes: a PDF. */
export interface BinaryFile {
  readonly path: string;
  readonly bytes: Uint8Array;
}

/** Everything that a build writes, but for styles and fonts. */
export interface Site {
  readonly pages: readonly PageEntry[];
  readonly files: readonly DataFile[];
  readonly sheetCount: number;
  /** The folder of its host that it stands in, `/` unless said. */
  readonly base?: string;
  /** Whose words its scripts say; without it English. */
  readonly language?: Language;
  /** The same in other languages, each in a folder of its own; one whole site once {@link inOneFolder}. */
  readonly translated?: readonly { readonly folder: string; readonly site: Site }[];
  /** Where scripts that say words of another language go, by the folder of that language. */
  readonly scripts?: readonly { readonly folder: string; readonly language: Language }[];
  /** Pictures to pass on. */
  readonly pictures?: readonly SitePicture[];
  /** What a build may put on paper. */
  readonly prints?: RangeToPrint;
  readonly papers?: readonly BinaryFile[];
  /** Photographs in their sizes, once for all languages. */
  readonly photographs?: readonly BinaryFile[];
}
