import {
  converter,
  modeLab65,
  modeLrgb,
  modeOklab,
  modeOklch,
  modeP3,
  modeRgb,
  modeXyz65,
  toGamut,
  useMode,
  type Oklch,
} from "culori/fn";
import { domainError } from "../diagnostics/diagnostic.ts";
import { xyzToLab } from "./lab.ts";
import { requireFinite, type Xyz } from "./viewing.ts";

useMode(modeRgb);
useMode(modeLrgb);
useMode(modeXyz65);
useMode(modeLab65);
useMode(modeP3);
useMode(modeOklab);
useMode(modeOklch);

const toRgb = converter("rgb");
const toP3 = converter("p3");
const toOklch = converter("oklch");
const mappedToRgb = toGamut("rgb", "oklch");
const mappedToP3 = toGamut("p3", "oklch");

/** What a screen is told; `inGamut` false: the screen cannot show the colour, and this is the nearest that it can. */
export interface ScreenColours {
  readonly srgb: { readonly hex: string; readonly inGamut: boolean };
  readonly displayP3: { readonly css: string; readonly inGamut: boolean };
  /** The colour itself, not mapped: a browser maps it to the screen it has. */
  readonly oklch: { readonly css: string };
}

/**
 * CSS colours of a colour seen in daylight, by culori; one that lies outside sRGB
 * or Display P3 is mapped as CSS Color 4 maps it (chroma lowered in OKLCH).
 *
 * @param xyz under D65, **2 degree**, finite, >= 0. D65/10 here would tint every
 *   neutral (a mid grey by b* +0.56); a Lab known under D65/10 alone gives an estimate (lab-under.ts).
 * @returns hex in lower case; `color(display-p3 ...)` and `oklch(...)` to four decimals.
 * @throws RangeError when a value is negative, NaN or infinite.
 * @validity Lighter than the perfect diffuser shows as white.
 * @source css-color-4, iec-61966-2-1, culori-npm
 * @example screenColours({ X: 95.04, Y: 100, Z: 108.88 }).srgb.hex // "#ffffff"
 */
export function screenColours(xyz: Xyz): ScreenColours {
  requireFinite("tristimulus value", [xyz.X, xyz.Y, xyz.Z]);
  for (const value of [xyz.X, xyz.Y, xyz.Z])
    if (!(value >= 0)) throw domainError("tristimulus value", value, "XYZ >= 0");
  // By way of Lab, because culori's D65 and CIE's differ in the fourth digit: a neutral stays neutral.
  const { L, a, b } = xyzToLab(xyz, "D65/2");
  const seen = { mode: "lab65", l: L, a, b } as const;
  const rgb = toRgb(seen);
  const p3 = toP3(seen);
  const rgbShown = mappedToRgb(seen);
  const p3Shown = mappedToP3(seen);
  return {
    srgb: {
      hex: `#${[rgbShown.r, rgbShown.g, rgbShown.b].map(hexByte).join("")}`,
      inGamut: shows([rgb.r, rgb.g, rgb.b]),
    },
    displayP3: {
      css: `color(display-p3 ${[p3Shown.r, p3Shown.g, p3Shown.b].map(fourDecimals).join(" ")})`,
      inGamut: shows([p3.r, p3.g, p3.b]),
    },
    oklch: { css: oklchText(toOklch(seen)) },
  };
}

/** Whether clipping would change no channel by as much as half an 8-bit step. */
function shows(channels: readonly number[]): boolean {
  return channels.every((channel) => channel > -0.5 / 255 && channel < 1 + 0.5 / 255);
}

function hexByte(channel: number): string {
  return Math.round(Math.min(Math.max(channel, 0), 1) * 255)
    .toString(16)
    .padStart(2, "0");
}

function fourDecimals(channel: number): string {
  return String(Number(Math.min(Math.max(channel, 0), 1).toFixed(4)));
}

/** A neutral's hue is `none`, as CSS has it, and not the angle of a rounding error. */
function oklchText({ l, c, h }: Oklch): string {
  const chroma = Number(c.toFixed(4));
  return `oklch(${Number((l * 100).toFixed(2))}% ${chroma} ${chroma === 0 ? "none" : Number((h ?? 0).toFixed(2))})`;
}
