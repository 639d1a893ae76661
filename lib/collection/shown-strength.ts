import { isKnown, type Known } from "../quantities/figure.ts";
import type { Quantity } from "../quantities/interval.ts";
import type { Sheet } from "../sheet/sheet.ts";

/** Tinting strength as a painter meets it, with where the sheet has it. */
export interface ShownStrength {
  readonly figure: Known<Quantity>;
  readonly path: "optics.tintingStrength" | "optics.tintingStrengthByVolume";
  readonly by: "volume" | "weight";
}

/** Tube for tube, since paint is squeezed out and not weighed; by weight where a density is not known. */
export function shownStrength({ optics }: Pick<Sheet, "optics">): ShownStrength | undefined {
  const { tintingStrength, tintingStrengthByVolume } = optics;
  if (isKnown(tintingStrengthByVolume))
    return {
      figure: tintingStrengthByVolume,
      path: "optics.tintingStrengthByVolume",
      by: "volume",
    };
  return isKnown(tintingStrength)
    ? { figure: tintingStrength, path: "optics.tintingStrength", by: "weight" }
    : undefined;
}
