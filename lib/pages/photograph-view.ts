import { topOf } from "./site-frame.ts";
import type { PhotographView } from "../present/views.ts";
import type { TextInLanguages } from "../records/schema/photograph.ts";
import type { Photograph } from "../records/photographs.ts";
import type { Language } from "../quantities/languages.ts";
import type { PictureSizes, ScreenPicture } from "../records/taken-photograph.ts";
import { pageLanguages } from "./page-languages.ts";
import type { PageContext, PagePlace } from "./page-context.ts";
import { given } from "../quantities/given.ts";

/** Widths that assets/styles/photographs.css gives them. */
const SIZES = {
  first:
    "(min-width: 75rem) min(66vw - 14rem, 45rem), (min-width: 50rem) min(100vw - 4rem, 68rem), 100vw",
  further:
    "(min-width: 75rem) min(33vw - 8rem, 22rem), (min-width: 50rem) min(50vw - 3rem, 33rem), 100vw",
};

/** What stands beside one picture. */
export interface ShownPicture {
  readonly photograph: Photograph;
  readonly pictures: PictureSizes;
  /** What it is of: of its colour, pigment or lot. */
  readonly name: string;
  /** Number of the lot that it is of. */
  readonly lot?: string;
  /** What is to be known of its colours. */
  readonly remarks: readonly string[];
  /** Said in place of what the record says of the whole picture. */
  readonly instead?: string;
}

/** One picture in its sizes, with its caption. @param at its place among those of the page. */
export function photographView(
  { photograph: { record }, pictures, name, lot, remarks, instead }: ShownPicture,
  at: number,
  { words, records, folder }: PageContext,
  place: PagePlace,
): PhotographView[] {
  const text = words.pages.photographs;
  const [own] = pageLanguages(records.workshop);
  const toPage = (texts: TextInLanguages): TextOfPage => textIn(texts, words.language, own);
  const jpeg = inFormat(pictures, "jpeg", "sRGB");
  const [fallback] = jpeg;
  if (fallback === undefined) return [];
  const shown = record.shows === undefined ? undefined : toPage(record.shows);
  const light = record.light === undefined ? undefined : toPage(record.light);
  const alt = record.alt === undefined || instead !== undefined ? undefined : toPage(record.alt);
  const day = record.date === undefined ? [] : [words.date(record.date)];
  const taken = given([light?.text, ...day]).join(", ");
  // The pictures lie once for all languages.
  const top = topOf({ folder }, place.root);
  return [
    {
      ...(alt?.language !== undefined && { language: alt.language }),
      alt: alt?.text ?? text.alt(text.of[record.of], name),
      sources: [
        source(inFormat(pictures, "avif", "Display P3"), top),
        source(inFormat(pictures, "avif", "sRGB"), top),
        source(inFormat(pictures, "webp", "sRGB"), top),
      ].flat(),
      src: top + fallback.path,
      srcset: srcset(jpeg, top),
      sizes: at === 0 ? SIZES.first : SIZES.further,
      widthPx: fallback.widthPx,
      heightPx: fallback.heightPx,
      caption:
        instead !== undefined
          ? [{ text: instead }]
          : given([
              { text: sentence(text.of[record.of]) },
              lot !== undefined && { text: sentence(text.lot(lot)) },
              shown !== undefined && { ...shown, text: sentence(shown.text) },
              taken !== "" && {
                text: sentence(taken),
                ...(light?.language !== undefined && { language: light.language }),
              },
            ]),
      remarks,
      isLazy: at > 0,
      paper: {
        widthPx: pictures.paper.widthPx,
        heightPx: pictures.paper.heightPx,
        hash: pictures.hash,
      },
    },
  ];
}

interface TextOfPage {
  readonly text: string;
  readonly language?: Language;
}

/** A text in the page's language, else in the workshop's own, else in whatever there is. */
function textIn(texts: TextInLanguages, language: Language, own: Language): TextOfPage {
  if (typeof texts === "string")
    return language === own ? { text: texts } : { text: texts, language: own };
  const found = texts[language];
  if (found !== undefined) return { text: found };
  const [other] = Object.entries(texts) as [Language, string][];
  const ofOwn = texts[own];
  if (ofOwn !== undefined) return { text: ofOwn, language: own };
  return { text: other?.[1] ?? "", ...(other !== undefined && { language: other[0] }) };
}

function sentence(text: string): string {
  const upper = text.charAt(0).toUpperCase() + text.slice(1);
  return /[.!?]$/.test(upper) ? upper : `${upper}.`;
}

function inFormat(
  { screen }: PictureSizes,
  type: ScreenPicture["type"],
  gamut: ScreenPicture["gamut"],
): ScreenPicture[] {
  return screen.filter((one) => one.type === type && one.gamut === gamut);
}

function source(pictures: readonly ScreenPicture[], top: string): PhotographView["sources"] {
  const [first] = pictures;
  if (first === undefined) return [];
  return [
    {
      type: `image/${first.type}`,
      srcset: srcset(pictures, top),
      ...(first.gamut !== "sRGB" && { media: "(color-gamut: p3)" }),
    },
  ];
}

function srcset(pictures: readonly ScreenPicture[], top: string): string {
  return pictures.map(({ path, widthPx }) => `${top}${path} ${widthPx}w`).join(", ");
}
