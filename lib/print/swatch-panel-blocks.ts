import type { CardSwatch } from "./card-content.ts";
import { BLEED_MM, N6, QUIET, TEXT_MIN_PT, type CardGeometry, type CardPlan } from "./card-plan.ts";
import { BLACK, WHITE, type Block, type Mark } from "./mark.ts";
import { placedText } from "./set-text.ts";
import { STANDING_MARK_WIDTH, standingMarks } from "./standing-marks.ts";
import { fittedText, MM_PER_PT, shrinking, type SetText } from "./text-lines.ts";

const GAP_MM = 1.6;
const TINT_HEIGHT = { most: 12, besideChip: 8, least: 7 };
const CHIP_LEAST_MM = 8.5;
/** From a swatch to the capitals of its caption. */
const CAPTION_GAP_MM = 1.1;

/** The swatches' panel, from the card's left edge to `widthMm`. */
export interface SwatchPanel {
  readonly blocks: readonly Block[];
  readonly widthMm: number;
  /** Sizes and prices found no room. */
  readonly sizesLeft: boolean;
}

/** Masstone, two tints at equal L* with their white, and at the foot what a tube costs; all on N 6, off three edges. */
export function swatchPanelBlocks(
  plan: CardPlan,
  { safeMm, heightMm, type }: CardGeometry,
): SwatchPanel {
  const {
    content,
    size,
    words: {
      pages: { cards: text },
    },
  } = plan;
  const scale = Math.min(1.25, type);
  const [left, width, bottom] = [safeMm, 28 * scale, heightMm - safeMm];
  const captionPt = 6 * Math.min(1.12, type);
  const captionMm = captionPt * 1.16 * MM_PER_PT;
  const foot = sizesFoot(plan, { left, width, bottom, sizePt: 7.4 * Math.min(1.15, type) });
  const tintWidth = (width - GAP_MM) / 2;
  const tintPt = Math.min(
    captionPt,
    ...content.tints.map(
      (tint) => captionSet(plan, tint.white ?? tint.caption, tintWidth, captionPt).setting.sizePt,
    ),
  );
  const tintSets = content.tints.map((tint) =>
    captionSet(plan, tint.white ?? tint.caption, tintWidth, tintPt),
  );
  const captionRoom =
    CAPTION_GAP_MM + (1 + Math.max(0, ...tintSets.map(({ lines }) => lines.length))) * captionMm;

  const full = 22 * scale;
  const tintTop = safeMm + full + CAPTION_GAP_MM + captionMm + GAP_MM;
  const below = (end: number): number => end - tintTop - captionRoom;
  const keepsSizes =
    content.sizes.length === 0 ||
    content.tints.length === 0 ||
    below(foot.topMm - GAP_MM) >= TINT_HEIGHT.least;
  const free = keepsSizes ? foot.topMm - GAP_MM : bottom;
  const tintHeight = Math.min(
    (size.chip ? TINT_HEIGHT.besideChip : TINT_HEIGHT.most) * scale,
    below(free),
  );
  const underTints =
    content.tints.length === 0 ? tintTop : tintTop + tintHeight + captionRoom + GAP_MM;
  const chipBelow = size.chip && free - underTints >= CHIP_LEAST_MM;
  // Without tints the masstone has the panel to itself.
  const masstoneHeight =
    content.tints.length > 0 || chipBelow
      ? full
      : Math.min(full * 1.45, free - safeMm - CAPTION_GAP_MM - captionMm - 1);
  const masstoneBox = [left, safeMm, width, masstoneHeight] as const;
  const masstoneCaption =
    content.masstone === undefined
      ? `${text.masstone}: ${text.noColour}`
      : content.masstone.caption;
  return {
    widthMm: safeMm * 2 - 0.5 + width,
    sizesLeft: !keepsSizes,
    blocks: [
      {
        tag: "Artifact",
        marks: [
          {
            kind: "box",
            xMm: -BLEED_MM,
            yMm: -BLEED_MM,
            widthMm: safeMm * 2 - 0.5 + width + BLEED_MM,
            heightMm: heightMm + 2 * BLEED_MM,
            ink: N6,
          },
        ],
      },
      size.chip && !chipBelow
        ? chipBlock(plan, ...masstoneBox)
        : content.masstone === undefined
          ? absentBlock(...masstoneBox)
          : swatchBlock(content.masstone, ...masstoneBox),
      // A painted chip needs no standing: it is the paint.
      ...(size.chip && !chipBelow
        ? []
        : [
            {
              tag: "P",
              marks: captionMarks(
                captionSet(plan, masstoneCaption, width - 2.5, captionPt),
                content.masstone?.standing ?? "not stated",
                left,
                safeMm + masstoneHeight,
              ),
            } as const,
          ]),
      ...content.tints.flatMap((tint, i): Block[] => {
        const x = left + i * (tintWidth + GAP_MM);
        const set = tintSets[i];
        if (set === undefined) return [];
        const name = placedText(set, x, tintTop + tintHeight + CAPTION_GAP_MM);
        const level = captionMarks(
          { ...set, lines: [tint.level ?? ""] },
          tint.standing,
          x,
          name.baselineMm + captionMm - 0.66 * captionPt * MM_PER_PT - CAPTION_GAP_MM,
        );
        return [
          swatchBlock(tint, x, tintTop, tintWidth, tintHeight),
          { tag: "P", marks: [...name.marks, ...level] },
        ];
      }),
      ...(chipBelow
        ? [chipBlock(plan, left, underTints, width, Math.min(full, free - underTints))]
        : []),
      ...(keepsSizes ? foot.blocks : []),
    ],
  };
}

