import { isKnown } from "../quantities/figure.ts";
import { decimalText } from "../words/number-text.ts";
import { asMarkup, type PictureView } from "../present/views.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import type { Words } from "../words/words.ts";
import { swatchPanel, type SwatchPanel } from "../plots/swatch-panel.ts";
import type { EqualLightness, Sheet, TintSection } from "../sheet/sheet.ts";
import type { ShownStanding } from "../plots/standing-mark.ts";
import { ownColour } from "./screen-swatch.ts";

const LEVELS: readonly EqualLightness[] = ["70", "50", "30"];
const MOST_WHITES = 3;

/** What a panel says and which swatches it has, whatever it is drawn on. */
export interface PanelWords {
  readonly title: string;
  readonly description: string;
  readonly masstone: string;
  readonly masstoneStanding: ShownStanding;
  readonly levels: readonly { readonly level: EqualLightness; readonly text: string }[];
  readonly whites: readonly { readonly slug: string; readonly caption: string }[];
  readonly missing: string;
}

/** Nothing when no colour is known. */
export function panelWords({ sheet }: SheetTexts, words: Words): PanelWords | undefined {
  if (ownColour(sheet.notations.masstone) === undefined && sheet.tints.length === 0)
    return undefined;
  const text = words.pages.sheet;
  const whites = sheet.tints
    .filter(({ atL }) => LEVELS.some((level) => atL[level] !== undefined))
    .slice(0, MOST_WHITES);
  return {
    title: whites.length === 0 ? text.panelTitleAlone(sheet.name) : text.panelTitle(sheet.name),
    description: text.panelDescription([
      masstoneWords(sheet, words),
      ...whites.flatMap((tint) => tintWords(tint, words)),
    ]),
    masstone: text.masstone,
    masstoneStanding: sheet.notations.masstone === undefined ? "not stated" : screenStanding(sheet),
    levels: LEVELS.filter((level) => whites.some(({ atL }) => atL[level] !== undefined)).map(
      (level) => ({ level, text: text.level(level) }),
    ),
    whites: whites.map(({ white }) => ({ slug: white.slug, caption: white.name })),
    missing: text.missing,
  };
}

/** The first screen's picture: masstone beside the tints at equal L* in each white. */
export function sheetPanel(
  worded: SheetTexts,
  words: Words,
  idPrefix: string,
): PictureView | undefined {
  const { sheet } = worded;
  const panel = panelWords(worded, words);
  if (panel === undefined) return undefined;
  const { title, description, missing } = panel;
  const params = (variant: string): SwatchPanel => ({
    idPrefix: `${idPrefix}-${variant}`,
    title,
    description,
    missing,
    masstone: {
      colour: ownColour(sheet.notations.masstone),
      caption: panel.masstone,
      standing: panel.masstoneStanding,
    },
    levels: panel.levels.map(({ text }) => text),
    whites: panel.whites.map(({ slug, caption }) => ({
      caption,
      standing: "derived",
      tints: panel.levels.map(({ level }) =>
        ownColour(sheet.tints.find(({ white }) => white.slug === slug)?.atL[level]),
      ),
    })),
  });
  return {
    svg: asMarkup(swatchPanel(params("wide"), "wide")),
    narrow: asMarkup(swatchPanel(params("narrow"), "narrow")),
  };
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
    return [
      words.pages.sheet.tintDescription(
        white.name,
        level,
        decimalText(at.a.value, 1),
        decimalText(at.b.value, 1),
      ),
    ];
  });
}
