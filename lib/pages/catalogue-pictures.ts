import { hueCircle } from "../plots/hue-circle.ts";
import { valueChromaSlice } from "../plots/value-chroma-slice.ts";
import { decimalText } from "../words/number-text.ts";
import { asMarkup, type PictureView } from "../present/views.ts";
import type { Order } from "./catalogue-pages.ts";
import { munsellPlace } from "./munsell-place.ts";
import { comparableColour } from "./screen-swatch.ts";
import type { PageContext, PagePlace } from "./page-context.ts";

/** The range drawn as its order has it: round the hue circle, or by value and chroma. */
export function orderPictures(
  order: Order,
  { sheets, words }: PageContext,
  { root }: PagePlace,
): PictureView[] {
  const text = words.pages.range;
  const points = sheets.flatMap(({ sheet }) => {
    const place = munsellPlace(sheet);
    const colour = comparableColour(sheet.notations.masstone);
    return place === undefined || colour === undefined
      ? []
      : [{ label: sheet.name, colour, href: `${root}colours/${sheet.slug}/`, ...place }];
  });
  if (points.length === 0) return [];
  const description = text.hueDescription(
    points.map(
      ({ label, value, chroma }) => `${label} ${decimalText(value, 1)}/${decimalText(chroma, 1)}`,
    ),
  );
  switch (order) {
    case "hue":
      return [
        {
          svg: asMarkup(
            hueCircle({
              idPrefix: "hues",
              title: text.hueTitle,
              description,
              points,
              chromaLabel: text.chroma,
              neutralLabel: text.neutral,
              width: 480,
            }),
          ),
          caption: text.hueTitle,
        },
      ];
    case "value":
      return [
        {
          svg: asMarkup(
            valueChromaSlice({
              idPrefix: "values",
              title: text.valueTitle,
              description,
              points,
              chromaLabel: text.chroma,
              valueLabel: text.value,
              width: 480,
            }),
          ),
          caption: text.valueTitle,
        },
      ];
    default:
      return [];
  }
}
