/** What the scripts that mix say. */
import { worded } from "../by-rule.ts";
import type { PrintedNumbers } from "../number-text.ts";
import { phrasesIn } from "../phrases-in-each.ts";
import { MIXING } from "../pages/mixing.ts";
import { MIXING_RULINGS, type MixingStatement } from "../rulings/mixing.ts";
import { wordingsIn } from "../rulings/rulings-in-each.ts";
import { saidIn, type Said } from "../texts.ts";
import { LANGUAGE } from "./language.ts";

export const MIXING_PAGES: Said<typeof MIXING> = saidIn(LANGUAGE, MIXING);

const MIXING_WORDINGS = wordingsIn(LANGUAGE, MIXING_RULINGS);

export function mixingSentence(statement: MixingStatement): string {
  return worded(MIXING_WORDINGS, statement);
}

export const NUMBERS: PrintedNumbers = phrasesIn(LANGUAGE).NUMBERS;
