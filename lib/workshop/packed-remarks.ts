import { isPackedSize, packedMasses } from "../formulation/packed-quantity.ts";
import { spannedRecipe } from "../pages/batch-view.ts";
import type { PageContext } from "../pages/page-context.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import { ends } from "../quantities/interval.ts";
import { given } from "../quantities/given.ts";
import type { Lot, Records } from "../records/records.ts";

/** What an empty tube of a size weighs [g], as the newest lot of any colour has it; undefined where none does. */
export function tareOf(ml: number, { lots }: Records): number | undefined {
  const weighed = [...lots.values()]
    .flatMap(({ record: { date, tubes = [] } }) =>
      tubes.flatMap((tube) =>
        tube.ml === ml && tube.tareG !== undefined ? [{ date, tareG: tube.tareG }] : [],
      ),
    )
    .sort((one, other) => (one.date < other.date ? -1 : 1));
  return weighed.at(-1)?.tareG;
}

/**
 * What filled tubes have to weigh: by the lot's own density where it is known, else by the densest
 * that the colour may come out as, so that the mass is enough.
 */
export function packedRemarks(
  { sheet }: SheetTexts,
  { words, records }: PageContext,
  places: number,
  lot?: Lot,
): string[] {
  const { batchSheet: text } = words.pages.lots;
  if (sheet.batch === undefined) return [];
  const own = lot?.record.densityGPerCm3;
  const spanned = spannedRecipe(sheet.batch, sheet).paintDensityGPerCm3;
  const density = own ?? (spanned === undefined ? undefined : ends(spanned)[1]);
  if (density === undefined) return [];
  const sizes = [...new Set((records.colours.get(sheet.slug)?.sizes ?? []).map(({ ml }) => ml))];
  // The sheet is weighed by: never less than the law has it.
  const grams = (massG: number): string =>
    words.numbers.decimal(Math.ceil(massG * 10 ** places - 1e-6) / 10 ** places, places);
  const told = sizes.filter(isPackedSize).map((ml) => {
    const { meanG, fewBelowG, noneBelowG } = packedMasses(ml, density);
    const tareG = tareOf(ml, records);
    const size = words.numbers.plain(ml);
    const masses = [meanG, fewBelowG, noneBelowG] as const;
    const [mean, few, none] = masses.map(grams) as [string, string, string];
    const [grossMean, grossFew, grossNone] = masses.map((massG) => grams(massG + (tareG ?? 0))) as [
      string,
      string,
      string,
    ];
    return {
      isTareKnown: tareG !== undefined,
      lines: given([
        text.packed(size, mean, few, none, words.numbers.decimal(density, 3)),
        tareG !== undefined && text.gross(size, grossMean, grossFew, grossNone, grams(tareG)),
      ]),
    };
  });
  return given([
    ...told.flatMap(({ lines }) => lines),
    told.some(({ isTareKnown }) => !isTareKnown) && text.tareless,
    told.length > 0 && own === undefined && text.densityFirst,
  ]);
}
