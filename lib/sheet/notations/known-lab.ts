import type { Lab } from "../../colorimetry/viewing.ts";
import { isKnown } from "../../quantities/figure.ts";
import type { LabFigures } from "./notation-figures.ts";

/** L*, a* and b* where all three are known. */
export function knownLab(figures: LabFigures | undefined): Lab | undefined {
  const plane = knownAb(figures);
  return figures !== undefined && plane !== undefined && isKnown(figures.L)
    ? { L: figures.L.value, ...plane }
    : undefined;
}

/** a* and b* where both are known: of a tint whose L* was chosen, or where only hue and chroma are asked. */
export function knownAb(
  figures: Pick<LabFigures, "a" | "b"> | undefined,
): Pick<Lab, "a" | "b"> | undefined {
  return figures !== undefined && isKnown(figures.a) && isKnown(figures.b)
    ? { a: figures.a.value, b: figures.b.value }
    : undefined;
}
