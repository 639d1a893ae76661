import type { Box } from "./box.ts";
import { hatchedOutline } from "./hatched-outline.ts";
import { onPanel, panel, writtenPicture, type PictureWords } from "./picture.ts";
import { swatch, type ScreenColour } from "./screen-colour.ts";
import { refusal, type SvgNode } from "./svg.ts";
import { textLine, textLines } from "./text-label.ts";
import { textWidth, wrappedLines } from "./text-width.ts";

export interface SideBySidePanel extends PictureWords {
  /** Two to four, left to right. */
  readonly colours: readonly {
    readonly name: string;
    readonly masstone: ScreenColour | undefined;
  }[];
  /** Each white with the same lightnesses, lightest first, of which one that none reaches is left out; tints go with `colours`. At most three. */
  readonly whites: readonly {
    readonly caption: string;
    readonly levels: readonly {
      readonly label: string;
      readonly tints: readonly (ScreenColour | undefined)[];
    }[];
  }[];
  readonly missing: string;
}

interface Layout {
  readonly width: number;
  readonly margin: number;
  readonly gap: number;
  readonly textSize: number;
  readonly masstoneHeight: number;
  readonly tintHeight: number;
  /** Whites beside each other. */
  readonly across: number;
}

const NARROW: Layout = {
  width: 320,
  margin: 16,
  gap: 10,
  textSize: 12,
  masstoneHeight: 84,
  tintHeight: 36,
  across: 1,
};
const WIDE: Layout = {
  width: 960,
  margin: 32,
  gap: 14,
  textSize: 15,
  masstoneHeight: 150,
  tintHeight: 52,
  across: 3,
};

/**
 * Swatches of several colours edge to edge, since a difference shows best along a shared edge: masstones under
 * their names, then for each white a strip at each lightness, the colours always in the same order. Two drawings,
 * as of `swatchPanel`; each needs an id prefix of its own.
 * @throws RangeError for a count of colours or whites outside its limits, or tints that do not go with the colours.
 */
export function sideBySidePanel(params: SideBySidePanel, variant: "narrow" | "wide"): string {
  const { colours, whites, missing } = params;
  if (!(colours.length >= 2 && colours.length <= 4))
    throw refusal("colours side by side", String(colours.length), "2 to 4");
  if (whites.length > 3) throw refusal("whites", String(whites.length), "0 to 3");
  for (const { caption, levels } of whites) {
    for (const { tints } of levels)
      if (tints.length !== colours.length)
        throw refusal(
          `tints in ${caption}`,
          String(tints.length),
          `${colours.length}, one a colour`,
        );
  }
  const layout = variant === "narrow" ? NARROW : WIDE;
  const { width, margin } = layout;
  const masstones = drawnMasstones(colours, missing, layout);
  const tints = drawnWhites(whites, missing, layout, masstones.bottom + layout.gap);
  const height = Math.max(masstones.bottom, tints.bottom) + margin;
  return writtenPicture(
    `side-by-side-${variant}`,
    params,
    { width, height, textSize: layout.textSize },
    [
      panel({ left: 0, top: 0, right: width, bottom: Math.ceil(height) }),
      onPanel([...masstones.nodes, ...tints.nodes]),
    ],
  );
}

interface Drawn {
  readonly nodes: readonly SvgNode[];
  readonly bottom: number;
}

/** Names stand on one baseline above their swatches. */
function drawnMasstones(
  colours: SideBySidePanel["colours"],
  missing: string,
  layout: Layout,
): Drawn {
  const { margin, textSize, masstoneHeight } = layout;
  const area = { left: margin, right: layout.width - margin };
  const each = (area.right - area.left) / colours.length;
  const names = colours.map(({ name }) => cutLines(name, each - 6, textSize));
  const lineHeight = textSize * 1.25;
  const most = Math.max(...names.map((lines) => lines.length));
  const top = margin - textSize * 0.5 + most * lineHeight + 2;
  return {
    nodes: [
      ...names.flatMap((lines, i) =>
        textLines(
          lines,
          { x: area.left + i * each, y: top - 7 - (lines.length - 1) * lineHeight },
          { role: "heading", bold: true },
          lineHeight,
        ),
      ),
      ...strip(
        colours.map(({ masstone }) => masstone),
        { ...area, top, bottom: top + masstoneHeight },
        missing,
        textSize,
      ),
    ],
    bottom: top + masstoneHeight,
  };
}

