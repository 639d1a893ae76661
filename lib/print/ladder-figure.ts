import type { LadderStrip } from "../plots/ladder-strip.ts";
import { ownColour } from "../pages/screen-swatch.ts";
import type { TintSection } from "../sheet/sheet.ts";
import type { Mark } from "./mark.ts";
import { N6 } from "./card-plan.ts";
import type { Piece } from "./layout-tree.ts";
import { setRuns } from "./paper-run.ts";
import { measureText } from "./print-document.ts";
import { LEAST_PT, shifted } from "./paper-style.ts";
import { standingMarks } from "./standing-marks.ts";
import { outline, paintInk, swatchMarks } from "./paper-swatch.ts";

const MARGIN = 3;
const GAP = 1.2;
const STEP_MM = 11;
/** Predicted steps stand lower and inside dashes. */
const PREDICTED = 0.75;
const DASH_GAP = 0.7;
const LABEL_MM = 6.2;
const FLAG_MM = 3;
const LEAST_STEP_MM = 5.6;

/** The let-downs of a colour in one white, from the strongest to the palest, in Lab on N 6; the words are those of the page's ladder. */
export function ladderFigure(tint: TintSection, words: LadderStrip, widthMm: number): Piece {
  const steps = tint.steps
    .filter((step) => ownColour(step) !== undefined)
    .toSorted((one, other) => other.colourShare - one.colourShare);
  const inside = widthMm - 2 * MARGIN;
  const labels =
    Math.max(...steps.map(({ massRatio }) => measureText(massRatio, "sans", LEAST_PT))) + 0.8;
  const perRow = Math.max(1, Math.floor((inside + GAP) / (Math.max(LEAST_STEP_MM, labels) + GAP)));
  const rows = Math.ceil(steps.length / perRow);
  const columns = Math.ceil(steps.length / rows);
  const stepWidth = Math.min(14, (inside + GAP) / columns - GAP);
  const marks: Mark[] = [];
  let y = MARGIN;
  for (let row = 0; row < rows; row++) {
    const own = steps.slice(row * columns, (row + 1) * columns);
    const base = y + STEP_MM;
    own.forEach((step, i) => {
      const x = MARGIN + i * (stepWidth + GAP);
      const ink = paintInk(step);
      if (step.standing === "measured") {
        marks.push(
          ...swatchMarks(
            ink,
            { xMm: x, yMm: y, widthMm: stepWidth, heightMm: STEP_MM },
            "",
            LEAST_PT,
          ),
        );
      } else {
        const height = STEP_MM * PREDICTED;
        const box = {
          xMm: x + 0.1,
          yMm: base - height,
          widthMm: stepWidth - 0.2,
          heightMm: height,
        };
        marks.push(
          ...swatchMarks(
            ink,
            {
              xMm: box.xMm + DASH_GAP,
              yMm: box.yMm + DASH_GAP,
              widthMm: box.widthMm - 2 * DASH_GAP,
              heightMm: height - 2 * DASH_GAP,
            },
            "",
            LEAST_PT,
          ),
          ...outline(box, { grey: 0.07 }, [0.8, 0.6]),
        );
      }
      marks.push(...standingMarks(step.standing, x, base + 2.5, LEAST_PT), {
        kind: "text",
        text: step.massRatio,
        xMm: x,
        yMm: base + 5.3,
        face: "sans",
        sizePt: LEAST_PT,
      });
      const flag = words.steps.find(({ label }) => label === step.massRatio)?.suspect;
      if (flag !== undefined)
        marks.push({
          kind: "text",
          text: flag,
          xMm: x,
          yMm: base + 5.3 + FLAG_MM,
          face: "sans bold",
          sizePt: LEAST_PT,
        });
    });
    y = base + LABEL_MM + (own.some(({ suspect }) => suspect !== undefined) ? FLAG_MM : 0) + 1;
  }
  const axis = setRuns([{ text: words.axisLabel, face: "sans" }], {
    widthMm: inside,
    sizePt: LEAST_PT,
    leadingPt: LEAST_PT * 1.2,
  });
  const heightMm = y + axis.heightMm + MARGIN - 1;
  return {
    kind: "piece",
    heightMm,
    beforeMm: 1.2,
    keepWithNext: true,
    content: {
      tag: "Figure",
      alt: `${words.title}. ${words.description}`,
      marks: [
        { kind: "box", xMm: 0, yMm: 0, widthMm, heightMm, ink: N6 },
        ...marks,
        ...axis.marks.map((mark) => shifted(mark, MARGIN, y)),
      ],
    },
  };
}
