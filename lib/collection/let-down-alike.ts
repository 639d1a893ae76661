import { deltaE00 } from "../colorimetry/difference.ts";
import type { Lab } from "../colorimetry/viewing.ts";
import type { Sheet } from "../sheet/sheet.ts";
import type { TintSection } from "../sheet/tints/tint-figures.ts";
import { glossOfTint } from "./near-neutrals.ts";
import { knownAb } from "../sheet/notations/known-lab.ts";

/** How far two colours stand apart in a white, each let down to L* 50 [Delta-E00, D65/10]. */
export interface ApartInWhite {
  readonly white: { readonly slug: string; readonly name: string };
  readonly deltaE00: number;
}

/**
 * Two colours in the first white that both were let down in and read alike, gloss in both or in neither:
 * masstones of two dark colours may match where their tints are blue and grey.
 *
 * @returns undefined where no white tells it.
 */
export function apartInWhite(
  one: Pick<Sheet, "tints">,
  other: Pick<Sheet, "tints">,
): ApartInWhite | undefined {
  for (const tint of one.tints) {
    const beside = other.tints.find(({ white }) => white.slug === tint.white.slug);
    if (beside === undefined || glossOfTint(tint) !== glossOfTint(beside)) continue;
    const [own, its] = [middleTint(tint), middleTint(beside)];
    if (own === undefined || its === undefined) continue;
    return { white: tint.white, deltaE00: deltaE00(own, its) };
  }
  return undefined;
}

function middleTint({ atL }: TintSection): Lab | undefined {
  const at = knownAb(atL["50"]);
  return at && { L: 50, ...at };
}
