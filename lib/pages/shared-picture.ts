import type { SheetTexts } from "../present/sheet-texts.ts";
import type { PageView } from "../present/views.ts";
import { remembered } from "../quantities/remembered.ts";
import { rowOf } from "./colour-rows.ts";
import { pictureAddress, type PageContext } from "./page-context.ts";
import { wordedSheet } from "./worded-sheet.ts";

/** Names of the pictures of a page to pass on, beside the page itself. */
export const SHARED_PICTURES = {
  wide: "swatch.png",
  square: "swatch-square.png",
  strip: "swatch-strip.png",
} as const;

/** At most so many colours stand beside each other in one picture. */
export const MOST_BESIDE = 4;

/** Of some colours those that a picture can show, at most four. */
export function picturedColours(slugs: readonly string[], context: InRows): readonly string[] {
  return slugs
    .filter((slug) => {
      const worded = wordedSheet(slug, context);
      return worded !== undefined && isPictured(worded, context);
    })
    .slice(0, MOST_BESIDE);
}

type InRows = Pick<PageContext, "sheets" | "rows" | "words">;

function isPictured(worded: SheetTexts, context: InRows): boolean {
  return rowOf(worded, context).colour !== undefined;
}

const someIsPictured = remembered((context: InRows) =>
  context.sheets.some((worded) => isPictured(worded, context)),
);

/** The folder whose picture stands for a page: its own where it is about several colours, that of its one colour, else that of the range. */
export function pictureFolder(colours: readonly string[], own: string): string {
  const [only] = colours;
  return only === undefined ? "" : colours.length === 1 ? `colours/${only}/` : own;
}

/** What a page's head says of its picture; nothing where the site has no address, or no colour of it is known. */
export function sharedPicture(
  context: PageContext,
  folder: string,
  alt: string,
): Pick<PageView, "image"> {
  const href = pictureAddress(context, `${folder}${SHARED_PICTURES.wide}`);
  return href === undefined || !someIsPictured(context)
    ? {}
    : { image: { href, width: 1200, height: 630, alt } };
}
