/** What the scripts that mix say. */
import { worded } from "../by-rule.ts";
import * as en from "../en/phrases.ts";
import * as de from "../de/phrases.ts";
import * as fr from "../fr/phrases.ts";
import * as es from "../es/phrases.ts";
import type { PrintedNumbers } from "../number-text.ts";
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

export const NUMBERS: PrintedNumbers = {
  en: en.NUMBERS,
  de: de.NUMBERS,
  fr: fr.NUMBERS,
  es: es.NUMBERS,
}[LANGUAGE];
