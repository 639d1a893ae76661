import type { FigureWord } from "../../sheet/sheet.ts";
import type { InEach, InOthers } from "../in-each.ts";
import type { SlottedText } from "../slotted-text.ts";

/** All that pages say of a figure: its name, and with it what is said of this one alone. */
export interface FigureWords extends InEach {
  /** Where a painter may not know the name. */
  readonly gloss?: InEach;
  /** How its unit reads, where no other figure has that and it is not printed as it is written. */
  readonly units?: Readonly<Record<string, InEach>>;
  /** How it is found, by the English of sheet.json, a letter in braces standing for a name or a number. */
  readonly found?: Readonly<Record<string, InOthers>>;
  /** Why it is missing, likewise. */
  readonly missing?: Readonly<Record<string, Readonly<Record<keyof InOthers, SlottedText>>>>;
}

/** Figures by the word of their declaration. */
export type FigureTexts = { readonly [W in FigureWord]?: FigureWords };
