import type { Markup } from "../present/views.ts";
import { sides, type Box } from "./box.ts";
import { element, refusal, writtenSvg, type SvgNode } from "./svg.ts";

/** What every picture is told in words, finished and in the reader's language. */
export interface PictureWords {
  /** Begins the ids inside the picture; unique on its page. */
  readonly idPrefix: string;
  /** States the finding. */
  readonly title: string;
  /** The text alternative: repeats what the picture shows. */
  readonly description: string;
  /** Of numbers on its axes; a point unless given. */
  readonly decimalMark?: "." | "," | undefined;
  /** Width in user units, 320 (a phone) unless given; text keeps its size, so a wider picture holds more. */
  readonly width?: number | undefined;
}

/** Size of all text in user units: at 288 px, a phone's column, still above 10 px. */
export const TEXT_SIZE = 12;
export const LINE_HEIGHT = 15;

/** Sides of the narrowest phone's column and of a printed page, in user units. */
const WIDTHS = { min: 280, max: 960 } as const;

/**
 * Munsell N 6: Y 29.30 % by ASTM D1535 (L* 61), as an sRGB grey (R = G = B, so a* = b* = 0).
 * Between the tints at L* 70 and L* 50, so that neither is lost on it; a swatch is always judged
 * on the same ground.
 */
export const PANEL_GREY = "#939393";
/** Lines and words that stand on the panel, in light, dark, print and forced colours alike: contrast 6.2 to 1. */
const ON_PANEL = "#111111";

/** What is as it comes out, beside the words. */
interface PictureForm {
  readonly height: number;
  /** Holds links, so that its parts must stay reachable. */
  readonly hasLinks?: boolean;
}

/**
 * The finished picture. Colours that are not data come from `currentColor`; classes are
 * hooks for a style sheet, and everything is drawn rightly without one.
 * @param kind names the picture's class, `plot--kind`.
 * @throws RangeError when the prefix is no XML name, or title or description is empty.
 */
export function writtenPicture(
  kind: string,
  words: PictureWords,
  { height, hasLinks = false }: PictureForm,
  content: readonly SvgNode[],
): Markup {
  const { idPrefix, title, description } = words;
  const width = Math.round(pictureWidth(words));
  if (!/^[A-Za-z][\w-]*$/.test(idPrefix))
    throw refusal("id prefix", idPrefix, "a letter, then letters, digits, - or _");
  for (const [subject, text] of [
    ["title", title],
    ["description", description],
  ] as const) {
    if (text.trim() === "") throw refusal(subject, text, "words for who cannot see the picture");
  }
  const tree = element(
    "svg",
    {
      xmlns: "http://www.w3.org/2000/svg",
      class: `plot plot--${kind}`,
      viewBox: `0 0 ${width} ${Math.ceil(height)}`,
      width,
      height: Math.ceil(height),
      // An img hides its parts from a screen reader, links as well.
      role: hasLinks ? "group" : "img",
      "aria-labelledby": `${idPrefix}-title ${idPrefix}-desc`,
      fill: "currentColor",
      "font-family": "sans-serif",
      "font-size": TEXT_SIZE,
    },
    [
      element("title", { id: `${idPrefix}-title` }, [title]),
      element("desc", { id: `${idPrefix}-desc` }, [description]),
      ...content,
    ],
  );
  return `${writtenSvg(tree)}\n` as Markup;
}

/** Width of a picture in user units. @throws RangeError outside 280 to 960. */
export function pictureWidth({ width = 320 }: PictureWords): number {
  if (!(width >= WIDTHS.min && width <= WIDTHS.max))
    throw refusal("picture width", String(width), `${WIDTHS.min} <= width <= ${WIDTHS.max}`);
  return width;
}

/** The neutral ground that swatches stand on. */
export function panel(box: Box): SvgNode {
  return element("rect", { class: "panel", ...sides(box), fill: PANEL_GREY });
}

/** What is drawn on a panel: `currentColor` in it is dark, whatever the page's. */
export function onPanel(children: readonly SvgNode[]): SvgNode {
  return element("g", { class: "plot__on-panel", color: ON_PANEL, fill: "currentColor" }, children);
}
