import { labUnder } from "../colorimetry/lab-under.ts";
import { ownColour } from "../pages/screen-swatch.ts";
import { isKnown } from "../quantities/figure.ts";
import { isStatement } from "../quantities/statement.ts";
import type {
  AtLightness,
  EqualLightness,
  LabFigures,
  ScreenFigures,
  Sheet,
} from "../sheet/sheet.ts";
import type { LabViewing } from "../colorimetry/viewing.ts";
import { BLACK, type Ink, type Mark } from "./mark.ts";
import { N6 } from "./card-plan.ts";
import { printedLab } from "./printed-lab.ts";
import { measureText } from "./print-document.ts";
import { MM_PER_PT } from "./text-lines.ts";

/** A paint's ink from its Lab; nothing where no colour is known. */
export function paintInk(
  figures:
    | ({ readonly lab: Partial<Record<LabViewing, LabFigures>> } & Partial<ScreenFigures>)
    | undefined,
): Ink | undefined {
  const printed = figures === undefined ? undefined : printedLab(figures.lab);
  return printed === undefined
    ? undefined
    : { lab: printed.lab, screen: ownColour(figures) ?? UNSHOWN };
}

/** On paper no screen's colour is drawn. */
const UNSHOWN = { hex: "#000000" };

/** The ink of a tint at a lightness: its own D50/2, else a* and b* of D65 and the 10 degree observer, adapted. */
export function tintInk(level: EqualLightness, tint: AtLightness | undefined): Ink | undefined {
  if (tint === undefined || !isKnown(tint.a) || !isKnown(tint.b)) return undefined;
  const own = tint.lab === undefined ? undefined : paintInk({ ...tint, lab: tint.lab });
  if (own !== undefined) return own;
  const under = labUnder({ L: Number(level), a: tint.a.value, b: tint.b.value }, "D65/10", "D50/2");
  return isStatement(under) ? undefined : { lab: under.lab, screen: ownColour(tint) ?? UNSHOWN };
}

/** Every paint of a sheet by the sRGB that its pictures show it in. */
export function paintsByHex({ notations, tints }: Sheet): ReadonlyMap<string, Ink> {
  const paints = new Map<string, Ink>();
  const add = (figures: Partial<ScreenFigures> | undefined, ink: Ink | undefined): void => {
    const hex = ownColour(figures)?.hex.toLowerCase();
    if (hex !== undefined && ink !== undefined && !paints.has(hex)) paints.set(hex, ink);
  };
  add(notations.masstone, paintInk(notations.masstone));
  for (const { steps, atL } of tints) {
    for (const step of steps) add(step, paintInk(step));
    for (const level of ["70", "50", "30"] as const) add(atL[level], tintInk(level, atL[level]));
  }
  return paints;
}

export interface SwatchBox {
  readonly xMm: number;
  readonly yMm: number;
  readonly widthMm: number;
  readonly heightMm: number;
}

/** A swatch in its ink, with a hairline where it would be lost on N 6; hatched and said where no colour is known. */
export function swatchMarks(
  ink: Ink | undefined,
  box: SwatchBox,
  missing: string,
  sizePt: number,
): Mark[] {
  const { xMm, yMm, widthMm, heightMm } = box;
  if (ink !== undefined) {
    const lost =
      "lab" in ink &&
      "lab" in N6 &&
      Math.hypot(ink.lab.L - N6.lab.L, ink.lab.a, ink.lab.b) < LOST_BELOW;
    return [{ kind: "box", ...box, ink }, ...(lost ? outline(box, { grey: 0.35 }) : [])];
  }
  const hatching: Mark[] = [];
  for (let reach = 3; reach < widthMm + heightMm; reach += 3) {
    const [startX, startY] = [Math.min(reach, widthMm), Math.max(0, reach - widthMm)];
    const [endX, endY] = [Math.max(0, reach - heightMm), Math.min(reach, heightMm)];
    hatching.push({
      kind: "line",
      fromMm: [xMm + startX, yMm + startY],
      toMm: [xMm + endX, yMm + endY],
      widthPt: 0.3,
      ink: { grey: 0.45 },
    });
  }
  const width = measureText(missing, "sans", sizePt);
  const word: Mark[] =
    missing === "" || width > widthMm - 2
      ? []
      : [
          {
            kind: "box",
            xMm: xMm + (widthMm - width) / 2 - 1,
            yMm: yMm + heightMm / 2 - sizePt * 0.26,
            widthMm: width + 2,
            heightMm: sizePt * 0.48,
            ink: N6,
          },
          {
            kind: "text",
            text: missing,
            xMm: xMm + (widthMm - width) / 2,
            yMm: yMm + heightMm / 2 + sizePt * 0.33 * MM_PER_PT,
            face: "sans",
            sizePt,
          },
        ];
  return [...hatching, ...outline(box, BLACK), ...word];
}

/** Distance in Lab from the ground under which a swatch has no visible edge. */
const LOST_BELOW = 5;

export function outline(
  { xMm, yMm, widthMm, heightMm }: SwatchBox,
  ink: Ink,
  dashMm?: readonly [number, number],
): Mark[] {
  const corners: [number, number][] = [
    [xMm, yMm],
    [xMm + widthMm, yMm],
    [xMm + widthMm, yMm + heightMm],
    [xMm, yMm + heightMm],
  ];
  return corners.map((from, i) => ({
    kind: "line",
    fromMm: from,
    toMm: corners[(i + 1) % 4] ?? from,
    widthPt: 0.4,
    ink,
    ...(dashMm === undefined ? {} : { dashMm }),
  }));
}
