import { isKnown, type Standing } from "../quantities/figure.ts";
import { placesWithin, type PrintedNumbers } from "../words/number-text.ts";
import { statementText } from "../present/statement-text.ts";
import { standingWord } from "../present/standing-view.ts";
import {
  asMarkup,
  type CellView,
  type PictureView,
  type TableView,
  type WhiteView,
  type WhitesSectionView,
} from "../present/views.ts";
import { ladderStrip, type LadderStrip } from "../plots/ladder-strip.ts";
import { tintTrail, type TintTrail, type Trail } from "../plots/tint-trail.ts";
import { MARK_SHAPES } from "../plots/standing-mark.ts";
import type { LabFigures, ScreenFigures, TintSection, TintStep } from "../sheet/sheet.ts";
import type { ScreenColour } from "../plots/screen-colour.ts";
import { ON_ONE_PAGE } from "./range-parts.ts";
import { coloursLetDownIn, whitesLetDownWith } from "./colours-tinted-with.ts";
import { ownColour } from "./screen-swatch.ts";
import { isNearNeutral } from "../collection/near-neutrals.ts";
import { WHITES_PATH } from "./catalogue-pages.ts";
import { emptySection, reasons, terms, type SheetPage } from "./section-views.ts";
import { stepColumns } from "./step-columns.ts";
import { nameOrder } from "../quantities/name-order.ts";

/** Width of a ladder where there is room for one line of it [user units]. */
const WIDE = 640;

/** Ladders in each white, measured and predicted told apart, and the trail through a* and b*. */
export function whitesSection(page: SheetPage): WhitesSectionView {
  const {
    worded: { sheet },
    words,
  } = page;
  const text = words.pages.whites;
  const trail = trailPicture(page);
  return {
    ...emptySection("whites", words.pages.sections.whites),
    summary: sheet.tints.length === 0 ? [isWhite(page) ? ofAWhite(page) : text.none] : [],
    terms: sheet.tints.length === 0 ? [] : terms(words, ["L* a* b*"]),
    whites: sheet.tints.map((tint) => whiteView(tint, page)),
    ...(trail === undefined ? {} : { trail }),
    ...(isNearNeutral(sheet)
      ? {
          further: {
            text: words.pages.optics.whites.linkToAll,
            href: `${page.place.root}${WHITES_PATH.replace("index.html", "")}`,
          },
        }
      : {}),
    lists: reasons(page, words.pages.optics.whites.across, sheet.optics.acrossWhites),
  };
}

/** By name, as long as a reader takes them in. */
function ofAWhite({ worded: { sheet }, context, words }: SheetPage): string {
  const colours = coloursLetDownIn(sheet.slug, context);
  return colours.length > ON_ONE_PAGE.named
    ? words.pages.sheetPage.whiteSentence(colours.length)
    : words.pages.whites.ofAWhite(colours.map(({ name }) => name).sort(nameOrder(words.language)));
}

function isWhite({ worded: { sheet }, context }: SheetPage): boolean {
  return coloursLetDownIn(sheet.slug, context).length > 0;
}

function whiteView(tint: TintSection, { words }: SheetPage): WhiteView {
  const text = words.pages.whites;
  const ladder = ladderPicture(tint, words);
  return {
    id: `in-${tint.white.slug}`,
    heading: text.heading(tint.white.name, tint.white.colourIndexName),
    sentence: statementText(tint.sentence, words),
    standing: standingWord(
      tint.steps.some(({ standing }) => standing === "derived") ? "derived" : "measured",
      words,
    ),
    ...(ladder === undefined ? {} : { ladder }),
    steps: { summary: text.steps(tint.steps.length), table: stepsTable(tint, words) },
    remarks: [
      ...(tint.refusal === undefined ? [] : [statementText(tint.refusal, words)]),
      ...tint.steps.flatMap(({ suspect }) =>
        suspect === undefined ? [] : [statementText(suspect, words)],
      ),
    ],
  };
}

/** A ladder as one strip; where a page has two, each needs an identifier of its own. */
export function ladderPicture(
  tint: TintSection,
  words: SheetPage["words"],
  id = "ladder",
  title = words.pages.whites.ladderTitle(tint.white.name),
): PictureView | undefined {
  const ladder = ladderOf(tint, words, title);
  if (ladder === undefined) return undefined;
  return {
    svg: asMarkup(ladderStrip({ ...ladder, idPrefix: `${id}-${tint.white.slug}`, width: WIDE })),
    narrow: asMarkup(ladderStrip({ ...ladder, idPrefix: `${id}-narrow-${tint.white.slug}` })),
  };
}

/** A ladder as page and paper draw it; none where no step's colour is known. */
export function ladderOf(
  { white, steps, massRatioKind }: TintSection,
  words: SheetPage["words"],
  title = words.pages.whites.ladderTitle(white.name),
): LadderStrip | undefined {
  const shown = steps.filter((step) => ownColour(step) !== undefined);
  if (shown.length === 0) return undefined;
  const text = words.pages.whites;
  return {
    idPrefix: `ladder-${white.slug}`,
    title,
    missing: words.pages.sheet.missing,
    heading: "",
    axisLabel: text.stepsCaption(white.name, massRatioKind),
    description: text.ladderDescription(shown.map((step) => stepWords(step, words))),
    steps: shown.map((step) => ({
      whiteParts: 1 / step.colourShare,
      label: step.massRatio,
      colour: ownColour(step),
      standing: step.standing,
      ...(step.suspect === undefined ? {} : { suspect: text.suspect }),
    })),
  };
}

