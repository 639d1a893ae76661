import type { SheetTexts } from "../present/sheet-texts.ts";
import type { PageView } from "../present/views.ts";
import type { Language } from "../quantities/languages.ts";
import { saidIn, type Said, type Texts } from "../words/texts.ts";
import type { PageContext, PagePlace } from "./page-context.ts";

/** A kind of page, declared in its file and listed in lib/site/all-pages.ts: its template is templates/pages/<kind of its view>.njk. */
export interface PageKind<V extends PageView, S = PlannedSite> {
  /** Which pages of it a site has, in their order. */
  readonly pages: (site: S) => readonly PlannedPage<V>[];
  /** What its pages alone say, where the rows are its own. */
  readonly said?: (language: Language) => object;
}

/** What pages are planned from. */
export interface PlannedSite {
  readonly context: PageContext;
  readonly published: readonly PublishedTexts[];
}

/** A sheet; whoever asks for its revision has read it. */
interface PublishedTexts {
  readonly worded: SheetTexts;
  readonly revision: string;
}

/** A page that is to be. */
export interface PlannedPage<V> {
  /** Below the folder of its language. */
  readonly path: string;
  /** What goes into it is asked for here, so that it is known what it reads: a sheet's revision too. */
  readonly view: (place: PagePlace) => V;
  /** Where its links start, if not from where it lies. */
  readonly root?: string;
  /** Of no use to whoever searches. */
  readonly isUnlisted?: boolean;
}

/** A kind of which a site has one page, or none. */
export function onePage<V extends PageView>(
  path: string,
  filled: (context: PageContext, place: PagePlace) => V,
  isThere: (context: PageContext) => boolean = () => true,
): PageKind<V> {
  return {
    pages: ({ context }) =>
      isThere(context) ? [{ path, view: (place) => filled(context, place) }] : [],
  };
}

/** The same of a page with rows of its own, which it is handed in its language. */
export function pageWithRows<T extends Texts, V extends PageView>(
  path: string,
  rows: T,
  filled: (text: Said<T>, context: PageContext, place: PagePlace) => V,
): PageKind<V> {
  return {
    said: (language) => saidIn(language, rows),
    ...onePage(path, (context, place) =>
      filled(saidIn(context.words.language, rows), context, place),
    ),
  };
}

/** A kind of which each sheet has a page. */
export function pageOfEachSheet<V extends PageView>(
  pathOf: (slug: string) => string,
  filled: (sheet: PublishedTexts, context: PageContext, place: PagePlace) => V,
): PageKind<V> {
  return {
    pages: ({ published, context }) =>
      published.map((one) => ({
        path: pathOf(one.worded.sheet.slug),
        view: (place) => filled(one, context, place),
      })),
  };
}
