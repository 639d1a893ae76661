import { readingNotations } from "../colorimetry/reading-notations.ts";
import { isKnown } from "../quantities/figure.ts";
import type { PaintColour } from "../blocks/block.ts";
import type { ScreenColour } from "../plots/screen-colour.ts";
import type { Sheet } from "../sheet/sheet.ts";
import type { AtLightness, EqualLightness } from "../sheet/tints/tint-figures.ts";
import type { MasstoneNotations } from "../sheet/notations/masstone-figures.ts";
import type { LabFigures, ScreenFigures } from "../sheet/notations/notation-figures.ts";
import type { LabViewing } from "../colorimetry/viewing.ts";
import { comparableLab, printedLab, printedTint } from "./printed-lab.ts";

/** A notation as a screen shows it; nothing where no screen colour follows from the reading. */
export function ownColour(figures: Partial<ScreenFigures> | undefined): ScreenColour | undefined {
  const hex = figures?.srgb?.hex;
  if (hex === undefined || !isKnown(hex)) return undefined;
  const css = figures?.displayP3?.css;
  return { hex: hex.value, ...(css !== undefined && isKnown(css) ? { displayP3: css.value } : {}) };
}

/** A notation as screen and paper show it; nothing where no screen colour follows from the reading. */
export function paintColour(
  figures:
    | (Partial<ScreenFigures> & { readonly lab: Partial<Record<LabViewing, LabFigures>> })
    | undefined,
): PaintColour | undefined {
  const screen = ownColour(figures);
  return screen === undefined ? undefined : { ...screen, ...printedLab(figures?.lab ?? {}) };
}

/** A tint at an L* as screen and paper show it. */
export function tintColour(
  level: EqualLightness,
  tint: AtLightness | undefined,
): PaintColour | undefined {
  const screen = ownColour(tint);
  return screen === undefined || tint === undefined
    ? undefined
    : { ...screen, ...printedTint(Number(level), tint) };
}

/** A masstone as it is set beside others': gloss shut out, where its reading holds gloss and tells what lies beneath. */
export function comparableColour(
  masstone: MasstoneNotations | undefined,
): ScreenColour | undefined {
  const excluded = masstone?.glossExcludedCurve;
  if (excluded === undefined) return ownColour(masstone);
  const { srgb, displayP3 } = readingNotations(excluded).screen;
  return { hex: srgb.hex, displayP3: displayP3.css };
}

/** A tint as it is set beside others': gloss shut out, where its colour was read with gloss included. */
export function comparableTint(tint: AtLightness | undefined): ScreenColour | undefined {
  return ownColour(tint?.glossExcluded ?? tint);
}

/** A masstone as it is set beside others', on screen and paper. */
export function comparablePaint(masstone: MasstoneNotations | undefined): PaintColour | undefined {
  const screen = comparableColour(masstone);
  return masstone === undefined || screen === undefined
    ? undefined
    : { ...screen, ...comparableLab(masstone) };
}

/** A tint at an L* as it is set beside others', on screen and paper. */
export function comparableTintPaint(
  level: EqualLightness,
  tint: AtLightness | undefined,
): PaintColour | undefined {
  const screen = comparableTint(tint);
  if (tint === undefined || screen === undefined) return undefined;
  const { glossExcluded } = tint;
  return {
    ...screen,
    ...(glossExcluded === undefined
      ? printedTint(Number(level), tint)
      : printedLab(glossExcluded.lab)),
  };
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
      const colour = comparableTint(tint.atL[level]);
      if (colour !== undefined) return { white: tint.white.name, colour };
    }
  }
  return undefined;
}
