import { coordinateText } from "../present/coordinate-text.ts";
import { numberColumns, tableView } from "../present/table-view.ts";
import type { CellView, PictureView, TableView } from "../present/views.ts";
import { bluenessRows, type BluenessLane } from "../plots/blueness-rows.ts";
import type { NearNeutral } from "../collection/near-neutrals.ts";
import { greyAt } from "../collection/single-blacks.ts";
import { remembered } from "../quantities/remembered.ts";
import { paintsOfPigment } from "../sheet/record-inputs.ts";
import type { Sheet } from "../sheet/sheet.ts";
import type { EqualLightness, TintSection } from "../sheet/tints/tint-figures.ts";
import { ownColour } from "./screen-swatch.ts";
import { glossCaption } from "./gloss-caption.ts";
import { evenly } from "./range-parts.ts";
import { NO_VALUE } from "../words/no-value.ts";
import type { PageContext, PagePlace } from "./page-context.ts";

/** Ends of the b* axis: one of two, so that what was read and what theory says are drawn alike. */
const BLUENESS_DOMAINS = [
  [-15, 10],
  [-30, 25],
  [-60, 60],
] as const;

/** The least of the domains that holds every value. @throws RangeError when none does. */
function bluenessDomain(values: readonly number[]): readonly [number, number] {
  const domain = BLUENESS_DOMAINS.find(([low, high]) =>
    values.every((value) => value >= low && value <= high),
  );
  if (domain === undefined)
    throw new RangeError(
      `The b* is ${Math.min(...values)} to ${Math.max(...values)}; right would be within -60 to 60`,
    );
  return domain;
}

/** Blacks with tints at a lightness, in the order of the range. */
function blacksAt(level: EqualLightness, { sheets }: PageContext): Sheet[] {
  return sheets
    .map(({ sheet }) => sheet)
    .filter(
      // Of those of other families no tint is asked for.
      (sheet) =>
        sheet.family === "black" && sheet.tints.some((tint) => greyAt(tint, level) !== undefined),
    );
}

/** All of a few blacks; of many, so many taken evenly from the bluest to the yellowest in the white of most, in the order of the range. */
function someBlacks(blacks: readonly Sheet[], level: EqualLightness): readonly Sheet[] {
  if (blacks.length <= SHOWN_MOST) return blacks;
  const [white] = whitesOf(blacks, level);
  const b = ({ tints }: Sheet): number => {
    const tint = tints.find((one) => one.white.slug === white?.slug) ?? tints[0];
    return (tint && greyAt(tint, level)?.b) ?? 0;
  };
  const shown = new Set(
    evenly(
      blacks.toSorted((one, other) => b(one) - b(other)),
      SHOWN_MOST,
    ),
  );
  return blacks.filter((black) => shown.has(black));
}

/** As many as can be told apart in a picture. */
const SHOWN_MOST = 24;

/** Whites that a black reaches the lightness in, in the order that the records let blacks down in them. */
function whitesOf(
  blacks: readonly Sheet[],
  level: EqualLightness,
): { readonly slug: string; readonly name: string }[] {
  const tints = blacks
    .toSorted((one, other) => other.tints.length - one.tints.length)
    .flatMap((black) => black.tints.filter((tint) => greyAt(tint, level) !== undefined));
  return [...new Map(tints.map(({ white }) => [white.slug, white])).values()];
}

function greysOf(blacks: readonly Sheet[], level: EqualLightness): NearNeutral[] {
  return blacks.flatMap((sheet) =>
    sheet.tints
      .filter((tint) => greyAt(tint, level) !== undefined)
      .map((tint) => ({ sheet, tint })),
  );
}

/** The blacks of a table or a picture at a lightness, and the whites that they are told in. */
interface ShownBlacks {
  readonly blacks: readonly Sheet[];
  readonly whites: readonly { readonly slug: string; readonly name: string }[];
  /** Adds to a caption what it has to say of readings with gloss, and that these are some of more. */
  readonly captioned: (caption: string) => string;
}

function shownBlacks(level: EqualLightness, context: PageContext): ShownBlacks | undefined {
  const all = blacksAt(level, context);
  const blacks = someBlacks(all, level);
  if (blacks.length === 0) return undefined;
  const some =
    blacks.length === all.length
      ? ""
      : ` ${context.words.pages.parts.someOf(blacks.length, all.length)}`;
  return {
    blacks,
    whites: whitesOf(blacks, level),
    captioned: (caption) => {
      const own = glossCaption(caption, greysOf(blacks, level), context.words);
      return some === "" || /[.!?]$/.test(own) ? own + some : `${own}.${some}`;
    },
  };
}

