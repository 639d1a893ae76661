import { isKnown } from "../quantities/figure.ts";
import type { PaintColour, SwatchCell } from "../blocks/block.ts";
import type { ScreenColour } from "../plots/screen-colour.ts";
import type { Sheet } from "../sheet/sheet.ts";
import type { AtLightness, EqualLightness } from "../sheet/tints/tint-figures.ts";
import type { LabFigures, ScreenFigures } from "../sheet/notations/notation-figures.ts";
import type { LabViewing } from "../colorimetry/viewing.ts";
import { printedLab, printedTint } from "./printed-lab.ts";

/** What a screen shows of a paint, and where its gloss was read too, without that. */
interface Shown extends Partial<ScreenFigures> {
  readonly glossExcluded?: Partial<ScreenFigures> & Printed;
}
interface Printed {
  readonly lab: Partial<Record<LabViewing, LabFigures>>;
}

/** A notation as it was read, gloss and all; nothing where no screen colour follows from the reading. */
export function colourAsRead(
  figures: Partial<ScreenFigures> | undefined,
): ScreenColour | undefined {
  const hex = figures?.srgb?.hex;
  if (hex === undefined || !isKnown(hex)) return undefined;
  const css = figures?.displayP3?.css;
  return { hex: hex.value, ...(css !== undefined && isKnown(css) && { displayP3: css.value }) };
}

/** A paint as a screen shows it wherever it stands: as the eye meets it, its gloss shut out. */
export function ownColour(figures: Shown | undefined): ScreenColour | undefined {
  return colourAsRead(figures?.glossExcluded ?? figures);
}

/** A paint as screen and paper show it; nothing where no screen colour follows from the reading. */
export function paintColour(figures: (Shown & Printed) | undefined): PaintColour | undefined {
  const screen = ownColour(figures);
  return screen === undefined
    ? undefined
    : { ...screen, ...printedLab((figures?.glossExcluded ?? figures)?.lab ?? {}) };
}

/** A tint at an L* as screen and paper show it. */
export function tintColour(
  level: EqualLightness,
  tint: AtLightness | undefined,
): PaintColour | undefined {
  const screen = ownColour(tint);
  if (tint === undefined || screen === undefined) return undefined;
  const { glossExcluded } = tint;
  return {
    ...screen,
    ...(glossExcluded === undefined
      ? printedTint(Number(level), tint)
      : printedLab(glossExcluded.lab)),
  };
}

/** A paint's colour in a place for one, else what is said there in its stead. */
export function swatchCell(colour: PaintColour | undefined, missing: string): SwatchCell {
  return colour === undefined ? { missing } : { colour };
}

/** A tint, and the name of the white that it is in. */
interface TellingTint {
  readonly white: string;
  readonly colour: ScreenColour;
}

/** The tint that stands for a colour in a small place: at L* 50 in the first white that reaches it, else at 70, else at 30. */
export function tellingTint(sheet: Sheet, inWhite?: string): TellingTint | undefined {
  for (const level of ["50", "70", "30"] as const) {
    for (const tint of sheet.tints) {
      if (inWhite !== undefined && tint.white.slug !== inWhite) continue;
      const colour = ownColour(tint.atL[level]);
      if (colour !== undefined) return { white: tint.white.name, colour };
    }
  }
  return undefined;
}
