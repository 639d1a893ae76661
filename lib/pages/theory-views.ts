/** What theory says, drawn and told: bands over what is not known, and never a colour's figure or swatch. */
import { tableView } from "../present/table-view.ts";
import {
  allBluerRuling,
  blueDifference,
  blueRuling,
  leanRuling,
  ROBUST_SHARE,
} from "../optics/theory/theory-statements.ts";
import type { ParticleModel } from "../optics/theory/particle-model.ts";
import { OIL_INDICES, PARTICLE_GRID, RUN_COUNT } from "../optics/theory/particle-runs.ts";
import type { TheoryLightness, TheoryTint } from "../optics/theory/mie-tint.ts";
import { quantityText } from "../words/number-text.ts";
import { statementText } from "../present/statement-text.ts";
import { sourceName } from "../present/source-name.ts";
import { standingWord } from "../present/standing-view.ts";
import type { ListView, PictureView, TableView } from "../present/views.ts";
import { relativeScattering, scatteringScale } from "../plots/relative-scattering.ts";
import type { Statement } from "../quantities/statement.ts";
import { theoryModels, type RangeModels } from "../sheet/pigments/theory-models.ts";
import { paintsOfPigment } from "../sheet/record-inputs.ts";
import { whiteScattering } from "../sheet/tints/white-scattering.ts";
import { bluenessPicture, whiteName, whitesInOrder } from "./blacks-in-whites.ts";
import type { PageContext } from "./page-context.ts";
import { at } from "../quantities/at.ts";
import { given } from "../quantities/given.ts";

/** The lightness that is told: where the hue of a grey shows best. */
const TOLD: TheoryLightness = 50;

/** Where the published indices of the whites begin [nm], about: below it they are only carried on. */
const PUBLISHED_FROM_NM = 440;

/** Things of whites in the order in which the whites are shown everywhere. */
function inOrder<V extends { readonly white: string }>(
  things: readonly V[],
  context: PageContext,
): V[] {
  const order = whitesInOrder(context);
  return things.toSorted((one, other) => order.indexOf(one.white) - order.indexOf(other.white));
}

/** Bands of b* for every black and white that theory can speak of; undefined where it can of none. */
export function theoryPicture(context: PageContext, idPrefix: string): PictureView | undefined {
  const { numbers, pages } = context.words;
  const [text, words] = [pages.blacks.theory, pages.blacks.picture];
  const rows = context.theory().blacks.map(({ black, tints }) => ({
    label: blackName(black, context),
    lanes: inOrder(tints, context)
      .filter(({ L }) => L === TOLD)
      .map(({ white, b: { low, middle, high } }) => ({
        kind: "band" as const,
        label: words.short(whiteName(white, context)),
        low,
        middle,
        high,
      })),
  }));
  if (rows.every(({ lanes }) => lanes.length === 0)) return undefined;
  const title = text.title(String(TOLD));
  return bluenessPicture(rows, context, {
    idPrefix,
    title,
    words: text,
    tell: ({ label, low, high }) =>
      text.lane(label, numbers.decimal(low, 0), numbers.decimal(high, 0)),
    valuesOf: ({ low, high }) => [low, high],
    caption: title,
  });
}

/** How each white scatters over the spectrum: from its films where there are any, by theory where it can. All on one scale. */
export function scatteringPictures(context: PageContext, idPrefix: string): PictureView[] {
  const text = context.words.pages.blacks.scattering;
  const nm = Array.from(
    { length: PARTICLE_GRID.count },
    (_, i) => PARTICLE_GRID.startNm + i * PARTICLE_GRID.stepNm,
  );
  const whites = inOrder(context.theory().whites, context).map(({ white, scattering }) => {
    const [paint] = paintsOfPigment(white, context.records.colours);
    return {
      white,
      name: whiteName(white, context),
      band: scattering
        .map(({ low, high }, i) => ({ nm: at(nm, i), low, high }))
        .filter((at) => at.nm >= PUBLISHED_FROM_NM),
      read: paint === undefined ? undefined : whiteScattering(paint, context.records),
    };
  });
  const most = scatteringScale(
    whites.flatMap(({ band, read }) => [
      ...band.map(({ high }) => high),
      ...(read?.runs.flat().map(({ value }) => value) ?? []),
    ]),
  );
  const { numbers } = context.words;
  return whites.map(({ white, name, band, read }): PictureView => {
    const blue = band.find((at) => at.nm === 440);
    const filmed = read?.runs.flat().find((at) => at.nm === 440);
    const parts = given([
      filmed !== undefined && text.at(text.kinds.read, "440", numbers.decimal(filmed.value, 2)),
      blue !== undefined &&
        text.at(
          text.kinds.band,
          "440",
          text.span(numbers.decimal(blue.low, 2), numbers.decimal(blue.high, 2)),
        ),
    ]);
    const title = text.title(name);
    return {
      svg: relativeScattering({
        decimalMark: numbers.mark,
        idPrefix: `${idPrefix}-${white}`,
        title,
        description: text.description(title, parts),
        wavelengthLabel: text.wavelength,
        axisLabel: text.axis,
        read: read?.runs ?? [],
        band,
        most,
      }),
      caption: given([title, read !== undefined && text.read(read.filmsUm), text.band]).join(
        context.words.semicolon,
      ),
    };
  });
}

