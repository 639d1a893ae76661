import { readWithGloss, type NearNeutral } from "../collection/near-neutrals.ts";
import type { Words } from "../words/words.ts";

/** A caption, and after it which of the tints that it stands under were read otherwise than the others: as read they do not compare. */
export function glossCaption(
  caption: string,
  tints: readonly NearNeutral[],
  { pages }: Words,
): string {
  const withGloss = readWithGloss(tints);
  if (withGloss.length === 0) return caption;
  const stop = /[.!?]$/.test(caption) ? "" : ".";
  return `${caption}${stop} ${pages.optics.inTheWhites.readWithGloss(withGloss)}`;
}
