import { CAUTION_MIN_PT, QUIET, TEXT_MIN_PT, type CardPlan } from "./card-plan.ts";
import type { Block } from "./mark.ts";
import { pictogramBlock } from "./pictogram-block.ts";
import { QR_QUIET_MODULES, qrBlock } from "./qr-block.ts";
import { capitalsToBaselineMm, placedText } from "./set-text.ts";
import { MM_PER_PT, wrappedLines, type SetText } from "./text-lines.ts";

/** The foot of a front: label at the left, address at the right. */
export interface CautionFoot {
  readonly blocks: readonly Block[];
  /** Highest ink of the label [mm]. */
  readonly topMm: number;
  /** Clear space of the address: what reaches below its top ends left of it [mm]. */
  readonly address: { readonly topMm: number; readonly leftMm: number };
}

interface Placed {
  readonly blocks: readonly Block[];
  readonly topMm: number;
}

interface FootRoom {
  readonly leftMm: number;
  readonly widthMm: number;
  readonly bottomMm: number;
  readonly type: number;
  readonly shown: FootShown;
}

/** How much a foot says; the rest is on the back. */
export interface FootShown {
  /** Hazard statements too, not symbols and word alone. */
  readonly statements: boolean;
  /** Why rags are told of, not the danger alone. */
  readonly ragsInWords: boolean;
}

/** Side of a pictogram: as large as a row of them allows, never below what reads [mm]. */
const PICTOGRAM = { most: 10, least: 7 };
const QR_MM = 11;
/** From one caution's capitals up to the baseline before it. */
const BETWEEN_MM = 2;

/** Symbols, signal word, statements where they find room, what has no data, rags; the address as a QR code with the card's revision. */
export function cautionFoot(plan: CardPlan, room: FootRoom): CautionFoot {
  const { content, measure } = plan;
  const address = addressBlocks(plan, room);
  const widthMm = room.widthMm - address.widthMm;
  const cautionPt = Math.max(CAUTION_MIN_PT, 7 * room.type);
  const caution = (
    text: string,
    width = widthMm,
    face: "sans" | "sans bold" = "sans",
  ): SetText => ({
    setting: { face, sizePt: cautionPt, leadingPt: cautionPt * 1.16 },
    lines: wrappedLines(text, width, { face, sizePt: cautionPt }, measure),
  });
  const betweenMm = BETWEEN_MM * room.type;
  const up: Block[] = [];
  let bottom = room.bottomMm;
  const put = (set: SetText, x = room.leftMm): void => {
    const placed = placedText(set, x, bottom - capitalsToBaselineMm(set));
    up.unshift({ tag: "P", marks: placed.marks });
    bottom = placed.baselineMm - capitalsToBaselineMm(set) - betweenMm;
  };
  const { cards: text } = plan.words.pages;
  if (content.rags !== undefined) {
    const whole = caution(content.rags);
    put(
      room.shown.statements && whole.lines.length <= 3
        ? whole
        : caution(room.shown.ragsInWords ? text.ragLead : text.ragShort),
    );
  }
  if (content.label.notice !== undefined) put(caution(content.label.notice, widthMm, "sans bold"));
  const label = labelBlocks(plan, room, bottom, widthMm, cautionPt, caution);
  return {
    blocks: [...label.blocks, ...up, ...address.blocks],
    topMm: Math.min(label.topMm, up.length === 0 ? room.bottomMm : bottom + betweenMm),
    address: { topMm: address.topMm, leftMm: room.leftMm + room.widthMm - address.widthMm },
  };
}

/** Least width for a word and statements beside the pictograms; below it they stand under them [mm]. */
const BESIDE_LEAST_MM = 15;

