import { BLEED_MM, CAUTION_MIN_PT, N7, QUIET, type CardGeometry, type CardPlan } from "./card-plan.ts";
import { CardTooLarge } from "./card-fault.ts";
import type { Front } from "./card-front.ts";
import { addressBlocks } from "./caution-foot.ts";
import type { Block } from "./mark.ts";
import { pictogramBlock } from "./pictogram-block.ts";
import { capitalsToBaselineMm, placedText } from "./set-text.ts";
import { swatchBlock } from "./swatch-panel-blocks.ts";
import { fittedText, MM_PER_PT, shrinking, wrappedLines, type SetText } from "./text-lines.ts";

const PICTOGRAM = { most: 10, least: 6 };

/** A strip for a shelf's rail: name, Colour Index name, masstone, symbols and word, rags, price, address. The rest is on its back. */
export function stripFront(plan: CardPlan, { widthMm, heightMm, safeMm, type }: CardGeometry): Front {
  const { content, words, measure } = plan;
  const { cards: text } = words.pages;
  const bottom = heightMm - safeMm;
  const swatchSide = Math.min(heightMm - 2 * safeMm, widthMm * 0.26);
  const panelMm = swatchSide + 2 * safeMm;
  const leftMm = panelMm + safeMm;
  const right = widthMm - safeMm - 0.5;

  const address = addressBlocks(plan, { leftMm, widthMm: right - leftMm, bottomMm: bottom, type: Math.max(1, type) });
  const price = priceBlocks(plan, right, safeMm, Math.max(1, type), address.topMm);
  const middleMm = right - leftMm - Math.max(address.widthMm, price.widthMm);
  const name = fittedText(content.name, middleMm, 2, shrinking("serif", 17 * type, 10, 1.06), measure);
  const nameAt = placedText(name, leftMm, safeMm + 0.3);
  const index = fittedText(content.indexNames, middleMm, 1, shrinking("sans", 9 * type, 6.5, 1.15), measure);
  const indexAt = placedText(index, leftMm, nameAt.baselineMm + 1.9);

  const cautionPt = CAUTION_MIN_PT;
  const lines = (said: string, face: "sans" | "sans bold", width: number): SetText => ({ setting: { face, sizePt: cautionPt, leadingPt: cautionPt * 1.14 }, lines: wrappedLines(said, width, { face, sizePt: cautionPt }, measure) });
  const count = content.label.pictograms.length;
  const side = count === 0 ? 0 : Math.min(PICTOGRAM.most, Math.max(PICTOGRAM.least, (middleMm - 16) / count), bottom - indexAt.bottomMm - 1);
  const wordX = leftMm + count * side + (count === 0 ? 0 : 1.2);
  const said = [
    ...(content.label.signalWords.length === 0 ? [] : [lines(content.label.signalWords.join(" \u00b7 "), "sans bold", leftMm + middleMm - wordX)]),
    ...(content.label.unknown === undefined ? [] : [lines(content.label.unknown, "sans bold", leftMm + middleMm - wordX)]),
    ...(content.rags === undefined ? [] : [lines(text.ragStrip, "sans", leftMm + middleMm - wordX)]),
    ...(content.label.statements.length === 0 ? [] : [lines(text.overleaf, "sans", leftMm + middleMm - wordX)]),
  ];
  const height = said.reduce((sum, set) => sum + capitalsToBaselineMm(set) + 1.25, said.length === 0 ? 0 : -1.25);
  let top = bottom - Math.max(height, 0) - (count === 0 ? 0 : Math.max(0, (side - height) / 2));
  if (!(Math.min(top, bottom - side) >= indexAt.baselineMm + 1)) throw new CardTooLarge(plan.size.name, content.slug, "name, symbols and signal word");
  const saidBlocks = said.map((set): Block => {
    const placed = placedText(set, wordX, top);
    top = placed.baselineMm + 1.25;
    return { tag: "P", marks: placed.marks };
  });
  return {
    // What a strip has no place for at all is on the sheet, not on its back.
    left: { statements: true, facts: false, sentence: false, sizes: price.blocks.length < content.sizes.length },
    blocks: [
      { tag: "H2", marks: nameAt.marks }, { tag: "P", marks: indexAt.marks },
      { tag: "Artifact", marks: [{ kind: "box", xMm: -BLEED_MM, yMm: -BLEED_MM, widthMm: panelMm + BLEED_MM, heightMm: heightMm + 2 * BLEED_MM, ink: N7 }] },
      ...(content.masstone === undefined ? [{ tag: "P", marks: placedText(lines(text.noColour, "sans", swatchSide), safeMm, safeMm).marks } as const] : [swatchBlock(content.masstone, safeMm, safeMm, swatchSide, heightMm - 2 * safeMm)]),
      ...content.label.pictograms.map(({ code, name: alt }, i) => pictogramBlock(code, alt, { xMm: leftMm + i * side, yMm: bottom - side, sideMm: side })),
      ...saidBlocks, ...price.blocks, ...address.blocks,
    ],
  };
}

/** Sizes with their prices at the top right, one under the other as far as they reach down to the address. */
function priceBlocks({ content: { sizes }, measure }: CardPlan, right: number, top: number, type: number, limitMm: number): { readonly blocks: readonly Block[]; readonly widthMm: number } {
  const pricePt = sizes.length === 1 ? 13 * type : 9.5 * type;
  const sizePt = 7 * type;
  const each = sizes.map(({ size, price }) => ({ size, price, widthMm: (price === undefined ? 0 : measure(price, "sans bold", pricePt)) + 1.2 + measure(size, "sans", sizePt) }));
  const blocks = each.map(({ size, price, widthMm }, i): Block => {
    const yMm = top + 0.3 + (pricePt * 0.66 + i * pricePt * 1.2) * MM_PER_PT;
    return {
      tag: "P",
      marks: [
        { kind: "text", text: size, xMm: right - widthMm, yMm, face: "sans", sizePt, ink: QUIET },
        ...(price === undefined ? [] : [{ kind: "text", text: price, xMm: right - measure(price, "sans bold", pricePt), yMm, face: "sans bold", sizePt: pricePt } as const]),
      ],
    };
  });
  const fits = blocks.filter((_, i) => top + (pricePt * 0.66 + i * pricePt * 1.2) * MM_PER_PT < limitMm);
  return { blocks: fits, widthMm: Math.max(0, ...each.map(({ widthMm }) => widthMm)) + 2 };
}
