import type { ScreenColour } from "../plots/screen-colour.ts";

/** One thing that the search of a site can find; its address is from the site's root. */
export interface SearchDocument {
  readonly id: number;
  readonly kind: "colour" | "pigment" | "answer" | "comparison";
  readonly title: string;
  /** Other words that it goes by: codes, pigments, family. */
  readonly words: string;
  /** Shown under the title. */
  readonly text: string;
  readonly href: string;
  /** Masstone and tint. */
  readonly colours?: readonly ScreenColour[];
}
