import type { SheetTexts } from "../present/sheet-texts.ts";
import { remembered } from "../quantities/remembered.ts";
import { pictureAddress, type PageContext } from "./page-context.ts";
import { ownColour } from "./screen-swatch.ts";
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
export function picturedColours(
  slugs: readonly string[],
  context: Pick<PageContext, "sheets">,
): readonly string[] {
  return slugs.filter((slug) => isPictured(wordedSheet(slug, context))).slice(0, MOST_BESIDE);
}

function isPictured(worded: SheetTexts | undefined): boolean {
  return worded !== undefined && ownColour(worded.sheet.notations.masstone) !== undefined;
}

const someIsPictured = remembered((sheets: readonly SheetTexts[]) => sheets.some(isPictured));

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
): {
  readonly image?: {
    readonly href: string;
    readonly width: number;
    readonly height: number;
    readonly alt: string;
  };
} {
  const href = pictureAddress(context, `${folder}${SHARED_PICTURES.wide}`);
  return href === undefined || !someIsPictured(context.sheets)
    ? {}
    : { image: { href, width: 1200, height: 630, alt } };
}
