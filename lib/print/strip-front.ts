import {
  BLEED_MM,
  CAUTION_MIN_PT,
  N6,
  QUIET,
  type CardGeometry,
  type CardPlan,
} from "./card-plan.ts";
import { CardTooLarge } from "./card-fault.ts";
import type { Front } from "./card-front.ts";
import { addressBlocks } from "./label-footer.ts";
import type { Block } from "./mark.ts";
import { pictogramBlock } from "./pictogram-block.ts";
import { capitalsToBaselineMm, placedText } from "./set-text.ts";
import { swatchBlock } from "./swatch-panel-blocks.ts";
import {
  fittedText,
  MM_PER_PT,
  shrinking,
  wrappedLines,
  type Measure,
  type SetText,
} from "./text-lines.ts";

const PICTOGRAM = { most: 10, least: 6 };

/** How large name and price are tried, the largest that leaves room for the label first. */
const TRIES = [1, 0.85, 0.7, 0.58] as const;

/**
 * A strip for a shelf's rail: name, Colour Index name, masstone, symbols and word, rags, price, address. The rest is on its back.
 * @throws CardTooLarge when even small type leaves no room for the label.
 */
export function stripFront(plan: CardPlan, geometry: CardGeometry): Front {
  for (const scale of TRIES) {
    const front = triedFront(plan, geometry, scale);
    if (front !== undefined) return front;
  }
  throw new CardTooLarge(plan.size.name, plan.content.slug, "name, symbols and signal word");
}

function triedFront(
  plan: CardPlan,
  { widthMm, heightMm, safeMm, type }: CardGeometry,
  scale: number,
): Front | undefined {
  const { content, measure } = plan;
  const bottom = heightMm - safeMm;
  const swatchSide = Math.min(heightMm - 2 * safeMm, widthMm * 0.26);
  const panelMm = swatchSide + 2 * safeMm;
  const leftMm = panelMm + safeMm;
  const right = widthMm - safeMm - 0.5;

  const address = addressBlocks(plan, {
    leftMm,
    widthMm: right - leftMm,
    bottomMm: bottom,
    type: Math.max(1, type),
  });
  const price = priceBlocks(
    plan,
    right,
    safeMm,
    Math.max(1, type) * Math.max(0.75, scale),
    address.topMm,
  );
  const middleMm = right - leftMm - Math.max(address.widthMm, price.widthMm);
  const nameAt = placedText(
    fittedText(
      content.name,
      middleMm,
      2,
      shrinking("serif", 17 * type * scale, Math.min(10, 17 * type * scale), 1.06),
      measure,
    ),
    leftMm,
    safeMm + 0.3,
  );
  const indexAt = placedText(
    fittedText(
      content.indexNames,
      middleMm,
      1,
      shrinking("sans", 9 * type * scale, 6, 1.15),
      measure,
    ),
    leftMm,
    nameAt.baselineMm + 1.9,
  );
  const label = stripLabel(plan, {
    leftMm,
    widthMm: middleMm,
    bottomMm: bottom,
    topMm: indexAt.baselineMm + 1.2,
  });
  if (label === undefined) return undefined;
  return {
    // What a strip has no place for at all is on the sheet, not on its back.
    left: {
      statements: true,
      facts: false,
      sentence: false,
      sizes: price.blocks.length < content.sizes.length,
    },
    blocks: [
      { tag: "H2", marks: nameAt.marks },
      { tag: "P", marks: indexAt.marks },
      {
        tag: "Artifact",
        marks: [
          {
            kind: "box",
            xMm: -BLEED_MM,
            yMm: -BLEED_MM,
            widthMm: panelMm + BLEED_MM,
            heightMm: heightMm + 2 * BLEED_MM,
            ink: N6,
          },
        ],
      },
      ...(content.masstone === undefined
        ? [
            {
              tag: "P",
              marks: placedText(
                cautionLines(plan.words.pages.cards.noColour, "sans", swatchSide, measure),
                safeMm,
                safeMm,
              ).marks,
            } as const,
          ]
        : [swatchBlock(content.masstone, safeMm, safeMm, swatchSide, heightMm - 2 * safeMm)]),
      ...label,
      ...price.blocks,
      ...address.blocks,
    ],
  };
}

