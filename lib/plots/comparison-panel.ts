import type { ShownColour } from "../present/comparison-types.ts";
import { asMarkup, type PictureView } from "../present/views.ts";
import type { CompareWords } from "../words/en/compare-pages.ts";
import type { EqualLightness } from "../sheet/sheet.ts";
import { sideBySidePanel, type SideBySidePanel } from "./side-by-side-panel.ts";

const LEVELS: readonly EqualLightness[] = ["70", "50", "30"];
const MOST_WHITES = 3;

/** Masstones and tints of two to four colours on one ground; nothing when no screen colour of any is known. */
export function comparisonPanel(
  colours: readonly ShownColour[],
  text: CompareWords,
): PictureView | undefined {
  const names = new Map(
    colours.flatMap(({ whites }) => whites.map(({ slug, name }) => [slug, name] as const)),
  );
  const tint = ({ whites }: ShownColour, white: string, level: EqualLightness) =>
    whites.find(({ slug }) => slug === white)?.tints[level];
  const reached = (white: string, level: EqualLightness): number =>
    colours.filter((colour) => tint(colour, white, level) !== undefined).length;
  // One colour's tints alone compare nothing.
  const whites = [...names.keys()]
    .filter((white) => LEVELS.some((level) => reached(white, level) > 1))
    .slice(0, MOST_WHITES);
  if (whites.length === 0 && colours.every(({ masstone }) => masstone === undefined))
    return undefined;
  const levels = LEVELS.filter((level) => whites.some((white) => reached(white, level) > 1));
  const params = (variant: string): SideBySidePanel => ({
    idPrefix: `side-by-side-${variant}`,
    title: text.panelTitle(colours.map(({ name }) => name)),
    description: text.panelDescription(colours.map((colour) => colourWords(colour, whites, text))),
    colours: colours.map(({ name, masstone }) => ({ name, masstone })),
    whites: whites.map((white) => ({
      caption: text.inWhite(names.get(white) ?? white),
      levels: levels.map((level) => ({
        label: text.level(level),
        tints: colours.map((colour) => tint(colour, white, level)),
      })),
    })),
    missing: text.missing,
  });
  return {
    svg: asMarkup(sideBySidePanel(params("wide"), "wide")),
    narrow: asMarkup(sideBySidePanel(params("narrow"), "narrow")),
    ...(whites.length === 0 ? {} : { caption: text.order }),
  };
}

function colourWords(
  { name, cells }: ShownColour,
  whites: readonly string[],
  text: CompareWords,
): string {
  const tints = whites.flatMap((white) => {
    const at = cells[`white.${white}`]?.atL?.["50"];
    return at === undefined ? [] : [`${text.inWhite(white)} ${text.level("50")} ${at}`];
  });
  return [`${name}: ${cells["masstone"]?.text ?? text.missing}`, ...tints].join(", ");
}
