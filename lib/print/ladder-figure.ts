import type { LadderBlock } from "../blocks/block.ts";
import type { Piece } from "./layout-tree.ts";
import { BLACK, N6, shifted, type Mark } from "./mark.ts";
import { figurePiece, LEAST_PT, type PaperStyle } from "./paper-style.ts";
import { swatchMarks } from "./paper-swatch.ts";
import { setRuns } from "./set-runs.ts";

/** Height of a step, and where room is scarce. */
const STEP_HIGH_MM = { roomy: 10, dense: 7 } as const;
const LEAST_STEP_MM = 6.4;
const MOST_STEP_MM = 12;
const LABEL_MM = 3.6;
const EDGE_MM = 1.5;
const DOT_MM = 0.55;

/** The let-downs of a colour in one white, abutting, from the strongest to the palest, on N 6; a dot over the ratio of each that was read. */
export function ladderFigure(
  { steps, description }: LadderBlock,
  { widthMm, isDense = false }: PaperStyle,
): Piece[] {
  if (steps.length === 0) return [];
  const highMm = STEP_HIGH_MM[isDense ? "dense" : "roomy"];
  const inside = widthMm - 2 * EDGE_MM;
  const rows = Math.ceil(steps.length / Math.floor(inside / LEAST_STEP_MM));
  const columns = Math.ceil(steps.length / rows);
  const stepMm = Math.min(MOST_STEP_MM, inside / columns);
  const marks: Mark[] = [];
  let y = EDGE_MM;
  for (let row = 0; row < rows; row++) {
    const own = steps.slice(row * columns, (row + 1) * columns);
    own.forEach((step, i) => {
      const x = EDGE_MM + i * stepMm;
      const under = (text: string, yMm: number): Mark[] =>
        setRuns([{ text, face: "sans" }], {
          widthMm: stepMm,
          sizePt: LEAST_PT,
          align: "centre",
        }).marks.map((mark) => shifted(mark, x, yMm));
      marks.push(
        ...swatchMarks(step, { xMm: x, yMm: y, widthMm: stepMm, heightMm: highMm }, LEAST_PT),
        ...(step.measured ? [dot(x + stepMm / 2, y + highMm + 1)] : []),
        ...under(step.label, y + highMm + 1.8),
      );
    });
    y += highMm + 1.8 + LABEL_MM + (row < rows - 1 ? 0.6 : 0);
  }
  const ground: Mark = { kind: "box", xMm: 0, yMm: 0, widthMm, heightMm: y, ink: N6 };
  return [figurePiece(description, y, [ground, ...marks], { keepWithNext: true })];
}

function dot(xMm: number, yMm: number): Mark {
  return {
    kind: "path",
    d: "M-1 0A1 1 0 1 1 1 0A1 1 0 1 1-1 0Z",
    xMm,
    yMm,
    scale: DOT_MM,
    ink: BLACK,
  };
}
