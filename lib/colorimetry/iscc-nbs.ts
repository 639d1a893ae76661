import centroids from "color-name-lists/lib/colors/nbs-iscc.json" with { type: "json" };
import { converter, modeLab65, modeLrgb, modeRgb, modeXyz65, parseHex, useMode } from "culori/fn";
import { domainError } from "../diagnostics/diagnostic.ts";
import { deltaE00 } from "./difference.ts";
import type { Lab } from "./viewing.ts";

useMode(modeRgb);
useMode(modeLrgb);
useMode(modeXyz65);
useMode(modeLab65);

interface Centroid {
  /** Number of the colour name block, 1-267. */
  readonly number: number;
  readonly name: string;
  readonly lab: Lab;
}

/** The centroid nearest to a colour. */
export interface NearestName {
  readonly number: number;
  readonly name: string;
  /** Delta-E00 from the centroid [1]: how loosely the name fits. */
  readonly deltaE00: number;
}

/**
 * Centroids of the 267 colour-name blocks under D65, 2 degree, in their order.
 * The list adds everyday names after a comma ("Vivid Blue, ultramarine") and one
 * cross-reference; both are left off, since a pigment's name in a colour's name misleads.
 */
const CENTROIDS: readonly Centroid[] = centroids.map(({ name, hex }, index) => ({
  number: index + 1,
  name: name.replace(/,.*$| see #.*$/, ""),
  lab: labOfHex(hex),
}));

/**
 * Nearest ISCC-NBS centroid to a colour, by Delta-E00.
 *
 * @param lab under D65, 2 degree, finite.
 * @throws RangeError when a value is NaN or infinite.
 * @validity A nearest centroid is not the block that SP 440 draws in Munsell: near a
 *   block's edge the neighbour's name may come out. The list holds centroids as sRGB,
 *   which cannot show the most vivid.
 * @source nbs-sp-440, color-name-lists-npm
 */
export function nearestIsccNbs(lab: Lab): NearestName {
  let nearest: NearestName | undefined;
  for (const { number, name, lab: centroid } of CENTROIDS) {
    const distance = deltaE00(lab, centroid);
    if (nearest === undefined || distance < nearest.deltaE00)
      nearest = { number, name, deltaE00: distance };
  }
  if (nearest === undefined) throw domainError("count of centroids", 0, "267");
  return nearest;
}

function labOfHex(hex: string): Lab {
  const rgb = parseHex(hex);
  if (rgb === undefined) throw new Error(`The centroid is ${hex}; right would be six hex digits`);
  const { l, a, b } = converter("lab65")(rgb);
  return { L: l, a, b };
}
