import { isKnown } from "../quantities/figure.ts";
import { ends } from "../quantities/interval.ts";
import { evidenceOf } from "../sheet/figure-places.ts";
import type { Sheet } from "../sheet/sheet.ts";

/** Dried thickness [um] beyond which nobody lays a coat so that it hides. Our own limit. */
const THICKEST_COAT_UM = 500;

/** Whether the film that hides is thicker than any that is laid to hide. */
export function isMoreThanACoat({ optics: { hidingFilmUm } }: Pick<Sheet, "optics">): boolean {
  return (
    isKnown(hidingFilmUm) &&
    hidingFilmUm.bound !== "at most" &&
    ends(hidingFilmUm.value)[0] > THICKEST_COAT_UM
  );
}

/** Whether a dark colour hides a chart and yet has little body, which is what its class goes by. */
export function glazesThoughItHides({
  optics: { opacityClass, scatteringPower },
}: Pick<Sheet, "optics">): boolean {
  return (
    isKnown(opacityClass) &&
    ["transparent", "semi-transparent"].includes(opacityClass.value) &&
    evidenceOf(opacityClass).includes(scatteringPower)
  );
}
