import { wholeAddress, type PageContext } from "../pages/page-context.ts";
import { figureName } from "../present/figure-name.ts";
import { figureText } from "../present/figure-text.ts";
import { codedText, labelModel } from "../present/label-model.ts";
import { statementText } from "../present/statement-text.ts";
import { standingView } from "../present/standing-view.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import { isKnown, type Amount, type Known } from "../quantities/figure.ts";
import type { FigureRow } from "../sheet/figure-table.ts";
import { placesWithin } from "../words/number-text.ts";
import type { Words } from "../words/words.ts";
import type { ReplyColour, ReplyMaterial } from "./reply-text.ts";
import { lotsText } from "../present/lots-text.ts";
import type { SheetPath } from "../sheet/sheet-path.ts";
import { given } from "../quantities/given.ts";

/** Not a figure but a ruling: what a label may say of lightfastness, and nothing beyond it. */
export const LIGHTFASTNESS = "permanence.label";

/** Not a figure either: which lots the figures describe. */
export const REPLY_LOTS = "lots";

/** Figures that a reply can give beside those that an answer names, in the order of a sheet. */
const OFFERED = [
  "notations.masstone.munsell.text",
  LIGHTFASTNESS,
  "optics.opacityClass",
  "optics.contrastRatio",
  "optics.tintingStrength",
  "drying.class",
  "drying.touchDryDays",
  "drying.throughDryDays",
  "oil.oilIndexGPer100g",
  "oil.oilGPer100cm3",
  "oil.finish",
] as const satisfies readonly (SheetPath | typeof LIGHTFASTNESS)[];

interface Offered {
  readonly path: string;
  /** What it is, in words. */
  readonly name: string;
}

/** What replies on some colours can be made of: the figures named first, then those that are always offered. */
export function replyMaterial(
  colours: readonly SheetTexts[],
  named: readonly string[],
  short: string,
  path: string,
  context: PageContext,
): { readonly material: ReplyMaterial; readonly offered: readonly Offered[] } {
  const { words, records } = context;
  const text = words.pages.answers.reply;
  const tints = [
    ...new Set(
      colours.flatMap(({ sheet }) =>
        sheet.tints.map(({ white }) => `tints.${white.slug}.atL.50.b`),
      ),
    ),
  ];
  const offered = [...new Set([...named, ...tints, ...OFFERED, REPLY_LOTS])].flatMap(
    (one): Offered[] => {
      if (one === REPLY_LOTS)
        return colours.some(({ sheet }) => sheet.lots !== undefined)
          ? [{ path: one, name: words.pages.lots.reply }]
          : [];
      if (one === LIGHTFASTNESS) return [{ path: one, name: text.lightfastness }];
      const first = colours.find((worded) => worded.has(one) && isKnown(worded.leaf(one).figure));
      return first?.has(one) === true
        ? [{ path: one, name: figureName(first.leaf(one), first.sheet, words) }]
        : [];
    },
  );
  const address = wholeAddress(context, path);
  return {
    offered,
    material: {
      thanks: text.thanks,
      asked: text.asked,
      short,
      cautionLine: text.cautionLine,
      colours: colours.map((worded) => replyColour(worded, offered, context)),
      ...(address !== undefined && { more: text.more(address) }),
      closing: given([
        text.closing,
        records.workshop.name,
        records.workshop.demonstration === true && text.invented,
      ]),
    },
  };
}

function replyColour(
  worded: SheetTexts,
  offered: readonly Offered[],
  { words }: PageContext,
): ReplyColour {
  const { sheet } = worded;
  const text = words.pages.answers.reply;
  const lines = offered.flatMap(({ path, name }): [string, string][] => {
    if (path === LIGHTFASTNESS) return [[path, statementText(sheet.permanence.label, words)]];
    if (path === REPLY_LOTS)
      return sheet.lots === undefined ? [] : [[path, lotsText(sheet.lots, words)]];
    if (!worded.has(path)) return [];
    const { row, figure } = worded.leaf(path);
    return [
      [
        path,
        isKnown(figure)
          ? text.line(
              name,
              toldFigure(path, row, figure, words),
              standingWords(worded, path, words),
            )
          : text.notStated(name),
      ],
    ];
  });
  const caution = cautionOf(worded, words);
  return {
    slug: sheet.slug,
    name: sheet.name,
    lines: Object.fromEntries(lines),
    ...(caution !== undefined && { caution }),
  };
}

/** As sheets say it; a figure of a tint with the digit that the sheet's sentence gives it, and its \u00b1 where that bears none. */
function toldFigure(path: string, row: FigureRow, figure: Known<Amount>, words: Words): string {
  const { value, uncertainty } = figure;
  return path.startsWith("tints.") &&
    row.kind === "decimal" &&
    typeof value === "number" &&
    uncertainty !== undefined &&
    placesWithin(uncertainty, row.digits) < row.digits
    ? `${words.numbers.decimal(value, row.digits)} \u00b1${words.numbers.decimal(uncertainty, row.digits)}`
    : figureText(row, figure, words);
}

function standingWords(worded: SheetTexts, path: SheetPath, words: PageContext["words"]): string {
  const { word, restsOn } = standingView(worded.leaf(path).figure, words);
  return restsOn === undefined ? word : `${word}, ${restsOn}`;
}

/** The hazards of a label in full, never fewer of its elements; metals that it names, and what nobody has classified. */
function cautionOf(
  { sheet: { name, cautions } }: SheetTexts,
  words: PageContext["words"],
): string | undefined {
  const { signalWord, hazards, gaps, metals } = labelModel(cautions, words.language, words);
  const statements = hazards.map(codedText);
  const label =
    signalWord === undefined && statements.length === 0
      ? []
      : [
          words.pages.answers.reply.caution(
            name,
            signalWord === undefined ? "" : `${signalWord}.`,
            statements,
          ),
        ];
  const { ufi } = cautions;
  const lines = given([
    ...label,
    ...[...gaps, ...metals].map(({ text }) => `${name}${words.colon}${text}`),
    ufi !== undefined && `${name}: UFI ${ufi}`,
  ]);
  return lines.length === 0 ? undefined : lines.join("\n");
}