/** Statements that hold whatever the unknowns, or those that theory does not carry. */
export function theoryStatements(
  isTold: boolean,
  context: PageContext,
): { readonly list: ListView; readonly note: string } | undefined {
  const text = context.words.pages.blacks.theory;
  const rulings = [
    ...theoryRulings(context).filter(({ rule }) => NOT_TOLD.has(rule) !== isTold),
    ...(isTold ? [] : theoryModels(context.records).refusals),
  ];
  if (rulings.length === 0) return undefined;
  return {
    list: {
      heading: text.statements(isTold),
      items: rulings.map((ruling) => ({
        text: statementText(ruling, context.words),
        standing: standingWord("estimated", context.words),
      })),
    },
    note: text.statementsNote(
      RUN_COUNT,
      `${context.words.numbers.decimal(ROBUST_SHARE * 100, 0)}\u00a0%`,
    ),
  };
}

const NOT_TOLD = new Set(["theory-sign-not-known", "theory-lean-not-known"]);

/** Each black from white to white, blacks of one substance in each white, and each black's lean by itself; one statement for all where it holds of all. */
function theoryRulings(context: PageContext): Statement[] {
  const blacks = context
    .theory()
    .blacks.map(({ black, tints }) => ({ black, tints: tints.filter(({ L }) => L === TOLD) }));
  const models = theoryModels(context.records);
  const { pair, grey } = context.words.pages.blacks.theory;
  const whites = whitesInOrder(context).filter((white) =>
    blacks.some(({ tints }) => tints.some((tint) => tint.white === white)),
  );
  const betweenWhites = pairsOf(whites).flatMap(([one, other]) =>
    together(
      blacks.flatMap(({ black, tints }) =>
        comparisonOf(
          blackName(black, context),
          tints.find(({ white }) => white === one),
          tints.find(({ white }) => white === other),
        ),
      ),
      "with",
      (name, white) => pair(name, whiteName(white, context)),
      [one, other],
      (white) => pair(grey, whiteName(white, context)),
    ),
  );
  const betweenBlacks = pairsOf(blacks)
    .filter(([one, other]) => areOfOneSubstance(one.black, other.black, models))
    .flatMap(([one, other]) =>
      together(
        one.tints.flatMap((tint) =>
          comparisonOf(
            whiteName(tint.white, context),
            tint,
            other.tints.find(({ white }) => white === tint.white),
          ),
        ),
        "in",
        (name, black) => pair(blackName(black, context), name),
        [one.black, other.black],
        (black) => context.words.nameWithin(blackName(black, context)),
      ),
    );
  return [
    ...betweenWhites,
    ...betweenBlacks,
    ...blacks.flatMap(({ black, tints }) =>
      tints.map((tint) =>
        leanRuling(blackName(black, context), whiteName(tint.white, context), tint),
      ),
    ),
  ];
}

interface Comparison {
  readonly member: string;
  readonly one: TheoryTint;
  readonly other: TheoryTint;
}

function comparisonOf(
  member: string,
  one: TheoryTint | undefined,
  other: TheoryTint | undefined,
): Comparison[] {
  return one === undefined || other === undefined ? [] : [{ member, one, other }];
}

/** Comparisons of the same two things: one statement where it is told the same way of every member, else one of each. */
function together(
  comparisons: readonly Comparison[],
  how: "with" | "in",
  named: (member: string, thing: string) => string,
  things: readonly [string, string],
  thing: (slug: string) => string,
): Statement[] {
  const isTurned =
    comparisons.filter(({ one, other }) => one.b.middle > other.b.middle).length >
    comparisons.length / 2;
  const [first, second] = isTurned ? [things[1], things[0]] : things;
  const differences = comparisons.map(({ one, other }) =>
    isTurned ? blueDifference(other, one) : blueDifference(one, other),
  );
  const members = comparisons.map(({ member }) => member);
  const all =
    members.length < 2
      ? undefined
      : allBluerRuling(members, how, thing(first), thing(second), differences);
  return all === undefined
    ? members.map((member, i) =>
        blueRuling(named(member, first), named(member, second), at(differences, i)),
      )
    : [all];
}

/** Blacks of unlike substance are not compared: their indices are known unlike well. */
function areOfOneSubstance(one: string, other: string, { blacks }: RangeModels): boolean {
  const names = (slug: string): string =>
    blacks
      .filter((model) => model.slug === slug)
      .flatMap(({ indices }) => indices.map(({ name }) => name))
      .join("; ");
  return names(one) === names(other);
}

/** Size, spread and indices of each pigment, with their sources. */
export function theoryInputs(context: PageContext): TableView | undefined {
  const { whites, blacks } = theoryModels(context.records);
  const { semicolon } = context.words;
  const text = context.words.pages.blacks.theory.inputs;
  if (whites.length + blacks.length === 0) return undefined;
  const um = (size: ParticleModel["sizeUm"]): string =>
    quantityText(size, (value) => context.words.numbers.significant(value, 2), context.words.about);
  const source = (key: string): string =>
    sourceName(key, context.records.sources.get(key), context.words.pages.sources.standings);
  return tableView({
    caption: text.caption,
    columns: [text.pigment, text.size, text.spread, text.indices],
    rows: [...whites, ...blacks].map(({ slug, sizeUm, sizeKind, spread, indices }) => [
      blackName(slug, context),
      { text: um(sizeUm), note: text.sizeKinds[sizeKind] },
      spread.map((value) => context.words.numbers.decimal(value, 2)).join("\u2013"),
      {
        text: [...new Set(indices.map(({ name }) => name))].join(semicolon),
        note: [...new Set(indices.map((index) => source(index.source)))].join(semicolon),
      },
    ]),
    note: text.note(OIL_INDICES.map((index) => context.words.numbers.decimal(index, 2))),
  });
}

function blackName(slug: string, { records }: PageContext): string {
  return records.pigments.get(slug)?.record.name ?? slug;
}

function pairsOf<V>(members: readonly V[]): [V, V][] {
  return members.flatMap((one, i) => members.slice(i + 1).map((other): [V, V] => [one, other]));
}
