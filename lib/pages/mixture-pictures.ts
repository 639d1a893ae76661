import { isKnown } from "../quantities/figure.ts";
import { given } from "../quantities/given.ts";
import { figureText } from "../present/figure-text.ts";
import type { PictureView } from "../present/views.ts";
import { tintTrail, type Trail, type TrailPoint } from "../plots/tint-trail.ts";
import { greyAt, nearestBlacks, singleBlacksIn } from "../collection/single-blacks.ts";
import type { MixtureDrift } from "../sheet/mixture/component-loss.ts";
import type { MixtureWhite } from "../sheet/mixture/mixture-white.ts";
import type { LabFigures, ScreenFigures } from "../sheet/notations/notation-figures.ts";
import { knownAb } from "../sheet/notations/known-lab.ts";
import { ON_ONE_PAGE } from "./range-parts.ts";
import { ownColour } from "./screen-swatch.ts";
import type { SheetPage } from "./page-of-sheet.ts";
import { plainSheets } from "./worded-sheet.ts";

/** Farthest from neutral, in a* or b*, that the greys of a pair are drawn: beyond it they are no greys. */
const GREY_REACH = 18;

/** Drift in the a*b* plane, and the greys of a pair beside blacks of one pigment. */
export function mixturePictures(white: MixtureWhite, page: SheetPage): PictureView[] {
  return [driftPicture(white, page), pairPicture(white, page)].filter(
    (picture) => picture !== undefined,
  );
}

function driftPicture(white: MixtureWhite, { sheet, words }: SheetPage): PictureView | undefined {
  const { drift: text } = words.pages.mixture;
  const { plusA, minusA, plusB, minusB } = words.pages.whites.trailEnds;
  if (white.fresh === undefined) return undefined;
  const fresh = pointAt({ ...white.fresh, lab: white.fresh.lab["D65/10"] }, "derived");
  if (fresh === undefined) return undefined;
  const faded = ({ losses }: MixtureDrift): TrailPoint[] =>
    losses.flatMap(
      (loss) =>
        pointAt({ ...loss, lab: loss.lab["D65/10"] }, "estimated", text.percent(loss.slug)) ?? [],
    );
  const trails: Trail[] = given([
    // One mark for the tint that all paths leave from.
    { label: sheet.name, points: [fresh] },
    ...white.drifts.map((drift) => ({
      label: text.less(drift.name.split(",")[0] ?? drift.name),
      points: faded(drift),
      predicted: drift.path,
    })),
    white.singleBlack !== undefined && {
      label: white.singleBlack.name,
      points: faded(white.singleBlack)
        .slice(-1)
        .map((point) => ({ ...point, label: undefined })),
      predicted: white.singleBlack.path,
    },
  ]);
  const title = text.title(white.white.name);
  return {
    svg: tintTrail({
      decimalMark: words.numbers.mark,
      idPrefix: `drift-${white.white.slug}`,
      title,
      trails,
      ends: { plusA, minusA, plusB, minusB },
      description: text.description(
        white.drifts.map(({ name, path }) =>
          text.path(
            name,
            words.numbers.decimal(path.at(-1)?.a ?? 0, 1),
            words.numbers.decimal(path.at(-1)?.b ?? 0, 1),
          ),
        ),
      ),
    }),
    caption: title,
  };
}

function pairPicture(
  white: MixtureWhite,
  { worded, context, words }: SheetPage,
): PictureView | undefined {
  const { pair } = white;
  const { slug } = white.white;
  const own = worded.sheet.tints.find((tint) => tint.white.slug === slug);
  if (pair === undefined || !isKnown(pair.neutralShare) || !isKnown(pair.neutralChroma))
    return undefined;
  const text = words.pages.mixture.pair;
  const { plusA, minusA, plusB, minusB } = words.pages.whites.trailEnds;
  const near = pair.greys.filter(({ a, b }) => Math.max(Math.abs(a), Math.abs(b)) <= GREY_REACH);
  const blacks = nearestBlacks(
    singleBlacksIn(plainSheets(context.sheets), slug),
    own,
    ON_ONE_PAGE.blacksBeside,
  ).flatMap(({ name, atL }) => {
    const at = greyAt({ atL }, "50");
    const colour = ownColour(atL["50"]);
    if (at === undefined || colour === undefined) return [];
    return {
      name,
      point: { a: at.a, b: at.b, standing: "derived" as const, colour },
    };
  });
  const mixed = own === undefined ? undefined : greyAt(own, "50");
  const trails: Trail[] = given([
    near.length >= 2 && {
      label: `${pair.first} + ${pair.second}`,
      predicted: near,
      points: near
        .filter((_, i) => i % 2 === 0)
        .map(({ share, a, b }): TrailPoint => ({
          a,
          b,
          standing: "derived",
          label: text.share(words.numbers.decimal(share * 100, 0)),
        })),
    },
    mixed !== undefined && {
      label: worded.sheet.name,
      points: [
        {
          a: mixed.a,
          b: mixed.b,
          standing: "derived" as const,
          colour: ownColour(own?.atL["50"]),
        },
      ],
    },
    // Names that find no room stand in the table below.
    blacks.length > 0 && {
      label: text.single,
      points: blacks.map(({ name, point }): TrailPoint => ({ ...point, label: name })),
      isLoose: true,
    },
  ]);
  if (trails.length === 0) return undefined;
  const title = text.title(pair.first, pair.second);
  const { row } = worded.leaf(`mixture.whites.${slug}.pair.neutralShare`);
  return {
    svg: tintTrail({
      decimalMark: words.numbers.mark,
      idPrefix: `pair-${slug}`,
      title,
      trails,
      ends: { plusA, minusA, plusB, minusB },
      description: text.description(
        pair.first,
        pair.second,
        figureText(row, pair.neutralShare, words),
        words.numbers.decimal(pair.neutralChroma.value, 1),
        blacks.map(({ name, point }) =>
          text.black(name, words.numbers.decimal(point.a, 1), words.numbers.decimal(point.b, 1)),
        ),
      ),
    }),
    caption: title,
  };
}

function pointAt(
  tint: Partial<ScreenFigures> & { readonly lab: LabFigures },
  standing: "derived" | "estimated",
  label?: string,
): TrailPoint | undefined {
  const plane = knownAb(tint.lab);
  if (plane === undefined) return undefined;
  return {
    ...plane,
    standing,
    colour: ownColour(tint),
    ...(label !== undefined && { label }),
  };
}
