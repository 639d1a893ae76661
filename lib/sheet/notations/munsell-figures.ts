import type { Munsell } from "../../colorimetry/munsell.ts";
import type { ScreenColours } from "../../colorimetry/screen-colour.ts";
import { notationFigure, type Origin } from "./lab-figures.ts";
import type { MunsellFigures, ScreenFigures } from "./notation-figures.ts";

export function munsellFigures(munsell: Munsell, origin: Origin): MunsellFigures {
  const { uncertainty } = munsell;
  return {
    hue: munsell.hue === null ? null : notationFigure(munsell.hue, "", origin),
    value: notationFigure(munsell.value, "1", origin, uncertainty.value),
    chroma: notationFigure(munsell.chroma, "1", origin, uncertainty.chroma),
    text: notationFigure(munsell.text, "", origin),
  };
}

export function screenFigures(screen: ScreenColours, origin: Origin): ScreenFigures {
  return {
    srgb: { hex: notationFigure(screen.srgb.hex, "", origin), inGamut: screen.srgb.inGamut },
    displayP3: {
      css: notationFigure(screen.displayP3.css, "", origin),
      inGamut: screen.displayP3.inGamut,
    },
    oklch: { css: notationFigure(screen.oklch.css, "", origin) },
  };
}
