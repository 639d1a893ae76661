import type { Language } from "../../quantities/languages.ts";
import type { FigureWord } from "../../sheet/sheet.ts";
import { textsIn } from "../in-each.ts";
import type { Words } from "../words.ts";
import { BATCH_FIGURES } from "./batch.ts";
import { DRYING_FIGURES } from "./drying.ts";
import type { FigureWords } from "./figure-words.ts";
import { MIXTURE_FIGURES } from "./mixture.ts";
import { NOTATION_FIGURES } from "./notations.ts";
import { OIL_FIGURES } from "./oil.ts";
import { OPTICS_FIGURES } from "./optics.ts";
import { PERMANENCE_FIGURES } from "./permanence.ts";
import { PIGMENT_FIGURES } from "./pigments.ts";
import { TINT_FIGURES } from "./tints.ts";

/** What pages say of every figure that a sheet declares. */
const FIGURES: Readonly<Record<FigureWord, FigureWords>> = {
  ...PIGMENT_FIGURES,
  ...NOTATION_FIGURES,
  ...TINT_FIGURES,
  ...OPTICS_FIGURES,
  ...MIXTURE_FIGURES,
  ...OIL_FIGURES,
  ...BATCH_FIGURES,
  ...DRYING_FIGURES,
  ...PERMANENCE_FIGURES,
};

/** How one figure alone is found, why one alone is missing, and units of one alone. */
export const UNITS_OF_FIGURES = together(({ units }) => units);
export const FOUND = together(({ found }) => found);
export const MISSING = together(({ missing }) => missing);

function together<T>(
  said: (figure: FigureWords) => Readonly<Record<string, T>> | undefined,
): Readonly<Record<string, T>> {
  return Object.fromEntries(
    Object.values<FigureWords>(FIGURES).flatMap((figure) => Object.entries(said(figure) ?? {})),
  );
}

/** Names of figures and glosses in one language. */
export function figureWords(language: Language): Pick<Words, "figures" | "glosses"> {
  return {
    figures: textsIn<Language, string, FigureWord>(language, FIGURES),
    glosses: Object.fromEntries(
      Object.entries(FIGURES).flatMap(([key, { gloss }]) =>
        gloss === undefined ? [] : [[key, gloss[language]]],
      ),
    ),
  };
}
