import type { CardSwatch } from "./card-content.ts";
import { BLEED_MM, N7, QUIET, TEXT_MIN_PT, type CardGeometry, type CardPlan } from "./card-plan.ts";
import { BLACK, WHITE, type Block, type Mark } from "./mark.ts";
import { placedText } from "./set-text.ts";
import { STANDING_MARK_WIDTH, standingMarks } from "./standing-marks.ts";
import { fittedText, MM_PER_PT, shrinking, wrappedLines } from "./text-lines.ts";

const GAP_MM = 1.6;
const TINT_HEIGHT = { most: 12, least: 7 };
const CHIP_LEAST_MM = 13;

/** The swatches' panel, from the card's left edge to `widthMm`. */
export interface SwatchPanel {
  readonly blocks: readonly Block[];
  readonly widthMm: number;
  /** Sizes and prices found no room. */
  readonly sizesLeft: boolean;
}

/** Masstone, two tints at equal L* with their white, and at the foot what a tube costs; all on N 7, off three edges. */
export function swatchPanelBlocks(plan: CardPlan, { safeMm, heightMm, type }: CardGeometry): SwatchPanel {
  const { content, size, words: { pages: { cards: text } } } = plan;
  const scale = Math.min(1.25, type);
  const [left, width, swatchHeight] = [safeMm, 28 * scale, 22 * scale];
  const bottom = heightMm - safeMm;
  const widthMm = safeMm * 2 - 0.5 + width;

  const foot = sizesFoot(plan, { left, width, bottom, sizePt: 7.4 * Math.min(1.15, type) });
  const captionPt = 6 * Math.min(1.12, type);
  const masstoneCaption = captionAt(plan, [captionOf(content.masstone, text.masstone, text.noColour)], content.masstone?.standing ?? "not stated", left, width, safeMm + swatchHeight, captionPt);
  const tintTop = masstoneCaption.bottomMm + GAP_MM;
  const tintWidth = (width - GAP_MM) / 2;
  const captionRoom = 0.9 + 2 * captionPt * 1.16 * MM_PER_PT;
  const room = foot.topMm - GAP_MM - tintTop - captionRoom;
  const keepsSizes = content.sizes.length === 0 || content.tints.length === 0 || room >= TINT_HEIGHT.least;
  const free = keepsSizes ? foot.topMm - GAP_MM : bottom;
  const tintHeight = Math.min(TINT_HEIGHT.most * scale, free - tintTop - captionRoom);
  const tints = content.tints.flatMap((tint, i): Block[] => {
    const x = left + i * (tintWidth + GAP_MM);
    const caption = captionAt(plan, [tint.white ?? "", tint.level ?? ""], tint.standing, x, tintWidth, tintTop + tintHeight, captionPt);
    return [swatchBlock(tint, x, tintTop, tintWidth, tintHeight), { tag: "P", marks: caption.marks }];
  });
  const underTints = content.tints.length === 0 ? tintTop : tintTop + tintHeight + captionRoom + GAP_MM;
  const chipBelow = size.chip && free - underTints >= CHIP_LEAST_MM;
  const chipInstead = size.chip && !chipBelow;
  return {
    widthMm, sizesLeft: !keepsSizes,
    blocks: [
      { tag: "Artifact", marks: [{ kind: "box", xMm: -BLEED_MM, yMm: -BLEED_MM, widthMm: widthMm + BLEED_MM, heightMm: heightMm + 2 * BLEED_MM, ink: N7 }] },
      ...(chipInstead ? [chipBlock(plan, left, safeMm, width, swatchHeight)] : content.masstone === undefined ? [absentBlock(left, safeMm, width, swatchHeight)] : [swatchBlock(content.masstone, left, safeMm, width, swatchHeight)]),
      { tag: "P", marks: masstoneCaption.marks },
      ...tints,
      ...(chipBelow ? [chipBlock(plan, left, underTints, width, Math.min(swatchHeight, free - underTints))] : []),
      ...(keepsSizes ? foot.blocks : []),
    ],
  };
}

function captionOf(swatch: CardSwatch | undefined, masstone: string, noColour: string): string {
  return swatch === undefined ? `${masstone}: ${noColour}` : swatch.caption;
}

export function swatchBlock(swatch: CardSwatch, xMm: number, yMm: number, widthMm: number, heightMm: number): Block {
  return { tag: "Figure", alt: swatch.caption, marks: [{ kind: "box", xMm, yMm, widthMm, heightMm, ink: { lab: swatch.lab, screen: swatch.screen } }] };
}