/** Pictograms in a row, word and statements beside them, or under them where there is no width. */
function labelBlocks(
  { content: { label }, words }: CardPlan,
  { leftMm, type, shown: { statements } }: FootRoom,
  bottomMm: number,
  widthMm: number,
  cautionPt: number,
  caution: (text: string, width: number, face?: "sans" | "sans bold") => SetText,
): Placed {
  if (
    label.signalWords.length === 0 &&
    label.pictograms.length === 0 &&
    label.statements.length === 0
  )
    return { blocks: [], topMm: bottomMm };
  const count = label.pictograms.length;
  const most = PICTOGRAM.most * Math.min(1.2, type);
  const isUnder = count > 0 && widthMm - count * PICTOGRAM.least < BESIDE_LEAST_MM;
  const sideMm =
    count === 0
      ? 0
      : isUnder
        ? Math.min(most, widthMm / count)
        : Math.min(most, Math.max(PICTOGRAM.least, (widthMm - BESIDE_LEAST_MM) / count));
  const wordX = isUnder ? leftMm : leftMm + count * sideMm + (count === 0 ? 0 : 1.2);
  const wordWidth = leftMm + widthMm - wordX;
  const word = caution(label.signalWords.join(" \u00b7 "), wordWidth, "sans bold");
  const lines = statements
    ? label.statements.flatMap(({ texts }) =>
        texts.flatMap((one) => caution(one.text, wordWidth).lines),
      )
    : caution(words.pages.cards.overleaf, wordWidth).lines;
  const said: SetText = {
    setting: { face: "sans", sizePt: cautionPt, leadingPt: cautionPt * 1.16 },
    lines: label.statements.length === 0 ? [] : lines,
  };
  const lineGap = word.lines.length === 0 ? 0 : 1.3;
  const textMm =
    capitalsToBaselineMm(word) +
    (said.lines.length === 0 ? 0 : lineGap + capitalsToBaselineMm(said));
  const heightMm = isUnder ? sideMm + 0.8 + textMm : Math.max(textMm, sideMm);
  const topMm = bottomMm - heightMm;
  const wordAt = placedText(
    word,
    wordX,
    isUnder ? bottomMm - textMm : topMm + (heightMm - textMm) / 2,
  );
  const saidAt = placedText(said, wordX, wordAt.baselineMm + lineGap);
  return {
    topMm,
    blocks: [
      ...label.pictograms.map(({ code, name }, i) =>
        pictogramBlock(code, name, {
          xMm: leftMm + i * sideMm,
          yMm: isUnder ? topMm : topMm + (heightMm - sideMm) / 2,
          sideMm,
        }),
      ),
      ...(word.lines.length === 0 ? [] : [{ tag: "P", marks: wordAt.marks } as const]),
      ...(said.lines.length === 0 ? [] : [{ tag: "P", marks: saidAt.marks } as const]),
    ],
  };
}

/** QR code with the revision under it; without an address the revision alone. Its quiet zone lies in the margin. */
export function addressBlocks(
  { content: { address }, qr, revision, words, measure }: CardPlan,
  { leftMm, widthMm, bottomMm, type }: Pick<FootRoom, "leftMm" | "widthMm" | "bottomMm" | "type">,
): Placed & { readonly widthMm: number } {
  const sizePt = TEXT_MIN_PT;
  const right = leftMm + widthMm;
  const revisionWidth = measure(revision, "sans", sizePt);
  if (address === undefined || qr === undefined) {
    return {
      blocks: [
        {
          tag: "P",
          marks: [
            {
              kind: "text",
              text: revision,
              xMm: right - revisionWidth,
              yMm: bottomMm,
              face: "sans",
              sizePt,
              ink: QUIET,
            },
          ],
        },
      ],
      topMm: bottomMm - sizePt * 0.66 * MM_PER_PT,
      widthMm: revisionWidth + 2,
    };
  }
  const darkMm = QR_MM * Math.min(1.3, type);
  const quietMm = (darkMm / qr.size) * QR_QUIET_MODULES;
  const captionTop = bottomMm - sizePt * 0.66 * MM_PER_PT;
  const darkBottom = captionTop - 1;
  const topMm = darkBottom - darkMm;
  return {
    topMm: topMm - quietMm,
    widthMm: darkMm + quietMm + 0.6,
    blocks: [
      qrBlock(qr, words.pages.cards.address(address), {
        xMm: right - darkMm - quietMm,
        yMm: topMm - quietMm,
        sideMm: darkMm + 2 * quietMm,
      }),
      {
        tag: "P",
        marks: [
          {
            kind: "text",
            text: revision,
            xMm: right - darkMm / 2 - revisionWidth / 2,
            yMm: bottomMm,
            face: "sans",
            sizePt,
            ink: QUIET,
          },
        ],
      },
    ],
  };
}
