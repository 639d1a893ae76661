import type { Block, LadderBlock } from "../blocks/block.ts";
import type { SheetView } from "../blocks/page-kinds.ts";
import { wallOrder } from "../pages/colour-tile.ts";
import { pairAddress } from "../pages/compare-pages.ts";
import { rangeCounts } from "../pages/range-counts.ts";
import type { AnswerLink, PageContext } from "../pages/page-context.ts";
import { paintColour } from "../pages/screen-swatch.ts";
import { MOST_BESIDE, SHARED_PICTURES } from "../pages/shared-picture.ts";
import { madeStep } from "../kept/kept-steps.ts";
import { chosenPairs } from "../records/chosen-pairs.ts";
import {
  squareFace,
  SQUARE,
  STRIP,
  stripFace,
  wideFace,
  WIDE,
  type ShownPaint,
} from "./colour-faces.ts";
import type { Imprint, PictureFace } from "./picture-face.ts";
import { besideFace, rangeFace } from "./range-faces.ts";

/** A picture of a site, laid out when it is asked for. */
export interface SitePicture {
  /** Below the site's root. */
  readonly path: string;
  /** Plain data: all that the face is laid out from. */
  readonly of: unknown;
  readonly face: () => PictureFace;
}

/**
 * What pages to be passed on are shown by: the range, each colour, colours beside each other, answers about several.
 * @param sheetOf a colour's page, by its slug.
 */
export function sitePictures(
  sheetOf: (slug: string) => SheetView,
  answers: readonly Pick<AnswerLink, "slug" | "colours">[],
  context: PageContext,
): SitePicture[] {
  const imprint = imprintOf(context);
  const paints = shownPaints(sheetOf, context);
  return [
    ...rangePicture(context),
    ...[...paints].flatMap(([slug, paint]) => colourPictures(slug, paint, imprint)),
    // Passed on as a link, and nowhere else.
    ...[
      ...chosenPairs(context.records.workshop).map(
        (pair) => [pairAddress(pair), pair.colours] as const,
      ),
      ...answers.map(({ slug, colours }) => [`answers/${slug}/`, colours] as const),
    ].flatMap(([folder, slugs]) =>
      besidePictures(folder, paintsOf(slugs, paints), imprint).slice(0, 1),
    ),
  ];
}

/** Every colour that a picture can show, as its page shows it. */
function shownPaints(
  sheetOf: (slug: string) => SheetView,
  { sheets, steps }: Pick<PageContext, "sheets" | "steps">,
): ReadonlyMap<string, ShownPaint> {
  return new Map(
    sheets.flatMap(({ sheet: { slug } }) => {
      const step = {
        modules: ["lib/pictures/site-pictures.ts", "lib/pages/sheet-page.ts"],
        name: "paints of pictures",
        of: slug,
      };
      const paint = madeStep(steps, step, () => shownPaint(sheetOf(slug)));
      return paint === undefined ? [] : [[slug, paint] as const];
    }),
  );
}

/** Of some colours those that a picture can show, at most four: the same that their page says are pictured. */
function paintsOf(slugs: readonly string[], paints: ReadonlyMap<string, ShownPaint>): ShownPaint[] {
  return slugs.flatMap((slug) => paints.get(slug) ?? []).slice(0, MOST_BESIDE);
}

/** Several colours beside each other in every size, the one for links first; none of a single one. */
export function besidePictures(
  folder: string,
  paints: readonly ShownPaint[],
  imprint: Imprint,
): SitePicture[] {
  return paints.length < 2
    ? []
    : (
        [
          ["wide", WIDE],
          ["square", SQUARE],
          ["strip", STRIP],
        ] as const
      ).map(([name, size]) => ({
        path: `${folder}${SHARED_PICTURES[name]}`,
        of: [paints, imprint, name],
        face: () => besideFace(paints, imprint, size),
      }));
}

/** Of one colour, in every size. */
export function colourPictures(slug: string, paint: ShownPaint, imprint: Imprint): SitePicture[] {
  return (
    [
      ["wide", wideFace],
      ["square", squareFace],
      ["strip", stripFace],
    ] as const
  ).map(([name, face]) => ({
    path: `colours/${slug}/${SHARED_PICTURES[name]}`,
    of: [paint, imprint, name],
    face: () => face(paint, imprint),
  }));
}

export function imprintOf({ records: { workshop }, words }: PageContext): Imprint {
  return {
    workshop: workshop.name,
    ...(workshop.demonstration === true ? { demonstration: words.pages.demonstration } : {}),
  };
}

function rangePicture(context: PageContext): SitePicture[] {
  const { words, records, steps } = context;
  const step = { modules: ["lib/pictures/site-pictures.ts"], name: "picture of the range" };
  const { colours, counts } = madeStep(steps, step, () => ({
    colours: wallOrder(context).flatMap(({ sheet }) => paintColour(sheet.notations.masstone) ?? []),
    counts: rangeCounts(context),
  }));
  const lead = words.pages.home.promise(counts);
  const said = { name: records.workshop.name, lead };
  const imprint = imprintOf(context);
  return colours.length === 0
    ? []
    : [
        {
          path: SHARED_PICTURES.wide,
          of: [colours, said, imprint],
          face: () => rangeFace(colours, said, imprint),
        },
      ];
}

/** A colour as its page shows it; nothing where no colour is known. */
export function shownPaint({
  name,
  madeOf,
  masstone: { colour },
  tints,
  sections,
}: SheetView): ShownPaint | undefined {
  if (colour === undefined) return undefined;
  const ladder = firstLadder(sections.flatMap(({ blocks }) => blocks));
  return {
    name,
    index: [...new Set(madeOf.flatMap(({ text, index }) => (index === true ? [text] : [])))]
      .map((text) => text.replaceAll(" ", "\u00a0"))
      .join(", "),
    masstone: colour,
    ...(tints === undefined ? {} : { tints }),
    ...(ladder === undefined ? {} : { ladder }),
  };
}

function firstLadder(blocks: readonly Block[]): LadderBlock | undefined {
  for (const block of blocks) {
    if (block.kind === "ladder" && block.steps.length > 0) return block;
    const inside = block.kind === "group" ? firstLadder(block.blocks) : undefined;
    if (inside !== undefined) return inside;
  }
  return undefined;
}
