import type { PhotographsBlock } from "../blocks/block.ts";
import { statementText } from "../present/statement-text.ts";
import type { Photograph, PhotographOwner } from "../records/photographs.ts";
import type { Sheet } from "../sheet/sheet.ts";
import type { PageContext, PagePlace } from "./page-context.ts";
import { photographRemarks } from "./photograph-remarks.ts";
import { photographView, type ShownPicture } from "./photograph-view.ts";
import { given } from "../quantities/given.ts";

/** Photographs of a colour, and then of its lots. */
export function colourPhotographs(
  sheet: Sheet,
  context: PageContext,
  place: PagePlace,
): PhotographsBlock[] {
  const { slug, name } = sheet;
  const ofLots = [...context.records.lots.values()].filter(
    ({ record }) => record.colour === slug && record.planned !== true,
  );
  return photographsBlock(context, place, [
    ...owned("colours", slug, context).flatMap((one) => pictures(one, name, context, { sheet })),
    ...ofLots.flatMap((lot) =>
      owned("lots", lot.slug, context).flatMap((one) =>
        pictures(one, name, context, { lot: lot.record.number }),
      ),
    ),
  ]);
}

export function pigmentPhotographs(
  slug: string,
  name: string,
  context: PageContext,
  place: PagePlace,
): PhotographsBlock[] {
  return photographsBlock(
    context,
    place,
    owned("pigments", slug, context).flatMap((one) => pictures(one, name, context)),
  );
}

function owned(folder: PhotographOwner, slug: string, { records }: PageContext): Photograph[] {
  return records.photographs.filter(({ owner }) => owner.folder === folder && owner.slug === slug);
}

/** The picture, and the paint alone in the colour that was read. */
function pictures(
  photograph: Photograph,
  name: string,
  { words }: PageContext,
  { sheet, lot }: { readonly sheet?: Sheet; readonly lot?: string } = {},
): ShownPicture[] {
  const { pictures: whole, inReadColour } = photograph;
  return given([
    whole !== undefined && {
      photograph,
      pictures: whole,
      name,
      ...(lot !== undefined && { lot }),
      remarks: photographRemarks(photograph, sheet).map((one) => statementText(one, words)),
    },
    inReadColour !== undefined && {
      photograph,
      pictures: inReadColour,
      name,
      remarks: [],
      instead: statementText({ rule: "texture-in-read-colour", values: {} }, words),
    },
  ]);
}

function photographsBlock(
  context: PageContext,
  place: PagePlace,
  shown: readonly ShownPicture[],
): PhotographsBlock[] {
  const photographs = shown.flatMap((one, i) => photographView(one, i, context, place));
  return photographs.length === 0 ? [] : [{ kind: "photographs", photographs }];
}