function stepWords(step: TintStep, words: SheetPage["words"]): string {
  const [L, a, b] = labTexts(step.lab["D65/10"], words.numbers);
  return words.pages.whites.stepDescription(
    step.massRatio,
    words.standings[step.standing].word,
    L,
    a,
    b,
  );
}

function labTexts(lab: LabFigures | undefined, numbers: PrintedNumbers): [string, string, string] {
  const text = (figure: LabFigures["L"] | undefined): string =>
    figure !== undefined && isKnown(figure)
      ? numbers.decimal(figure.value, placesWithin(figure.uncertainty, 1))
      : "\u2013";
  return [text(lab?.L), text(lab?.a), text(lab?.b)];
}

function stepsTable(
  { white, steps, massRatioKind }: TintSection,
  words: SheetPage["words"],
): TableView {
  const { stepsCaption, note } = words.pages.whites;
  return {
    caption: stepsCaption(white.name, massRatioKind),
    columns: stepColumns(words),
    rows: steps.map((step): CellView[] => {
      const [L, a, b] = labTexts(step.lab["D65/10"], words.numbers);
      const munsell = step.munsell?.text;
      return [
        {
          text: step.massRatio,
          standing: standingWord(step.standing, words),
          ...(step.suspect === undefined ? {} : { note: words.pages.whites.suspect }),
        },
        { text: L },
        { text: a },
        { text: b },
        { text: munsell !== undefined && isKnown(munsell) ? munsell.value : "\u2013" },
        {
          text:
            step.uncertainty === undefined
              ? missedBy(step, words.numbers)
              : `\u00b1\u00a0${words.numbers.decimal(step.uncertainty, 1)}`,
        },
      ];
    }),
    note,
    compact: true,
  };
}

function missedBy(
  { residualDeltaE00, leaveOneOutDeltaE00 }: TintStep,
  numbers: PrintedNumbers,
): string {
  const number = (figure: TintStep["residualDeltaE00"]): string | undefined =>
    figure !== undefined && isKnown(figure) ? numbers.decimal(figure.value, 1) : undefined;
  const [residual, leftOut] = [number(residualDeltaE00), number(leaveOneOutDeltaE00)];
  return residual === undefined
    ? ""
    : leftOut === undefined
      ? residual
      : `${residual} (${leftOut})`;
}

function trailPicture(page: SheetPage): PictureView | undefined {
  const trail = trailOf(page);
  return trail === undefined
    ? undefined
    : {
        svg: asMarkup(tintTrail({ ...trail, decimalMark: page.words.numbers.mark })),
        caption: trail.title,
      };
}

/** The trail; none where no white has two drawdowns. */
function trailOf({ worded: { sheet }, words, context }: SheetPage): TintTrail | undefined {
  const text = words.pages.whites;
  const masstone = trailPoint({ ...sheet.notations.masstone, standing: "measured" });
  const whites = whitesLetDownWith(context);
  const trails = sheet.tints.flatMap((tint) =>
    whiteTrail(tint, masstone, tint.white.name).map((trail) => ({
      ...trail,
      shape: MARK_SHAPES[whites.indexOf(tint.white.slug) % MARK_SHAPES.length],
    })),
  );
  if (trails.length === 0) return undefined;
  return {
    idPrefix: "trail",
    title: text.trailTitle,
    description: text.trailDescription(trails.map(({ label }) => label)),
    trails,
    frame: "fitted",
    axes: { a: "a*", b: "b*" },
    ends: text.trailEnds,
  };
}

/** Where the let-downs in one white lead, read and predicted; none for fewer than two read. */
export function whiteTrail(
  { steps }: TintSection,
  masstone: ReturnType<typeof trailPoint>,
  label: string,
): Trail[] {
  const sound = steps.filter(({ suspect }) => suspect === undefined);
  const read = sound.filter(({ standing }) => standing === "measured").flatMap(trailPoint);
  const predicted = sound.flatMap(trailPoint).map(({ a, b }) => ({ a, b }));
  if (read.length < 2) return [];
  return [
    {
      label,
      points: read,
      ...(predicted.length > read.length
        ? { predicted: [...masstone.map(({ a, b }) => ({ a, b })), ...predicted] }
        : {}),
    },
  ];
}

/** A step's place among a* and b*, in its own colour; none where either is not known. */
export function trailPoint(
  step: Partial<Pick<TintStep, "lab" | "standing">> & Partial<ScreenFigures>,
): { a: number; b: number; colour: ScreenColour; standing: Standing }[] {
  const lab = step.lab?.["D65/10"];
  const colour = ownColour(step);
  if (colour === undefined || lab === undefined || !isKnown(lab.a) || !isKnown(lab.b)) return [];
  return [{ a: lab.a.value, b: lab.b.value, colour, standing: step.standing ?? "measured" }];
}
