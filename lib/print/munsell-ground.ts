import { N7_GREY } from "../plots/picture.ts";
import type { Ink } from "./mark.ts";

/**
 * Munsell N 7, the ground of every swatch, as ink: Y 41.985 % by ASTM D1535, which CIE 15
 * makes L* 116 (Y/100)^(1/3) - 16; a neutral is the same under every light.
 */
export const N7: Ink = { lab: { L: 116 * Math.cbrt(0.41985) - 16, a: 0, b: 0 }, screen: N7_GREY };