/** Where no colour is known: an empty outline, never a colour. */
function absentBlock(xMm: number, yMm: number, widthMm: number, heightMm: number): Block {
  return { tag: "Artifact", marks: outline(xMm, yMm, widthMm, heightMm, [1.2, 0.8]) };
}

function outline(x: number, y: number, width: number, height: number, dashMm?: readonly [number, number]): Mark[] {
  const corners = [[x, y], [x + width, y], [x + width, y + height], [x, y + height]] as const;
  return corners.map((from, i): Mark => ({ kind: "line", fromMm: from, toMm: corners[(i + 1) % 4] ?? from, widthPt: 0.5, ink: BLACK, ...(dashMm === undefined ? {} : { dashMm }) }));
}

/** White, with marks at its corners: to be painted, or to have a painted chip stuck on. */
function chipBlock({ words, measure }: CardPlan, xMm: number, yMm: number, widthMm: number, heightMm: number): Block {
  const caption = { setting: { face: "sans", sizePt: TEXT_MIN_PT, leadingPt: TEXT_MIN_PT }, lines: [words.pages.cards.chip] } as const;
  const arm = 2;
  const corner = (x: number, y: number, dx: number, dy: number): Mark[] => [
    { kind: "line", fromMm: [x, y], toMm: [x + dx * arm, y], widthPt: 0.5, ink: BLACK }, { kind: "line", fromMm: [x, y], toMm: [x, y + dy * arm], widthPt: 0.5, ink: BLACK },
  ];
  const captionX = xMm + (widthMm - measure(caption.lines[0], "sans", TEXT_MIN_PT)) / 2;
  return {
    tag: "P",
    marks: [
      { kind: "box", xMm, yMm, widthMm, heightMm, ink: WHITE },
      ...corner(xMm, yMm, 1, 1), ...corner(xMm + widthMm, yMm, -1, 1), ...corner(xMm + widthMm, yMm + heightMm, -1, -1), ...corner(xMm, yMm + heightMm, 1, -1),
      ...placedText(caption, captionX, yMm + heightMm - 2.6, QUIET).marks,
    ],
  };
}

/** Standing mark and caption under a swatch. */
function captionAt({ measure }: CardPlan, lines: readonly string[], standing: CardSwatch["standing"], xMm: number, widthMm: number, swatchBottomMm: number, sizePt: number): { readonly marks: readonly Mark[]; readonly bottomMm: number } {
  const indent = STANDING_MARK_WIDTH * sizePt * MM_PER_PT + 0.5;
  const fitted = lines.flatMap((line) => {
    const set = fittedText(line, widthMm - indent, 1, shrinking("sans", sizePt, TEXT_MIN_PT, 1.16), measure);
    return set.lines.length <= 1 ? [set] : wrappedLines(line, widthMm - indent, set.setting, measure).map((part) => ({ ...set, lines: [part] }));
  });
  const smallest = fitted.reduce((least, { setting }) => (setting.sizePt < least.sizePt ? setting : least), fitted[0]?.setting ?? { face: "sans" as const, sizePt, leadingPt: sizePt * 1.16 });
  const placed = placedText({ setting: smallest, lines: fitted.flatMap((set) => set.lines) }, xMm + indent, swatchBottomMm + 1.1);
  const first = placed.marks[0]?.yMm ?? swatchBottomMm;
  return { marks: [...standingMarks(standing, xMm, first, smallest.sizePt), ...placed.marks], bottomMm: placed.bottomMm };
}

/** Sizes at the left, prices at the right, up from the bottom. */
function sizesFoot({ content: { sizes }, measure }: CardPlan, { left, width, bottom, sizePt }: { readonly left: number; readonly width: number; readonly bottom: number; readonly sizePt: number }): { readonly blocks: readonly Block[]; readonly topMm: number } {
  const leading = sizePt * 1.3 * MM_PER_PT;
  const blocks = sizes.map(({ size, price }, i): Block => {
    const yMm = bottom - (sizes.length - 1 - i) * leading;
    return {
      tag: "P",
      marks: [
        { kind: "text", text: size, xMm: left, yMm, face: "sans", sizePt },
        ...(price === undefined ? [] : [{ kind: "text", text: price, xMm: left + width - measure(price, "sans bold", sizePt), yMm, face: "sans bold", sizePt } as const]),
      ],
    };
  });
  return { blocks, topMm: sizes.length === 0 ? bottom + GAP_MM : bottom - (sizes.length - 1) * leading - sizePt * 0.66 * MM_PER_PT };
}
