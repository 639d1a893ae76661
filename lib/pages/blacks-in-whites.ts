import { placesWithin } from "../words/number-text.ts";
import { asMarkup, type CellView, type PictureView, type TableView } from "../present/views.ts";
import { bluenessRows, type BluenessRow } from "../plots/blueness-rows.ts";
import type { NearNeutral } from "../collection/near-neutrals.ts";
import { greyAt } from "../collection/single-blacks.ts";
import { paintsOfPigment } from "../sheet/record-inputs.ts";
import type { Sheet } from "../sheet/sheet.ts";
import type { EqualLightness } from "../sheet/tints/tint-figures.ts";
import { comparableTint } from "./screen-swatch.ts";
import { glossCaption } from "./gloss-caption.ts";
import { evenly } from "./range-parts.ts";
import type { Words } from "../words/words.ts";
import { NO_VALUE } from "../words/no-value.ts";
import type { PageContext, PagePlace } from "./page-context.ts";

/** Ends of the b* axis: one of two, so that what was read and what theory says are drawn alike. */
const BLUENESS_DOMAINS = [
  [-15, 10],
  [-30, 25],
  [-60, 60],
] as const;

/** The least of the domains that holds every value. @throws RangeError when none does. */
export function bluenessDomain(values: readonly number[]): readonly [number, number] {
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
      ({ family, tints }) =>
        family === "black" && tints.some((tint) => greyAt(tint, level) !== undefined),
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

function withSome(caption: string, some: string): string {
  return some === "" || /[.!?]$/.test(caption) ? caption + some : `${caption}.${some}`;
}

function someOf(shown: readonly Sheet[], all: readonly Sheet[], { pages }: Words): string {
  return shown.length === all.length ? "" : ` ${pages.parts.someOf(shown.length, all.length)}`;
}

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

/** a* and b* of every black in every white at one lightness; undefined where none was let down. */
export function blacksInWhitesTable(
  level: EqualLightness,
  context: PageContext,
  { root }: PagePlace,
): TableView | undefined {
  const text = context.words.pages.blacks.table;
  const all = blacksAt(level, context);
  const blacks = someBlacks(all, level);
  if (blacks.length === 0) return undefined;
  const whites = whitesOf(blacks, level);
  return {
    caption: text.caption(level),
    note:
      glossCaption(text.note, greysOf(blacks, level), context.words) +
      someOf(blacks, all, context.words),
    compact: true,
    columns: [{ head: text.colour }, ...whites.map(({ name }) => ({ head: name, numeric: true }))],
    rows: blacks.map(({ slug, name, tints }): CellView[] => [
      { text: name, href: `${root}colours/${slug}/` },
      ...whites.map((white): CellView => {
        const tint = tints.find((one) => one.white.slug === white.slug);
        const at = tint === undefined ? undefined : greyAt(tint, level);
        const axis = (value: number): string =>
          context.words.numbers.decimal(value, placesWithin(at?.uncertainty, 1));
        return { text: at === undefined ? NO_VALUE : text.cell(axis(at.a), axis(at.b)) };
      }),
    ]),
  };
}

/** b* of every black in every white at one lightness, with its uncertainty, a lane a white. */
export function blacksInWhitesPicture(
  level: EqualLightness,
  context: PageContext,
  idPrefix: string,
): PictureView | undefined {
  const text = context.words.pages.blacks.picture;
  const all = blacksAt(level, context);
  const blacks = someBlacks(all, level);
  if (blacks.length === 0) return undefined;
  const whites = whitesOf(blacks, level);
  const rows = blacks.map(({ name, tints }): BluenessRow => ({
    label: name,
    lanes: whites.flatMap((white) => {
      const tint = tints.find((one) => one.white.slug === white.slug);
      const at = tint === undefined ? undefined : greyAt(tint, level);
      return at === undefined
        ? []
        : [
            {
              kind: "point" as const,
              label: text.short(white.name),
              b: at.b,
              uncertainty: at.uncertainty,
              colour: comparableTint(tint?.atL[level]),
            },
          ];
    }),
  }));
  const domain = bluenessDomain(
    rows.flatMap(({ lanes }) =>
      lanes.map((lane) => (lane.kind === "point" ? lane.b : lane.middle)),
    ),
  );
  const spoken = rows.map(({ label, lanes }) =>
    text.row(
      label,
      lanes.map((lane) =>
        text.lane(
          lane.label,
          context.words.numbers.decimal(lane.kind === "point" ? lane.b : lane.middle, 1),
        ),
      ),
    ),
  );
  const title = text.title(level);
  return {
    svg: asMarkup(
      bluenessRows({
        decimalMark: context.words.numbers.mark,
        idPrefix,
        title,
        description: text.description(spoken),
        axisLabel: text.axis,
        ends: text.ends,
        domain,
        rows,
      }),
    ),
    caption: withSome(
      glossCaption(title, greysOf(blacks, level), context.words),
      someOf(blacks, all, context.words),
    ),
  };
}

/** White pigments in the order that the pictures of blacks have their paints in; those that no black is let down in come last. */
export function whitesInOrder(context: PageContext): string[] {
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
}

/** Name of the paint of one white pigment alone, as it stands in a sentence; the pigment's where there is none. */
export function whiteName(pigment: string, { records }: Pick<PageContext, "records">): string {
  const [paint] = paintsOfPigment(pigment, records.colours);
  return paint?.record.name ?? records.pigments.get(pigment)?.record.name ?? pigment;
}