/** What a black comes to in a white at a lightness; undefined where it was not let down in that, or does not reach it. */
function greyIn(
  white: { readonly slug: string },
  { tints }: Sheet,
  level: EqualLightness,
): { readonly tint: TintSection; readonly at: NonNullable<ReturnType<typeof greyAt>> } | undefined {
  const tint = tints.find((one) => one.white.slug === white.slug);
  const at = tint && greyAt(tint, level);
  return tint === undefined || at === undefined ? undefined : { tint, at };
}

/** a* and b* of every black in every white at one lightness; undefined where none was let down. */
export function blacksInWhitesTable(
  level: EqualLightness,
  context: PageContext,
  { root }: PagePlace,
): TableView | undefined {
  const text = context.words.pages.blacks.table;
  const shown = shownBlacks(level, context);
  if (shown === undefined) return undefined;
  const { blacks, whites, captioned } = shown;
  return tableView({
    caption: text.caption(level),
    note: captioned(text.note),
    compact: true,
    columns: [text.colour, ...numberColumns(...whites.map(({ name }) => name))],
    rows: blacks.map((black) => [
      { text: black.name, href: `${root}colours/${black.slug}/` },
      ...whites.map((white): CellView => {
        const at = greyIn(white, black, level)?.at;
        const axis = (value: number): string =>
          coordinateText(value, at?.uncertainty, context.words.numbers);
        return { text: at === undefined ? NO_VALUE : text.cell(axis(at.a), axis(at.b)) };
      }),
    ]),
  });
}

/** b* of every black in every white at one lightness, with its uncertainty, a lane a white. */
export function blacksInWhitesPicture(
  level: EqualLightness,
  context: PageContext,
  idPrefix: string,
): PictureView | undefined {
  const text = context.words.pages.blacks.picture;
  const { numbers } = context.words;
  const shown = shownBlacks(level, context);
  if (shown === undefined) return undefined;
  const { blacks, whites, captioned } = shown;
  const rows = blacks.map((black) => ({
    label: black.name,
    lanes: whites.flatMap((white) => {
      const grey = greyIn(white, black, level);
      if (grey === undefined) return [];
      return {
        kind: "point" as const,
        label: text.short(white.name),
        b: grey.at.b,
        uncertainty: grey.at.uncertainty,
        colour: ownColour(grey.tint.atL[level]),
      };
    }),
  }));
  const title = text.title(level);
  return bluenessPicture(rows, context, {
    idPrefix,
    title,
    words: text,
    tell: (lane) => text.lane(lane.label, numbers.decimal(lane.b, 1)),
    valuesOf: ({ b }) => [b],
    caption: captioned(title),
  });
}

/** What is told of a picture of b*. */
interface ToldBlueness<L extends BluenessLane> {
  readonly idPrefix: string;
  readonly title: string;
  readonly words: {
    readonly axis: string;
    readonly description: (rows: readonly string[]) => string;
    readonly row: (black: string, lanes: readonly string[]) => string;
  };
  readonly tell: (lane: L) => string;
  /** What its axis has to hold of a lane. */
  readonly valuesOf: (lane: L) => readonly number[];
  readonly caption: string;
}

/** Rows of b*, read or by theory, drawn alike. */
export function bluenessPicture<L extends BluenessLane>(
  rows: readonly { readonly label: string; readonly lanes: readonly L[] }[],
  { words: { numbers, pages } }: PageContext,
  { idPrefix, title, words, tell, valuesOf, caption }: ToldBlueness<L>,
): PictureView {
  const drawn = (prefix: string, width?: number) =>
    bluenessRows({
      idPrefix: prefix,
      width,
      title,
      description: words.description(
        rows.map(({ label, lanes }) => words.row(label, lanes.map(tell))),
      ),
      axisLabel: words.axis,
      domain: bluenessDomain(rows.flatMap(({ lanes }) => lanes.flatMap(valuesOf))),
      decimalMark: numbers.mark,
      ends: pages.blacks.picture.ends,
      rows,
    });
  return { svg: drawn(idPrefix, WIDE), narrow: drawn(`${idPrefix}-narrow`), caption };
}

/** Where there is room for an axis that tells blacks apart [user units]. */
const WIDE = 640;

/** White pigments in the order that the pictures of blacks have their paints in; those that no black is let down in come last. */
export const whitesInOrder = remembered((context: PageContext): readonly string[] => {
  const paints = whitesOf(blacksAt("50", context), "50").flatMap(
    ({ slug }) => context.records.colours.get(slug)?.record.pigments[0]?.pigment ?? slug,
  );
  return [
    ...new Set([
      ...paints,
      ...[...context.records.pigments.values()]
        .filter(({ record }) => record.family === "white")
        .map(({ slug }) => slug),
    ]),
  ];
});

/** Name of the paint of one white pigment alone, as it stands in a sentence; the pigment's where there is none. */
export function whiteName(pigment: string, { records }: Pick<PageContext, "records">): string {
  const [paint] = paintsOfPigment(pigment, records.colours);
  return paint?.record.name ?? records.pigments.get(pigment)?.record.name ?? pigment;
}
