import { tintTrail, type Trail, type TrailPoint } from "../plots/tint-trail.ts";
import { MARK_SHAPES } from "../plots/standing-mark.ts";
import { type PictureView } from "../present/views.ts";
import { isKnown } from "../quantities/figure.ts";
import type { ScreenFigures } from "../sheet/notations/notation-figures.ts";
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
  const read = sound.filter(({ standing }) => standing === "measured").flatMap(trailPoint);
  const predicted = sound.flatMap(trailPoint);
  if (read.length < FEWEST_READ) return [];
  return [
    {
      label,
      points: read,
      ...(predicted.length > read.length
        ? { predicted: [...masstone, ...predicted].map(({ a, b }) => ({ a, b })) }
        : {}),
    },
  ];
}

/** A step's place among a* and b*, in its own colour; none where either is not known. */
export function trailPoint(
  step: Partial<Pick<TintStep, "lab"> & Pick<TrailPoint, "standing"> & ScreenFigures>,
): TrailPoint[] {
  const lab = step.lab?.["D65/10"];
  const colour = ownColour(step);
  if (colour === undefined || lab === undefined || !isKnown(lab.a) || !isKnown(lab.b)) return [];
  return [{ a: lab.a.value, b: lab.b.value, colour, standing: step.standing ?? "measured" }];
}
