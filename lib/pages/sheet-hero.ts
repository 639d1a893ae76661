import type { SwatchesBlock } from "../blocks/block.ts";
import type { Sheet } from "../sheet/sheet.ts";
import {
  LIGHTNESS_KEYS,
  type EqualLightness,
  type TintSection,
} from "../sheet/tints/tint-figures.ts";
import type { Words } from "../words/words.ts";
import { ownColour, swatchCell, tintColour } from "./screen-swatch.ts";
import { knownAb } from "../sheet/notations/known-lab.ts";

const MOST_WHITES = 3;

/** The tints at equal lightness in each white, abutting; nothing where none is reached. */
export function tintsBlock({ name, tints }: Sheet, words: Words): SwatchesBlock | undefined {
  const text = words.pages.sheetPage;
  const whites = tints
    .filter(({ atL }) => LIGHTNESS_KEYS.some((level) => ownColour(atL[level]) !== undefined))
    .slice(0, MOST_WHITES);
  const levels = LIGHTNESS_KEYS.filter((level) =>
    whites.some(({ atL }) => ownColour(atL[level]) !== undefined),
  );
  if (whites.length === 0) return undefined;
  return {
    kind: "swatches",
    description: text.tintsDescription(
      name,
      whites.map((tint) => whiteWords(tint, levels, words)),
    ),
    rows: levels.map((level) => text.levels[level]),
    columns: whites.map(({ white, atL }) => ({
      head: white.name,
      cells: levels.map((level) => swatchCell(tintColour(level, atL[level]), text.notReached)),
    })),
  };
}

function whiteWords(
  { white, atL }: TintSection,
  levels: readonly EqualLightness[],
  words: Words,
): string {
  const text = words.pages.sheetPage;
  return levels
    .map((level) => {
      const at = knownAb(atL[level]);
      return text.tintCell(
        text.levels[level],
        white.name,
        at === undefined
          ? text.notReached
          : words.pages.sheet.tintDescription(
              level,
              words.numbers.decimal(at.a, 1),
              words.numbers.decimal(at.b, 1),
            ),
      );
    })
    .join(", ");
}
