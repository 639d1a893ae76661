import { p3LightToSrgbLight } from "../colorimetry/display-p3.ts";
import { at } from "../quantities/at.ts";
import { lightOfStored } from "./seen-light.ts";
import { CHANNELS } from "./upright-pixels.ts";

/** Looked at: every so many pixels. */
const EVERY = 37;
/** Light beyond sRGB that nobody would miss, and the share of such pixels that is noise. */
const LEAST_BEYOND = 0.004;
const LEAST_SHARE = 0.002;

/** Whether a picture shows colours that sRGB can't: noise and a few sparks aside. @param pixels in Display P3, 16 bits. */
export function isWiderThanSrgb(pixels: Uint16Array): boolean {
  const lights = lightOfStored();
  let seen = 0;
  let beyond = 0;
  for (let i = 0; i + 2 < pixels.length; i += CHANNELS * EVERY) {
    const light = (channel: number): number => at(lights, at(pixels, i + channel));
    const srgb = p3LightToSrgbLight([light(0), light(1), light(2)]);
    seen++;
    if (srgb.some((channel) => channel < -LEAST_BEYOND || channel > 1 + LEAST_BEYOND)) beyond++;
  }
  return beyond > LEAST_SHARE * seen;
}