export function swatchBlock(
  swatch: CardSwatch,
  xMm: number,
  yMm: number,
  widthMm: number,
  heightMm: number,
): Block {
  return {
    tag: "Figure",
    alt: swatch.caption,
    marks: [
      { kind: "box", xMm, yMm, widthMm, heightMm, ink: { lab: swatch.lab, screen: swatch.screen } },
    ],
  };
}

/** Where no colour is known: an empty outline, never a colour. */
function absentBlock(xMm: number, yMm: number, widthMm: number, heightMm: number): Block {
  return { tag: "Artifact", marks: outline(xMm, yMm, widthMm, heightMm, [1.2, 0.8]) };
}

function outline(
  x: number,
  y: number,
  width: number,
  height: number,
  dashMm?: readonly [number, number],
): Mark[] {
  const corners = [
    [x, y],
    [x + width, y],
    [x + width, y + height],
    [x, y + height],
  ] as const;
  return corners.map((from, i): Mark => ({
    kind: "line",
    fromMm: from,
    toMm: corners[(i + 1) % 4] ?? from,
    widthPt: 0.5,
    ink: BLACK,
    ...(dashMm === undefined ? {} : { dashMm }),
  }));
}

/** White, with marks at its corners: to be painted, or to have a painted chip stuck on. */
function chipBlock(
  { words, measure }: CardPlan,
  xMm: number,
  yMm: number,
  widthMm: number,
  heightMm: number,
): Block {
  const caption = {
    setting: { face: "sans", sizePt: TEXT_MIN_PT, leadingPt: TEXT_MIN_PT },
    lines: [words.pages.cards.chip],
  } as const;
  const arm = 2;
  const corner = (x: number, y: number, dx: number, dy: number): Mark[] => [
    { kind: "line", fromMm: [x, y], toMm: [x + dx * arm, y], widthPt: 0.5, ink: BLACK },
    { kind: "line", fromMm: [x, y], toMm: [x, y + dy * arm], widthPt: 0.5, ink: BLACK },
  ];
  const captionX = xMm + (widthMm - measure(caption.lines[0], "sans", TEXT_MIN_PT)) / 2;
  return {
    tag: "P",
    marks: [
      { kind: "box", xMm, yMm, widthMm, heightMm, ink: WHITE },
      ...corner(xMm, yMm, 1, 1),
      ...corner(xMm + widthMm, yMm, -1, 1),
      ...corner(xMm + widthMm, yMm + heightMm, -1, -1),
      ...corner(xMm, yMm + heightMm, 1, -1),
      ...placedText(caption, captionX, yMm + heightMm - 2.6, QUIET).marks,
    ],
  };
}

/** A caption on one line, smaller where it must be; a name too long for that goes on over. */
function captionSet({ measure }: CardPlan, text: string, widthMm: number, sizePt: number): SetText {
  return fittedText(text, widthMm, 1, shrinking("sans", sizePt, TEXT_MIN_PT, 1.16), measure);
}

/** Standing mark and caption under a swatch. */
function captionMarks(
  set: SetText,
  standing: CardSwatch["standing"],
  xMm: number,
  swatchBottomMm: number,
): readonly Mark[] {
  const { sizePt } = set.setting;
  const placed = placedText(
    set,
    xMm + STANDING_MARK_WIDTH * sizePt * MM_PER_PT + 0.5,
    swatchBottomMm + CAPTION_GAP_MM,
  );
  return [
    ...standingMarks(standing, xMm, placed.marks[0]?.yMm ?? swatchBottomMm, sizePt),
    ...placed.marks,
  ];
}

/** Sizes at the left, prices at the right, up from the bottom. */
function sizesFoot(
  { content: { sizes }, measure }: CardPlan,
  {
    left,
    width,
    bottom,
    sizePt,
  }: {
    readonly left: number;
    readonly width: number;
    readonly bottom: number;
    readonly sizePt: number;
  },
): { readonly blocks: readonly Block[]; readonly topMm: number } {
  const leading = sizePt * 1.3 * MM_PER_PT;
  const blocks = sizes.map(({ size, price }, i): Block => {
    const yMm = bottom - (sizes.length - 1 - i) * leading;
    return {
      tag: "P",
      marks: [
        { kind: "text", text: size, xMm: left, yMm, face: "sans", sizePt },
        ...(price === undefined
          ? []
          : [
              {
                kind: "text",
                text: price,
                xMm: left + width - measure(price, "sans bold", sizePt),
                yMm,
                face: "sans bold",
                sizePt,
              } as const,
            ]),
      ],
    };
  });
  return {
    blocks,
    topMm:
      sizes.length === 0
        ? bottom + GAP_MM
        : bottom - (sizes.length - 1) * leading - sizePt * 0.66 * MM_PER_PT,
  };
}
