import { BLEED_MM } from "./card-plan.ts";
import { BLACK, inkOf, MM_PER_PT, type Tagged } from "./mark.ts";
import type { Column, FlowText } from "./package-flow.ts";
import type { PackageLabelContent } from "./package-label-content.ts";
import { measureText } from "./print-document.ts";
import { SANS_X_HEIGHT } from "./print-font.ts";
import { setRuns, sizesDown } from "./set-runs.ts";
import type { Language } from "../quantities/languages.ts";

/** From the edge to anything that may not be cut, and between columns [mm]. */
export const SAFE_MM = 2;
export const BETWEEN_MM = 2.4;
/** Between two paragraphs, a little more than between two lines [mm]. */
export const PARAGRAPH_MM = 1.1;
/** Above a new subject [mm]. */
export const SUBJECT_MM = 1.8;
/** Of the paint's band, its least height [mm]; as a share of the label's, and its most. */
export const LEAST_BAND_MM = 6;
const BAND = { share: 0.17, most: 14 };

/** Of the paint's band on a label that goes round a tube [mm]. */
export function bandHeightMm(heightMm: number): number {
  return Math.min(BAND.most, Math.max(LEAST_BAND_MM, BAND.share * heightMm));
}

/** From the left edge to where a band of paint ends, its height [mm], and over which cuts it goes. */
interface BandPlace {
  readonly rightMm: number;
  readonly heightMm: number;
  readonly bleeds?: "left" | "right" | "both";
  /** Whether a fold is above it, and no cut. */
  readonly isBelowFold?: boolean;
}

/** Paint over the edge, so that no white shows where the knife strays; a white's own edge is a hairline. */
export function band(
  { swatch, name }: PackageLabelContent,
  { rightMm, heightMm, bleeds = "both", isBelowFold = false }: BandPlace,
): Tagged[] {
  if (swatch === undefined) return [];
  const fromMm = bleeds === "right" ? 0 : -BLEED_MM;
  const aboveMm = isBelowFold ? 0 : BLEED_MM;
  const toMm = bleeds === "left" ? rightMm : rightMm + BLEED_MM;
  return [
    {
      tag: "Figure",
      alt: name,
      marks: [
        {
          kind: "box",
          xMm: fromMm,
          yMm: -aboveMm,
          widthMm: toMm - fromMm,
          heightMm: heightMm + aboveMm,
          ink: inkOf(swatch),
        },
        {
          kind: "line",
          fromMm: [fromMm, heightMm],
          toMm: [toMm, heightMm],
          widthPt: 0.25,
          ink: BLACK,
        },
      ],
    },
  ];
}

export function columnsOf(area: Column, count: number): Column[] {
  const widthMm = (area.widthMm - (count - 1) * BETWEEN_MM) / count;
  return Array.from({ length: count }, (_, i) => ({
    ...area,
    xMm: area.xMm + i * (widthMm + BETWEEN_MM),
    widthMm,
  }));
}

/** Size of letters [pt] whose lower-case x is so high, never less. */
export function sizeOfXHeightPt(xHeightMm: number): number {
  return Math.ceil((xHeightMm / SANS_X_HEIGHT / MM_PER_PT) * 20 - 1e-9) / 20;
}

/** What sets the lines of a label, all in letters of one height. @param language of the lines, where it is not the label's own */
export function lineSetter(
  xHeightMm: number,
  language?: Language,
): (text: string, gapMm: number, face?: "sans" | "sans bold") => FlowText {
  const sizePt = sizeOfXHeightPt(xHeightMm);
  const own = language === undefined ? {} : { language };
  return (text, gapMm, face = "sans") => ({ kind: "text", text, face, sizePt, gapMm, ...own });
}

/** A line whose words may be parted. */
export function asProse<L>(line: L): L & { readonly isProse: true } {
  return { ...line, isProse: true };
}

/** A line that stands in one column with what it is said of. */
export function leading<L>(line: L): L & { readonly leads: true } {
  return { ...line, leads: true };
}

/** The name of the paint, as large as its width bears. */
export function nameItem(name: string, mostPt: number, widthMm: number): FlowText {
  return {
    kind: "text",
    tag: "H2",
    text: name,
    face: "sans bold",
    sizePt: nameSizePt(name, mostPt, widthMm),
    gapMm: 0,
  };
}

/** As large as no word of it is broken and it takes two lines; a long name three. A name is a label element too: one face, without serifs. */
function nameSizePt(name: string, mostPt: number, widthMm: number): number {
  const sizes = sizesDown(mostPt, 8);
  const words = name.split(/[ -]/);
  const holds = (most: number) =>
    sizes.find(
      (sizePt) =>
        words.every((word) => measureText(word, "sans bold", sizePt) <= widthMm) &&
        setRuns([{ text: name, face: "sans bold" }], { widthMm, sizePt }).lines.length <= most,
    );
  return holds(2) ?? holds(3) ?? 8;
}
