import type { Block } from "../blocks/block.ts";
import { blocksOf } from "../blocks/section-blocks.ts";
import { isKnown } from "../quantities/figure.ts";
import { statementText } from "../present/statement-text.ts";
import { standingView } from "../present/standing-view.ts";
import type { CellView, PictureView, TableView } from "../present/views.ts";
import { numberColumns, tableView } from "../present/table-view.ts";
import { swatchStrip } from "../plots/swatch-strip.ts";
import { hidingCurve } from "../plots/hiding-curve.ts";
import { HIDING_CONTRAST_RATIO } from "../optics/films/hiding.ts";
import { glossPicture, glossTable } from "./gloss-view.ts";
import { ownColour } from "./screen-swatch.ts";
import { NO_VALUE } from "../words/no-value.ts";
import { reasons, sectionTable, type SheetPage } from "./page-of-sheet.ts";

/** Strength in each white, hiding, glaze, and what gloss does to depth. */
export function strengthBlocks(page: SheetPage): Block[] {
  const { sheet, words } = page;
  const { optics, tints } = sheet;
  const text = words.pages.strength;
  return blocksOf({
    summary: [optics.extender?.sentence, optics.gloss?.sentence].flatMap((sentence) =>
      sentence === undefined ? [] : [statementText(sentence, words)],
    ),
    properties: sectionTable(page, text.caption, ["optics"]),
    pictures: [...glazePictures(page), ...hidingPicture(page), ...glossPicture(page)],
    tables: [
      ...(tints.some(({ strengthParts }) => strengthParts !== undefined) ? [tubeTable(page)] : []),
      ...glossTable(page),
    ],
    lists: [
      ...reasons(
        page,
        words.pages.optics.strength.dispersion,
        optics.dispersion === undefined ? [] : [optics.dispersion.sentence],
      ),
      ...reasons(page, text.why, optics.reasons),
    ],
  });
}

function tubeTable({ sheet, words }: SheetPage): TableView {
  const { tubeCaption, tubeColumns, tubeNote } = words.pages.strength;
  const cell = (
    figure: NonNullable<(typeof sheet.tints)[number]["strengthParts"]>["byMass"],
  ): CellView =>
    isKnown(figure)
      ? {
          text: words.numbers.significant(
            typeof figure.value === "number" ? figure.value : figure.value[0],
            2,
          ),
          standing: standingView(figure, words),
        }
      : { text: NO_VALUE, reason: words.absence(figure) };
  return tableView({
    caption: tubeCaption,
    columns: [
      tubeColumns.white,
      ...numberColumns(
        tubeColumns.byVolume,
        tubeColumns.byMass,
        words.pages.optics.strength.byPigment,
      ),
    ],
    rows: sheet.tints.flatMap(({ white, strengthParts }) =>
      strengthParts === undefined
        ? []
        : [
            [
              white.name,
              cell(strengthParts.byVolume),
              cell(strengthParts.byMass),
              cell(strengthParts.byPigmentMass),
            ],
          ],
    ),
    note: tubeNote,
  });
}

/** The undertone, where it tells something: an opaque paint shows none, and white over white cannot. */
export function glazePictures({ sheet: { family, optics }, words }: SheetPage): PictureView[] {
  if (isKnown(optics.opacityClass) && optics.opacityClass.value === "opaque") return [];
  if (family === "white" || family === "extender") return [];
  const films = untilAlike((optics.glaze ?? []).filter((film) => ownColour(film) !== undefined));
  if (films.length < FEWEST_FILMS) return [];
  const text = words.pages.strength;
  const svg = swatchStrip("glaze-strip", {
    idPrefix: "glaze",
    title: text.glazeTitle,
    axisLabel: text.glazeAxis,
    missing: words.pages.sheet.missing,
    description: text.glazeDescription(
      films.map((film) => `${film.filmUm} \u00b5m ${ownColour(film)?.hex ?? ""}`),
    ),
    steps: films.map((film) => ({
      lines: [text.glazeLabel(film.filmUm)],
      colour: ownColour(film),
      standing: "derived",
    })),
  });
  return [{ svg: svg, caption: text.glazeTitle }];
}

/** Fewer than these show no undertone. */
const FEWEST_FILMS = 3;
/** Nearer than this in every channel, of 255, two films look alike. */
const ALIKE = 5;

/** Films up to the first that looks like the thickest. */
function untilAlike<Film extends Parameters<typeof ownColour>[0]>(films: readonly Film[]): Film[] {
  const channels = (film: Film | undefined): number[] => {
    const { hex } = ownColour(film) ?? { hex: "#000000" };
    return [1, 3, 5].map((at) => parseInt(hex.slice(at, at + 2), 16));
  };
  const last = channels(films.at(-1));
  const alike = films.findIndex((film) =>
    channels(film).every((value, i) => Math.abs(value - (last[i] ?? 0)) < ALIKE),
  );
  return films.slice(0, alike + 1);
}

/** Films that do not hide yet, without which a curve is a line along the top. */
const FEWEST_UNHIDDEN = 2;
/** From here on a curve runs level. */
const LEVEL_FROM = 0.998;

/** The hiding curve, to where it runs level; none for a paint that hides in the thinnest films. */
function hidingPicture({ sheet, words }: SheetPage): PictureView[] {
  const colour = ownColour(sheet.notations.masstone);
  const films = (sheet.optics.hidingCurve ?? []).map(({ filmUm, contrastRatio }) => ({
    filmUm,
    contrastRatio: Math.min(contrastRatio, 1),
  }));
  const level = films.findIndex(({ contrastRatio }) => contrastRatio >= LEVEL_FROM);
  const points = level < 0 ? films : films.slice(0, level + 1);
  const unhidden = points.filter(({ contrastRatio }) => contrastRatio < HIDING_CONTRAST_RATIO);
  if (unhidden.length < FEWEST_UNHIDDEN || colour === undefined) return [];
  const text = words.pages.strength;
  const svg = hidingCurve({
    decimalMark: words.numbers.mark,
    idPrefix: "hiding",
    title: text.hidingTitle,
    filmLabel: text.hidingFilm,
    contrastLabel: text.hidingRatio,
    description: text.hidingDescription(
      points.map(
        ({ filmUm, contrastRatio }) =>
          `${filmUm} \u00b5m ${words.numbers.decimal(contrastRatio, 2)}`,
      ),
    ),
    label: sheet.name,
    colour,
    standing: "derived",
    points,
    limit: { contrastRatio: HIDING_CONTRAST_RATIO, label: text.hides },
  });
  return [{ svg: svg, caption: text.hidingTitle }];
}
