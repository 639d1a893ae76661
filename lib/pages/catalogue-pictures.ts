import { hueCircle } from "../plots/hue-circle.ts";
import { rangeRows } from "../plots/range-rows.ts";
import { smallestHolding } from "../plots/scale.ts";
import { CHROMA_SCALES, chromaTickStep, valueChromaSlice } from "../plots/value-chroma-slice.ts";
import type { PictureView } from "../present/views.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import type { Order } from "./catalogue-pages.ts";
import { rowOf } from "./colour-rows.ts";
import { hueGiven, NEAR_NEUTRAL_BELOW } from "./munsell-place.ts";
import type { PageContext, PagePlace } from "./page-context.ts";
import { HUE_FAMILIES } from "../colorimetry/munsell-notation.ts";

/** Widths of a chart where there is room, and in a narrow column [user units]. */
const WIDE = 960;
const NARROW = 340;

/** The range drawn as its order has it: round the hue circle, or by value and chroma. */
export function orderPictures(
  order: Order,
  sheets: readonly SheetTexts[],
  context: PageContext,
  { root }: PagePlace,
): PictureView[] {
  const { words } = context;
  const text = words.pages.range;
  const points = sheets.flatMap((worded) => {
    const { sheet } = worded;
    const { munsell: place, colour } = rowOf(worded, context);
    return place === undefined || colour === undefined
      ? []
      : [{ label: sheet.name, colour, href: `${root}colours/${sheet.slug}/`, ...place }];
  });
  if (points.length === 0) return [];
  const description = text.hueDescription(
    points.map(
      ({ label, value, chroma }) =>
        `${label} ${words.numbers.decimal(value, 1)}/${words.numbers.decimal(chroma, 1)}`,
    ),
  );
  const chromaEnd = smallestHolding(
    CHROMA_SCALES,
    Math.max(...points.map(({ chroma }) => chroma)),
    text.chroma,
  );
  switch (order) {
    case "hue":
      return [
        {
          svg: hueCircle({
            decimalMark: words.numbers.mark,
            idPrefix: "hues",
            title: text.hueTitle,
            description,
            points: points.map((point) => ({ ...point, hue: hueGiven(point) })),
            chromaLabel: text.chroma,
            neutralLabel: text.neutral,
            width: WIDE,
            diameter: 620,
          }),
          narrow: rangeRows({
            decimalMark: words.numbers.mark,
            idPrefix: "hues-narrow",
            title: text.hueTitle,
            description,
            rows: points
              .toSorted((one, other) => (hueGiven(one) ?? -1) - (hueGiven(other) ?? -1))
              .map((point) => ({
                ...point,
                at: point.chroma,
                group: hueLetters(hueGiven(point)),
              })),
            domain: [0, chromaEnd],
            tickStep: chromaTickStep(chromaEnd),
            axisLabel: text.chroma,
            width: NARROW,
          }),
          caption: text.hueTitle,
        },
      ];
    case "value":
      return [
        {
          svg: valueChromaSlice({
            decimalMark: words.numbers.mark,
            idPrefix: "values",
            title: text.valueTitle,
            description,
            points,
            chromaLabel: text.chroma,
            valueLabel: text.value,
            width: WIDE,
            areaHeight: 500,
            crowdBelow: NEAR_NEUTRAL_BELOW + 0.1,
          }),
          narrow: rangeRows({
            decimalMark: words.numbers.mark,
            idPrefix: "values-narrow",
            title: text.valueTitle,
            description,
            rows: points
              .toSorted((one, other) => one.value - other.value)
              .map((point) => ({ ...point, at: point.value, group: "" })),
            domain: [0, 10],
            tickStep: 2,
            axisLabel: text.value,
            width: NARROW,
          }),
          caption: text.valueTitle,
        },
      ];
    default:
      return [];
  }
}

/** Letters of the hue, each for the ten steps that end at its 10. */
function hueLetters(hue: number | null): string {
  return hue === null ? "N" : (HUE_FAMILIES[Math.min(9, Math.ceil(hue / 10) - 1)] ?? "");
}
