import { BLEED_MM } from "./card-plan.ts";
import { BLACK, type Tagged, type Mark } from "./mark.ts";
import type { Imposition } from "./imposition.ts";

/** Crop marks: clear of the bleed, and as long as the margin bears [mm]. */
const CROP = { clear: BLEED_MM + 0.5, length: 4, widthPt: 0.25 } as const;

/** Where to cut, outside all that is printed; where to fold, broken. */
export function cropMarks({ cuts, folds }: Pick<Imposition, "cuts" | "folds">): Tagged {
  const [left, right] = [Math.min(...cuts.x) - CROP.clear, Math.max(...cuts.x) + CROP.clear];
  const [top, bottom] = [Math.min(...cuts.y) - CROP.clear, Math.max(...cuts.y) + CROP.clear];
  const line = (
    fromMm: readonly [number, number],
    toMm: readonly [number, number],
    dashMm?: readonly [number, number],
  ): Mark => ({
    kind: "line",
    fromMm,
    toMm,
    widthPt: CROP.widthPt,
    ink: BLACK,
    ...(dashMm !== undefined && { dashMm }),
  });
  const beside = (y: number, dashMm?: readonly [number, number]): Mark[] => [
    line([left - CROP.length, y], [left, y], dashMm),
    line([right, y], [right + CROP.length, y], dashMm),
  ];
  return {
    tag: "Artifact",
    marks: [
      ...cuts.x.flatMap((x) => [
        line([x, top - CROP.length], [x, top]),
        line([x, bottom], [x, bottom + CROP.length]),
      ]),
      ...cuts.y.flatMap((y) => beside(y)),
      ...folds.flatMap((y) => beside(y, [0.8, 0.8])),
    ],
  };
}
