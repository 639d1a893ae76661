import type { Box } from "./box.ts";
import { hatchedOutline } from "./hatched-outline.ts";
import { onPanel, panel, writtenPicture, type PictureWords } from "./picture.ts";
import { swatch, type ScreenColour } from "./screen-colour.ts";
import { MARK_RADIUS, standingMark, type ShownStanding } from "./standing-mark.ts";
import { refusal, type SvgNode } from "./svg.ts";
import { textLine, textLines } from "./text-label.ts";
import { textWidth, wrappedLines } from "./text-width.ts";

export interface SwatchPanel extends PictureWords {
  readonly masstone: {
    readonly colour: ScreenColour | undefined;
    readonly caption: string;
    readonly standing: ShownStanding;
  };
  /** Lightnesses at which the whites are compared, lightest first: "L* 70". One to three; none without whites. */
  readonly levels: readonly string[];
  /** At most three. `tints` go with `levels`; undefined where the white's drawdowns do not reach. */
  readonly whites: readonly {
    readonly caption: string;
    readonly standing: ShownStanding;
    readonly tints: readonly (ScreenColour | undefined)[];
  }[];
  /** On the hatching where a colour is not known: "not stated". */
  readonly missing: string;
}

interface Layout {
  readonly width: number;
  readonly margin: number;
  readonly gap: number;
  readonly textSize: number;
  readonly masstone: { readonly width: number; readonly height: number };
  readonly tintHeight: number;
}

/** A phone's column: masstone across, tints under it. */
const NARROW: Layout = {
  width: 320,
  margin: 16,
  gap: 12,
  textSize: 12,
  masstone: { width: 288, height: 96 },
  tintHeight: 48,
};
/** Text is larger, because this one is shown about as wide as it is drawn. */
const WIDE: Layout = {
  width: 720,
  margin: 28,
  gap: 18,
  textSize: 14,
  masstone: { width: 290, height: 228 },
  tintHeight: 64,
};
const MASSTONE_ALONE_HEIGHT = 132;

/**
 * The first screen's swatches: masstone and, beside it, a column of tints for each white,
 * rows at equal L* so that only the hue differs. Two drawings of one panel: the style sheet
 * shows `plot--swatch-panel-narrow` or `-wide`; each needs an id prefix of its own.
 * @throws RangeError for more than three whites or levels, or a column that does not go with the levels.
 */
export function swatchPanel(params: SwatchPanel, variant: "narrow" | "wide"): string {
  const { levels, whites } = params;
  if (whites.length > 3) throw refusal("whites", String(whites.length), "0 to 3");
  if (levels.length > 3 || (whites.length > 0 && levels.length === 0))
    throw refusal("lightnesses", String(levels.length), "1 to 3");
  for (const { caption, tints } of whites) {
    if (tints.length !== levels.length)
      throw refusal(
        `tints in ${caption}`,
        String(tints.length),
        `${levels.length}, one a lightness`,
      );
  }
  const layout = variant === "narrow" ? NARROW : WIDE;
  const { width, margin } = layout;
  const alone = whites.length === 0;
  const tintsHeight = levels.length * (layout.tintHeight + layout.gap) - layout.gap;
  const masstone = masstoneBox(layout, alone, variant === "wide" ? tintsHeight : 0);
  const first = drawnColumn(
    masstone,
    params.masstone,
    [params.masstone.colour],
    params.missing,
    layout,
  );
  const tints = alone
    ? undefined
    : drawnTints(
        params,
        layout,
        variant === "narrow"
          ? { left: margin, top: first.bottom + layout.gap + 4, right: width - margin, bottom: 0 }
          : { left: masstone.right + layout.gap, top: margin, right: width - margin, bottom: 0 },
      );
  const height = Math.max(first.bottom, tints?.bottom ?? 0) + margin;
  return writtenPicture(
    `swatch-panel-${variant}`,
    params,
    { width, height, textSize: layout.textSize },
    [
      panel({ left: 0, top: 0, right: width, bottom: Math.ceil(height) }),
      onPanel([...first.nodes, ...(tints?.nodes ?? [])]),
    ],
  );
}

function masstoneBox(
  { margin, width, masstone }: Layout,
  alone: boolean,
  besideHeight: number,
): Box {
  const right = alone ? width - margin : margin + masstone.width;
  const height = alone
    ? Math.max(MASSTONE_ALONE_HEIGHT, masstone.height * 0.8)
    : besideHeight > 0
      ? besideHeight
      : masstone.height;
  return { left: margin, top: margin, right, bottom: margin + height };
}

interface Drawn {
  readonly nodes: readonly SvgNode[];
  readonly bottom: number;
}

/** Swatches under each other in a box of which only the last side is open, and their caption below. */
function drawnColumn(
  box: Box,
  words: { readonly caption: string; readonly standing: ShownStanding },
  colours: readonly (ScreenColour | undefined)[],
  missing: string,
  layout: Layout,
): Drawn {
  const { textSize, gap } = layout;
  const each = (box.bottom - box.top - gap * (colours.length - 1)) / colours.length;
  const boxes = colours.map((_, i) => ({
    ...box,
    top: box.top + i * (each + gap),
    bottom: box.top + i * (each + gap) + each,
  }));
  const indent = MARK_RADIUS * 2 + 5;
  const lines = wrappedLines(words.caption, box.right - box.left - indent, textSize);
  const baseline = box.bottom + gap * 0.5 + textSize;
  const lineHeight = textSize * 1.25;
  return {
    nodes: [
      ...boxes.flatMap((at, i) => {
        const colour = colours[i];
        return colour === undefined ? hatchedOutline(at, missing, textSize) : [swatch(colour, at)];
      }),
      standingMark(words.standing, { x: box.left + MARK_RADIUS, y: baseline - textSize * 0.35 }),
      ...textLines(lines, { x: box.left + indent, y: baseline }, { role: "caption" }, lineHeight),
    ],
    bottom: baseline + (lines.length - 1) * lineHeight + textSize * 0.25,
  };
}

function drawnTints({ levels, whites, missing }: SwatchPanel, layout: Layout, area: Box): Drawn {
  const { gap, tintHeight, textSize } = layout;
  const left = area.left + Math.max(...levels.map((level) => textWidth(level, textSize))) + gap;
  const columnWidth = (area.right - left - gap * (whites.length - 1)) / whites.length;
  const bottom = area.top + levels.length * (tintHeight + gap) - gap;
  const columns = whites.map((white, i) => {
    const x = left + i * (columnWidth + gap);
    return drawnColumn(
      { left: x, top: area.top, right: x + columnWidth, bottom },
      white,
      white.tints,
      missing,
      layout,
    );
  });
  return {
    nodes: [
      ...levels.map((level, i) =>
        textLine(
          level,
          { x: area.left, y: area.top + i * (tintHeight + gap) + tintHeight / 2 + textSize * 0.35 },
          { role: "caption" },
        ),
      ),
      ...columns.flatMap((column) => column.nodes),
    ],
    bottom: Math.max(...columns.map((column) => column.bottom)),
  };
}
