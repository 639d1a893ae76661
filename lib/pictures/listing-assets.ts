import { zipSync } from "fflate";
import type { WorkCache } from "../kept/work-cache.ts";
import { pagePlace, type PageContext } from "../pages/page-context.ts";
import { colourPhotographs } from "../pages/photograph-blocks.ts";
import { sheetPage } from "../pages/sheet-page.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import { paperPhotographs } from "../print/paper-photographs.ts";
import { PX_PER_MM } from "./picture-face.ts";
import { PICTURE_TYPES } from "./drawn-picture.ts";
import { keptPicture } from "./kept-pictures.ts";
import { altTexts, listingText, type ListedPicture } from "./listing-text.ts";
import {
  besidePictures,
  colourPictures,
  imprintOf,
  shownPaint,
  type SitePicture,
} from "./site-pictures.ts";

/** A zip of pictures and what belongs to them: `bone-black.zip`. */
export interface ListingAssets {
  readonly file: string;
  readonly bytes: Uint8Array;
}

type Files = Record<string, Uint8Array>;

/**
 * All that a shop's listing of a colour takes: its pictures in both formats, its photographs as
 * large as paper takes them, and as plain text what is to be known; the same bytes for the same sheet.
 */
export async function listingAssets(
  worded: SheetTexts,
  context: PageContext,
  cache: WorkCache | undefined,
): Promise<ListingAssets> {
  const { sheet } = worded;
  const { slug } = sheet;
  const place = pagePlace(`colours/${slug}/index.html`);
  const paint = shownPaint(sheetPage(worded, context, place));
  const files: Files = {};
  const listed: ListedPicture[] = [];
  if (paint !== undefined) {
    const alts = Object.values(altTexts(paint, context));
    const pictures = colourPictures(slug, paint, imprintOf(context));
    for (const [i, picture] of pictures.entries())
      for (const [file, bytes] of await inBothFormats(slug, picture, cache)) {
        files[file] = bytes;
        // Both formats are one picture.
        if (file.endsWith(`.${PICTURE_TYPES[0]}`))
          listed.push({ file: file.replace(/\.\w+$/, ""), alt: alts[i] ?? "" });
      }
  }
  const onPaper = paperPhotographs(context.records);
  const photographs = colourPhotographs(sheet, context, place).flatMap((one) => one.photographs);
  photographs.forEach(({ alt, caption, remarks, paper }, i) => {
    const bytes = onPaper.get(paper.hash);
    if (bytes === undefined) return;
    const file = `${slug}-photograph-${i + 1}.jpg`;
    files[file] = bytes;
    listed.push({
      file,
      alt: [`${alt.replace(/\.$/, "")}.`, ...caption.map(({ text }) => text), ...remarks].join(" "),
    });
  });
  return packed(slug, files, listingText(worded, listed, context));
}

/** Pictures of colours beside each other. @param folder of their page: "compare/a-and-b/". */
export async function comparisonAssets(
  folder: string,
  paints: Parameters<typeof besidePictures>[1],
  context: PageContext,
  cache: WorkCache | undefined,
): Promise<ListingAssets> {
  const pictures = besidePictures(folder, paints, imprintOf(context));
  const text = context.words.pages.listing;
  const name = folder
    .split("/")
    .filter((part) => part !== "")
    .join("-");
  const alt = text.beside(paints.map((paint) => paint.name));
  const files: Files = {};
  for (const picture of pictures)
    for (const [file, bytes] of await inBothFormats(name, picture, cache)) files[file] = bytes;
  const { workshop, demonstration } = imprintOf(context);
  const lines = [
    [alt, workshop, ...(demonstration === undefined ? [] : [demonstration])].join("\n"),
    text.screen,
    Object.keys(files)
      .map((file) => `${file}: ${alt}`)
      .join("\n"),
  ];
  return packed(name, files, `${lines.join("\n\n")}\n`);
}

async function inBothFormats(
  name: string,
  picture: SitePicture,
  cache: WorkCache | undefined,
): Promise<(readonly [string, Uint8Array])[]> {
  const { widthMm, heightMm } = picture.face();
  const size = [widthMm, heightMm].map((mm) => Math.round(mm * PX_PER_MM)).join("x");
  return Promise.all(
    PICTURE_TYPES.map(
      async (type) => [`${name}-${size}.${type}`, await keptPicture(picture, type, cache)] as const,
    ),
  );
}

/** The first day that a zip can tell, by the clock of the place: its bytes have no date of their own. */
const NO_DAY = new Date(1980, 0, 1);

/** Pictures are packed already, and only stored. */
function packed(name: string, files: Files, text: string): ListingAssets {
  return {
    file: `${name}.zip`,
    bytes: zipSync(
      {
        ...Object.fromEntries(
          Object.entries(files).map(([file, bytes]) => [file, [bytes, { level: 0 }] as const]),
        ),
        "README.txt": [new TextEncoder().encode(text), { level: 9 }],
      },
      { mtime: NO_DAY },
    ),
  };
}
