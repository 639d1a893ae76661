import { labToXyz, xyzToLab } from "./lab.ts";
import { luminanceOfValue } from "./munsell-value.ts";
import { WHITE_POINTS, type Lab, type Xyz } from "./viewing.ts";

/** Up to here the renotation has colours; from here to 10 there is only white. */
export const RENOTATION_TO_VALUE = 9;

/**
 * The colour of value 9 that has the hue and chroma of a paler one, as D1535 interpolates:
 * at one hue and chroma, x and y go in a straight line over Y from their place at value 9
 * to the white at value 10.
 *
 *     (x9, y9) = w + ((x, y) - w) (100 - Y9) / (100 - Y)
 *
 * @param lab under illuminant C, 2 degree, of a value above 9 and below 10.
 * @returns Lab at value 9; undefined at the white's own luminance, or past what any colour can be.
 * @source astm-d1535 : interpolation above value 9
 */
export function atValueNine(lab: Lab): Lab | undefined {
  return moved(lab, luminanceOfValue(RENOTATION_TO_VALUE));
}

/** The same the other way: the colour of a value above 9 that has the hue and chroma of one of value 9. */
export function aboveValueNine(lab: Lab, value: number): Lab | undefined {
  return moved(lab, luminanceOfValue(value));
}

/** Chromaticity moved along its line to the white, to the place that it has at another luminance. */
function moved(lab: Lab, luminance: number): Lab | undefined {
  const white = chromaticity(WHITE_POINTS["C/2"]);
  const xyz = labToXyz(lab, "C/2");
  const room = 100 - xyz.Y;
  if (!(room > 0)) return undefined;
  const { x, y } = chromaticity(xyz);
  const factor = (100 - luminance) / room;
  const to = { x: white.x + (x - white.x) * factor, y: white.y + (y - white.y) * factor };
  if (!(to.x > 0 && to.y > 0 && to.x + to.y < 1)) return undefined;
  return xyzToLab(
    {
      X: (to.x * luminance) / to.y,
      Y: luminance,
      Z: ((1 - to.x - to.y) * luminance) / to.y,
    },
    "C/2",
  );
}

function chromaticity({ X, Y, Z }: Xyz): { readonly x: number; readonly y: number } {
  return { x: X / (X + Y + Z), y: Y / (X + Y + Z) };
}
