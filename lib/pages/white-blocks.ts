import type { Block, LineView, WallBlock } from "../blocks/block.ts";
import { knownValue } from "../quantities/figure.ts";
import { ends, type Quantity } from "../quantities/interval.ts";
import { given } from "../quantities/given.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { statement } from "../blocks/section-blocks.ts";
import { colourTile } from "./colour-tile.ts";
import { evenly, ON_ONE_PAGE } from "./range-parts.ts";
import { coloursLetDownIn } from "./colours-tinted-with.ts";
import type { PageContext } from "./page-context.ts";
import { paintColour, swatchCell, tintColour } from "./screen-swatch.ts";
import type { SheetPage } from "./page-of-sheet.ts";
import { whiteningParts } from "./six-facts.ts";
import { strengthReferenceName } from "./strength-reference.ts";

/** How a white stands beside the other whites; then every colour that was tried in it. What it is good for is told on the first screen. */
export function whiteBlocks(page: SheetPage): Block[] {
  const lines = whiteLines(page);
  const { tiles, all } = tintTiles(page);
  const { parts } = page.words.pages;
  return given([
    lines.length > 0 && ({ kind: "lines", lines } as const),
    ...(tiles.length === 0
      ? []
      : [{ kind: "wall", form: "tints", tiles } as const, legend(page, tiles)]),
    tiles.length !== all && statement(parts.someOf(tiles.length, all), "note"),
  ]);
}

function whiteLines({ sheet, context, words }: SheetPage): LineView[] {
  const text = words.pages.sheetPage.white;
  const others = otherWhites(sheet, context);
  const line = (name: string, sentence: string | undefined): LineView[] =>
    sentence === undefined ? [] : [{ name, sentences: [{ text: sentence }] }];
  const beside = (told: (white: Sheet) => string | undefined): string => {
    const parts = others.flatMap((white) => {
      const own = told(white);
      return own === undefined ? [] : [text.other(white.name, own)];
    });
    return parts.length === 0 ? "" : ` ${text.others(words.listed(parts))}`;
  };
  const [lightness, yellowness] = (["L", "b"] as const).map(
    (axis) =>
      (white: Sheet): string | undefined => {
        const value = knownValue(white.notations.masstone?.lab["D65/10"]?.[axis]);
        return value === undefined ? undefined : words.numbers.decimal(value, 1);
      },
  );
  const parts = (white: Sheet): string | undefined => whiteningParts(white.slug, context)?.text;
  const reference = strengthReferenceName(context);
  const said = <T>(value: T | undefined, sentence: (value: T) => string): string | undefined =>
    value === undefined ? undefined : sentence(value);
  return [
    ...line(
      text.names.whitens,
      said(
        whiteningParts(sheet.slug, context),
        (own) => text.whitens(own.text, reference, own.by) + beside(parts),
      ),
    ),
    // A film of an extender shows its chart: how bright that is, is not its own.
    ...(sheet.family === "extender"
      ? []
      : [
          ...line(
            text.names.bright,
            said(lightness?.(sheet), (own) => text.bright(own) + beside((w) => lightness?.(w))),
          ),
          ...line(
            text.names.yellow,
            said(yellowness?.(sheet), (own) => text.yellow(own) + beside((w) => yellowness?.(w))),
          ),
        ]),
  ];
}

/** What the places of a tile are, and what an empty one means where there is one. */
function legend({ words }: SheetPage, tiles: WallBlock["tiles"]): Block {
  const text = words.pages.sheetPage.white;
  const hasEmpty = tiles.some(({ tints = [] }) => tints.some(({ colour }) => colour === undefined));
  return statement(hasEmpty ? `${text.tints} ${text.tintsMissing}` : text.tints, "note");
}

function otherWhites({ slug }: Sheet, context: PageContext): Sheet[] {
  return context.sheets
    .map(({ sheet }) => sheet)
    .filter((white) => white.family === "white" && white.slug !== slug);
}

/** What its own figures make a white good for, against the other whites of the range. */
export function whitePurposes(sheet: Sheet, context: PageContext): string[] {
  const others = otherWhites(sheet, context);
  const { uses } = context.words.pages.sheetPage.white;
  const parts = ({ slug }: Sheet): number | undefined => {
    const value = whiteningParts(slug, context)?.figure.value;
    return typeof value === "number" ? value : undefined;
  };
  const days = ({ drying }: Sheet): Quantity | undefined => knownValue(drying.touchDryDays);
  // A range that overlaps another's figure is neither before it nor behind.
  const place = (of: (white: Sheet) => Quantity | undefined): "least" | "most" | undefined => {
    const own = of(sheet);
    const rest = others.flatMap((white) => {
      const value = of(white);
      return value === undefined ? [] : [ends(value)];
    });
    if (own === undefined || rest.length === 0) return undefined;
    const [low, high] = ends(own);
    return rest.every(([least]) => high < least)
      ? "least"
      : rest.every(([, most]) => low > most)
        ? "most"
        : undefined;
  };
  const strength = place(parts);
  const drying = place(days);
  return [
    ...(strength === "least" ? [uses.strongest] : strength === "most" ? [uses.weakest] : []),
    ...(drying === "least" ? [uses.fastest] : drying === "most" ? [uses.slowest] : []),
  ];
}

/** Each colour as it comes from the tube, over its dark, middle and pale tint in this white. */
function tintTiles({ sheet: white, context, place }: SheetPage) {
  const letDown = new Set(coloursLetDownIn(white.slug, context).map(({ slug }) => slug));
  const tried = context.sheets.filter(({ sheet }) => letDown.has(sheet.slug));
  return {
    all: tried.length,
    tiles: evenly(tried, ON_ONE_PAGE.named).map((worded: SheetTexts) => {
      const tint = worded.sheet.tints.find((one) => one.white.slug === white.slug);
      const masstone = paintColour(worded.sheet.notations.masstone);
      return {
        ...colourTile(worded, context, place),
        colours: masstone === undefined ? [] : [masstone],
        tints: (["30", "50", "70"] as const).map((level) =>
          swatchCell(tintColour(level, tint?.atL[level]), ""),
        ),
      };
    }),
  };
}