/** Edge to edge; what is not known is hatched, with its word where there is room. */
function strip(
  colours: readonly (ScreenColour | undefined)[],
  box: Box,
  missing: string,
  textSize: number,
): SvgNode[] {
  const each = (box.right - box.left) / colours.length;
  return colours.flatMap((colour, i) => {
    const at = { ...box, left: box.left + i * each, right: box.left + (i + 1) * each };
    if (colour !== undefined) return [swatch(colour, at)];
    const fits =
      missing.split(" ").every((word) => textWidth(word, textSize) + 8 <= each) &&
      box.bottom - box.top > 2.6 * textSize;
    return hatchedOutline(
      { left: at.left + 1, top: at.top + 0.5, right: at.right - 1, bottom: at.bottom - 0.5 },
      fits ? missing : "",
      textSize,
    );
  });
}

function drawnWhites(
  whites: SideBySidePanel["whites"],
  missing: string,
  layout: Layout,
  top: number,
): Drawn {
  const { margin, gap, textSize, tintHeight, across } = layout;
  const between = gap * 2;
  const columns = Math.min(across, Math.max(1, whites.length));
  const blockWidth = (layout.width - 2 * margin - between * (columns - 1)) / columns;
  const labels =
    Math.max(
      0,
      ...whites.flatMap(({ levels }) => levels.map(({ label }) => textWidth(label, textSize))),
    ) + gap;
  const nodes: SvgNode[] = [];
  let bottom = top - gap;
  for (let first = 0; first < whites.length; first += columns) {
    const from = bottom + gap * 1.5;
    const drawn = whites.slice(first, first + columns).map(({ caption, levels }, i): Drawn => {
      const left = margin + i * (blockWidth + between);
      const start = from + textSize * 1.6;
      return {
        nodes: [
          textLine(caption, { x: left, y: from + textSize }, { role: "caption" }),
          ...levels.flatMap(({ label, tints }, j) => {
            if (tints.every((colour) => colour === undefined)) return [];
            const at = start + j * (tintHeight + gap);
            return [
              textLine(
                label,
                { x: left, y: at + tintHeight / 2 + textSize * 0.35 },
                { role: "caption" },
              ),
              ...strip(
                tints,
                { left: left + labels, top: at, right: left + blockWidth, bottom: at + tintHeight },
                missing,
                textSize,
              ),
            ];
          }),
        ],
        bottom: start + levels.length * (tintHeight + gap) - gap,
      };
    });
    nodes.push(...drawn.flatMap((one) => one.nodes));
    bottom = Math.max(...drawn.map((one) => one.bottom));
  }
  return { nodes, bottom };
}

const LEAST_AFTER_A_CUT = 4;

/** Lines no wider than the swatch: a word that is wider still is cut with a hyphen. */
function cutLines(text: string, width: number, size: number): string[] {
  return wrappedLines(text, width, size, "bold").flatMap((line) => {
    const lines: string[] = [];
    let rest = Array.from(line);
    while (textWidth(rest.join(""), size, "bold") > width && rest.length > 2 * LEAST_AFTER_A_CUT) {
      let kept = rest.length - LEAST_AFTER_A_CUT;
      while (kept > 2 && textWidth(`${rest.slice(0, kept).join("")}-`, size, "bold") > width)
        kept--;
      lines.push(`${rest.slice(0, kept).join("")}-`);
      rest = rest.slice(kept);
    }
    return [...lines, rest.join("")];
  });
}
