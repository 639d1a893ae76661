/** Parts of a mixture in words. */
import type { Mix } from "../mixing/mix.ts";
import type { MixingRange } from "../mixing/mixing-range.ts";
import type { Words } from "../words/words.ts";
import type { PrintedNumbers } from "../words/number-text.ts";
import { given } from "../quantities/given.ts";

/** "Parts by volume: Titanium White 30 + Bone Black 2 + Raw Umber 1", the largest first, the smallest as one. */
export function mixPartsText(
  mix: Mix,
  range: MixingRange,
  { recipes }: Words["pages"]["mixing"],
  numbers: PrintedNumbers,
): string {
  const { colours, white } = toSmallest(mix);
  const parts = given([white.parts > 0 && white, ...colours]).toSorted(
    (one, other) => other.parts - one.parts,
  );
  const unit = mix.by === "volume" ? recipes.parts : recipes.partsMass;
  return `${unit}${recipes.colon}${parts
    .map(
      ({ slug, parts: own }) =>
        `${range.paint(slug)?.name ?? slug}\u00a0${numbers.significant(own, 2)}`,
    )
    .join(" + ")}`;
}

/** The same with one part of the smallest. */
export function toSmallest(mix: Mix): Mix {
  const least = Math.min(
    ...[...mix.colours, mix.white].map(({ parts }) => parts).filter((parts) => parts > 0),
  );
  const one = <P extends { parts: number }>(part: P): P => ({ ...part, parts: part.parts / least });
  return { ...mix, colours: mix.colours.map(one), white: one(mix.white) };
}
