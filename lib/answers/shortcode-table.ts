import { BLACKS, SCATTERING, THEORY } from "./blacks-shortcodes.ts";
import { TABLE } from "./figure-table-shortcode.ts";
import { END_FOLD, FOLD } from "./fold-shortcodes.ts";
import { ANSWER, COLOUR, FIGURE } from "./in-sentences.ts";
import { LADDER, SWATCHES, TRAIL } from "./picture-shortcodes.ts";
import type { Shortcode } from "./shortcode.ts";

/** Every shortcode that an answer can use; the README's table is held against it. */
export const SHORTCODES: readonly Shortcode[] = [
  FIGURE,
  COLOUR,
  ANSWER,
  TABLE,
  SWATCHES,
  LADDER,
  TRAIL,
  BLACKS,
  SCATTERING,
  THEORY,
  FOLD,
  END_FOLD,
];
