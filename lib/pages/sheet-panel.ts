import { isKnown } from "../quantities/figure.ts";
import { decimalText } from "../present/number-text.ts";
import { asMarkup, type PictureView } from "../present/views.ts";
import type { WordedSheet } from "../present/worded-sheet.ts";
import type { Words } from "../present/words/words.ts";
import { swatchPanel, type SwatchPanel } from "../plots/swatch-panel.ts";
import type { EqualLightness, Sheet, TintSection } from "../sheet/sheet.ts";
import { ownColour } from "./own-colour.ts";

const LEVELS: readonly EqualLightness[] = ["70", "50", "30"];
const MOST_WHITES = 3;

/** The first screen's picture: masstone beside the tints at equal L* in each white. Nothing when no colour is known. */
export function sheetPanel({ sheet }: WordedSheet, words: Words, idPrefix: string): PictureView | undefined {
  const masstone = ownColour(sheet.notations.masstone);
  if (masstone === undefined && sheet.tints.length === 0) return undefined;
  const text = words.pages.sheet;
  const whites = sheet.tints.filter(({ atL }) => LEVELS.some((level) => atL[level] !== undefined)).slice(0, MOST_WHITES);
  const levels = LEVELS.filter((level) => whites.some(({ atL }) => atL[level] !== undefined));
  const params = (variant: string): SwatchPanel => ({
    idPrefix: `${idPrefix}-${variant}`,
    title: whites.length === 0 ? text.panelTitleAlone(sheet.name) : text.panelTitle(sheet.name),
    description: text.panelDescription([masstoneWords(sheet, words), ...whites.flatMap((tint) => tintWords(tint, words))]),
    masstone: { colour: masstone, caption: text.masstone, standing: sheet.notations.masstone === undefined ? "not stated" : screenStanding(sheet) },
    levels: levels.map(text.level),
    whites: whites.map((tint) => ({
      caption: tint.white.name,
      standing: "derived", tints: levels.map((level) => ownColour(tint.atL[level])),
    })),
    missing: text.missing,
  });
  return { svg: asMarkup(swatchPanel(params("wide"), "wide")), narrow: asMarkup(swatchPanel(params("narrow"), "narrow")) };
}

function screenStanding(sheet: Sheet): "measured" | "estimated" {
  const hex = sheet.notations.masstone?.srgb?.hex;
  return hex !== undefined && hex.standing === "estimated" ? "estimated" : "measured";
}

function masstoneWords(sheet: Sheet, words: Words): string {
  const munsell = sheet.notations.masstone?.munsell?.text;
  return `${words.pages.sheet.masstone} ${munsell !== undefined && isKnown(munsell) ? munsell.value : words.pages.sheet.missing}`;
}

function tintWords({ white, atL }: TintSection, words: Words): string[] {
  return LEVELS.flatMap((level) => {
    const at = atL[level];
    if (at === undefined || !isKnown(at.a) || !isKnown(at.b)) return [];
    return [words.pages.sheet.tintDescription(white.name, level, decimalText(at.a.value, 1), decimalText(at.b.value, 1))];
  });
}
