import { tintTrail, type Trail, type TrailPoint } from "../plots/tint-trail.ts";
import { MARK_SHAPES } from "../plots/standing-mark.ts";
import type { PictureView } from "../present/views.ts";
import type { ScreenFigures } from "../sheet/notations/notation-figures.ts";
import { knownAb } from "../sheet/notations/known-lab.ts";
import type { TintStep } from "../sheet/tints/tint-figures.ts";
import { whitesLetDownWith } from "./colours-tinted-with.ts";
import type { SheetPage } from "./page-of-sheet.ts";
import { ownColour } from "./screen-swatch.ts";

/** Where each white leads a colour in a* and b*; none where no white has two drawdowns. */
export function trailPicture({ sheet, words, context }: SheetPage): PictureView[] {
  const text = words.pages.whites;
  const masstone = trailPoint({ ...sheet.notations.masstone, standing: "measured" });
  const whites = whitesLetDownWith(context);
  const trails = sheet.tints.flatMap(({ white, steps }) =>
    whiteTrail(steps, white.name, masstone).map((trail) => ({
      ...trail,
      shape: MARK_SHAPES[whites.indexOf(white.slug) % MARK_SHAPES.length],
    })),
  );
  if (trails.length === 0) return [];
  const svg = tintTrail({
    decimalMark: words.numbers.mark,
    idPrefix: "trail",
    title: text.trailTitle,
    description: text.trailDescription(trails.map(({ label }) => label)),
    trails,
    ends: text.trailEnds,
  });
  return [{ svg: svg, caption: text.trailTitle }];
}

/** Of fewer drawdowns there is no trail. */
const FEWEST_READ = 2;

/**
 * Where let-downs in one white lead, read and predicted.
 * @param masstone from which what is predicted sets out.
 */
export function whiteTrail(
  steps: readonly TintStep[],
  label: string,
  masstone: readonly TrailPoint[],
): Trail[] {
  const sound = steps.filter(({ suspect }) => suspect === undefined);
  return trailOf(label, sound.flatMap(trailPoint), FEWEST_READ, masstone);
}

/** Points as a trail: a mark for what was read, and with what was predicted between a line through all. */
export function trailOf(
  label: string,
  points: readonly TrailPoint[],
  fewestRead: number,
  from: readonly TrailPoint[] = [],
): Trail[] {
  const read = points.filter(({ standing }) => standing === "measured");
  if (read.length < fewestRead) return [];
  return [
    {
      label,
      points: read,
      ...(points.length > read.length && {
        predicted: [...from, ...points].map(({ a, b }) => ({ a, b })),
      }),
    },
  ];
}

/** A step's place among a* and b*, in its own colour; none where either is not known. */
export function trailPoint(
  step: Partial<Pick<TintStep, "lab"> & Pick<TrailPoint, "standing"> & ScreenFigures>,
): TrailPoint[] {
  const plane = knownAb(step.lab?.["D65/10"]);
  const colour = ownColour(step);
  if (colour === undefined || plane === undefined) return [];
  return [{ ...plane, colour, standing: step.standing ?? "measured" }];
}
