import type { PanelWords } from "../pages/sheet-panel.ts";
import type { Sheet } from "../sheet/sheet.ts";
import type { Mark } from "./mark.ts";
import { N6 } from "./card-plan.ts";
import type { Piece } from "./layout-tree.ts";
import { setRuns } from "./paper-run.ts";
import { measureText } from "./print-document.ts";
import { shifted } from "./paper-style.ts";
import { standingMarks } from "./standing-marks.ts";
import { paintInk, swatchMarks, tintInk, type SwatchBox } from "./paper-swatch.ts";
import type { Ink } from "./mark.ts";
import type { StandingKind } from "../quantities/figure.ts";

const MARGIN = 5;
const GAP = 3;
const CAPTION_PT = 7.5;
const CAPTION_MM = 4.4;
const TINT_MM = 11;
const ALONE_MM = 26;

/** The first screen's panel on paper: masstone beside the tints at equal L* in each white, in Lab on N 6. */
export function panelFigure(sheet: Sheet, words: PanelWords, widthMm: number): Piece {
  const { levels, whites } = words;
  const alone = whites.length === 0;
  const tintsHeight = alone ? ALONE_MM : Math.max(1, levels.length) * (TINT_MM + GAP) - GAP;
  const masstoneWidth = alone ? widthMm - 2 * MARGIN : (widthMm - 2 * MARGIN) * 0.38;
  const labelWidth = alone
    ? 0
    : Math.max(...levels.map(({ text }) => measureText(text, "sans", CAPTION_PT))) + GAP;
  const left = MARGIN + masstoneWidth + GAP + labelWidth;
  const columnWidth =
    (widthMm - MARGIN - left - GAP * (whites.length - 1)) / Math.max(1, whites.length);
  const marks: Mark[] = [];
  const captionLines: number[] = [];
  const column = (
    box: SwatchBox,
    inks: readonly (Ink | undefined)[],
    caption: string,
    standing: StandingKind,
  ): void => {
    const each = (box.heightMm - GAP * (inks.length - 1)) / inks.length;
    inks.forEach((ink, i) =>
      marks.push(
        ...swatchMarks(
          ink,
          { ...box, yMm: box.yMm + i * (each + GAP), heightMm: each },
          words.missing,
          CAPTION_PT,
        ),
      ),
    );
    const set = setRuns([{ text: caption, face: "sans" }], {
      widthMm: box.widthMm - 4,
      sizePt: CAPTION_PT,
      leadingPt: CAPTION_PT * 1.2,
    });
    const top = box.yMm + box.heightMm + 1.2;
    marks.push(
      ...standingMarks(
        standing,
        box.xMm,
        set.marks[0]?.yMm === undefined ? top : top + set.marks[0].yMm,
        CAPTION_PT,
      ),
      ...set.marks.map((mark) => shifted(mark, box.xMm + 2.4, top)),
    );
    captionLines.push(set.heightMm);
  };
  column(
    { xMm: MARGIN, yMm: MARGIN, widthMm: masstoneWidth, heightMm: tintsHeight },
    [paintInk(sheet.notations.masstone)],
    words.masstone,
    words.masstoneStanding,
  );
  levels.forEach(({ text }, i) => {
    if (!alone)
      marks.push({
        kind: "text",
        text,
        xMm: MARGIN + masstoneWidth + GAP,
        yMm: MARGIN + i * (TINT_MM + GAP) + TINT_MM / 2 + 0.9,
        face: "sans",
        sizePt: CAPTION_PT,
      });
  });
  whites.forEach(({ slug, caption }, i) => {
    const tint = sheet.tints.find(({ white }) => white.slug === slug);
    column(
      {
        xMm: left + i * (columnWidth + GAP),
        yMm: MARGIN,
        widthMm: columnWidth,
        heightMm: tintsHeight,
      },
      levels.map(({ level }) => tintInk(level, tint?.atL[level])),
      caption,
      "derived",
    );
  });
  const heightMm =
    MARGIN +
    tintsHeight +
    Math.max(CAPTION_MM, ...captionLines.map((height) => height + 1.2)) +
    MARGIN -
    2;
  return {
    kind: "piece",
    heightMm,
    beforeMm: 3,
    content: {
      tag: "Figure",
      alt: `${words.title}. ${words.description}`,
      marks: [{ kind: "box", xMm: 0, yMm: 0, widthMm, heightMm, ink: N6 }, ...marks],
    },
  };
}
