import { glazesThoughItHides, isMoreThanACoat } from "./hiding-film.ts";
import type { Block, LineView } from "../blocks/block.ts";
import { linesOf, plots } from "../blocks/section-blocks.ts";
import { at } from "../quantities/at.ts";
import { isKnown } from "../quantities/figure.ts";
import type { Statement } from "../quantities/statement.ts";
import { classText } from "../present/figure-text.ts";
import { statementText } from "../present/statement-text.ts";
import { upperFirst } from "../words/letter-case.ts";
import { oilLine } from "./oil-line.ts";
import { glazePictures } from "./strength-blocks.ts";
import { textOf, type SheetPage } from "./page-of-sheet.ts";
import { recallTexts } from "../present/lots-text.ts";

/** Statements of film health that say how the surface looks. */
const OF_THE_FINISH = /^(?:may-)?(?:sinks?-in|be-dull-of-itself|dull-of-itself|oiling-out)/;

/** What a medium in the recipe does is not known: the first screen says so, and not every line again. */
const OF_A_MEDIUM = "holds-medium-not-known";

/** What a painter has to know at the easel, a line each. */
export function paintingBlocks(page: SheetPage): Block[] {
  return [
    ...linesOf([
      ...recalls(page),

      ...dries(page),
      ...layers(page),
      ...inWhites(page),
      ...mixing(page),
      ...hides(page),
      ...finish(page),
      ...age(page),
      ...oilAndSizes(page),
    ]),
    ...plots(glazePictures(page)),
  ];
}

function line(name: string, sentences: readonly string[]): LineView[] {
  const told = sentences.filter((sentence) => sentence !== "");
  return told.length === 0 ? [] : [{ name, sentences: told.map((text) => ({ text })) }];
}

function worded(statements: readonly Statement[], { words }: SheetPage): string[] {
  return statements.map((statement) => statementText(statement, words));
}

/** Before all else: which lots are not to be used. */
function recalls({ sheet: { lots }, words }: SheetPage): LineView[] {
  return lots === undefined ? [] : line(words.pages.lots.reply, recallTexts(lots, words));
}

/** What the days to the touch do not tell, and what puts them in doubt. */
const OF_THE_DAYS: ReadonlySet<string> = new Set([
  "film-wet-beyond-record",
  "touch-dry-is-not-through-dry",
]);

function dries(page: SheetPage): LineView[] {
  const { words } = page;
  const { drying } = page.sheet;
  const days = textOf(page, "drying.touchDryDays");
  if (!isKnown(drying.class) || days === undefined) return [];
  return line(words.pages.sheetPage.lines.dries, [
    words.pages.drying.summary(
      classText(drying.class, (each) => at(words.pages.sheetPage.dries, each), words),
      days,
      textOf(page, "drying.throughDryDays"),
    ),
    ...worded(
      drying.reasons.filter(({ rule }) => OF_THE_DAYS.has(rule)),
      page,
    ),
  ]);
}

function layers(page: SheetPage): LineView[] {
  const { layering } = page.sheet.drying;
  return line(page.words.pages.sheetPage.lines.layers, worded(layering, page));
}

function inWhites(page: SheetPage): LineView[] {
  const text = page.words.pages.sheetPage;
  const known = page.sheet.drying.inWhites.flatMap(({ white, whiteParts, touchDryDays }) => {
    const days = textOf(page, `drying.inWhites.${white.slug}.touchDryDays`);
    const isTried = touchDryDays.standing === "measured";
    return days === undefined
      ? []
      : [{ told: text.inWhite(white.name, days, isTried), whiteParts, isTried }];
  });
  const expected = known.find(({ isTried }) => !isTried);
  return known.length === 0
    ? []
    : line(text.lines.whites, [
        `${upperFirst(known.map(({ told }) => told).join(page.words.semicolon))}.`,
        expected === undefined ? "" : text.inWhiteParts(expected.whiteParts),
      ]);
}

/** Only where nothing of it is predicted. */
function mixing(page: SheetPage): LineView[] {
  const { notPredicted } = page.sheet.optics;
  return notPredicted === undefined
    ? []
    : line(page.words.pages.sheetPage.lines.mixing, worded([notPredicted], page));
}

/** That the colour as shown is a film which lets its ground through, or hid it. */
const OF_A_FILM = /^(masstone-(by-both-grounds|is-a-film)|coat-hides-as-drawn)$/;

function hides(page: SheetPage): LineView[] {
  const text = page.words.pages.sheetPage;
  const [film, area] = [
    textOf(page, "optics.hidingFilmUm"),
    textOf(page, "optics.coverageCm2PerMl"),
  ];
  const { sheet } = page.worded;
  const { reasons } = sheet.optics;
  const isNever = isMoreThanACoat(sheet);
  return line(text.lines.hides, [
    ...worded(
      reasons.filter(({ rule }) => OF_A_FILM.test(rule)),
      page,
    ),
    film === undefined
      ? ""
      : isNever
        ? text.hidesNever
        : glazesThoughItHides(sheet)
          ? text.hidesByDarkness(film)
          : text.hidesLine(film),
    area === undefined || isNever ? "" : text.covers(area),
  ]);
}

function finish(page: SheetPage): LineView[] {
  const text = page.words.pages.sheetPage;
  const { drying, optics } = page.sheet;
  const word = textOf(page, "oil.finish");
  return line(text.lines.finish, [
    word === undefined ? "" : text.finishLine(upperFirst(word)),
    ...worded([...drying.filmHealth.filter(({ rule }) => OF_THE_FINISH.test(rule))], page),
    ...(optics.gloss === undefined ? [] : worded([optics.gloss.sentence], page)),
  ]);
}

function age(page: SheetPage): LineView[] {
  return line(
    page.words.pages.sheetPage.lines.age,
    worded(
      page.sheet.drying.filmHealth.filter(
        ({ rule }) => !OF_THE_FINISH.test(rule) && rule !== OF_A_MEDIUM,
      ),
      page,
    ),
  );
}

function oilAndSizes(page: SheetPage): LineView[] {
  const oil = oilLine(page);
  return oil === undefined ? [] : line(page.words.pages.sheetPage.lines.oil, [oil]);
}
