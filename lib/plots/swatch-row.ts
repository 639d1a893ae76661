import { hatchedOutline } from "./hatched-outline.ts";
import { LINE_HEIGHT, TEXT_SIZE } from "./picture.ts";
import { swatch, type ScreenColour } from "./screen-colour.ts";
import { DASHES, MARK_RADIUS, standingMark, type ShownStanding } from "./standing-mark.ts";
import { element, type SvgNode } from "./svg.ts";
import { textLines } from "./text-label.ts";
import { textWidth, widestWidth } from "./text-width.ts";

export interface RowStep {
  readonly colour: ScreenColour | undefined;
  readonly standing: ShownStanding;
  /** Lines under the mark: a ratio, a film, a finish and its L*. */
  readonly lines: readonly string[];
  /** A word under those, in bold, on a step that something speaks against. */
  readonly flag?: string | undefined;
}

interface RowSize {
  readonly left: number;
  readonly width: number;
  /** Least and greatest width of a swatch, and its height. */
  readonly swatch: { readonly width: readonly [number, number]; readonly height: number };
}

interface Drawn {
  readonly nodes: readonly SvgNode[];
  readonly bottom: number;
}

/** Among measured steps predicted ones stand lower, so that the eye tells them apart before it reads. */
const PREDICTED_HEIGHT = 0.75;
/** Between a predicted swatch and the dashes around it. */
const DASH_GAP = 3.5;
const GAP = 10;
const ROW_GAP = 20;
/** Least room between two labels side by side. */
const LABEL_GAP = 7;

/** Swatches on one grid of columns, as many rows as the labels need, about equally long. */
export function swatchRows(
  steps: readonly RowStep[],
  missing: string,
  size: RowSize,
  top: number,
): Drawn {
  const labels = Math.max(...steps.map((step) => stepWidth(step, missing))) + LABEL_GAP;
  const least = Math.max(size.swatch.width[0] + GAP, labels);
  const most = Math.max(1, Math.floor((size.width + GAP) / least));
  const columns = Math.ceil(steps.length / Math.ceil(steps.length / most));
  const pitch = Math.max(
    least,
    Math.min((size.width + GAP) / columns, Math.max(size.swatch.width[1] + GAP, labels)),
  );
  const tellsApart = steps.some(({ standing }) => standing === "measured");
  const nodes: SvgNode[] = [];
  let bottom = top - ROW_GAP;
  for (let first = 0; first < steps.length; first += columns) {
    const row = steps
      .slice(first, first + columns)
      .map((step, i) => ({ step, left: size.left + i * pitch }));
    const drawn = drawnRow(
      row,
      missing,
      {
        width: Math.min(pitch - GAP, size.swatch.width[1]),
        height: size.swatch.height,
        tellsApart,
      },
      bottom + ROW_GAP,
    );
    nodes.push(...drawn.nodes);
    bottom = drawn.bottom;
  }
  return { nodes, bottom };
}

function stepWidth({ lines, flag = "", colour }: RowStep, missing: string): number {
  const onHatching =
    colour === undefined ? missing.split(" ").map((word) => textWidth(word) + 8) : [];
  return Math.max(widestWidth(lines), textWidth(flag, "bold"), ...onHatching);
}

interface StepSize {
  readonly width: number;
  readonly height: number;
  /** Whether predicted steps are to be told from measured ones beside them. */
  readonly tellsApart: boolean;
}

function drawnRow(
  row: readonly { readonly step: RowStep; readonly left: number }[],
  missing: string,
  swatchSize: StepSize,
  top: number,
): Drawn {
  const base = top + swatchSize.height;
  const lineCount = Math.max(
    ...row.map(({ step: { lines, flag } }) => lines.length + (flag === undefined ? 0 : 1)),
  );
  const firstLine = base + 2 * MARK_RADIUS + 13 + TEXT_SIZE * 0.9;
  return {
    nodes: row.flatMap(({ step, left }) => [
      ...drawnStep(step, missing, { ...swatchSize, left, base }),
      standingMark(step.standing, { x: left + MARK_RADIUS, y: base + 8 + MARK_RADIUS }),
      ...textLines(step.lines, { x: left, y: firstLine }, { role: "caption" }),
      ...(step.flag === undefined
        ? []
        : textLines(
            [step.flag],
            { x: left, y: firstLine + step.lines.length * LINE_HEIGHT },
            { role: "word", bold: true },
          )),
    ]),
    bottom: firstLine + (lineCount - 1) * LINE_HEIGHT + 3,
  };
}

function drawnStep(
  { colour, standing }: RowStep,
  missing: string,
  at: StepSize & { readonly left: number; readonly base: number },
): SvgNode[] {
  const full = {
    left: at.left,
    top: at.base - at.height,
    right: at.left + at.width,
    bottom: at.base,
  };
  if (colour === undefined) return hatchedOutline(full, missing);
  if (standing === "measured" || !at.tellsApart) return [swatch(colour, full)];
  const top = at.base - at.height * PREDICTED_HEIGHT;
  return [
    element("rect", {
      class: "plot__predicted",
      x: at.left + 0.5,
      y: top,
      width: at.width - 1,
      height: at.base - top - 0.5,
      fill: "none",
      stroke: "currentColor",
      "stroke-width": 1,
      "stroke-dasharray": DASHES,
    }),
    swatch(colour, {
      left: at.left + DASH_GAP,
      top: top + DASH_GAP,
      right: full.right - DASH_GAP,
      bottom: at.base - DASH_GAP,
    }),
  ];
}
