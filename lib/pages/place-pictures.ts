import { isKnown } from "../quantities/figure.ts";
import type { Quantity } from "../quantities/interval.ts";
import type { PictureView } from "../present/views.ts";
import { placeInRange } from "../plots/place-in-range.ts";
import type { Collection } from "../collection/collection.ts";
import { textOf, type SheetPage } from "./page-of-sheet.ts";

/** Where a colour stands among the others: in oil and in drying. */
export function placePictures(page: SheetPage): PictureView[] {
  const text = page.words.pages.range;
  return [
    ...placePicture(page, "oil.oilIndexGPer100g", text.oilTitle, "oil"),
    ...placePicture(page, "drying.touchDryDays", text.dryingTitle, "drying"),
  ];
}

/** None of a figure that no other colour states: the spread is one for all pages of a range. */
function placePicture(
  page: SheetPage,
  path: keyof Collection["spreads"],
  title: string,
  id: string,
): PictureView[] {
  const { context, worded, words } = page;
  const { sheet } = worded;
  const { row, figure } = worded.leaf(path);
  const text = textOf(page, path);
  const range = context.range.spreads[path];
  if (range === undefined || range.count < 2 || text === undefined) return [];
  if (!isKnown(figure)) return [];
  const { placeDescription, ends, box } = words.pages.range;
  const printed = (value: number): string => words.numbers.decimal(value, 0);
  return [
    {
      svg: placeInRange({
        decimalMark: words.numbers.mark,
        idPrefix: `place-${id}`,
        title,
        description: placeDescription(sheet.name, text, range.count, [
          printed(range.lowest),
          printed(range.lowerQuartile),
          printed(range.upperQuartile),
          printed(range.highest),
        ]),
        heading: `${words.figures[row.word]}, ${words.units[row.unit] ?? row.unit}`,
        domain: [0, range.highest],
        own: {
          value: figure.value as Quantity,
          standing: figure.standing,
          text: `${sheet.name}${words.colon}${text}`,
        },
        range,
        legend: box(range.count),
        ends,
      }),
    },
  ];
}
