import { sourceName } from "../present/source-name.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import type { LinkView } from "../present/views.ts";
import type { Words } from "../words/words.ts";
import type { TheoryFigure } from "../optics/theory/theory-figure.ts";
import type { Collection } from "../collection/collection.ts";
import type { Language } from "../quantities/languages.ts";
import type { Theme } from "../records/schema/terms.ts";
import type { MixingData } from "../mixing/mixing-paint.ts";
import type { OwnTexts } from "../records/own-texts.ts";
import type { Keep } from "../kept/kept-result.ts";
import type { KeptSteps } from "../kept/kept-steps.ts";
import type { Records } from "../records/records.ts";
import type { ColourRow } from "./colour-row.ts";
import type { Fits } from "../sheet/tints/strength.ts";

/** What every page is made from. */
export interface PageContext {
  readonly words: Words;
  /** Of its language, below the site's root: "", or "de/". */
  readonly folder: string;
  readonly records: Records;
  /** Texts of the records that nobody translated into its language. */
  readonly ownTexts: OwnTexts;
  /** K and S of every colour, or why there are none. */
  readonly fits: Fits;
  /** In order of slug. */
  readonly sheets: readonly SheetTexts[];
  readonly range: Collection;
  /** By slug; whoever asks has read of it what he looks at. */
  readonly rows: () => Readonly<Record<string, ColourRow>>;
  /** What theory says of the range's blacks in its whites: worked out, or taken from the cache, by the first page that asks for it. */
  readonly theory: () => TheoryFigure;
  /** What is mixed with; whoever asks has read of it what he looks at. */
  readonly mixing: () => MixingData;
  /** Newest first. */
  readonly answers: readonly AnswerLink[];
  /** The date to print, YYYY-MM-DD. */
  readonly date: string | undefined;
  /** Of all sheets together. */
  readonly revision: string;
  /** What costs much and follows from little is kept between builds. */
  readonly kept: Keep;
  /** Steps kept by what they read of records, sheets and the rest. */
  readonly steps?: KeptSteps | undefined;
}

/** An answer as other pages point to it, with its short answer as plain text. */
export interface AnswerLink {
  readonly slug: string;
  readonly question: string;
  readonly summary: string;
  /** YYYY-MM-DD. */
  readonly date?: string;
  readonly theme?: Theme;
  /** Colours that it names. */
  readonly colours: readonly string[];
  /** Its language, where it is not that of the page. */
  readonly language?: Language;
}

/** A page's own place, to make links from. */
export interface PagePlace {
  /** Below the folder of its language: `colours/bone-black/index.html`. */
  readonly path: string;
  /** From the page to that folder: "../../". */
  readonly root: string;
}

export function pagePlace(path: string): PagePlace {
  return { path, root: "../".repeat(path.split("/").length - 1) };
}

/** From a page to another of its language, by where that lies. */
export function addressTo(path: string, { root }: Pick<PagePlace, "root">): string {
  return root + shortAddress(path);
}

/** The address of a page, which names its folder alone. */
export function shortAddress(path: string): string {
  return path.replace(/index\.html$/, "");
}

/** A page's whole address; nothing where the workshop gives the site none. */
export function wholeAddress(
  { records, folder }: Pick<PageContext, "records" | "folder">,
  path: string,
): string | undefined {
  const { siteAddress } = records.workshop;
  return siteAddress === undefined
    ? undefined
    : new URL(
        `${folder}${shortAddress(path)}`,
        siteAddress.endsWith("/") ? siteAddress : `${siteAddress}/`,
      ).href;
}

/** The whole address of a picture to pass on, which all languages share. */
export function pictureAddress(
  { records }: Pick<PageContext, "records">,
  path: string,
): string | undefined {
  return wholeAddress({ records, folder: "" }, path);
}

/** A source as a page cites it in passing, linked to the list of sources. */
export function sourceLink(
  { records, words }: Pick<PageContext, "records" | "words">,
  { root }: Pick<PagePlace, "root">,
): (key: string) => LinkView {
  return (key) => ({
    text: sourceName(key, records.sources.get(key), words.pages.sources.standings),
    href: `${root}sources/#source-${key}`,
  });
}
