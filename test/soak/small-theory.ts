import { particleModel } from "../../lib/optics/theory/particle-model.ts";
import type { TheoryFigure } from "../../lib/optics/theory/theory-figure.ts";
import type { KeptFolder } from "../../lib/kept/work-cache.ts";
import { theoryFigure } from "../../lib/site/theory-cache.ts";

/** The first-principles figure of one white, out of a cache or kept in it. */
export function smallTheory(cache: KeptFolder | undefined): TheoryFigure {
  const white = particleModel({
    slug: "rutile",
    name: "rutile",
    colourIndexName: "PW 6",
    sizeUm: 0.23,
    refractiveIndex: undefined,
    isClear: true,
  });
  if ("rule" in white) throw new Error(white.rule);
  return theoryFigure({ whites: [white], blacks: [] }, cache);
}