function cautionLines(
  said: string,
  face: "sans" | "sans bold",
  widthMm: number,
  measure: Measure,
): SetText {
  return {
    setting: { face, sizePt: CAUTION_MIN_PT, leadingPt: CAUTION_MIN_PT * 1.14 },
    lines: wrappedLines(said, widthMm, { face, sizePt: CAUTION_MIN_PT }, measure),
  };
}

const BETWEEN_MM = 1.25;

/** Symbols, and beside them signal word, what has no data, rags; nothing where they reach above the top. */
function stripLabel(
  { content, words, measure }: CardPlan,
  {
    leftMm,
    widthMm,
    bottomMm,
    topMm,
  }: {
    readonly leftMm: number;
    readonly widthMm: number;
    readonly bottomMm: number;
    readonly topMm: number;
  },
): Block[] | undefined {
  const { cards: text } = words.pages;
  const { pictograms, signalWords, notice, statements } = content.label;
  const count = pictograms.length;
  const sideMm =
    count === 0 ? 0 : Math.min(PICTOGRAM.most, Math.max(PICTOGRAM.least, (widthMm - 16) / count));
  const wordX = leftMm + count * sideMm + (count === 0 ? 0 : 1.2);
  const room = leftMm + widthMm - wordX;
  const said = [
    ...(signalWords.length === 0
      ? []
      : [cautionLines(signalWords.join(" \u00b7 "), "sans bold", room, measure)]),
    ...(notice === undefined ? [] : [cautionLines(notice, "sans bold", room, measure)]),
    ...(content.rags === undefined ? [] : [cautionLines(text.ragStrip, "sans", room, measure)]),
    ...(statements.length === 0 ? [] : [cautionLines(text.overleaf, "sans", room, measure)]),
  ];
  const heightMm = said.reduce(
    (sum, set) => sum + capitalsToBaselineMm(set) + BETWEEN_MM,
    said.length === 0 ? 0 : -BETWEEN_MM,
  );
  let top = bottomMm - heightMm - Math.max(0, (sideMm - heightMm) / 2);
  if (!(Math.min(top, bottomMm - sideMm) >= topMm) || room < 10) return undefined;
  return [
    ...pictograms.map(({ code, name: alt }, i) =>
      pictogramBlock(code, alt, { xMm: leftMm + i * sideMm, yMm: bottomMm - sideMm, sideMm }),
    ),
    ...said.map((set): Block => {
      const placed = placedText(set, wordX, top);
      top = placed.baselineMm + BETWEEN_MM;
      return { tag: "P", marks: placed.marks };
    }),
  ];
}

/** Sizes with their prices at the top right, one under the other as far as they reach down to the address. */
function priceBlocks(
  { content: { sizes }, measure }: CardPlan,
  right: number,
  top: number,
  type: number,
  limitMm: number,
): { readonly blocks: readonly Block[]; readonly widthMm: number } {
  const pricePt = sizes.length === 1 ? 13 * type : 9.5 * type;
  const sizePt = 7 * type;
  const each = sizes.map(({ size, price }) => ({
    size,
    price,
    widthMm:
      (price === undefined ? 0 : measure(price, "sans bold", pricePt)) +
      1.2 +
      measure(size, "sans", sizePt),
  }));
  const blocks = each.map(({ size, price, widthMm }, i): Block => {
    const yMm = top + 0.3 + (pricePt * 0.66 + i * pricePt * 1.2) * MM_PER_PT;
    return {
      tag: "P",
      marks: [
        { kind: "text", text: size, xMm: right - widthMm, yMm, face: "sans", sizePt, ink: QUIET },
        ...(price === undefined
          ? []
          : [
              {
                kind: "text",
                text: price,
                xMm: right - measure(price, "sans bold", pricePt),
                yMm,
                face: "sans bold",
                sizePt: pricePt,
              } as const,
            ]),
      ],
    };
  });
  const fits = blocks.filter(
    (_, i) => top + (pricePt * 0.66 + i * pricePt * 1.2) * MM_PER_PT < limitMm,
  );
  return { blocks: fits, widthMm: Math.max(0, ...each.map(({ widthMm }) => widthMm)) + 2 };
}
